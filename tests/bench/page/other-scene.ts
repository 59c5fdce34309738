import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DataTexture,
  DoubleSide,
  FloatType,
  type Light,
  Matrix4,
  Mesh,
  MeshPhysicalMaterial,
  PerspectiveCamera,
  RectAreaLight,
  RedFormat,
  Scene,
  Vector3,
} from 'three';
import { PhysicalSpotLight } from 'three-gpu-pathtracer';
import { add, scale } from '../../../core/geometry/vec.ts';
import { intensityPerLumen } from '../../../core/photometry/beam.ts';
import { type Emitter, emitterArea, type Pose } from '../../../core/photometry/emitter.ts';
import { poseAt } from '../../../core/world/world.ts';
import type { LitScene } from './lit-pebbles.ts';

/** A torch is their spot light with our beam as its profile: 180 degrees in 360 steps, candela per lumen. */
const profileOf = ({ beam }: Emitter): DataTexture => {
  const data = Float32Array.from({ length: 360 }, (_, i) =>
    intensityPerLumen(beam, Math.cos(((i + 0.5) / 360) * Math.PI)),
  );
  const texture = new DataTexture(data, 360, 1, RedFormat, FloatType);
  texture.needsUpdate = true;
  return texture;
};

/** A flat light that shines with a luminance per lumen. */
const flat = (luminance: number, width: number, height: number): RectAreaLight =>
  new RectAreaLight(0xffffff, luminance, width, height);

/**
 * A lamp of one lumen as they have it. They know no tubes: ours becomes a flat strip as wide as the tube, as bright seen
 * square on, which spares them the half of a tube that shines away.
 */
const lightOf = (emitter: Emitter): Light => {
  const { shape, halfWidthMetres: w, halfHeightMetres: h } = emitter;
  if (shape === 'disc') {
    const light = new PhysicalSpotLight(0xffffff, 1, 0, 0.4999 * Math.PI, 0, 2);
    light.radius = w;
    Object.assign(light, { iesMap: profileOf(emitter) });
    return light;
  }
  if (shape === 'rectangle') return flat(1 / (Math.PI * emitterArea(emitter)), 2 * w, 2 * h);
  if (shape === 'tube') return flat(1 / (Math.PI ** 2 * 4 * w * h), 2 * w, 2 * h);
  throw new Error(`no light of theirs for a ${shape}`);
};

const placed = (light: Light, { position, axis }: Pose): Light[] => {
  const target = add(position, axis);
  light.position.set(...position);
  light.lookAt(...target);
  if (!(light instanceof PhysicalSpotLight)) return [light];
  light.target.position.set(...target);
  return [light, light.target as unknown as Light];
};

/**
 * The stage’s own triangles, normals and reflectances; matt as near as their material comes to it: their even part is
 * Disney’s, which is Lambert’s at roughness 0 and brighter at grazing angles by at most a per cent here.
 */
const meshesOf = ({ world: { stage } }: LitScene): Mesh[] =>
  stage.finishes.flatMap(({ reflectance }, finish) => {
    const triangles = [...stage.finishOfTriangle.keys()].filter((t) => stage.finishOfTriangle[t] === finish);
    if (triangles.length === 0) return [];
    const pick = (from: Float32Array) => {
      const values = new Float32Array(triangles.length * 9);
      triangles.forEach((t, i) => {
        values.set(from.subarray(t * 9, t * 9 + 9), i * 9);
      });
      return new BufferAttribute(values, 3);
    };
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', pick(stage.tree.corners));
    geometry.setAttribute('normal', pick(stage.normals));
    const material = new MeshPhysicalMaterial({
      color: new Color(...(reflectance as [number, number, number])),
      roughness: 0.3,
      metalness: 0,
      ior: 1,
      specularIntensity: 0,
      side: DoubleSide,
    });
    return [new Mesh(geometry, material)];
  });

export const cameraOf = ({ frame: { view } }: LitScene): PerspectiveCamera => {
  const camera = new PerspectiveCamera(
    (2 * Math.atan(view.tanHalfHeight) * 180) / Math.PI,
    view.tanHalfWidth / view.tanHalfHeight,
    0.01,
    1000,
  );
  camera.position.set(...view.position);
  camera.quaternion.setFromRotationMatrix(
    new Matrix4().makeBasis(
      new Vector3(...view.right),
      new Vector3(...view.up),
      new Vector3(...scale(view.forward, -1)),
    ),
  );
  return camera;
};

export const otherSceneOf = (scene: LitScene): Scene => {
  const made = new Scene();
  made.background = new Color(0);
  const lights = scene.lights.flatMap(({ source }) =>
    source.kind === 'lamp' ? placed(lightOf(source.emitter), poseAt(source, 0.5)) : [],
  );
  made.add(...meshesOf(scene), ...lights);
  return made;
};
