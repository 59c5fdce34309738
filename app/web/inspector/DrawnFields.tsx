import type { Camera } from '../../../core/setup/schema/setup.ts';
import { Check } from '../ui/Check.tsx';
import { Choice } from '../ui/Choice.tsx';

type Drawn = Camera['drawn'];

interface DrawnFieldsProps {
  readonly drawn: Drawn;
  readonly onChange: (part: Partial<Drawn>) => void;
}

/** What of lens and sensor the picture shows. */
export const DrawnFields = ({ drawn, onChange }: DrawnFieldsProps) => (
  <fieldset className="camera-group">
    <legend>The picture shows</legend>
    <Check
      label="Focus blur"
      note="what is out of focus goes soft"
      isOn={drawn.focusBlur}
      onChange={(focusBlur) => onChange({ focusBlur })}
    />
    <Check
      label="Dark corners"
      note="a wide lens loses light off its axis"
      isOn={drawn.vignetting}
      onChange={(vignetting) => onChange({ vignetting })}
    />
    <Check
      label="Noise"
      note="grain of little light and high ISO"
      isOn={drawn.noise}
      onChange={(noise) => onChange({ noise })}
    />
    <Check
      label="Who holds a lamp"
      note="and the shadow they throw"
      isOn={drawn.holder}
      onChange={(holder) => onChange({ holder })}
    />
    <Choice
      label="Highlights"
      value={drawn.response}
      options={[
        ['soft', 'roll off softly'],
        ['plain', 'straight to white'],
      ]}
      onChange={(response) => onChange({ response: response as Drawn['response'] })}
    />
  </fieldset>
);
