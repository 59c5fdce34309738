import type { Caution } from '../../../core/cautions/caution.ts';
import { useApp, useScheme } from '../state/app-store.ts';
import { splitFrame } from '../state/edits/split-frame.ts';
import { retryReports, useReport, useReports } from '../state/reports.ts';
import { CautionMark, cautionWords } from '../ui/CautionMark.tsx';
import { cautionSentence } from '../ui/lengths.ts';
import { useWhy } from '../ui/use-why.tsx';

/** The way out that one press takes: two frames instead of a walk that is too long for one. */
const WayOut = ({ caution: { code, severity, frameId, passId, value = 0 } }: { caution: Caution }) => {
  const { id: schemeId } = useScheme();
  const { edit } = useApp.getState();
  // a danger within one frame; between frames it is a warning, and one can only wait longer
  if (code !== 'cannot-walk' || severity !== 'danger' || !frameId || !passId) return null;
  return (
    <button
      type="button"
      className="small"
      onClick={() => edit((setup) => splitFrame(setup, { schemeId, frameId, passId }, value))}
    >
      Split in two frames
    </button>
  );
};

/** One caution: how bad, what and what to do; why, for whoever asks. */
const CautionLine = ({ caution }: { caution: Caution }) => {
  const { code, severity } = caution;
  const scheme = useScheme();
  const why = useWhy({ caution: code }, 'Why', `Why: ${cautionWords[code] ?? code}`);
  return (
    <li data-code={code}>
      <CautionMark severity={severity} /> {cautionSentence(caution, scheme)} {why.button} <WayOut caution={caution} />
      {why.text}
    </li>
  );
};

/** A key for each: a pass may have the same caution several times, as where it lies in two hazards. */
const keyed = (cautions: readonly Caution[]): { readonly key: string; readonly caution: Caution }[] => {
  const counts = new Map<string, number>();
  return cautions.map((caution) => {
    const stem = `${caution.frameId}/${caution.passId}/${caution.code}`;
    const count = (counts.get(stem) ?? 0) + 1;
    counts.set(stem, count);
    return { key: `${stem}/${count}`, caution };
  });
};

/** Every caution of the present scheme, in full sentences. */
export const Cautions = () => {
  const report = useReport();
  const failed = useReports((state) => state.failed);
  if (failed)
    return (
      <p className="cautions quiet" role="status">
        The readings could not be worked out. All else works.{' '}
        <button type="button" className="small" onClick={retryReports}>
          Try again
        </button>
      </p>
    );
  return (
    <section className="cautions" aria-label="Cautions" aria-live="polite">
      {!report?.cautions.length && (
        <p className="quiet">{report ? 'No cautions.' : 'Cautions are being worked out.'}</p>
      )}
      <ul>
        {keyed(report?.cautions ?? []).map(({ key, caution }) => (
          <CautionLine key={key} caution={caution} />
        ))}
      </ul>
    </section>
  );
};
