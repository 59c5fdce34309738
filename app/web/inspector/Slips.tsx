import { useApp, useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { useReport, useReports } from '../state/reports.ts';
import { AddLamp } from './AddLamp.tsx';
import { CameraSlip } from './CameraSlip.tsx';
import { GroundSlip } from './GroundSlip.tsx';
import { HazardSlip } from './HazardSlip.tsx';
import { LampSlip } from './LampSlip.tsx';
import { WalkingSlip } from './WalkingSlip.tsx';

/** Lamps, camera, whoever walks, hazards and ground as strips; the selected one is open. */
export const Slips = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const frame = useFrame();
  const report = useReport();
  const hasFailed = useReports(({ failed }) => failed);
  const selection = useApp((state) => state.selection);
  const passes = scheme.frames.flatMap((each) => each.passes.map((pass) => ({ frame: each, pass })));
  return (
    <section className="slips" aria-label="Lamps, camera, you, hazards and ground">
      {passes.length === 0 && <p className="quiet">No lamp yet. Add one, then drag it on the plan.</p>}
      <ul>
        {passes.map(({ frame: own, pass }) => {
          const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
          const of = report?.frames.find(({ id }) => id === own.id);
          return (
            lamp && (
              <LampSlip
                key={`${own.id}/${pass.id}`}
                schemeId={scheme.id}
                frame={own}
                pass={pass}
                lamp={lamp}
                reading={of?.passes.find(({ passId }) => passId === pass.id)}
                hasFailed={hasFailed}
                cautions={of?.cautions.filter(({ passId }) => passId === pass.id) ?? []}
                isOpen={selection?.kind === 'pass' && selection.passId === pass.id && selection.frameId === own.id}
              />
            )
          );
        })}
      </ul>
      <AddLamp setup={setup} scheme={scheme} frame={frame} />
      <ul>
        <CameraSlip />
        <WalkingSlip />
        <HazardSlip />
        <GroundSlip />
      </ul>
    </section>
  );
};
