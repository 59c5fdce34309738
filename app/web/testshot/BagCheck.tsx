import type { BagLamp } from '../../../core/bag/bag-file.ts';
import { statedLumens, type Twin } from '../state/bag-twins.ts';
import { Check } from '../ui/Check.tsx';
import { threeFigures } from '../ui/words.ts';

interface BagCheckProps {
  readonly own: BagLamp;
  readonly twin: Twin;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
}

/** Whether the shot corrects the lamp of the bag too; one that is stated otherwise may be another lamp of that name. */
export const BagCheck = ({ own, twin, isOn, onChange }: BagCheckProps) => {
  if (twin.isAlike) return <Check label="Correct it in my bag too" isOn={isOn} onChange={onChange} />;
  const [here, there] = [statedLumens(own), statedLumens(twin.kept)].map(threeFigures);
  const differs = here === there ? 'has another beam' : `says ${there} lm on its box, here it is ${here} lm`;
  return (
    <Check
      label="Correct the one of this name in my bag too"
      note={`That one ${differs}: it may be another lamp. If it is this one, the shot is told against its own box there.`}
      isOn={isOn}
      onChange={onChange}
    />
  );
};
