/** The colours that a small plan is drawn in. Lamps bring their own on the screen; on paper they take the ink. */
export interface PlanInks {
  readonly ground: string;
  readonly ink: string;
  readonly quiet: string;
  readonly faint: string;
  readonly body: string;
  readonly bodyEdge: string;
  /** Opacity of the beams. */
  readonly beam: number;
}

/** As `look.css` has them: a canvas cannot read its custom properties. */
const dark: PlanInks = {
  ground: '#16181b',
  ink: '#d8d2c4',
  quiet: '#979186',
  faint: '#6b675f',
  body: '#4a4d50',
  bodyEdge: '#8b8880',
  beam: 0.14,
};

const paper: PlanInks = {
  ground: '#ffffff',
  ink: '#000000',
  quiet: '#4d4d4d',
  faint: '#8c8c8c',
  body: '#d4d4d4',
  bodyEdge: '#000000',
  beam: 0.08,
};

export const planInks = { dark, paper };

export type PlanColouring = keyof typeof planInks;

/** Shares of red, green and blue in what the eye calls bright (ITU-R BT.709), on encoded values: enough to choose an ink. */
const [redShare, greenShare, blueShare] = [0.2126, 0.7152, 0.0722];

/** Black or white for words on a colour "rgb(r g b)" of 0 to 255. */
export const inkOn = (colour: string): string => {
  const [red = 0, green = 0, blue = 0] = (colour.match(/\d+/g) ?? []).map(Number);
  return redShare * red + greenShare * green + blueShare * blue > 115 ? '#0f1012' : '#ffffff';
};
