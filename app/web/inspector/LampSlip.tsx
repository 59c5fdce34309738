import type { Caution } from '../../../core/cautions/caution.ts';
import { firstStroke } from '../../../core/passes/stroke.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import type { Frame, Lamp, Pass } from '../../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../../core/units/body-height.ts';
import { useApp } from '../state/app-store.ts';
import { CautionMark, cautionWords } from '../ui/CautionMark.tsx';
import { lengthWords, worded } from '../ui/lengths.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { Slip } from '../ui/Slip.tsx';
import { senseOfStops, shutterText, signed, threeFigures } from '../ui/words.ts';
import type { PerhapsTimed } from './HolderRows.tsx';
import { LampInspector } from './LampInspector.tsx';
import { RimGlyph } from './RimGlyph.tsx';

interface LampSlipProps {
  readonly schemeId: string;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly reading: PerhapsTimed | undefined;
  /** Whether there is no reading because it could not be worked out. */
  readonly hasFailed: boolean;
  readonly cautions: readonly Caution[];
  readonly isOpen: boolean;
}

const TargetLine = ({ reading, hasFailed }: Pick<LampSlipProps, 'reading' | 'hasFailed'>) => {
  if (!reading) return <span className="quiet">{hasFailed ? 'could not be worked out' : 'working it out…'}</span>;
  const { target } = reading;
  if (!target) return <span className="quiet">its cross lies past everything, in the sky</span>;
  if (target.stops === null) {
    const isRim = (reading.rim.litShare ?? 0) > 0;
    return (
      <span className="quiet">
        no light on the side you see{isRim ? ' but its edge' : '; move its cross to what it lights'}
      </span>
    );
  }
  return (
    <>
      <span>{threeFigures(target.illuminanceLux)} lx at the target</span>
      <span>
        {signed(target.stops)} stops · {senseOfStops(target.stops)}
      </span>
    </>
  );
};

/** What to count for the night level, or by how much no count will do. */
const CountWord = ({ count: { spoken, spokenStops, missStops, advice } }: { count: PassReading['count'] }) => {
  if (spoken !== null && spokenStops !== null)
    return (
      <span className="slip-count">
        count {spoken} for {signed(spokenStops)} stops
      </span>
    );
  if (missStops !== null)
    return (
      <span className="slip-count">
        {Math.abs(missStops).toFixed(1)} stops too {missStops > 0 ? 'bright at its lowest' : 'dark at its full level'}
      </span>
    );
  return advice[0] ? <span className="slip-count">{worded(advice[0].replace(/\.$/, ''))}</span> : null;
};

/** "8 s", or "2 × 4 s" for a way that is gone twice. */
const countText = (pass: Pass): string => {
  const text = `${shutterText(firstStroke(pass).seconds)} s`;
  return pass.strokes > 1 ? `${pass.strokes} × ${text}` : text;
};

/** Each kind once, the worst of it. */
const wordsOf = (cautions: readonly Caution[]): Caution[] =>
  cautions.filter(({ code }, i) => cautions.findIndex((other) => other.code === code) === i);

/** One pass as a narrow strip; pressed, it opens to its inspector. */
export const LampSlip = (props: LampSlipProps) => {
  const { schemeId, frame, pass, lamp, reading, hasFailed, cautions, isOpen } = props;
  const { select } = useApp.getState();
  const colour = cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);
  const height = pass.waypoints[0]?.position[2] ?? 0;
  const head = (
    <>
      <svg viewBox="0 0 14 14" width={12} height={12} aria-hidden="true">
        <circle cx={7} cy={7} r={6} fill={colour} />
      </svg>
      <strong>{pass.name}</strong>
      <span>
        {reading
          ? `${reading.clock} · ${lengthWords(reading.distanceMetres, 1)} straight · ${bodyHeightWord(height)}`
          : lamp.name}
      </span>
      <span className="count">{countText(pass)}</span>
      <span className="slip-light">
        <TargetLine reading={reading} hasFailed={hasFailed} />
      </span>
      {reading && <CountWord count={reading.count} />}
      {reading && <RimGlyph reading={reading} />}
      {cautions.length > 0 && (
        <span className="slip-cautions">
          {wordsOf(cautions).map(({ code, severity }) => (
            <span key={code}>
              <CautionMark severity={severity} /> {cautionWords[code] ?? code}
            </span>
          ))}
        </span>
      )}
    </>
  );
  const toggle = () => select(isOpen ? null : { kind: 'pass', frameId: frame.id, passId: pass.id });
  return (
    <Slip head={head} isOpen={isOpen} onToggle={toggle}>
      <LampInspector schemeId={schemeId} frame={frame} pass={pass} lamp={lamp} reading={reading} />
    </Slip>
  );
};
