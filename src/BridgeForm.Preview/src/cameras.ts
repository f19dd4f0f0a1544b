import { Vector3, type Box3, type OrthographicCamera, type PerspectiveCamera } from 'three';
import type { BridgeView, Triple } from './view';

/** The box the bridge fills, in world axes. */
export interface Extent { low: Vector3; high: Vector3 }

export function extentOf(view: BridgeView): Extent {
  const ys = view.frames.map((f) => f.y);
  const deck = Math.max(0, ...view.frames.map((f) => f.deck));
  const half = view.deckHalf + 0.25;
  return {
    low: new Vector3(-0.7, Math.min(...ys) - 0.15, -half),
    high: new Vector3(view.span + 0.7, Math.max(...ys) + deck + view.guard + 0.15, half),
  };
}

export const middleOf = (e: Extent): Vector3 => e.low.clone().add(e.high).multiplyScalar(0.5);

/** The eight corners of a box. */
export function cornersOf({ min, max }: Box3): Vector3[] {
  return corners({ low: min, high: max });
}

function corners(e: Extent): Vector3[] {
  return [0, 1, 2, 3, 4, 5, 6, 7].map((k) => new Vector3(
    (k & 1) === 0 ? e.low.x : e.high.x, (k & 2) === 0 ? e.low.y : e.high.y, (k & 4) === 0 ? e.low.z : e.high.z));
}

/** A place from which the whole box is seen against the direction `from`; the frustum's centre stays on the box's middle. */
export function standBack(camera: PerspectiveCamera, extent: Extent, from: Triple, margin: number): Vector3 {
  const back = new Vector3(...from).normalize();
  const up = Math.abs(back.y) > 0.99 ? new Vector3(0, 0, -1) : new Vector3(0, 1, 0);
  const right = up.clone().cross(back).normalize();
  const above = back.clone().cross(right);
  const tall = Math.tan(camera.fov * Math.PI / 360) / margin;
  const wide = tall * camera.aspect;
  const middle = middleOf(extent);
  const distance = Math.max(0.5, ...corners(extent).map((c) => {
    const v = c.sub(middle);
    return Math.max(Math.abs(v.dot(right)) / wide, Math.abs(v.dot(above)) / tall) + v.dot(back);
  }));
  return middle.addScaledVector(back, distance);
}

/** Looks square on a box: along -z (`side`) or along +x (`along`), so that it fills a pane of that aspect. */
export function lookSquare(camera: OrthographicCamera, extent: Extent, along: 'side' | 'along', aspect: number, room: { left: number; right: number; top: number; bottom: number }): void {
  const size = extent.high.clone().sub(extent.low);
  const wide = along === 'side' ? size.x : size.z;
  const scale = Math.max(wide / (1 - room.left - room.right) / aspect, size.y / (1 - room.top - room.bottom));
  const [w, h] = [scale * aspect, scale];
  const middle = middleOf(extent);
  const shiftX = (room.right - room.left) * w / 2;
  const shiftY = (room.top - room.bottom) * h / 2;
  Object.assign(camera, { left: -w / 2 + shiftX, right: w / 2 + shiftX, bottom: -h / 2 + shiftY, top: h / 2 + shiftY });
  camera.position.copy(middle).add(along === 'side' ? new Vector3(0, 0, 200) : new Vector3(-200, 0, 0));
  camera.up.set(0, 1, 0);
  camera.lookAt(middle);
  camera.updateProjectionMatrix();
  camera.updateMatrixWorld();
}

/** Where the views stand; a narrow picture looks more along the bridge, so that the bridge stays large. */
export function direction(view: 'corner' | 'side' | 'above' | 'along', aspect: number): Triple {
  switch (view) {
    // Hardly above the eyes of somebody on the bank: one sees the bridge and what is behind it, not the ground.
    case 'corner': return aspect > 1.05 ? [-0.6, 0.13, 0.76] : [-0.86, 0.2, 0.46];
    case 'side': return [0, 0.06, 1];
    case 'above': return aspect > 1 ? [0, 1, 0.0001] : [-0.0001, 1, 0];
    case 'along': return [-1, 0.16, 0.02];
  }
}
