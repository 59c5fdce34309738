import type { Lamp } from '../../../core/setup/schema/setup.ts';
import { combinedShots } from '../../../core/testshot/combined-shots.ts';
import { ratioFromStops } from '../../../core/units/stops.ts';
import { useApp } from '../state/app-store.ts';
import { forgetTestShots, removeTestShot } from '../state/edits/lamp-shots.ts';
import { realWords } from '../ui/real-words.ts';
import { signed, threeFigures } from '../ui/words.ts';

const timeText = (at: string | null): string => (at === null ? 'no date' : at.replace('T', ' ').slice(0, 16));

/** What test shots found the lamp to give, against its box; each can be taken back. Nothing for a lamp as boxed. */
export const LampShots = ({ lamp, boxLumens }: { lamp: Lamp; boxLumens: number }) => {
  const { edit } = useApp.getState();
  const { correctionStops, testShots } = lamp;
  if (correctionStops === 0 && testShots.length === 0) return null;
  const { uncertaintyStops, spreadStops } = combinedShots(testShots);
  const real = threeFigures(boxLumens * ratioFromStops(correctionStops));
  return (
    <section className="lamp-shots" aria-label="What test shots found">
      <p>
        Box {threeFigures(boxLumens)} lm · {realWords(correctionStops, testShots.length)}: {real} lm
        {testShots.length > 0 && <span className="quiet"> ±{Math.max(uncertaintyStops, 0.1).toFixed(1)}</span>}
        {testShots.length > 1 && <span className="quiet">, {spreadStops.toFixed(1)} apart</span>}
      </p>
      <p className="quiet">
        {lamp.output.from === 'lux-at-1-metre'
          ? 'A new lux reading takes the place of what photos found.'
          : 'Another number on the box, or another beam, leaves what it really gives as it is.'}
      </p>
      <ul>
        {testShots.map(({ at, stops, uncertaintyStops: own }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: shots have no other name
          <li key={i}>
            {timeText(at)} · {signed(stops)} ±{Math.max(own, 0.1).toFixed(1)}{' '}
            <button
              type="button"
              className="take-out"
              aria-label={`Take back the test shot of ${timeText(at)}`}
              onClick={() => edit((s) => removeTestShot(s, lamp.id, i))}
            >
              ×
            </button>
          </li>
        ))}
      </ul>
      <button type="button" onClick={() => edit((s) => forgetTestShots(s, lamp.id))}>
        Back to what the box says
      </button>
    </section>
  );
};
