/** What is marked over a picture, or shown in its place. */
export interface Marks {
  /** Where a channel is full. */
  readonly full: boolean;
  /** The picture as a map of stops from mid-grey. */
  readonly levels: boolean;
  /** Outlines of the shadows that each lamp throws. */
  readonly shadows: boolean;
  /** Where the subjects' outlines are lit. */
  readonly outline: boolean;
  /** Lines of equal blur, in pixels of the sensor. */
  readonly sharpness: boolean;
  /** Lines at the thirds of the picture. */
  readonly thirds: boolean;
  /** The horizon of level ground. */
  readonly horizon: boolean;
}

/** Nothing is marked. */
export const noMarks: Marks = {
  full: false,
  levels: false,
  shadows: false,
  outline: false,
  sharpness: false,
  thirds: false,
  horizon: false,
};
