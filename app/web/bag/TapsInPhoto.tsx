import { useRef, useState } from 'react';
import { angleInPhoto } from '../../../core/camera/angle-in-photo.ts';
import { evenShareOfSpill } from '../../../core/photometry/beam.ts';
import { edgeTapShare } from '../../../core/photometry/beam-from-taps.ts';
import { spotLevel } from '../../../core/testshot/spot-level.ts';
import { type SpotsRatio, spotsRatio } from '../../../core/testshot/spots-ratio.ts';
import { CrossPicture } from '../photo/CrossPicture.tsx';
import { DrawnPhoto } from '../photo/DrawnPhoto.tsx';
import { cutSpot } from '../photo/decode-photo.ts';
import { usePhoto } from '../photo/use-photo.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { FilePicker } from '../ui/FilePicker.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { percentText } from '../ui/words.ts';
import { type TapLens, tapLens } from './tap-lens.ts';

/** What the taps in a photo say, the lamp’s angles off its axis. */
export interface PhotoTaps {
  readonly halfRadians: number;
  readonly edgeRadians: number | null;
  readonly edgeToCentre: number | null;
  /** How far that is known, either way; null = there is none. */
  readonly edgeDoubtStops: number | null;
}

type Place = readonly [x: number, y: number];
const steps = ['centre', 'half', 'edge'] as const;
const words = {
  centre: 'the bright centre',
  half: 'where it is half as bright',
  edge: 'where the spill ends',
} as const;
const radius = 0.008;

const between = (a: Place, b: Place, share: number): Place => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

const lensWords = (
  { lens, degrees, from }: TapLens,
  sensor: { readonly widthMm: number; readonly heightMm: number },
): string => {
  const wide = `${Math.round(degrees)}° wide`;
  if (from === 'typed') return `${wide} as typed`;
  const focal = `${Number(lens.focalLengthMm.toFixed(1))} mm`;
  if (from === 'equivalent') return `${wide} by its equivalent focal length of ${focal} (36 mm wide)`;
  return `${wide}: ${focal} on a sensor of ${sensor.widthMm} × ${sensor.heightMm} mm, as the setup’s camera has it`;
};

/** Three taps in a photo of the spot: angles by its focal length, and how bright the spill is against the centre. */
export const TapsInPhoto = ({ onTaps }: { onTaps: (taps: PhotoTaps) => void }) => {
  const picker = useRef<HTMLInputElement>(null);
  const setup = useSetup();
  const schemeId = useApp((state) => state.schemeId);
  const [file, setFile] = useState<File | null>(null);
  const [places, setPlaces] = useState<Partial<Record<(typeof steps)[number], Place>>>({});
  const [step, setStep] = useState<(typeof steps)[number]>('centre');
  const { picture, settings, fault } = usePhoto(file);
  const { sensor, focalLengthMm } = cameraOf(setup, schemeId);
  const [typedDegrees, setTypedDegrees] = useState<number | null>(null);
  const seen = (degrees: number | null) =>
    picture &&
    tapLens({ settings, width: picture.width, height: picture.height, sensor, focalLengthMm, typedDegrees: degrees });
  const sees = seen(typedDegrees);
  const overCentre = (place: Place, centre: Place): SpotsRatio | null =>
    picture && spotsRatio(spotLevel(cutSpot(picture, place, radius)), spotLevel(cutSpot(picture, centre, radius)));
  const give = ({ centre, half, edge }: typeof places, by: TapLens | null) => {
    if (!centre || !half || !by || by.isDoubtful) return;
    const even = edge && overCentre(between(centre, edge, evenShareOfSpill * edgeTapShare), centre);
    onTaps({
      halfRadians: angleInPhoto(centre, half, by.lens),
      edgeRadians: edge ? angleInPhoto(centre, edge, by.lens) : null,
      edgeToCentre: even?.ratio ?? null,
      edgeDoubtStops: even?.uncertaintyStops ?? null,
    });
  };
  const put = (place: Place) => {
    const now = { ...places, [step]: place };
    setPlaces(now);
    give(now, sees);
  };
  const [centre, half] = [places.centre, places.half];
  const halfToCentre = centre && half ? overCentre(half, centre) : null;
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
            {steps.map((each) => (
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
            radius={radius}
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
