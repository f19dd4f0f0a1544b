import { CircleGeometry, Color, CylinderGeometry, Float32BufferAttribute, SphereGeometry, type BufferGeometry } from 'three';
import { hollowDepth, pathAt, type Ground } from './ground';
import { painted } from './painted';
import { kindOf } from './support';
import type { BridgeView } from './view';

/** The same numbers for every bridge of the same size: pictures of a bridge never differ. From 0 to 1. */
export function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

const TRUNK = new Color(0x6f6557);
const SHADE = new Color(0x55643f);
const TREES = 26;
const BALLS = 5;

/** A tree: where its foot is, how tall it is, and how it differs from others. */
export interface Tree { x: number; y: number; z: number; tall: number; tint: Color; crownOnly: boolean }

/** Trees on dry ground, off the path and the water, where they hide nothing: behind the bridge as seen from the right, or past its ends. */
export function treesOf(view: BridgeView, ground: Ground): Tree[] {
  const roll = dice(11);
  const list: Tree[] = [];
  for (let i = 0; i < 12 * TREES && list.length < TREES; i++) {
    const behind = i % 5 !== 0;
    const z = behind ? -(9 + (24 + 0.5 * view.span) * roll()) : 6 + 0.6 * view.span * roll();
    const past = view.span * 0.75 + 12 + 24 * roll();
    const x = view.span / 2 + (behind ? (roll() - 0.5) * (2 * view.span + 40) : (roll() < 0.3 ? -1 : 1) * past);
    const tall = 4.5 + 4.5 * roll();
    const tint = new Color().setHSL(0.22 + 0.07 * roll(), 0.22 + 0.12 * roll(), 0.36 + 0.12 * roll());
    if (mayGrow(view, ground, x, z, 0.3 * tall)) {
      list.push({ x, y: ground(x, z) - 0.15, z, tall, tint, crownOnly: false });
    }
  }

  return list;
}

/** Whether something as wide may grow here: on no path, in no stream or its bed. */
export function mayGrow(view: BridgeView, ground: Ground, x: number, z: number, wide: number): boolean {
  const spots = [[0, 0], [wide, 0], [-wide, 0], [0, wide], [0, -wide]] as const;
  const bed = view.ground.length < 2 ? Math.min(view.landings[0].top, view.landings[1].top) - 0.5 * hollowDepth(view) : -Infinity;
  return spots.every(([dx, dz]) => {
    const y = ground(x + dx, z + dz);
    return pathAt(view, x + dx, z + dz) < 0.02 && (view.water === null || y > view.water + 0.3) && (y > bed || hollowDepth(view) < 0.5);
  });
}

/** Far enough aside not to hide the bridge. */
export function trees(view: BridgeView, ground: Ground): BufferGeometry[] {
  const roll = dice(13);
  const shapes: BufferGeometry[] = [];
  for (const { x, y, z, tall, tint, crownOnly } of [...treesOf(view, ground), ...crowns(view)]) {
    if (!crownOnly) {
      shapes.push(painted(new CylinderGeometry(0.011 * tall, 0.022 * tall, tall * 0.56, 7, 1, true).translate(x, y + tall * 0.28, z), TRUNK));
      shapes.push(painted(new CircleGeometry(1, 14).rotateX(-Math.PI / 2).scale(tall * 0.26, 1, tall * 0.22).translate(x + 0.1 * tall, y + 0.21, z - 0.08 * tall), SHADE));
    }

    for (let k = 0; k < BALLS; k++) {
      const up = k / (BALLS - 1);
      const size = tall * (0.2 - 0.1 * up) * (0.85 + 0.3 * roll());
      const turn = k * 2.4 + roll();
      const out = tall * 0.13 * (1 - up);
      shapes.push(painted(
        leaves(k).scale(size, size * 1.15, size).translate(x + Math.cos(turn) * out, y + tall * (0.42 + 0.5 * up), z + Math.sin(turn) * out),
        tint));
    }
  }

  return shapes;
}

/** The trees that hold the ropes: their crowns begin above the people's heads. */
export function crowns(view: BridgeView): Tree[] {
  return ([0, 1] as const).filter((end) => kindOf(view, end) === 'tree').flatMap((end) => [-1, 1].map((side) => {
    const { walk } = view.landings[end];
    const x = end === 0 ? -0.42 : view.span + 0.42;
    return { x, y: walk + 0.2, z: side * view.ropeSpacing / 2, tall: 5.6, tint: new Color().setHSL(0.25, 0.3, 0.4), crownOnly: true };
  }));
}

/** A rough ball, lighter on top. */
function leaves(kind: number): BufferGeometry {
  const ball = new SphereGeometry(1, 10, 7);
  const at = ball.getAttribute('position');
  const colours = new Float32Array(at.count * 3);
  for (let i = 0; i < at.count; i++) {
    const [x, y, z] = [at.getX(i), at.getY(i), at.getZ(i)];
    const rough = 1 + 0.1 * Math.sin(9 * x + 4 * y + kind) * Math.sin(8 * z + 5 * y) + 0.06 * Math.sin(19 * y + 7 * x + 11 * z);
    at.setXYZ(i, x * rough, y * rough, z * rough);
    colours.fill(0.6 + 0.35 * (y + 1) / 2 + 2.2 * (rough - 1), 3 * i, 3 * i + 3);
  }

  ball.setAttribute('color', new Float32BufferAttribute(colours, 3));
  return ball;
}
