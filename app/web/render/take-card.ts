import { WebGLRenderer } from 'three';

interface Card {
  /** It is lost for now. */
  readonly onLost: () => void;
  readonly onBack: () => void;
}

/** Takes the graphics card for one canvas that is not on the page; null where this browser gives no context after all. */
export const takeCard = ({ onLost, onBack }: Card): WebGLRenderer | null => {
  let gl: WebGLRenderer;
  try {
    gl = new WebGLRenderer({ antialias: false, alpha: false, powerPreference: 'high-performance' });
  } catch {
    return null;
  }
  gl.setPixelRatio(1);
  gl.domElement.addEventListener('webglcontextlost', (event) => {
    event.preventDefault();
    onLost();
  });
  gl.domElement.addEventListener('webglcontextrestored', onBack);
  return gl;
};
