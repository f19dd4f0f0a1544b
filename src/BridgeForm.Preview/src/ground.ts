import { BufferGeometry, Color, Float32BufferAttribute, Mesh, type Material } from 'three';
import { PAINT } from './painted';
import { isRaised } from './support';
import type { BridgeView } from './view';

/** Height of the ground anywhere. */
export type Ground = (x: number, z: number) => number;

/** The site's own ground line when the project has one, else a plain hollow under the span, or a lawn below a tree's platform. */
export function groundOf(view: BridgeView): Ground {
  const line = view.ground;
  const deep = hollowDepth(view);
  const feet: [number, number] = [footOf(view, 0), footOf(view, 1)];
  return (x, z) => {
    const bend = 0.7 * Math.sin(z * 0.21) + 0.3 * Math.sin(z * 0.53 + 1);
    const inside = line.length > 1 ? along(line, x) : hollow(view, feet, x + bend * smooth(1.2, 6, Math.abs(z)), deep);
    const nearA = x < view.span / 2;
    const level = x <= 0 || x >= view.span
      ? bank(view, feet, nearA ? 0 : 1, nearA ? -x : x - view.span, z)
      : Math.min(inside, feet[nearA ? 0 : 1]);
    const near = Math.max(smooth(1.4, 5, Math.abs(z)), smooth(2, 7, Math.max(-x, x - view.span)));
    const rough = 0.05 * Math.sin(x * 1.7 + z * 0.9) + 0.04 * Math.sin(z * 2.1 - x * 0.7 + 2);
    return level + near * rough + hills(view, x, z);
  };
}

/** Rolling meadows, and far off a ridge behind which nothing can be seen. */
function hills(view: BridgeView, x: number, z: number): number {
  const far = smooth(18, 70, Math.abs(z));
  const away = Math.hypot(Math.max(0, Math.abs(x - view.span / 2) - view.span / 2), z);
  const ridge = smooth(70, 260, away) * (5 + 4 * Math.sin(Math.atan2(z, x - view.span / 2) * 5 + 1) + 2 * Math.sin(Math.atan2(z, x - view.span / 2) * 13));
  return (1.6 * Math.sin(x * 0.045 + 1) + 1.4 * Math.sin(z * 0.06)) * far + ridge;
}

/** Where the ground is at a support, under its end frame: at the other end's level where this one is up in a tree. */
function footOf(view: BridgeView, end: 0 | 1): number {
  if (isRaised(view, end) && view.ground.length > 1) {
    return along(view.ground, end === 0 ? 0 : view.span);
  }

  return view.landings[isRaised(view, end) ? (end === 0 ? 1 : 0) : end].top - 0.08;
}

/** How far the plain hollow lies below the line from bank to bank. */
export function hollowDepth(view: BridgeView): number {
  if (isRaised(view, 0) || isRaised(view, 1)) {
    return 0.3;
  }

  const sag = Math.max(0, view.rise / 2 - view.ropeLowY);
  return Math.min(Math.max(0.17 * view.span, sag + 1.2), sag + 14);
}

function hollow(view: BridgeView, feet: [number, number], x: number, deep: number): number {
  const u = Math.min(1, Math.max(0, x / view.span));
  return feet[0] * (1 - u) + feet[1] * u - deep * (1 - Math.abs(2 * u - 1) ** 2.6);
}

/** How low the ground beside the way to a landing lies at most below it, where ropes go down to anchors there, metres. */
const LOWEST = 1.3;

/**
 * Level behind a support: low where the end frame stands, up to the walking surface further back. Where ropes go down to anchors,
 * the way is a bank between them.
 */
function bank(view: BridgeView, feet: [number, number], end: 0 | 1, back: number, z: number): number {
  const { walk, stay } = view.landings[end];
  const foot = feet[end];
  if (isRaised(view, end)) {
    return view.ground.length > 1 ? along(view.ground, end === 0 ? -back : view.span + back) : foot;
  }

  const way = foot + (walk - 0.04 - foot) * smooth(0.5, 1.5, back);
  if (stay === null) {
    return way;
  }

  const [long, fall] = [Math.abs(stay[0] - (end === 0 ? 0 : view.span)), (end === 0 ? 0 : view.rise) - stay[1]];
  const low = foot - Math.min(LOWEST, Math.max(0, fall - 0.1));
  const aside = smooth(view.ropeSpacing / 2 - 0.3, view.ropeSpacing / 2 - 0.1, Math.abs(z)) * (1 - smooth(long + 0.6, long + 3.5, back));
  return way + (low - way) * aside;
}

export function along(line: readonly [number, number][], x: number): number {
  for (let i = 1; i < line.length; i++) {
    const [p, q] = [line[i - 1] as [number, number], line[i] as [number, number]];
    if (x <= q[0]) {
      return p[1] + (q[1] - p[1]) * Math.min(1, Math.max(0, (x - p[0]) / Math.max(Number.EPSILON, q[0] - p[0])));
    }
  }

  return (line.at(-1) as [number, number])[1];
}

export function smooth(from: number, to: number, x: number): number {
  const t = Math.min(1, Math.max(0, (x - from) / (to - from)));
  return t * t * (3 - 2 * t);
}

/** So far the ground goes on from the bridge, metres: further than the haze lets anybody see. */
export const worldEdge = (view: BridgeView): number => 11 * view.span + 320;

/** The ground as a mesh: fine near the bridge, coarse towards the horizon. */
export function groundMesh(view: BridgeView, ground: Ground, material: Material = PAINT): Mesh {
  const xs = spread(-3, view.span + 3, Math.min(120, Math.max(48, Math.ceil(view.span * 3))), worldEdge(view));
  const zs = spread(-6, 6, 36, worldEdge(view));
  const positions: number[] = [];
  const colours: number[] = [];
  for (const z of zs) {
    for (const x of xs) {
      const y = ground(x, z);
      const colour = groundColour(view, x, y, z, ground);
      positions.push(x, y, z);
      colours.push(colour.r, colour.g, colour.b);
    }
  }

  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(positions, 3));
  geometry.setAttribute('color', new Float32BufferAttribute(colours, 3));
  const index: number[] = [];
  for (let j = 0; j + 1 < zs.length; j++) {
    for (let i = 0; i + 1 < xs.length; i++) {
      const k = j * xs.length + i;
      index.push(k, k + xs.length, k + 1, k + 1, k + xs.length, k + xs.length + 1);
    }
  }

  geometry.setIndex(index);
  geometry.computeVertexNormals();
  const mesh = new Mesh(geometry, material);
  mesh.receiveShadow = true;
  return mesh;
}

/** Even steps in the middle, growing ones outwards to a limit. */
function spread(from: number, to: number, steps: number, limit: number): number[] {
  const middle = Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);
  const outward: number[] = [];
  let [at, step] = [0, (to - from) / steps];
  while (at < limit) {
    step *= 1.22;
    at += step;
    outward.push(at);
  }

  return [...outward.map((d) => from - d).reverse(), ...middle, ...outward.map((d) => to + d)];
}

const GRASS = new Color(0x7a8c5c);
const MEADOW = new Color(0x98a06c);
const EARTH = new Color(0x8f8069);
const GRAVEL = new Color(0xaaa294);

function groundColour(view: BridgeView, x: number, y: number, z: number, ground: Ground): Color {
  const slope = Math.abs(ground(x + 0.2, z) - ground(x - 0.2, z)) / 0.4;
  const patch = 0.5 + 0.25 * Math.sin(x * 0.8 + Math.sin(z * 0.7) * 2) * Math.sin(z * 0.5 + 1.3) + 0.25 * Math.sin(x * 0.13 + 2) * Math.sin(z * 0.11);
  const colour = GRASS.clone().lerp(MEADOW, patch * 0.8);
  const top = Math.min(view.landings[0].top, view.landings[1].top);
  const low = isRaised(view, 0) || isRaised(view, 1) ? 0 : smooth(0.55, 0.98, (top - y) / hollowDepth(view));
  colour.lerp(EARTH, Math.max(0.65 * smooth(0.45, 1.3, slope), 0.75 * low));
  return colour.lerp(GRAVEL, 0.85 * pathAt(view, x, z));
}

/** How much a place is of the path that leads away from a landing, 0 to 1. */
export function pathAt(view: BridgeView, x: number, z: number): number {
  const back = Math.max(-x, x - view.span);
  return back < 0.3 || isRaised(view, x < 0 ? 0 : 1) ? 0 : (1 - smooth(0.35, 0.95, Math.abs(z + 0.25 * Math.sin(x * 0.4)))) * (1 - smooth(20, 45, back));
}
