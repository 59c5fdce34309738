import { defaultPlan } from '../../../core/sweep/default-plan.ts';
import { type PassPlace, passAt } from '../../../core/sweep/pass-at.ts';
import type { SweepKind } from '../../../core/sweep/sweep-plan.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { isSweeping, useSweeps } from '../state/sweeps.ts';
import { Choice } from '../ui/Choice.tsx';
import { cellsOf, kindSentences, kindWords, picturesText } from './kind-words.ts';
import { PlanFields } from './PlanFields.tsx';
import { problemText } from './plan-problem.ts';

const kinds = Object.entries(kindWords);

/** A pass as a choice names it; frames' and passes' ids have no stroke in them. */
const choiceOf = (frameId: string, passId: string) => `${frameId}/${passId}`;

/** Which pass is swept, how, and in how many pictures. Nothing is traced before it is started. */
export const SweepBar = ({ place }: { place: PassPlace }) => {
  const setup = useSetup();
  const scheme = useScheme();
  const showsBlend = useApp((state) => state.showsBlend);
  const kind = useSweeps((state) => state.kind);
  const typed = useSweeps((state) => state.plans[kind]);
  const problem = useSweeps((state) => state.problem);
  const isBusy = useSweeps(isSweeping);
  const { choose, type, start, cancel } = useSweeps.getState();
  const { pass, lamp } = passAt(setup, place);
  const plan = typed ?? defaultPlan(kind, pass, lamp);
  const painted = scheme.frames.filter(({ passes }) => passes.length > 0);
  const options = painted.flatMap((frame) =>
    frame.passes.map(
      ({ id, name }) => [choiceOf(frame.id, id), painted.length > 1 ? `${name} · ${frame.name}` : name] as const,
    ),
  );
  const select = (value: string) => {
    const [frameId = '', passId = ''] = value.split('/');
    useApp.getState().select({ kind: 'pass', frameId, passId });
  };
  return (
    <form className="sweep-bar" onSubmit={(event) => event.preventDefault()}>
      <Choice label="Pass" value={choiceOf(place.frameId, place.passId)} options={options} onChange={select} />
      <Choice label="Sweep" value={kind} options={kinds} onChange={(value) => choose(value as SweepKind)} />
      <PlanFields key={kind} plan={plan} onChange={type} />
      <span className="sweep-start">
        {isBusy ? (
          <button type="button" onClick={cancel}>
            Cancel
          </button>
        ) : (
          <button type="button" onClick={() => start(setup, place, plan, showsBlend)}>
            Start
          </button>
        )}
        <span className="quiet">{picturesText(cellsOf(plan))}</span>
      </span>
      <p className="sweep-sentence quiet">{kindSentences[kind]}</p>
      {problem && (
        <p role="alert" className="sweep-problem">
          {problemText(problem)}
        </p>
      )}
    </form>
  );
};
