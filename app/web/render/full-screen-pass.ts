import {
  BufferGeometry,
  Float32BufferAttribute,
  GLSL3,
  type IUniform,
  Mesh,
  NoBlending,
  OrthographicCamera,
  RawShaderMaterial,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';

const vertexShader = /* glsl */ `
in vec3 position;
void main() { gl_Position = vec4(position.xy, 0.0, 1.0); }
`;

const triangle = new BufferGeometry();
triangle.setAttribute('position', new Float32BufferAttribute([-1, -1, 0, 3, -1, 0, -1, 3, 0], 3));
const camera = new OrthographicCamera();

export type Uniforms = Record<string, IUniform>;

/** A fragment shader run over every texel of a target, or over a band of its rows. */
export class FullScreenPass<U extends Uniforms> {
  readonly uniforms: U;
  private readonly mesh: Mesh<BufferGeometry, RawShaderMaterial>;

  constructor(fragmentShader: string, uniforms: U, defines: Record<string, number> = {}) {
    this.uniforms = uniforms;
    const material = new RawShaderMaterial({
      glslVersion: GLSL3,
      vertexShader,
      fragmentShader,
      uniforms,
      defines,
      depthTest: false,
      depthWrite: false,
      blending: NoBlending,
    });
    this.mesh = new Mesh(triangle, material);
    this.mesh.frustumCulled = false;
  }

  /** Compiles again when a define changes. */
  define(name: string, value: number): void {
    const { material } = this.mesh;
    if (material.defines[name] === value) return;
    material.defines[name] = value;
    material.needsUpdate = true;
  }

  /** Draws rows [from, to) of a target, all when left out; null draws to the screen's present viewport. */
  draw(gl: WebGLRenderer, target: WebGLRenderTarget | null, from = 0, to = Number.POSITIVE_INFINITY): void {
    const before = gl.getRenderTarget();
    const autoClear = gl.autoClear;
    gl.autoClear = false;
    if (target) {
      target.scissorTest = true;
      target.scissor.set(0, from, target.width, Math.min(to, target.height) - from);
    }
    gl.setRenderTarget(target);
    gl.render(this.mesh, camera);
    gl.setRenderTarget(before);
    gl.autoClear = autoClear;
  }

  dispose(): void {
    this.mesh.material.dispose();
  }
}
