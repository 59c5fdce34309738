import { useFrame } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { useWhy } from '../ui/use-why.tsx';
import { shutterText, signed, threeFigures } from '../ui/words.ts';

/** "−29°", "0°". */
const declination = (degrees: number) => `${signed(degrees, 0)}°`;

const pixels = (value: number) => (value < 0.1 ? 'under 0.1 px' : `${value.toFixed(value < 10 ? 1 : 0)} px`);

/** How long the stars' trails come out, and what the rules would allow; two that go by one name may differ by two. */
export const StarLine = () => {
  const frame = useFrame();
  const stars = useReport()?.frames.find(({ id }) => id === frame.id)?.stars;
  const why = useWhy({ reading: 'stars' }, 'How trails are worked out');
  if (!stars) return null;
  return (
    <details className="star-line">
      <summary>
        {stars.seen
          ? `Stars in the middle draw ${pixels(stars.seen.middle.trailPixels)} in ${shutterText(frame.seconds)} s, the longest ${pixels(stars.seen.longest.trailPixels)}`
          : `Stars on the celestial equator draw ${pixels(stars.trailPixels)} in ${shutterText(frame.seconds)} s`}
      </summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Rule</th>
            <th scope="col">Formula</th>
            <th scope="col">Allows</th>
            <th scope="col">Draws</th>
          </tr>
        </thead>
        <tbody>
          {stars.rules.map(({ name, formula, seconds, trailPixels }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{formula}</td>
              <td>{threeFigures(seconds)} s</td>
              <td>{pixels(trailPixels)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {stars.seen && (
        <p className="quiet">
          Middle: declination {declination(stars.seen.middle.declinationDegrees)}; longest:{' '}
          {declination(stars.seen.longest.declinationDegrees)}, where the lens stretches them too. The rules take the
          star in the picture that is nearest the equator, {declination(stars.declinationDegrees)}.
        </p>
      )}
      {why.button}
      {why.text}
      <p className="quiet">f in mm, N the f-number, p the pixel in µm, δ the declination, ω the turn of the sky</p>
    </details>
  );
};
