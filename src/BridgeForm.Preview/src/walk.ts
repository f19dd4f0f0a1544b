import { Vector3 } from 'three';
import type { Shown } from './bridge';
import type { Stage } from './stage';

/** Eyes of a grown-up above the deck, metres. Common practice, no source. */
const EYES = 1.6;
const STEP = 0.45;
const TURN = 0.14;

/** Someone standing on the bridge. */
export interface Walk {
  /** Back to A's end, looking towards B. */
  start: () => void;
  step: (forward: number, turn: number) => void;
  look: (yaw: number, pitch: number) => void;
  /** Where one stands, as a share of the span. */
  share: () => number;
}

export function buildWalk(stage: Stage, shown: Shown): Walk {
  const { view } = shown;
  let [x, yaw, pitch] = [0, 0, 0];
  const place = (): void => {
    const foot = shown.deckAt(x);
    stage.eye.fov = stage.eye.aspect < 0.9 ? 66 : 56;
    stage.eye.position.set(x, foot.y + EYES, 0);
    stage.eye.up.set(0, 1, 0);
    stage.eye.lookAt(new Vector3(x + Math.cos(yaw) * Math.cos(pitch), foot.y + EYES + Math.sin(pitch), Math.sin(yaw) * Math.cos(pitch)));
    stage.eye.updateProjectionMatrix();
    stage.refresh();
  };
  return {
    start: () => {
      [x, yaw, pitch] = [Math.min(0.6, view.span / 8), 0, -0.13];
      place();
    },
    step: (forward, turn) => {
      yaw += turn * TURN;
      const toB = Math.cos(yaw) >= 0 ? 1 : -1;
      x = Math.min(view.span + 1.2, Math.max(-1.2, x + forward * toB * STEP));
      place();
    },
    look: (byYaw, byPitch) => {
      yaw += byYaw;
      pitch = Math.min(1.3, Math.max(-1.3, pitch + byPitch));
      place();
    },
    share: () => x / view.span,
  };
}
