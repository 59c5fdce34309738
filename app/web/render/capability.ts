const ask = (): boolean => {
  const context = document.createElement('canvas').getContext('webgl2');
  if (!context) return false;
  const able = context.getExtension('EXT_color_buffer_float') !== null;
  context.getExtension('WEBGL_lose_context')?.loseContext();
  return able;
};

let answer: boolean | null = null;

/** Whether this browser can draw the picture: WebGL2 with float targets. Asked once, on a canvas of its own. */
export const canDrawPicture = (): boolean => {
  answer ??= ask();
  return answer;
};
