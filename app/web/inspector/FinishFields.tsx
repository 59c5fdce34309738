import { finishGroups, finishPresets, presetOf } from '../../../core/setup/finish-presets.ts';
import type { Finish } from '../../../core/setup/schema/setup.ts';
import { evenShare, glossWord } from '../state/edits/finish-edits.ts';
import { percentText } from '../ui/words.ts';
import { FinishNumbers, type PutFinish } from './FinishNumbers.tsx';
import { FinishWord } from './FinishWord.tsx';
import { Fold } from './parts/Fold.tsx';

interface FinishFieldsProps {
  readonly finish: Finish;
  readonly onChange: PutFinish;
  /** Where the finish may be another's: the word for that ("As the subject"), and whether it is so. */
  readonly inherits?: { readonly label: string; readonly isInherited: boolean; readonly onInherit: () => void };
}

/** "29 % · satin · lets 30 % through" */
const shortText = (finish: Finish): string =>
  [
    percentText(evenShare(finish)),
    finish.metal ? `${glossWord(finish.gloss)} metal` : glossWord(finish.gloss),
    ...(finish.transmittance > 0 ? [`lets ${percentText(finish.transmittance)} through`] : []),
  ].join(' · ');

/** How a surface returns light: a plain word, and the numbers behind it. */
export const FinishFields = ({ finish, onChange, inherits }: FinishFieldsProps) => {
  const preset = presetOf(finish);
  const isInherited = inherits?.isInherited ?? false;
  return (
    <div className="finish">
      <FinishWord
        value={isInherited ? 'inherited' : (preset?.id ?? 'own')}
        inheritsLabel={inherits?.label ?? null}
        groups={finishGroups.map((group) => [group, finishPresets.filter((each) => each.group === group)] as const)}
        onChange={(id) => {
          if (id === 'inherited') inherits?.onInherit();
          const chosen = finishPresets.find((each) => each.id === id);
          if (chosen) onChange(chosen.finish);
        }}
      />
      {!isInherited && (
        <Fold title="Its numbers" note={shortText(finish)}>
          <FinishNumbers finish={finish} onChange={onChange} />
          {preset && (
            <p className="quiet finish-source">
              {preset.label}: published {Math.round(100 * preset.range[0])} to {Math.round(100 * preset.range[1])} %
              with its sheen: {preset.source}. Gloss is our own value, no published source.
            </p>
          )}
        </Fold>
      )}
    </div>
  );
};
