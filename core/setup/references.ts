import { maxTriangles, trianglesOfSetup } from './detail.ts';
import type { Frame, Lamp, Pass, Scan, Scheme, Setup } from './schema/setup.ts';
import { pathText, SetupError } from './setup-error.ts';

type Path = readonly (string | number)[];

const fail = (path: Path, expected: string): never => {
  throw new SetupError('reference', pathText(path), expected);
};

const requireUnique = (path: Path, items: readonly { readonly id: string }[]): void => {
  const seen = new Set<string>();
  items.forEach((item, i) => {
    if (seen.has(item.id)) fail([...path, i, 'id'], `"${item.id}" is used twice; ids must differ`);
    seen.add(item.id);
  });
};

const checkPass = (path: Path, pass: Pass, frame: Frame, setup: Setup): void => {
  if (!setup.lamps.some((lamp) => lamp.id === pass.lampId))
    fail([...path, 'lampId'], `no lamp has the id "${pass.lampId}"`);
  if (pass.on >= pass.off) fail([...path, 'on'], 'must be before off');
  if (pass.off > frame.seconds) fail([...path, 'off'], `must be within the frame's ${frame.seconds} seconds`);
  pass.waypoints.forEach((waypoint, i) => {
    const before = pass.waypoints[i - 1];
    if (before && waypoint.time <= before.time)
      fail([...path, 'waypoints', i, 'time'], `must be after the waypoint before it (${before.time} s)`);
  });
};

const checkLamp = (path: Path, lamp: Lamp, setup: Setup): void => {
  const beam = 'beam' in lamp ? lamp.beam : null;
  const isMeasured = beam?.shape === 'measured';
  if (isMeasured && !setup.measuredBeams.some(({ id }) => id === beam.beamId))
    fail([...path, 'beam', 'beamId'], `no measured beam has the id "${beam.beamId}"`);
  if (lamp.output.from === 'measured' && !isMeasured)
    fail([...path, 'output', 'from'], 'can be "measured" only with a measured beam');
};

const checkScheme = (path: Path, scheme: Scheme, setup: Setup): void => {
  requireUnique([...path, 'frames'], scheme.frames);
  scheme.frames.forEach((frame, f) => {
    const framePath = [...path, 'frames', f];
    requireUnique([...framePath, 'passes'], frame.passes);
    frame.passes.forEach((pass, p) => {
      checkPass([...framePath, 'passes', p], pass, frame, setup);
    });
  });
  scheme.blend.frames.forEach((part, b) => {
    const blendPath = [...path, 'blend', 'frames', b];
    if (!scheme.frames.some((frame) => frame.id === part.frameId))
      fail([...blendPath, 'frameId'], `no frame of this scheme has the id "${part.frameId}"`);
    if (part.where === 'subject' && part.subjectId === null)
      fail([...blendPath, 'subjectId'], 'must name a subject, for where is "subject"');
    if (part.where === 'subject' && !setup.subjects.some((subject) => subject.id === part.subjectId))
      fail([...blendPath, 'subjectId'], `no subject has the id "${part.subjectId}"`);
  });
};

/** A lesson shows schemes, and asks for shadows, that are there. */
const checkLesson = ({ lesson, schemes, subjects }: Setup): void => {
  lesson?.steps.forEach(({ schemeIds, predict }, s) => {
    const path = ['lesson', 'steps', s];
    schemeIds.forEach((schemeId, i) => {
      if (!schemes.some(({ id }) => id === schemeId))
        fail([...path, 'schemeIds', i], `no scheme has the id "${schemeId}"`);
      if (schemeIds.indexOf(schemeId) !== i) fail([...path, 'schemeIds', i], `"${schemeId}" is named twice`);
    });
    if (!predict) return;
    const { frames } = schemes.find(({ id }) => id === schemeIds[0]) as Scheme;
    if (!frames.some(({ passes }) => passes.some(({ id }) => id === predict.passId)))
      fail([...path, 'predict', 'passId'], `no pass of the scheme "${schemeIds[0]}" has the id "${predict.passId}"`);
    if (!subjects.some(({ id }) => id === predict.subjectId))
      fail([...path, 'predict', 'subjectId'], `no subject has the id "${predict.subjectId}"`);
  });
};

/** Parts show scans that are there. */
const checkScans = ({ subjects, scans }: Setup): void =>
  subjects.forEach(({ parts }, s) => {
    parts.forEach((part, p) => {
      if (part.kind === 'scan' && !scans.some(({ id }) => id === part.scanId))
        fail(['subjects', s, 'parts', p, 'scanId'], `no scan has the id "${part.scanId}"`);
    });
  });

/** Longest side that a scan may have at its part's scale. */
const maxScanMetres = 5000;

/** No scan is made too large by its part. */
const checkScanSizes = ({ subjects, scans }: Setup): void => {
  // most setups have none, and this is asked at every edit
  if (scans.length === 0) return;
  subjects.forEach(({ parts }, s) => {
    parts.forEach((part, p) => {
      if (part.kind !== 'scan') return;
      const { sizeMetres } = scans.find(({ id }) => id === part.scanId) as Scan;
      const metres = Math.max(...sizeMetres) * part.scale;
      if (metres > maxScanMetres)
        fail(
          ['subjects', s, 'parts', p, 'scale'],
          `would make the scan ${Math.ceil(metres)} m long; at most ${maxScanMetres} m are taken`,
        );
    });
  });
};

/** Most parts that a setup may have in all. */
const maxParts = 5000;

/** Checks that a setup is not too large: parts in all, triangles in all, scans at their scale. Throws `SetupError`. */
export const checkDetail = (setup: Setup): void => {
  const parts = setup.subjects.reduce((sum, subject) => sum + subject.parts.length, 0);
  if (parts > maxParts) fail(['subjects'], `has ${parts} parts in all; at most ${maxParts} are taken`);
  checkScanSizes(setup);
  const { subjects, relief } = trianglesOfSetup(setup);
  if (subjects + relief <= maxTriangles) return;
  const needed = `would need ${((subjects + relief) / 1e6).toFixed(1)} million triangles; at most ${maxTriangles / 1e6} million are drawn`;
  if (relief > subjects) fail(['ground', 'relief'], `${needed}. Strew fewer things`);
  fail(['subjects'], `${needed}. Use fewer round, dimpled or many-sided parts`);
};

/** Checks what the field schema can't: size in all, unique ids, references that lead somewhere, times in order. Throws `SetupError`. */
export const checkReferences = (setup: Setup): void => {
  requireUnique(['subjects'], setup.subjects);
  requireUnique(['hazards'], setup.hazards);
  requireUnique(['lamps'], setup.lamps);
  requireUnique(['schemes'], setup.schemes);
  requireUnique(['measuredBeams'], setup.measuredBeams);
  requireUnique(['scans'], setup.scans);
  requireUnique(['nights'], setup.nights);
  checkScans(setup);
  setup.lamps.forEach((lamp, l) => {
    checkLamp(['lamps', l], lamp, setup);
  });
  checkDetail(setup);
  checkLesson(setup);
  setup.schemes.forEach((scheme, s) => {
    checkScheme(['schemes', s], scheme, setup);
  });
};
