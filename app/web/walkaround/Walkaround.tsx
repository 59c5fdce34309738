import { OrbitControls } from '@react-three/drei';
import { Canvas } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { useScheme, useSetup } from '../state/app-store.ts';
import { CameraFigure } from './CameraFigure.tsx';
import { LampFigure } from './LampFigure.tsx';
import { stageGeometry } from './stage-geometry.ts';

/** From where the walkaround starts: behind the camera, to the right and above. */
const startPlace = (camera: Vec3, aim: Vec3): Vec3 => {
  const [x, , z] = scale(sub(camera, aim), 1.9);
  return [aim[0] + x * 0.85 + z * 0.5, aim[1] + 7, aim[2] + z * 0.85 - x * 0.5];
};

/** The set-up in plain daylight from any side: what stands where. Not lit by the lamps: that is what the viewfinder is for. */
const Walkaround = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const world = useMemo(() => buildWorld(setup, scheme), [setup, scheme]);
  const geometry = useMemo(() => stageGeometry(world.stage), [world.stage]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  const [east, north, up] = (scheme.camera ?? setup.camera).aim;
  const aim: Vec3 = [east, up, -north];
  const passes = scheme.frames.flatMap((frame) => frame.passes.map((pass) => ({ frame, pass })));
  return (
    <section className="walkaround" aria-label="Walkaround: drag to turn, wheel or pinch to come closer">
      <Canvas
        frameloop="demand"
        dpr={[1, 1.5]}
        camera={{ position: [...startPlace(world.view.position, aim)], fov: 45, far: 400 }}
      >
        <color attach="background" args={['#16181b']} />
        <fog attach="fog" args={['#16181b', 20, 120]} />
        <hemisphereLight args={['#d8d2c4', '#33373c', 1.1]} />
        <directionalLight position={[4, 10, 6]} intensity={0.9} />
        <mesh geometry={geometry}>
          <meshLambertMaterial vertexColors />
        </mesh>
        <CameraFigure view={world.view} />
        {passes.map(({ frame, pass }) => {
          const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
          return (
            lamp && (
              <LampFigure
                key={`${frame.id}/${pass.id}`}
                frame={frame}
                pass={pass}
                lamp={lamp}
                measuredBeams={setup.measuredBeams}
              />
            )
          );
        })}
        <OrbitControls makeDefault target={[...aim]} maxPolarAngle={Math.PI / 2 - 0.02} enableDamping={false} />
      </Canvas>
    </section>
  );
};

export default Walkaround;
