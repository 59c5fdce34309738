import { MarkChecks } from '../picture/MarkChecks.tsx';
import { useApp, useSetup } from '../state/app-store.ts';
import { setBounces, setNightLevel } from '../state/edits/setup-edits.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { parseStops } from '../ui/parse-stops.ts';
import { signed } from '../ui/words.ts';
import { BurntMarks } from './BurntMarks.tsx';

/** How light is followed, how bright it should come out, and where it is too much. */
export const LightLine = () => {
  const setup = useSetup();
  const { edit } = useApp.getState();
  return (
    <div className="light-line">
      <Choice
        label="Bounce"
        value={String(setup.bounces)}
        options={[
          ['0', 'none'],
          ['1', 'once'],
          ['2', 'twice'],
        ]}
        onChange={(bounces) => edit((s) => setBounces(s, Number(bounces)))}
      />
      <span title="How bright lit things should be, from mid-grey; counts follow it. Usual: 0 to −2.5, most often −1.5">
        <NumberField
          label="Night level"
          unit="stops"
          value={setup.nightLevelStops}
          min={-4}
          max={1}
          step={0.5}
          format={(stops) => signed(stops)}
          parse={parseStops}
          onChange={(stops) => edit((s) => setNightLevel(s, stops))}
        />
      </span>
      <MarkChecks />
      <BurntMarks />
    </div>
  );
};
