import { useRef, useState } from 'react';
import { angleInPhoto } from '../../../core/camera/angle-in-photo.ts';
import { evenShareOfSpill } from '../../../core/photometry/beam.ts';
import { edgeTapShare } from '../../../core/photometry/beam-from-taps.ts';
import { spotLevel } from '../../../core/testshot/spot-level.ts';
import { CrossPicture } from '../photo/CrossPicture.tsx';
import { DrawnPhoto } from '../photo/DrawnPhoto.tsx';
import { cutSpot } from '../photo/decode-photo.ts';
import { usePhoto } from '../photo/use-photo.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { percentText } from '../ui/words.ts';

/** What the taps in a photo say, the lamp’s angles off its axis. */
export interface PhotoTaps {
  readonly halfRadians: number;
  readonly edgeRadians: number | null;
  readonly edgeToCentre: number | null;
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
  const level = (place: Place) => (picture ? spotLevel(cutSpot(picture, place, radius)).green.linear : 0);
  const put = (place: Place) => {
    if (!picture) return;
    const now = { ...places, [step]: place };
    setPlaces(now);
    const { centre, half, edge } = now;
    if (!centre || !half) return;
    const [long, short] = [Math.max(sensor.widthMm, sensor.heightMm), Math.min(sensor.widthMm, sensor.heightMm)];
    const isWide = picture.width >= picture.height;
    const lens = {
      focalLengthMm: settings?.focalLengthMm ?? focalLengthMm,
      sensorWidthMm: isWide ? long : short,
      sensorHeightMm: isWide ? short : long,
    };
    onTaps({
      halfRadians: angleInPhoto(centre, half, lens),
      edgeRadians: edge ? angleInPhoto(centre, edge, lens) : null,
      edgeToCentre: edge
        ? level(between(centre, edge, evenShareOfSpill * edgeTapShare)) / Math.max(level(centre), 1e-6)
        : null,
    });
  };
  const [centre, half] = [places.centre, places.half];
  return (
    <div className="bag-photo">
      <button type="button" onClick={() => picker.current?.click()}>
        {file ? 'Another photo of the spot…' : 'Tap in a photo of the spot…'}
      </button>
      <input
        ref={picker}
        type="file"
        accept="image/jpeg,.jpg,.jpeg"
        aria-label="Photo of the spot on the wall"
        data-spot
        hidden
        onChange={(event) => {
          const [given] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (!given) return;
          setFile(given);
          setPlaces({});
          setStep('centre');
        }}
      />
      {file && fault && <p role="alert">{`${file.name} can’t be used. ${fault}.`}</p>}
      {picture && (
        <>
          <p className="quiet">
            Taken from beside the lamp, at {Number((settings?.focalLengthMm ?? focalLengthMm).toFixed(1))} mm on a
            sensor of {sensor.widthMm} × {sensor.heightMm} mm, as the setup’s camera has it. The photo stays on this
            machine.
          </p>
          <div className="choices" role="group" aria-label="What is tapped">
            {steps.map((each) => (
              <button key={each} type="button" aria-pressed={step === each} onClick={() => setStep(each)}>
                {words[each]}
                {places[each] ? ' ✓' : ''}
              </button>
            ))}
          </div>
          {centre && half && (
            <p className="quiet">
              There the photo is {percentText(level(half) / Math.max(level(centre), 1e-6))} as bright as at the centre.
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
