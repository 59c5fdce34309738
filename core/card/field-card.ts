import type { Severity } from '../cautions/caution.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import type { Setup } from '../setup/schema/setup.ts';
import type { CardRow } from './card-row.ts';

/**
 * The field card of a scheme as data: what one takes along on paper or on a phone. Numbers are in core units (metres,
 * seconds, degrees where the name says so); words are decided here, so that paper, terminal and phone say the same.
 * `card-words.ts` turns the numbers into texts.
 */
export interface FieldCard {
  readonly setupName: string;
  readonly schemeName: string;
  /** Settings of the document that the texts go by. */
  readonly lengths: Setup['card']['lengths'];
  readonly paper: Setup['card']['paper'];
  readonly paceMetres: number;
  /** Who was asked, and what they said, in a line; empty = not noted yet. */
  readonly permission: string;
  readonly sky: CardSky;
  readonly mark: CardMark;
  readonly camera: CardCamera;
  /** What one can't stand in, seen from above: hulls, [east, north], counter-clockwise. */
  readonly solids: readonly (readonly GroundPoint[])[];
  /** The passes in the order in which they are done, numbered from 1. */
  readonly rows: readonly CardRow[];
  /** The shutter openings in order; like ones that follow each other without passes stand together. */
  readonly frames: readonly CardFrame[];
  /** Frames that differ in focus alone; none where no frames form a stack. */
  readonly focusStacks: readonly FocusStackLine[];
  /** What to change when a try came out wrong, in order. */
  readonly stopRules: readonly StopRule[];
  readonly sight: CardSight;
  /** Dangers first, then warnings, then notes. */
  readonly cautions: readonly CardCaution[];
  /** What holds wherever one goes, in order of weight. */
  readonly safety: readonly string[];
}

/** Date, moon and dark hours of the night at the place. Bearings are true. */
export interface CardSky {
  /** As the document has it: 2026-10-09T22:30, clocks of the place. */
  readonly localTime: string;
  readonly timeZone: string;
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
  /** False where the picture is lit by plain moonlight and skylight and not by the sky of this hour. */
  readonly isPictured: boolean;
  /** null where this machine does not know the time zone. */
  readonly night: CardNight | null;
}

/** "22:30" is a clock of the place; null = does not happen in that night. */
export interface CardNight {
  readonly phase: string;
  /** Share of the disc that is lit, 0 to 1. */
  readonly litShare: number;
  /** At the hour of the document; altitude negative below the horizon. */
  readonly moonAltitudeDegrees: number;
  readonly moonBearingDegrees: number;
  readonly moonrise: string | null;
  readonly moonset: string | null;
  /** Sun 18 degrees down or more. */
  readonly dark: readonly ClockSpan[];
  /** The same with the moon down. */
  readonly darkMoonless: readonly ClockSpan[];
}

export interface ClockSpan {
  readonly from: string;
  readonly to: string;
}

/** The one place that clocks and paces of all rows are counted from. */
export interface CardMark {
  /** [east, north] in metres of the document. */
  readonly place: GroundPoint;
  /** What stands there; null where the scheme is about nothing. */
  readonly subjectName: string | null;
}

export interface CardCamera {
  /** [east, north]. */
  readonly place: GroundPoint;
  /** Over what it stands on. */
  readonly heightMetres: number;
  readonly distanceMetres: number;
  readonly paces: number;
  /** What it looks at, [east, north]. */
  readonly aim: GroundPoint;
  /** True bearing that it looks along; null straight up or down. */
  readonly bearingDegrees: number | null;
  readonly focalLengthMm: number;
  /** Between the lens's axis and each side of the picture. */
  readonly halfFieldDegrees: number;
}

/** One shutter opening, or like ones that follow each other. */
export interface CardFrame {
  /** Of the first, from 1. */
  readonly number: number;
  readonly frameId: string;
  readonly name: string;
  readonly purpose: 'sky' | 'land' | 'painted';
  readonly focalLengthMm: number;
  readonly aperture: number;
  /** As marked on the camera. */
  readonly seconds: number;
  readonly iso: number;
  readonly kelvin: number;
  /** null = infinity. */
  readonly focusMetres: number | null;
  /** Sharp from and to; far null = infinity; both null where the focus is nearer than the lens can. */
  readonly sharpFromMetres: number | null;
  readonly sharpToMetres: number | null;
  /** Before the (first) shutter opens. */
  readonly delaySeconds: number;
  /** Between like frames that follow each other; null where there is one. */
  readonly gapSeconds: number | null;
  /** How many like frames. */
  readonly count: number;
  readonly rowNumbers: readonly number[];
}

export interface FocusStackLine {
  readonly frameNumbers: readonly number[];
  /** In the order of the frames; null = infinity. */
  readonly focusMetres: readonly (number | null)[];
}

export interface StopRule {
  readonly fault: string;
  readonly remedy: string;
}

/** Where not to stand, and for how long one may. */
export interface CardSight {
  /** How long one may be at one place of the picture in each frame that has passes, before a ghost shows. */
  readonly stays: readonly { readonly frameNumber: number; readonly seconds: number }[];
  /** Rows in which the lens sees whoever holds the lamp. */
  readonly seenRows: readonly { readonly number: number; readonly seconds: number }[];
  readonly hazardNames: readonly string[];
}

export interface CardCaution {
  /** Of the rule. */
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  /** What is wrong and what to do, in a few words. */
  readonly short: string;
  readonly frameNumber: number | null;
  readonly rowNumber: number | null;
}
