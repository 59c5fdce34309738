import type { BurntPart } from '../readings/burnt-part.ts';
import type { ClippedReading } from '../readings/clipped-reading.ts';
import type { DepthReading } from '../readings/depth-reading.ts';
import type { OutlineReading } from '../readings/outline-reading.ts';
import type { PassReading } from '../readings/pass-reading.ts';
import type { SkyLook } from '../readings/sky-reading.ts';
import type { SmallPicture } from '../readings/small-picture.ts';
import type { StarReading } from '../readings/star-reading.ts';
import type { Walk } from '../readings/timing-reading.ts';
import type { WalkLine } from '../readings/walk-lines.ts';
import type { Frame, Lamp, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import type { World, WorldFrame } from '../world/world.ts';
import type { LampLight } from './lamp-light.ts';

export type Severity = 'note' | 'warning' | 'danger';

/** A rule that the setup breaks, in plain words with the number and what to do. */
export interface Caution {
  readonly code: string;
  readonly severity: Severity;
  readonly passId?: string;
  /** Frame of the pass: pass ids repeat from frame to frame. */
  readonly frameId?: string;
  readonly message: string;
  readonly value?: number;
  readonly limit?: number;
  /** It is so only with the frame’s other passes. */
  readonly isTogether?: true;
}

/** What a rule about one pass may look at. */
export interface PassCase {
  readonly world: World;
  readonly frame: Frame;
  readonly worldFrame: WorldFrame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly light: LampLight;
  readonly reading: PassReading;
  /** From the pass before; null for the first, for stands, where no way was found, and for a pass looked at alone. */
  readonly walk: Walk | null;
}

/** A rule about one pass: a caution, or null when all is well. */
export type PassRule = (passCase: PassCase) => Caution | null;

/** A pass with what its own rules found. */
export interface ReadPass extends PassCase {
  readonly cautions: readonly Caution[];
}

/** What a rule about a scheme may look at of one frame. */
export interface FrameCase {
  readonly frame: Frame;
  readonly worldFrame: WorldFrame;
  readonly passes: readonly ReadPass[];
  readonly depth: DepthReading | null;
  readonly stars: StarReading;
  /** The subjects that the scheme is about, before the sky. */
  readonly outlines: readonly OutlineReading[];
  readonly clipped: ClippedReading;
  /** null where no channel is full. */
  readonly burnt: BurntPart | null;
  readonly picture: SmallPicture;
}

/** What a rule about a scheme may look at. */
export interface SchemeCase {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly world: World;
  readonly frames: readonly FrameCase[];
  /** The ways on foot of whoever does it alone. */
  readonly walks: readonly WalkLine[];
  /** null where the sky is plain. */
  readonly sky: SkyLook | null;
}

/** A rule that looks across frames and passes, so that what holds for many is said once. Each caution names its frame. */
export type SchemeRule = (schemeCase: SchemeCase) => readonly (Caution & { readonly frameId: string })[];
