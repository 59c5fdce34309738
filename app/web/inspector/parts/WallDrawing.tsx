import { headShare } from '../../../../core/setup/head-share.ts';
import type { Opening, PartOf } from '../../../../core/setup/schema/setup.ts';

/** An opening's outline, metres, up negative as on screen. */
const outlineOf = ({ acrossMetres, sillMetres, widthMetres, heightMetres, head }: Opening): string => {
  const [left, right, half] = [acrossMetres - widthMetres / 2, acrossMetres + widthMetres / 2, widthMetres / 2];
  const top = sillMetres + heightMetres;
  const spring = top - widthMetres * headShare[head];
  const arc = (radius: number, x: number, y: number) => `A${radius} ${radius} 0 0 1 ${x} ${-y}`;
  const over = {
    flat: `L${left} ${-top}L${right} ${-top}`,
    round: arc(half, right, spring),
    pointed: `${arc(widthMetres, acrossMetres, top)}${arc(widthMetres, right, spring)}`,
  }[head];
  return `M${left} ${-sillMetres}L${left} ${-spring}${over}L${right} ${-sillMetres}Z`;
};

/** The wall from its south side with its openings, numbered as in the list. */
export const WallDrawing = ({ wall }: { wall: PartOf<'wall'> }) => {
  const { widthMetres, heightMetres, gableMetres, openings } = wall;
  const half = widthMetres / 2;
  const top = heightMetres + gableMetres;
  const unit = Math.max(widthMetres / 300, top / 140);
  const margin = 6 * unit;
  return (
    <svg
      className="drawing"
      viewBox={`${-half - margin} ${-top - margin} ${widthMetres + 2 * margin} ${top + 2 * margin}`}
      role="img"
      aria-label={`The wall from its south side, ${openings.length === 1 ? '1 opening' : `${openings.length} openings`}`}
    >
      <path d={`M${-half} 0V${-heightMetres}${gableMetres > 0 ? `L0 ${-top}` : ''}L${half} ${-heightMetres}V0Z`} />
      {openings.map((opening, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: openings have no names of their own
        <g key={i}>
          <path d={outlineOf(opening)} />
          <text
            x={opening.acrossMetres}
            y={-opening.sillMetres - opening.heightMetres / 2 + 4 * unit}
            fontSize={12 * unit}
          >
            {i + 1}
          </text>
        </g>
      ))}
    </svg>
  );
};
