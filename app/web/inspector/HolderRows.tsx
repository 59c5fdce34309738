import type { TimedPassReading } from '../../../core/cautions/setup-report.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import { Reading } from '../ui/Reading.tsx';
import { percentText, threeFigures } from '../ui/words.ts';

/** A pass that may be read alone, as in a sweep, where nothing is known of the one before. */
export type PerhapsTimed = PassReading & Partial<Pick<TimedPassReading, 'timing'>>;

const walkText = (walkSeconds: number, isFromCamera: boolean, slackSeconds: number): string =>
  `${threeFigures(walkSeconds)} s${isFromCamera ? ' from the camera' : ''} · ${threeFigures(Math.abs(slackSeconds))} s ${slackSeconds < 0 ? 'too late' : 'to spare'}`;

/** Whoever holds the lamp: the walk to it from the pass before or from the camera, and whether the lens sees them. */
export const HolderRows = ({ reading: { timing, person } }: { reading: PerhapsTimed }) => (
  <>
    {timing?.walkSeconds != null && timing.slackSeconds != null && (
      <Reading about="walk" name="The walk there">
        {walkText(timing.walkSeconds, timing.isFromCamera, timing.slackSeconds)}
        {timing.roundHazards.length > 0 && ` · round ${timing.roundHazards.join(', ')}`}
      </Reading>
    )}
    {person && (
      <Reading about="holder" name="Holding it">
        {person.visibleSeconds === 0
          ? 'the lens does not see you'
          : `the lens sees you for ${threeFigures(person.visibleSeconds)} s · ${percentText(person.exposureShare)} of the exposure`}
        {person.atLensSeconds > 0 && ` · ${threeFigures(person.atLensSeconds)} s right before the lens`}
      </Reading>
    )}
  </>
);
