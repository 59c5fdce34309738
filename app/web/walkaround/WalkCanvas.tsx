import { type CameraProps, createRoot, events, extend, type ReconcilerRoot } from '@react-three/fiber';
import { Component, type ReactNode, useInsertionEffect, useLayoutEffect, useRef, useState } from 'react';
import {
  BoxGeometry,
  Color,
  DirectionalLight,
  Fog,
  Group,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  SphereGeometry,
} from 'three';

// what the walkaround's own elements are made of: the library's canvas takes all of three, which the first picture would load
extend({
  BoxGeometry,
  Color,
  DirectionalLight,
  Fog,
  Group,
  HemisphereLight,
  Mesh,
  MeshBasicMaterial,
  MeshLambertMaterial,
  SphereGeometry,
});

/** Hands a fault in the scene to the page around it, which has a screen for it. */
class Guard extends Component<{ readonly onFault: (fault: unknown) => void; readonly children: ReactNode }> {
  override state = { isBroken: false };

  static getDerivedStateFromError(): { isBroken: boolean } {
    return { isBroken: true };
  }

  override componentDidCatch(fault: unknown): void {
    this.props.onFault(fault);
  }

  override render(): ReactNode {
    return this.state.isBroken ? null : this.props.children;
  }
}

/** A canvas that fills its box and shows a scene; it draws when something in it changes. */
export const WalkCanvas = ({ camera, children }: { camera: CameraProps; children: ReactNode }) => {
  const box = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const root = useRef<ReconcilerRoot<HTMLCanvasElement> | null>(null);
  const [size, setSize] = useState({ width: 0, height: 0, top: 0, left: 0 });
  const [fault, setFault] = useState<{ readonly reason: unknown } | null>(null);
  if (fault) throw fault.reason;
  const onFault = (reason: unknown) => setFault({ reason });
  useLayoutEffect(() => {
    const element = box.current as HTMLDivElement;
    const measure = () => setSize({ width: element.clientWidth, height: element.clientHeight, top: 0, left: 0 });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  useInsertionEffect(
    () => () => {
      root.current?.unmount();
      root.current = null;
    },
    [],
  );
  useLayoutEffect(() => {
    if (!size.width || !size.height || !canvas.current) return;
    root.current ??= createRoot(canvas.current);
    root.current.configure({ camera, events, frameloop: 'demand', dpr: [1, 1.5], size }).catch(onFault);
    root.current.render(<Guard onFault={onFault}>{children}</Guard>);
  });
  return (
    <div ref={box} className="walk-canvas">
      <canvas ref={canvas} />
    </div>
  );
};
