import type { GroundPoint } from '../geometry/hull.ts';

/** Where a lamp is, counted from the mark. */
export interface CardStand {
  /** [east, north]. */
  readonly place: GroundPoint;
  /** "2:30": the camera at six. */
  readonly clock: string;
  /** Round the mark from the camera, -180 to 180; positive to the right as the camera sees it. */
  readonly roundDegrees: number;
  readonly distanceMetres: number;
  readonly paces: number;
  readonly heightMetres: number;
  /** "ground", "shin", "knee", "hip", "chest", "overhead", "on a pole", "high up". */
  readonly heightWord: string;
  /** What the lamp is aimed at there, [east, north], and how much higher that is than the lamp. */
  readonly aim: GroundPoint;
  readonly riseMetres: number;
}

/** One pass: a numbered row. */
export interface CardRow {
  readonly number: number;
  readonly frameId: string;
  readonly passId: string;
  readonly name: string;
  readonly lampName: string;
  /** From 1, in the order of the scheme. */
  readonly frameNumber: number;
  readonly isHeld: boolean;
  readonly start: CardStand;
  /** Where a moving pass ends its first stroke; null where the lamp stays. */
  readonly end: CardStand | null;
  /** Ground ways of the lamp through its waypoints, start and end included, [east, north]; one place where it stays. */
  readonly way: readonly GroundPoint[];
  /** "Lone tree, high right", "ground". */
  readonly aimWord: string;
  readonly levelPercent: number;
  /** As far as its lamp can be dimmed. */
  readonly lowestLevelPercent: number;
  /** Gels, cloth and snoot; "none". */
  readonly gelWord: string;
  /** Lamp on, from the shutter's opening. */
  readonly onSeconds: number;
  readonly countSeconds: number;
  /** A lamp on a stand that shines as long as the shutter is open: nobody counts. */
  readonly staysOn: boolean;
  readonly strokes: number;
  /**
   * On foot from the row before that is held, or from the camera where a frame is set by hand in between; null for the first,
   * for stands, and where no way was found.
   */
  readonly walkSeconds: number | null;
  readonly isWalkFromCamera: boolean;
  readonly slackSeconds: number | null;
  /** How long the lens sees whoever holds the lamp; 0 for stands. */
  readonly seenSeconds: number;
}
