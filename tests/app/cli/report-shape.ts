import { z } from 'zod';

const caution = z.strictObject({
  code: z.string(),
  severity: z.enum(['note', 'warning', 'danger']),
  passId: z.string().optional(),
  // more than the list asks for: pass ids repeat from frame to frame
  frameId: z.string().optional(),
  message: z.string(),
  value: z.number().optional(),
  limit: z.number().optional(),
});
const raking = { grazingDegrees: z.number(), shadowLengthPerHeight: z.number().nullable() };
const stops = z.number().nullable();
const hider = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('subject'), subjectId: z.string() }),
  z.strictObject({ kind: z.enum(['ground', 'holder']) }),
]);
const angle = z.number().min(0).max(180).nullable();
const reading = z.strictObject({
  passId: z.string(),
  lampId: z.string(),
  offAxisDegrees: z.number().min(0).max(180),
  clock: z.string().regex(/^(?:[1-9]|1[0-2]):[0-5]\d$/),
  elevationDegrees: z.number().min(-90).max(90),
  distanceMetres: z.number().positive(),
  lampHeightMetres: z.number(),
  target: z
    .strictObject({
      illuminanceLux: z.number().min(0),
      doseLuxSeconds: z.number().min(0),
      luminanceCdM2: z.number().min(0),
      stops: z.number().nullable(),
      brightest: z.strictObject({ channel: z.enum(['red', 'green', 'blue']), stops: z.number() }).nullable(),
    })
    .nullable(),
  shadows: z.array(
    z.strictObject({
      subjectId: z.string(),
      bearingDegrees: z.number().min(0).max(360),
      lengthMetres: z.number().nullable(),
      endless: z.boolean(),
      tip: z.tuple([z.number(), z.number()]).nullable(),
      inFrameShare: z.number().min(0).max(1).nullable(),
    }),
  ),
  // more than the list asks for: what the lens sees of whoever holds the lamp; null on a stand
  person: z
    .strictObject({
      visibleSeconds: z.number().min(0),
      exposureShare: z.number().min(0).max(1),
      stillShare: z.number().min(0).max(1),
      frameShare: z.number().min(0).max(1),
      atLensSeconds: z.number().min(0),
      hidesId: z.string().nullable(),
      hiddenShare: z.number().min(0).max(1),
      lampSeconds: z.number().min(0),
      bodyStops: z.number().nullable(),
      backgroundStops: z.number().nullable(),
    })
    .nullable(),
  timing: z.strictObject({
    visibleSeconds: z.number().min(0),
    walkSeconds: z.number().min(0).nullable(),
    isFromCamera: z.boolean(),
    slackSeconds: z.number().nullable(),
    roundHazards: z.array(z.string()),
  }),
  // the third question of the trade: will the lamp show?
  lens: z.strictObject({ seenShare: z.number(), shines: z.boolean(), hiddenBy: hider.nullable() }),
  rim: z.strictObject({
    subjectId: z.string().nullable(),
    litShare: z.number().min(0).max(1).nullable(),
    rimToFaceStops: z.number().nullable(),
  }),
  // `target` is more than the list of names asks for: the same two numbers for the surface at the aim
  relief: z.strictObject({
    ...raking,
    target: z.strictObject(raking).nullable(),
    patch: z.strictObject({ rmsContrast: z.number().min(0), shadowedShare: z.number().min(0).max(1) }).nullable(),
  }),
  evennessStops: stops,
  fallOffStops: stops,
  faceLitShare: z.number().min(0).max(1).nullable(),
  bestDoseLuxSeconds: z.number().min(0).nullable(),
  agreement: z.strictObject({ moonDegrees: angle, glowDegrees: angle }),
  overMoonStops: stops,
  count: z.strictObject({
    seconds: z.number().positive().nullable(),
    spoken: z.int().positive().nullable(),
    spokenStops: z.number().nullable(),
    reachable: z.boolean(),
    missStops: z.number().nullable(),
    wantedStops: z.number(),
    advice: z.array(z.string().min(10)),
  }),
  beam: z.strictObject({
    lumens: z.number().min(0),
    peakCandela: z.number().min(0),
    beamDegrees: z.number().min(0).max(170).nullable(),
    patchMetres: z.number().min(0).nullable(),
  }),
  colour: z.strictObject({
    cctKelvin: z.number().positive().nullable(),
    linearSrgb: z.array(z.number().min(0)).length(3),
  }),
  paint: z
    .strictObject({
      areaSquareMetres: z.number().positive(),
      lumensOnSubject: z.number().positive(),
      budgetLumenSeconds: z.number().positive(),
      seconds: z.number().positive(),
    })
    .nullable(),
});
const metres = z.number().positive();
const depth = z.strictObject({
  nearMetres: metres,
  farMetres: metres.nullable(),
  hyperfocalMetres: metres,
  circleOfConfusionMm: z.number().positive(),
  nearestMetres: metres.nullable(),
  farthestMetres: metres.nullable(),
  isSharpThroughout: z.boolean(),
  steps: z.array(z.strictObject({ focusMetres: metres.nullable(), nearMetres: metres, farMetres: metres.nullable() })),
  complete: z.boolean(),
});
const declination = z.number().min(-90).max(90);
const trail = z.strictObject({ declinationDegrees: declination, trailPixels: z.number().positive() });
const stars = z.strictObject({
  declinationDegrees: declination,
  trailPixels: z.number().positive(),
  seen: z.strictObject({ middle: trail, longest: trail }).nullable(),
  rules: z.array(
    z.strictObject({ name: z.string(), formula: z.string(), seconds: z.number().positive(), trailPixels: z.number() }),
  ),
});
const share = z.number().min(0).max(1);
const bearing = z.number().min(0).max(360);
const body = { altitudeDegrees: z.number().min(-90).max(90), bearingDegrees: bearing };
const sky = z.strictObject({
  sun: z.strictObject({
    ...body,
    light: z.enum(['day', 'civil twilight', 'nautical twilight', 'astronomical twilight', 'dark']),
  }),
  moon: z.strictObject({ ...body, isUp: z.boolean(), litShare: share }),
  zenithMagnitude: z.number(),
  core: z.strictObject({
    ...body,
    isInFrame: z.boolean(),
    inPictureShare: share,
    hiddenShare: share.nullable(),
    hiddenBy: hider.nullable(),
  }),
});
const moon = z.strictObject({
  ...body,
  sceneBearingDegrees: bearing,
  shadowBearingDegrees: bearing,
  shadowSceneBearingDegrees: bearing,
  shadowLengthPerHeight: z.number().min(0),
  levelLux: z.number().min(0),
  isInFrame: z.boolean(),
});
const outline = z.strictObject({
  subjectId: z.string(),
  skyShare: share,
  skyStops: stops,
  unlitStops: stops,
  litStops: stops,
  skyOverUnlitStops: stops,
  skyOverLitStops: stops,
});
const passKey = z.strictObject({ frameId: z.string(), passId: z.string() });

/** What `lampfall readings --json` prints: the agreed names and no others. */
export const reportShape = z.strictObject({
  setup: z.string(),
  schemes: z.array(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      // `cautions` of a frame are more than the list asks for too
      frames: z.array(
        z.strictObject({
          id: z.string(),
          order: z.strictObject({
            number: z.int().positive(),
            startSeconds: z.number().min(0),
            endSeconds: z.number().positive(),
          }),
          passes: z.array(reading),
          depth: depth.nullable(),
          stars,
          unlitStops: stops,
          outlines: z.array(outline),
          clipped: z.strictObject({ red: share, green: share, blue: share }),
          targetStops: stops,
          keyToFillStops: stops,
          keyPassId: z.string().nullable(),
          fillPassId: z.string().nullable(),
          patch: z.strictObject({ rmsContrast: z.number().min(0) }).nullable(),
          cautions: z.array(caution),
        }),
      ),
      // moon and sky of the hour: more than the list asks for
      moon: moon.nullable(),
      sky: sky.nullable(),
      // the ways on foot, for plans: more than the list asks for
      walks: z.array(
        z.strictObject({
          from: passKey.nullable(),
          to: passKey.nullable(),
          metres: z.number().min(0),
          seconds: z.number().min(0),
          availableSeconds: z.number().nullable(),
          points: z.array(z.tuple([z.number(), z.number()])).min(2),
          hazardIds: z.array(z.string()),
          roundHazardIds: z.array(z.string()),
        }),
      ),
      cautions: z.array(caution),
    }),
  ),
});
