import type { SchemeReport } from '../../../core/cautions/setup-report.ts';
import { useApp } from '../state/app-store.ts';
import { useReport, useReports } from '../state/reports.ts';
import { CautionMark } from '../ui/CautionMark.tsx';

/** The cautions of one scheme in full sentences; `title` where two schemes stand side by side. */
const CautionList = ({ report, title }: { report: SchemeReport; title: string | null }) => (
  <>
    {title && <h2>{title}</h2>}
    {report.cautions.length === 0 && <p className="quiet">No cautions.</p>}
    <ul>
      {report.cautions.map(({ code, frameId, passId, severity, message }) => (
        <li key={`${frameId}/${passId}/${code}`} data-code={code}>
          <CautionMark severity={severity} /> {message}
        </li>
      ))}
    </ul>
  </>
);

/** Every caution of what is on screen. */
export const Cautions = () => {
  const report = useReport();
  const compareId = useApp((state) => state.compareId);
  const compared = useReports((state) => (compareId ? state.byScheme[compareId] : undefined));
  const failed = useReports((state) => state.failed);
  if (failed)
    return (
      <p className="cautions quiet">
        The readings could not be worked out. The picture still can; reload the page to try again.
      </p>
    );
  return (
    <section className="cautions" aria-label="Cautions" aria-live="polite">
      {report && <CautionList report={report} title={compared ? report.name : null} />}
      {compared && <CautionList report={compared} title={compared.name} />}
      <p className="safety quiet">
        Try it in daylight first. Keep beams off roads, aircraft, people’s eyes and wildlife; ask the owner; local rules
        decide.
      </p>
    </section>
  );
};
