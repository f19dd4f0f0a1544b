import { Matrix4, Vector3, type Camera } from 'three';
import type { Part } from './glb';
import type { Overlay, Pane } from './overlay';
import { cornersOf } from './cameras';
import { spotOf } from './overlay';
import type { BridgeView } from './view';

/** What leaves its frame: wood, or the steel that goes along with it. */
export type Leaving = Pick<Part, 'role' | 'geometry' | 'place'>;

/** The move of a part of the frame that is taken apart, in world axes. */
export function apartMove(view: BridgeView, apart: { frame: number; amount: number }, part: Leaving): Matrix4 {
  const turn = view.frames[apart.frame]?.turn ?? 0;
  const z = middleZ(part);
  const side = Math.abs(z) < 0.05 ? 0 : Math.sign(z);
  const [t, n, out] = view.leaving[part.role] ?? [0, 0, 0];
  const forward = apart.frame < view.bays.length ? 1 : -1;
  const move = new Vector3(forward * t * Math.cos(turn) - n * Math.sin(turn), forward * t * Math.sin(turn) + n * Math.cos(turn), out * side)
    .multiplyScalar(apart.amount);
  return new Matrix4().makeTranslation(move.x, move.y, move.z);
}

/** z of the middle of a part where it stands. */
export function middleZ(part: Leaving): number {
  return middleOfPart(part).applyMatrix4(part.place).z;
}

export function middleOfPart(part: Leaving): Vector3 {
  if (part.geometry.boundingBox === null) {
    part.geometry.computeBoundingBox();
  }

  return part.geometry.boundingBox?.getCenter(new Vector3()) ?? new Vector3();
}

/** `seen`: a line may end at the place; else other parts hide it. */
export interface Callout { text: string[]; at: Vector3; seen: boolean }

/** From where to where parts reach on the picture, pixels. */
export function reachOf(parts: { part: Part; matrix: Matrix4 }[], camera: Camera, pane: Pane): { left: number; right: number } {
  const xs = parts.flatMap(({ part, matrix }) => {
    middleOfPart(part);
    const box = part.geometry.boundingBox;
    return box === null ? [] : cornersOf(box).map((c) => spotOf(c.applyMatrix4(matrix), camera, pane).x);
  });
  return { left: Math.min(...xs), right: Math.max(...xs) };
}

/** One callout a kind of part: its marks and its name, at a place where the foremost part of it that is seen is seen. */
export function callouts(parts: { part: Part; matrix: Matrix4 }[], camera: Camera, seenAt: (part: Part) => Vector3 | null): Callout[] {
  const roles = [...new Set(parts.map(({ part }) => part.role))];
  return roles.map((role) => {
    const all = parts.filter(({ part }) => part.role === role);
    const marks = [...new Set(all.map(({ part }) => part.mark))];
    const far = new Map(all.map((a) => [a, middleOfPart(a.part).applyMatrix4(a.matrix).distanceTo(camera.position)]));
    const order = [...all].sort((a, b) => (far.get(a) ?? 0) - (far.get(b) ?? 0));
    const spot = order.reduce<Vector3 | null>((found, { part }) => found ?? seenAt(part), null);
    const hidden = order[0] === undefined ? new Vector3() : middleOfPart(order[0].part).applyMatrix4(order[0].matrix);
    const count = all.length === 1 ? role : `${all.length} ${role}s`;
    return { text: [marks.length > 3 ? `${marks[0]} to ${marks.at(-1)}` : marks.join(', '), count], at: spot ?? hidden, seen: spot !== null };
  });
}

/** From the outermost part to the far side of the words, pixels: they stand beside all parts, on none. */
const ROOM = 130;

/** Sets the callouts in two columns beside the parts, none over another. */
export function drawCallouts(overlay: Overlay, list: Callout[], reach: { left: number; right: number }, camera: Camera, pane: Pane): void {
  const spots = list.map((c) => ({ ...c, spot: spotOf(c.at, camera, pane) })).sort((a, b) => a.spot.x - b.spot.x);
  const centre = pane.x + pane.width / 2;
  const edge = {
    left: Math.max(pane.x + 8, reach.left - ROOM),
    right: Math.min(pane.x + pane.width - 8, reach.right + ROOM),
  };
  const step = 44;
  for (const [column, right] of [[spots.filter((c) => c.spot.x < centre), false], [spots.filter((c) => c.spot.x >= centre), true]] as const) {
    let y = pane.y + 26;
    const sorted = [...column].sort((a, b) => a.spot.y - b.spot.y);
    sorted.forEach((c, i) => {
      const latest = pane.y + pane.height - 26 - (sorted.length - 1 - i) * step;
      y = Math.min(latest, Math.max(y, c.spot.y));
      const x = right ? edge.right : edge.left;
      if (c.seen) {
        overlay.line({ x: right ? x - 40 : x + 40, y }, c.spot);
        overlay.dot(c.spot, 3);
      }

      overlay.tag({ x, y }, c.text, right ? 'end' : 'start');
      y += step;
    });
  }
}
