import type { ReportRequest } from './report-messages.ts';

/** A question about the marks over one scheme's picture: `schemeIds` holds that scheme alone. */
export interface MarksRequest extends ReportRequest {
  /** The frames whose lamps are marked, and whose sharpness. */
  readonly frameIds: readonly string[];
  readonly wants: { readonly shadows: boolean; readonly outline: boolean; readonly sharpness: boolean };
}

/** Points of a line as x, y, x, y … in shares of the picture: 0 = left and top edge, 1 = right and bottom edge. */
export type Line = readonly number[];

/** Which pass a mark belongs to. */
export interface MarkedPass {
  readonly frameId: string;
  readonly passId: string;
}

/** The shadows that a pass casts, as the camera sees them. */
export interface PassShadows extends MarkedPass {
  /** Closed lines, the first point repeated at the end; one inside another is a hole. */
  readonly rings: readonly Line[];
  /** Deep inside the largest of them, where its name can stand; null without shadows. */
  readonly middle: readonly [x: number, y: number] | null;
}

/** A piece of a subject's outline and the passes that light it; none where it is dark. */
export interface OutlineRun {
  readonly points: Line;
  readonly litBy: readonly MarkedPass[];
}

export interface SubjectOutline {
  readonly subjectId: string;
  readonly runs: readonly OutlineRun[];
}

/** Where the blur of the sharpest frame shown is so many pixels of the sensor. */
export interface BlurLines {
  readonly pixels: number;
  readonly lines: readonly Line[];
  /** Where its number can stand, on the longest of them. */
  readonly labels: readonly (readonly [x: number, y: number])[];
}

/** Marks over one scheme's picture; a kind that was not asked for is empty. */
export interface SchemeMarks {
  readonly shadows: readonly PassShadows[];
  readonly outlines: readonly SubjectOutline[];
  readonly blurs: readonly BlurLines[];
}

export interface MarksAnswer {
  readonly id: number;
  readonly schemeId: string;
  readonly marks: SchemeMarks;
}
