import { useReport, useReports } from '../state/reports.ts';
import { CautionMark } from '../ui/CautionMark.tsx';

/** Every caution of the present scheme, in full sentences. */
export const Cautions = () => {
  const report = useReport();
  const failed = useReports((state) => state.failed);
  if (failed)
    return (
      <p className="cautions quiet">
        The readings could not be worked out. The picture still can; reload the page to try again.
      </p>
    );
  return (
    <section className="cautions" aria-label="Cautions" aria-live="polite">
      {report?.cautions.length === 0 && <p className="quiet">No cautions.</p>}
      <ul>
        {report?.cautions.map(({ code, frameId, passId, severity, message }) => (
          <li key={`${frameId}/${passId}/${code}`} data-code={code}>
            <CautionMark severity={severity} /> {message}
          </li>
        ))}
      </ul>
      <p className="safety quiet">
        Try it in daylight first. Keep beams off roads, aircraft, people’s eyes and wildlife; ask the owner; local rules
        decide.
      </p>
    </section>
  );
};
