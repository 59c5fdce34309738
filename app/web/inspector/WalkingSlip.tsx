import { useApp, useSetup } from '../state/app-store.ts';
import { setWalking } from '../state/edits/walking-edits.ts';
import { Check } from '../ui/Check.tsx';
import { Choice } from '../ui/Choice.tsx';
import { worded } from '../ui/lengths.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { Slip } from '../ui/Slip.tsx';

/** Common practice, no published source. */
const paces: readonly (readonly [metresPerSecond: number, word: string])[] = [
  [0.5, 'Rough ground'],
  [0.8, 'Path'],
  [1.2, 'Brisk'],
];

/** Whoever holds the lamps, and walks from pass to pass, as a strip that opens. */
export const WalkingSlip = () => {
  const { walking } = useSetup();
  const isOpen = useApp((state) => state.selection?.kind === 'walking');
  const { edit, select } = useApp.getState();
  const { metresPerSecond, keepsOutOfPicture, clothes } = walking;
  const head = (
    <>
      <svg viewBox="0 0 14 14" width={12} height={12} aria-hidden="true">
        <circle cx={7} cy={2.5} r={1.8} />
        <path d="M7 5V9L4 13.5M7 9L10 13.5M3.5 7.5L7 5.5L10.5 7.5" />
      </svg>
      <strong>You</strong>
      <span>
        walk {worded(`${metresPerSecond} m/s`)} · {clothes} clothes
      </span>
    </>
  );
  return (
    <Slip head={head} isOpen={isOpen} onToggle={() => select(isOpen ? null : { kind: 'walking' })}>
      <div className="fields">
        <NumberField
          label="Walking speed"
          unit="m/s"
          value={metresPerSecond}
          min={0.2}
          max={2}
          step={0.1}
          onChange={(to) => edit((s) => setWalking(s, { metresPerSecond: to }))}
        />
        <Choice
          label="Clothes"
          value={clothes}
          options={[
            ['dark', 'Dark'],
            ['light', 'Light'],
          ]}
          onChange={(to) => edit((s) => setWalking(s, { clothes: to === 'light' ? 'light' : 'dark' }))}
        />
      </div>
      <div className="actions">
        {paces.map(([pace, word]) => (
          <button
            key={pace}
            type="button"
            className="small"
            aria-pressed={metresPerSecond === pace}
            onClick={() => edit((s) => setWalking(s, { metresPerSecond: pace }))}
          >
            {word} {pace}
          </button>
        ))}
      </div>
      <Check
        label="Walk round the picture"
        note="not through what the camera sees"
        isOn={keepsOutOfPicture}
        onChange={(isOn) => edit((s) => setWalking(s, { keepsOutOfPicture: isOn }))}
      />
      <p className="quiet">
        Walks count a fifth more than the shortest way: in the dark one goes round stones and feels for the place.
      </p>
      <p className="quiet">Try the way by day: holes, edges and water are not known here.</p>
    </Slip>
  );
};
