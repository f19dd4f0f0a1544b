import { Color, Euler, InstancedMesh, Matrix4, Quaternion, Vector3 } from 'three';
import type { Shown } from './bridge';
import { CLOTHED } from './full/materials';
import { PAINT } from './painted';
import { personShape } from './person';
import { dice } from './trees';
import type { BridgeView, CaseView } from './view';

/** Somebody's weight, newtons: 75 kg. Common practice, no source. It only says how many are drawn. */
const WEIGHT = 736;

/** No more are drawn: a crowd is seen to be one. */
export const MOST = 48;

/** One who stands on the deck, by frame and by share of half the deck's width to the right. */
export interface Standing { frame: number; across: number; turn: number }

/** Whether a case's load is people; snow, heat and frames that hang are not. */
export const isPeople = (load: CaseView): boolean => !/^(dead|snow|cold|hot|erect)/.test(load.id) && load.extra.some((force) => force > 1);

/**
 * The people that a load is made of, as near as frames tell: so many at a frame as their weight brings to both its ropes, on the
 * side that is pressed lower.
 */
export function standing(view: BridgeView, load: CaseView): Standing[] {
  const roll = dice(5);
  if (load.id.startsWith('point')) {
    const frame = load.extra.indexOf(Math.max(...load.extra));
    return [{ frame, across: load.id.includes('edge') ? lower(load) * 0.7 : 0, turn: 0.4 }];
  }

  // The rope of a case is the one that carries more: 1.7 times its load is about the load of both.
  const wanted = load.extra.map((force) => Math.max(0, 1.7 * force / WEIGHT));
  const share = Math.min(1, MOST / Math.max(1, wanted.reduce((a, b) => a + b, 0)));
  const list: Standing[] = [];
  let owed = 0;
  wanted.forEach((number, frame) => {
    owed += number * share;
    for (; owed >= 0.5 && list.length < MOST; owed--) {
      const across = (roll() - 0.5) * 1.3;
      list.push({ frame, across: sided(load, frame, view) * Math.abs(across) || across, turn: 6.28 * roll() });
    }
  });
  return list;
}

/** -1 left, 1 right: the side that sinks. */
const lower = (load: CaseView): number => (load.crossSlope >= 0 ? -1 : 1);

/** The side on which all stand, 0 where they stand on both. */
function sided(load: CaseView, frame: number, view: BridgeView): number {
  if (load.id === 'live-side') {
    return lower(load);
  }

  return load.id === 'live-cross' || load.id === 'most-tilt' ? (frame < view.frames.length / 2 ? 1 : -1) : 0;
}

/** Those people on the deck as it is drawn. */
export function crowd(shown: Shown, load: CaseView, plain: boolean): InstancedMesh {
  const { view } = shown;
  const list = standing(view, load);
  const mesh = new InstancedMesh(personShape(false), plain ? PAINT : CLOTHED, Math.max(1, list.length));
  const roll = dice(17);
  list.forEach(({ frame, across, turn }, i) => {
    const f = view.frames[frame];
    const step = view.span / Math.max(1, view.bays.length);
    const x = (shown.shape().nodes[frame] ?? { x: f?.x ?? 0 }).x + (list.length === 1 ? 0 : (roll() - 0.5) * step * 0.7);
    const foot = shown.deckAt(Math.min(view.span - 0.1, Math.max(0.1, x)));
    const size = 0.92 + 0.14 * roll();
    mesh.setMatrixAt(i, new Matrix4().compose(
      foot.add(new Vector3(0, 0, across * view.deckHalf)), new Quaternion().setFromEuler(new Euler(0, turn, 0)), new Vector3(size, size, size)));
    mesh.setColorAt(i, new Color().setHSL(roll(), 0.25, 0.6 + 0.3 * roll()));
  });
  mesh.count = list.length;
  mesh.castShadow = true;
  mesh.frustumCulled = false;
  return mesh;
}
