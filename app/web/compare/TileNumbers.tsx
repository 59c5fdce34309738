import type { Caution } from '../../../core/cautions/caution.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { useSetup } from '../state/app-store.ts';
import { useReports } from '../state/reports.ts';
import { CautionMark, cautionWords } from '../ui/CautionMark.tsx';
import { cautionSentence, lengthWords } from '../ui/lengths.ts';
import { threeFigures } from '../ui/words.ts';
import { tileWords } from './tile-rows.ts';

/** Each kind of caution once, with how often it comes. */
const kindsOf = (cautions: readonly Caution[]) => {
  const kinds = new Map<string, { caution: Caution; count: number }>();
  for (const caution of cautions) {
    const kind = kinds.get(caution.code);
    kinds.set(caution.code, { caution: kind?.caution ?? caution, count: (kind?.count ?? 0) + 1 });
  }
  return [...kinds.values()];
};

interface TileNumbersProps {
  readonly scheme: Scheme;
  /** Frames that the picture shows. */
  readonly shown: readonly string[];
}

/** The readings of a scheme in short, and its cautions as words. */
export const TileNumbers = ({ scheme, shown }: TileNumbersProps) => {
  const setup = useSetup();
  const report = useReports((state) => state.byScheme[scheme.id]);
  const hasFailed = useReports(({ failed }) => failed);
  if (!report) return <p className="tile-numbers quiet">{hasFailed ? 'could not be worked out' : 'working it out…'}</p>;
  const { passes, keyName, rows } = tileWords(setup, scheme, report, shown);
  const { camera } = scheme;
  const kinds = kindsOf(report.cautions);
  return (
    <div className="tile-numbers">
      {passes.length === 0 && <p className="quiet">No lamp in it.</p>}
      <ul>
        {passes.map((words, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sentences without a life of their own
          <li key={i}>{words}</li>
        ))}
      </ul>
      {rows.length > 0 && (
        <dl aria-label={keyName ? `Of ${keyName}` : undefined}>
          {rows.map(({ label, value, sense }) => (
            <div key={label} title={`${label}: ${[value, sense].filter(Boolean).join(' · ')}`}>
              <dt>{label}</dt>
              <dd>
                {value && <b>{value}</b>} <span>{sense}</span>
              </dd>
            </div>
          ))}
        </dl>
      )}
      {camera && (
        <p className="quiet">
          own camera · {threeFigures(camera.focalLengthMm)} mm · {lengthWords(camera.position[2], 1)}
        </p>
      )}
      {kinds.length > 0 && (
        <ul className="tile-cautions" aria-label="Cautions">
          {kinds.map(({ caution, count }) => (
            <li key={caution.code} title={cautionSentence(caution, scheme)}>
              <CautionMark severity={caution.severity} /> {cautionWords[caution.code] ?? caution.code}
              {count > 1 && ` ×${count}`}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
};
