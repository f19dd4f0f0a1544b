import { CircleGeometry, Color, CylinderGeometry, Float32BufferAttribute, SphereGeometry, type BufferGeometry } from 'three';
import type { Ground } from './ground';
import { painted } from './painted';
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
const TREES = 34;
const BALLS = 6;

/** Far enough aside not to hide the bridge, most of them behind it as seen from the right. */
export function trees(view: BridgeView, ground: Ground): BufferGeometry[] {
  const roll = dice(11);
  const shapes: BufferGeometry[] = [];
  for (let i = 0; i < TREES; i++) {
    const z = i % 5 !== 0 ? -(13 + 40 * roll()) : 22 + 30 * roll();
    const x = view.span / 2 + (roll() - 0.5) * (view.span + 54);
    const tall = 4 + 4 * roll();
    const foot = ground(x, z) - 0.15;
    shapes.push(painted(new CylinderGeometry(0.011 * tall, 0.022 * tall, tall * 0.56, 7, 1, true).translate(x, foot + tall * 0.28, z), TRUNK));
    shapes.push(painted(new CircleGeometry(1, 14).rotateX(-Math.PI / 2).scale(tall * 0.26, 1, tall * 0.22).translate(x + 0.1 * tall, foot + 0.21, z - 0.08 * tall), SHADE));
    const tint = new Color().setHSL(0.22 + 0.07 * roll(), 0.22 + 0.12 * roll(), 0.36 + 0.12 * roll());
    for (let k = 0; k < BALLS; k++) {
      const up = k / (BALLS - 1);
      const size = tall * (0.2 - 0.1 * up) * (0.85 + 0.3 * roll());
      const turn = k * 2.4 + roll();
      const out = tall * 0.13 * (1 - up);
      shapes.push(painted(
        leaves(k).scale(size, size * 1.15, size).translate(x + Math.cos(turn) * out, foot + tall * (0.38 + 0.52 * up), z + Math.sin(turn) * out),
        tint));
    }
  }

  return shapes;
}

/** A rough ball, lighter on top. */
function leaves(kind: number): BufferGeometry {
  const ball = new SphereGeometry(1, 14, 10);
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
