import type { PhotoSettings } from '../../../core/testshot/photo-settings.ts';
import { markedText } from '../../../core/units/third-stops.ts';

/** "f/2.8 · 15 s · ISO 3200 · 24 mm · 2026-10-09 22:41". */
const factsText = ({ aperture, seconds, iso, focalLengthMm, at }: PhotoSettings): string =>
  [
    aperture === null ? null : markedText('aperture', aperture),
    seconds === null ? null : markedText('seconds', seconds),
    iso === null ? null : markedText('iso', iso),
    focalLengthMm === null ? null : `${Number(focalLengthMm.toFixed(1))} mm`,
    at === null ? null : at.replace('T', ' ').slice(0, 16),
  ]
    .filter(Boolean)
    .join(' · ');

interface PhotoFactsProps {
  readonly settings: PhotoSettings;
  readonly frameName: string;
  /** Of the setup's camera. */
  readonly focalLengthMm: number;
  /** Whether the frame has them already. */
  readonly isTaken: boolean;
  readonly onTake: () => void;
  readonly onTakeFocalLength: () => void;
}

/** What the photo says of itself, and what to do with it. */
export const PhotoFacts = (props: PhotoFactsProps) => {
  const { settings, frameName, focalLengthMm, isTaken, onTake, onTakeFocalLength } = props;
  const own = settings.focalLengthMm;
  const isOtherLens = own !== null && Math.abs(own / focalLengthMm - 1) > 0.01;
  const hasSome = settings.aperture !== null || settings.seconds !== null || settings.iso !== null;
  return (
    <div className="shot-facts">
      <p>{factsText(settings) || 'The photo says nothing of how it was taken.'}</p>
      {settings.notes.length > 0 && (
        <ul className="quiet">
          {settings.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <div className="actions">
        {hasSome && (
          <button type="button" disabled={isTaken} onClick={onTake}>
            {isTaken ? `“${frameName}” has these settings` : `Take these settings for “${frameName}”`}
          </button>
        )}
        {isOtherLens && (
          <button type="button" onClick={onTakeFocalLength}>
            Take {Number(own.toFixed(1))} mm for the camera, which has {Number(focalLengthMm.toFixed(1))}
          </button>
        )}
      </div>
    </div>
  );
};
