import { useMemo } from 'react';
import { lightThroughGels } from '../../../core/colour/gel.ts';
import type { Lamp, Pass, Setup } from '../../../core/setup/schema/setup.ts';
import { ratioFromStops } from '../../../core/units/stops.ts';
import { dressedEmitter, emitterOf, realFluxOf } from '../../../core/world/lamp-light.ts';
import { threeFigures } from '../ui/words.ts';
import { beamCurve } from './beam-curve.ts';
import { beamWidthText } from './beam-width-text.ts';
import { planePath, plotRadius as r, ringPath, spoke } from './polar-paths.ts';

const bareFront = { spreadShare: 0, cosSnoot: -1 };

/** A lamp's beam as it leaves the pass at full level: intensity against the angle off the axis, which points down. */
export const PolarPlot = ({ lamp, pass, files }: { lamp: Lamp; pass: Pass; files: Setup['measuredBeams'] }) => {
  const bare = useMemo(() => emitterOf(lamp, files), [lamp, files]);
  const flux = useMemo(() => realFluxOf(lamp, files), [lamp, files]);
  const { spreadShare, cosSnoot } = dressedEmitter(bare, pass).front ?? bareFront;
  const curve = useMemo(() => beamCurve({ ...bare, front: { spreadShare, cosSnoot } }), [bare, spreadShare, cosSnoot]);
  const { transmission } = lightThroughGels(lamp.temperatureKelvin, pass.gels);
  const peak = flux * curve.peakPerLumen * transmission * ratioFromStops(-(pass.cloth?.stops ?? 0));
  const names = lamp.kind === 'tube' ? ['along the tube', 'across it'] : ['in 0°–180°', 'in 90°–270°'];
  const shinesBack = curve.planes
    .flat()
    .some(({ perLumen }) =>
      perLumen.some((v, i) => (curve.offAxisDegrees[i] as number) > 90.5 && v > 0.002 * curve.peakPerLumen),
    );
  const last = shinesBack ? 180 : 90;
  const ticks = Array.from({ length: last / 30 + 1 }, (_, i) => 30 * i);
  const top = shinesBack ? -r - 22 : -18;
  const width = beamWidthText(curve, names);
  const label = `Beam, the lamp pointing down: peak ${threeFigures(peak)} candela, beam angle ${width}`;
  return (
    <figure className="polar">
      <svg viewBox={`${-r - 24} ${top} ${2 * r + 48} ${r + 22 - top}`} role="img" aria-label={label}>
        {ticks.map((angle) => (
          <g key={angle}>
            {[-1, 1].map((side) => (
              <path key={side} className="polar-grid" d={spoke(side * angle, r + 4)} />
            ))}
            <text x={Math.sin((angle * Math.PI) / 180) * (r + 14)} y={Math.cos((angle * Math.PI) / 180) * (r + 14) + 4}>
              {angle}°
            </text>
          </g>
        ))}
        <path className="polar-grid" d={ringPath(r / 2, last)} />
        <path className="polar-grid" d={ringPath(r, last)} />
        {curve.planes[0]?.map(({ halfDegrees }, i) =>
          halfDegrees === null || halfDegrees > 179 ? null : (
            <path
              key={i === 0 ? 'one' : 'other'}
              className="polar-half"
              d={spoke(i === 0 ? halfDegrees : -halfDegrees, r)}
            />
          ),
        )}
        {curve.planes.map((plane, i) => (
          <path
            key={names[i]}
            className={i === 0 ? 'polar-curve' : 'polar-curve polar-second'}
            d={planePath(curve, plane, last)}
          />
        ))}
        <text x={-r + 2} y={-5}>
          {threeFigures(peak)} cd
        </text>
        <text x={r / 2} y={-5}>
          {threeFigures(peak / 2)} cd
        </text>
      </svg>
      <figcaption className="quiet">
        <span className="polar-main">Peak {threeFigures(peak)} cd</span>
        <span className="polar-main">Beam angle {width}</span>
        <span>At full level, behind all that is in front. The lamp points down.</span>
        {curve.planes.length > 1 && (
          <span>
            Solid {names[0]}, dashed {names[1]}.
          </span>
        )}
      </figcaption>
    </figure>
  );
};
