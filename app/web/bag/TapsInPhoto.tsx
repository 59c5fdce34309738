import { useRef, useState } from 'react';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import { CrossPicture } from '../photo/CrossPicture.tsx';
import { DrawnPhoto } from '../photo/DrawnPhoto.tsx';
import { usePhoto } from '../photo/use-photo.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { FilePicker } from '../ui/FilePicker.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { percentText } from '../ui/words.ts';
import { lensWords } from './lens-words.ts';
import { overCentre, type PhotoTaps, photoTaps, type TapPlaces, tapRadius, tapSteps } from './photo-taps.ts';
import { type TapLens, tapLens } from './tap-lens.ts';

/** What each tap is called. */
const words = {
  centre: 'the bright centre',
  half: 'where it is half as bright',
  edge: 'where the spill ends',
} as const;

/** Three taps in a photo of the spot: angles by its focal length, and how bright the spill is against the centre. */
export const TapsInPhoto = ({ onTaps }: { onTaps: (taps: PhotoTaps) => void }) => {
  const picker = useRef<HTMLInputElement>(null);
  const setup = useSetup();
  const schemeId = useApp((state) => state.schemeId);
  const [file, setFile] = useState<File | null>(null);
  const [places, setPlaces] = useState<TapPlaces>({});
  const [step, setStep] = useState<(typeof tapSteps)[number]>('centre');
  const { picture, settings, fault } = usePhoto(file);
  const { sensor, focalLengthMm } = cameraOf(setup, schemeId);
  const [typedDegrees, setTypedDegrees] = useState<number | null>(null);
  const seen = (degrees: number | null) =>
    picture &&
    tapLens({ settings, width: picture.width, height: picture.height, sensor, focalLengthMm, typedDegrees: degrees });
  const sees = seen(typedDegrees);
  const give = (tapped: TapPlaces, by: TapLens | null) => {
    const taps = picture && by && photoTaps(picture, tapped, by);
    if (taps) onTaps(taps);
  };
  const put = (place: PicturePlace) => {
    const now = { ...places, [step]: place };
    setPlaces(now);
    give(now, sees);
  };
  const [centre, half] = [places.centre, places.half];
  const halfToCentre = picture && centre && half ? overCentre(picture, half, centre) : null;
  return (
    <div className="bag-photo">
      <button type="button" onClick={() => picker.current?.click()}>
        {file ? 'Another photo of the spot…' : 'Tap in a photo of the spot…'}
      </button>
      <FilePicker
        picker={picker}
        label="Photo of the spot on the wall"
        accept="image/jpeg,.jpg,.jpeg"
        onFile={(given) => {
          setFile(given);
          setPlaces({});
          setTypedDegrees(null);
          setStep('centre');
        }}
      />
      {file && fault && <p role="alert">{`${file.name} can’t be used. ${fault}.`}</p>}
      {picture && sees && (
        <>
          <p className="quiet">
            Taken from beside the lamp, {lensWords(sees, sensor)}. The photo stays on this machine.
          </p>
          {sees.isDoubtful && (
            <p role="alert">
              This photo was hardly taken with the setup’s camera: by its sensor it would see {Math.round(sees.degrees)}
              ° wide. Type how wide it really sees; until then taps give nothing.
            </p>
          )}
          <NumberField
            label="Its longer side sees"
            unit="°"
            value={Number(sees.degrees.toFixed(1))}
            min={1}
            max={150}
            digits={1}
            step={1}
            onChange={(degrees) => {
              setTypedDegrees(degrees);
              give(places, seen(degrees));
            }}
          />
          <div className="choices" role="group" aria-label="What is tapped">
            {tapSteps.map((each) => (
              <button key={each} type="button" aria-pressed={step === each} onClick={() => setStep(each)}>
                {words[each]}
                {places[each] ? ' ✓' : ''}
              </button>
            ))}
          </div>
          {halfToCentre && (
            <p className="quiet">
              There the photo is {percentText(halfToCentre.ratio)} as bright as at the centre, ±
              {halfToCentre.uncertaintyStops.toFixed(1)} stop: its camera’s tone curve is not known.
              {halfToCentre.isBurnt && ' The centre is burnt out: expose less.'}
            </p>
          )}
          <CrossPicture
            label={`The spot on the wall: tap ${words[step]}.`}
            place={places[step] ?? [0.5, 0.5]}
            radius={tapRadius}
            aspect={picture.width / picture.height}
            onPlace={put}
          >
            <DrawnPhoto photo={picture} />
          </CrossPicture>
        </>
      )}
    </div>
  );
};
