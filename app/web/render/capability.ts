interface Card {
  /** Whether there is WebGL2 at all, as the walkaround needs it. */
  readonly isThere: boolean;
  /** Whether it draws into textures of floating-point numbers, as pictures need it. */
  readonly hasFloats: boolean;
}

const ask = (): Card => {
  const context = document.createElement('canvas').getContext('webgl2');
  if (!context) return { isThere: false, hasFloats: false };
  const hasFloats = context.getExtension('EXT_color_buffer_float') !== null;
  context.getExtension('WEBGL_lose_context')?.loseContext();
  return { isThere: true, hasFloats };
};

let answer: Card | null = null;

/** What this browser’s graphics can do. Asked once, on a canvas of its own. */
export const graphicsCard = (): Card => {
  answer ??= ask();
  return answer;
};
