import type { KeyboardEvent } from 'react';
import { useApp } from '../state/app-store.ts';
import { cameraSteps, setCameraHeight, turnCamera, walkCamera } from '../state/edits/camera-placing.ts';
import { cameraOf } from '../state/edits/place-edits.ts';

const { walkMetres, turnDegrees, liftMetres } = cameraSteps;

const walks: Readonly<Record<string, readonly [ahead: number, right: number]>> = {
  w: [1, 0],
  s: [-1, 0],
  a: [0, -1],
  d: [0, 1],
};
const turns: Readonly<Record<string, readonly [pan: number, tilt: number]>> = {
  arrowleft: [-1, 0],
  arrowright: [1, 0],
  arrowup: [0, 1],
  arrowdown: [0, -1],
};
const lifts: Readonly<Record<string, number>> = { pageup: 1, pagedown: -1 };

/** Keys on the picture walk, turn and lift the camera; with Shift five times as far. */
export const useCameraKeys = (schemeId: string) => (event: KeyboardEvent<HTMLElement>) => {
  if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) return;
  const key = event.key.toLowerCase();
  const times = event.shiftKey ? 5 : 1;
  const { edit } = useApp.getState();
  const [walk, turn, lift] = [walks[key], turns[key], lifts[key]];
  if (walk)
    edit((s) => walkCamera(s, schemeId, walk[0] * walkMetres * times, walk[1] * walkMetres * times), 'walk camera');
  else if (turn)
    edit((s) => turnCamera(s, schemeId, turn[0] * turnDegrees * times, turn[1] * turnDegrees * times), 'turn camera');
  else if (lift)
    edit((s) => {
      const metres = cameraOf(s, schemeId).position[2] + lift * liftMetres * times;
      return setCameraHeight(s, schemeId, Math.max(Number(metres.toFixed(3)), 0.02));
    }, 'lift camera');
  else return;
  event.preventDefault();
};
