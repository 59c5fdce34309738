import type { PassReading } from '../../../core/readings/pass-reading.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useSession } from '../state/session.ts';
import { worded } from '../ui/lengths.ts';
import { Reading } from '../ui/Reading.tsx';
import { metresText, percentText, signed, threeFigures } from '../ui/words.ts';
import { CountLine } from './CountLine.tsx';
import { HolderRows, type PerhapsTimed } from './HolderRows.tsx';

const degrees = (value: number) => `${value.toFixed(value < 10 ? 1 : 0)}°`;

const raking = ({
  grazingDegrees,
  shadowLengthPerHeight,
}: {
  grazingDegrees: number;
  shadowLengthPerHeight: number | null;
}) =>
  shadowLengthPerHeight === null
    ? 'from behind it: no light'
    : `${degrees(grazingDegrees)} · shadows ×${threeFigures(shadowLengthPerHeight)}`;

/** Who hides the lamp, other than a subject. */
const hiders = { ground: 'the ground', holder: 'you, who hold it' } as const;

const lensText = ({ lens }: PassReading, name: (id: string) => string): string => {
  if (lens.seenShare > 0) return lens.shines ? 'sees the bare lamp' : 'sees the lamp, from behind';
  const { hiddenBy } = lens;
  if (hiddenBy === null) return 'does not see it: outside the frame';
  return `does not see it: hidden by ${hiddenBy.kind === 'subject' ? name(hiddenBy.subjectId) : hiders[hiddenBy.kind]}`;
};

const beamText = ({ beamDegrees, patchMetres, lumens }: PassReading['beam']): string =>
  [
    ...(beamDegrees === null ? [] : [degrees(beamDegrees)]),
    ...(patchMetres === null ? [] : [`patch ${metresText(patchMetres)}`]),
    `${threeFigures(lumens)} lm`,
  ].join(' · ');

const sweptText = (seconds: number): string => {
  if (seconds > 3600) return 'hours to sweep';
  return `${seconds < 0.1 ? 'under 0.1' : threeFigures(seconds)} s swept`;
};

const paintText = ({ areaSquareMetres, budgetLumenSeconds, seconds }: NonNullable<PassReading['paint']>): string =>
  `${worded(`${threeFigures(areaSquareMetres)} m²`)} · ${threeFigures(budgetLumenSeconds)} lm·s · ${sweptText(seconds)}`;

const evennessText = ({ evennessStops, fallOffStops, faceLitShare }: PassReading): string => {
  if (fallOffStops === null || faceLitShare === null) return 'the camera does not see the subject';
  const distance = `${fallOffStops.toFixed(1)} from distance alone`;
  if (evennessStops === null) return `face not lit · ${distance}`;
  return `${evennessStops.toFixed(1)} stops · ${distance} · ${percentText(faceLitShare)} lit`;
};

const patchText = ({ patch }: PassReading['relief']): string =>
  patch === null
    ? 'not lit, or not in the picture'
    : `contrast ${patch.rmsContrast.toFixed(2)} · ${percentText(patch.shadowedShare)} in shadow`;

const againstText = (apartDegrees: number): string => {
  const sense =
    apartDegrees < 45 ? 'shadows agree' : apartDegrees > 135 ? 'shadows against each other' : 'shadows cross';
  return `${Math.round(apartDegrees)}° · ${sense}`;
};

/** What was worked out for a pass, as rows of a label and a number with its sense. */
export const PassNumbers = ({ reading, setup }: { reading: PerhapsTimed; setup: Setup }) => {
  const { target, rim, relief, shadows, agreement } = reading;
  const hidesAnswer = useSession((state) => state.hidesAnswer);
  const name = (id: string) => setup.subjects.find((subject) => subject.id === id)?.name ?? id;
  const shadowText = (shadow: PassReading['shadows'][number]) => {
    const length = shadow.endless
      ? 'endless: lamp below its top'
      : worded(`${threeFigures(shadow.lengthMetres ?? 0)} m`);
    // a share of an endless shadow would mean little
    const hasShare = shadow.inFrameShare !== null && !shadow.endless;
    const share = hasShare ? ` · ${Math.round(100 * (shadow.inFrameShare ?? 0))} % in frame` : '';
    return `${length} · toward ${Math.round(shadow.bearingDegrees)}°${share}`;
  };
  return (
    <dl className="numbers">
      <CountLine reading={reading} />
      <Reading about="off-axis" name="Off the axis">
        {degrees(reading.offAxisDegrees)} ·{' '}
        {reading.offAxisDegrees < 60 ? 'front' : reading.offAxisDegrees < 120 ? 'side' : 'back'}
      </Reading>
      <Reading about="elevation" name="Elevation">
        {signed(reading.elevationDegrees)}°
      </Reading>
      {target && (
        <Reading about="target" name="Dose at the target">
          {threeFigures(target.doseLuxSeconds)} lx·s
        </Reading>
      )}
      <Reading about="beam" name="Beam">
        {beamText(reading.beam)}
      </Reading>
      <Reading about="colour" name="Colour">
        {reading.colour.cctKelvin === null ? 'no white' : `${Math.round(reading.colour.cctKelvin)} K`}
      </Reading>
      {reading.paint && (
        <Reading about="paint" name="To paint it">
          {paintText(reading.paint)}
        </Reading>
      )}
      <Reading about="lens" name="The lens">
        {lensText(reading, name)}
      </Reading>
      <HolderRows reading={reading} />
      <Reading about="rakes-ground" name="Rakes the ground">
        {raking(relief)}
      </Reading>
      {relief.target && (
        <Reading about="rakes-target" name="Rakes the target">
          {raking(relief.target)}
        </Reading>
      )}
      {setup.patch && (
        <Reading about="patch" name="Patch">
          {patchText(relief)}
        </Reading>
      )}
      <Reading about="evenness" name="Evenness">
        {evennessText(reading)}
      </Reading>
      {reading.overMoonStops !== null && (
        <Reading about="over-moon" name="Over the moon">
          {signed(reading.overMoonStops)} stops at the target
        </Reading>
      )}
      {agreement.moonDegrees !== null && (
        <Reading about="against-moon" name="Against the moon">
          {againstText(agreement.moonDegrees)}
        </Reading>
      )}
      {agreement.glowDegrees !== null && (
        <Reading about="against-glow" name="Against the glow">
          {againstText(agreement.glowDegrees)}
        </Reading>
      )}
      <Reading about="outline" name={`Outline${rim.subjectId ? ` of ${name(rim.subjectId)}` : ''}`}>
        {rim.litShare === null
          ? 'the camera does not see the subject'
          : `${Math.round(100 * rim.litShare)} % lit${rim.rimToFaceStops === null ? '' : ` · ${signed(rim.rimToFaceStops)} stops to the face`}`}
      </Reading>
      {(hidesAnswer ? [] : shadows.slice(0, 6)).map((shadow) => (
        <Reading key={shadow.subjectId} about="shadow" name={`Shadow of ${name(shadow.subjectId)}`}>
          {shadowText(shadow)}
        </Reading>
      ))}
    </dl>
  );
};
