import { useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { Drop } from '../ui/Drop.tsx';

const names = [
  ['levels', 'Levels', 'stops from mid-grey'],
  ['full', 'Mark burnt', 'where a channel is full'],
  ['shadows', 'Shadows', 'outlines, lamp by lamp'],
  ['outline', 'Lit outline', 'where the rim is'],
  ['sharpness', 'Sharpness', 'blur in pixels'],
] as const;

/** What is marked over every picture. */
export const MarkDrop = () => {
  const marks = useSession((state) => state.marks);
  const { mark } = useSession.getState();
  const count = names.filter(([name]) => marks[name]).length;
  return (
    <Drop label={count > 0 ? `Marks ${count}` : 'Marks'}>
      {names.map(([name, label, note]) => (
        <Check key={name} label={label} note={note} isOn={marks[name]} onChange={(isOn) => mark(name, isOn)} />
      ))}
    </Drop>
  );
};
