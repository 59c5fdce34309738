import type { Night } from '../../../core/sky/night.ts';
import type { Span } from '../../../core/sky/night-spans.ts';
import { bandWord, coreUp, type LightBand, lightBands, upWords } from './night-bands.ts';
import { hourTicks, type NightScale, nightLayout as rows, xOf } from './night-scale.ts';

const [lightHigh, barHigh] = [20, 14];
const Light = ({ scale, band, timeZone }: { scale: NightScale; band: LightBand; timeZone: string }) => {
  const [from, to] = [xOf(scale, band.startMilliseconds), xOf(scale, band.endMilliseconds)];
  return (
    <g className={`night-${band.kind}`}>
      <rect x={from} y={rows.light} width={to - from} height={lightHigh} />
      <text x={(from + to) / 2} y={rows.light + 14} textAnchor="middle">
        {bandWord(band, timeZone, to - from)}
      </text>
    </g>
  );
};

interface BarsProps {
  readonly scale: NightScale;
  readonly spans: readonly Span[];
  readonly y: number;
  readonly className: string;
  /** What stands in a bar, by its width in pixels. */
  readonly words: (span: Span, pixels: number) => string;
}

/** When something is up, as bars with a word in the widest. */
const Bars = ({ scale, spans, y, className, words }: BarsProps) => (
  <g className={className}>
    {spans.map((span) => {
      const [from, to] = [xOf(scale, span.startMilliseconds), xOf(scale, span.endMilliseconds)];
      return (
        <g key={span.startMilliseconds}>
          <rect x={from} y={y} width={to - from} height={barHigh} />
          <text x={(from + to) / 2} y={y + 11} textAnchor="middle">
            {words(span, to - from)}
          </text>
        </g>
      );
    })}
  </g>
);

const Patterns = () => (
  <defs>
    {(
      [
        ['civil', 9],
        ['nautical', 5.5],
        ['astronomical', 3.2],
      ] as const
    ).map(([kind, gap]) => (
      <pattern
        key={kind}
        id={`night-${kind}`}
        width={gap}
        height={gap}
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path d={`M0 0V${gap}`} />
      </pattern>
    ))}
    <pattern id="night-dots" width={5} height={5} patternUnits="userSpaceOnUse">
      <circle className="night-dot" cx={2.5} cy={2.5} r={0.9} />
    </pattern>
  </defs>
);

/** How light it is, and when the moon and the core are up, on one scale: told by hatching and words. */
export const NightDrawing = ({ scale, night, timeZone }: { scale: NightScale; night: Night; timeZone: string }) => {
  const up = (span: Span, pixels: number) => upWords(span, night, timeZone, pixels);
  const upInDark = (_span: Span, pixels: number) => (pixels > 100 ? 'up in the dark' : '');
  const hours = hourTicks(scale, timeZone, scale.width < 420 ? 3 : 2);
  return (
    <>
      <Patterns />
      <g aria-hidden="true">
        {hours.map(({ at, hour }) => (
          <g key={at}>
            <path d={`M${xOf(scale, at)} ${rows.light - 3}V${rows.light}`} />
            <text x={xOf(scale, at)} y={rows.hours - 2} textAnchor="middle">
              {hour}
            </text>
          </g>
        ))}
        <text x={0} y={rows.light + 14}>
          Sky
        </text>
        <text x={0} y={rows.moon + 11}>
          Moon
        </text>
        <text x={0} y={rows.core + 11}>
          Core
        </text>
        {lightBands(night).map((band) => (
          <Light key={band.startMilliseconds} scale={scale} band={band} timeZone={timeZone} />
        ))}
        <path
          className="night-line"
          d={`M${rows.left} ${rows.moon + barHigh}h${scale.width}M${rows.left} ${rows.core + barHigh}h${scale.width}`}
        />
        <Bars scale={scale} spans={night.moonUp} y={rows.moon} className="night-moon" words={up} />
        <Bars scale={scale} spans={coreUp(night)} y={rows.core} className="night-core" words={() => ''} />
        <Bars scale={scale} spans={night.core.upInDark} y={rows.core} className="night-core-dark" words={upInDark} />
      </g>
    </>
  );
};
