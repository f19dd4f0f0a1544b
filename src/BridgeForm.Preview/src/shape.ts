import { Matrix4, Vector3 } from 'three';
import type { BridgeView, CaseView } from './view';

/** Where every frame and bay goes in a state of the bridge: rigid moves of the design state. */
export interface Shape {
  /** The move of a frame or bay by its name. */
  move: (owner: string) => Matrix4;
  /** How far a point of the rope (or anything above it) at world x has moved: side is -1 left, +1 right. */
  shift: (x: number, side: number) => Vector3;
  /** Nodes as they are. */
  nodes: { x: number; y: number }[];
}

const X = new Vector3(1, 0, 0);

/** The empty bridge. */
export function designShape(view: BridgeView): Shape {
  const still = new Matrix4();
  const none = new Vector3();
  return { move: () => still, shift: () => none, nodes: view.frames.map((f) => ({ x: f.x, y: f.y })) };
}

/** The bridge under a load case, its movements drawn `times` as large as they are. */
export function loadedShape(view: BridgeView, load: CaseView, times: number): Shape {
  const design = view.frames;
  const nodes = design.map((f, i) => {
    const at = load.nodes[i] ?? [f.x, f.y];
    return { x: f.x + times * (at[0] - f.x), y: f.y + times * (at[1] - f.y) };
  });
  const most = Math.max(Number.EPSILON, ...design.map((f, i) => Math.abs((nodes[i] ?? f).y - f.y)));
  const roll = design.map((f, i) => times * load.crossSlope * Math.abs((nodes[i] ?? f).y - f.y) / most);
  // The case is solved for the more heavily loaded rope: the lower one, about which the deck rolls.
  const pivot = load.crossSlope >= 0 ? -view.ropeSpacing / 2 : view.ropeSpacing / 2;
  const moves = new Map<string, Matrix4>();
  design.forEach((f, i) => {
    const turn = f.end ? 0 : bisector(nodes, i) - bisector(design, i);
    moves.set(f.name, carry(f, nodes[i] ?? f, turn, 1, 0, roll[i] ?? 0, pivot));
  });
  view.bays.forEach((name, b) => {
    const [from, to] = [chord(design, b), chord(nodes, b)];
    const tilt = ((roll[b] ?? 0) + (roll[b + 1] ?? 0)) / 2;
    moves.set(name, carry(from.middle, to.middle, to.turn - from.turn, to.length / from.length, from.turn, tilt, pivot));
  });
  const still = new Matrix4();
  return {
    nodes,
    move: (owner) => moves.get(owner) ?? still,
    shift: (x, side) => {
      const b = bayAt(design, x);
      const [p, q] = [design[b], design[b + 1]];
      if (p === undefined || q === undefined) {
        return new Vector3();
      }

      const share = Math.min(1, Math.max(0, (x - p.x) / (q.x - p.x)));
      const [u, v] = [nodes[b] ?? p, nodes[b + 1] ?? q];
      const lift = (side * view.ropeSpacing / 2 - pivot) * ((roll[b] ?? 0) * (1 - share) + (roll[b + 1] ?? 0) * share);
      return new Vector3(
        (u.x - p.x) * (1 - share) + (v.x - q.x) * share,
        (u.y - p.y) * (1 - share) + (v.y - q.y) * share + lift, 0);
    },
  };
}

interface Point { x: number; y: number }

function carry(from: Point, to: Point, turn: number, stretch: number, along: number, roll: number, pivot: number): Matrix4 {
  const m = new Matrix4().makeTranslation(to.x, to.y, 0).multiply(new Matrix4().makeRotationZ(turn));
  if (roll !== 0) {
    m.multiply(new Matrix4().makeTranslation(0, 0, pivot))
      .multiply(new Matrix4().makeRotationAxis(X, -roll))
      .multiply(new Matrix4().makeTranslation(0, 0, -pivot));
  }

  if (stretch !== 1) {
    m.multiply(new Matrix4().makeRotationZ(along)).multiply(new Matrix4().makeScale(stretch, 1, 1))
      .multiply(new Matrix4().makeRotationZ(-along));
  }

  return m.multiply(new Matrix4().makeTranslation(-from.x, -from.y, 0));
}

export function chord(nodes: readonly Point[], b: number): { middle: Point; turn: number; length: number } {
  const [p, q] = [nodes[b] ?? { x: 0, y: 0 }, nodes[b + 1] ?? { x: 1, y: 0 }];
  return {
    middle: { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 },
    turn: Math.atan2(q.y - p.y, q.x - p.x),
    length: Math.hypot(q.x - p.x, q.y - p.y),
  };
}

/** Slope of the bisector of the two chords that meet in a node; of the one chord at an end. */
function bisector(nodes: readonly Point[], i: number): number {
  const before = chord(nodes, Math.max(0, i - 1)).turn;
  const after = chord(nodes, Math.min(nodes.length - 2, i)).turn;
  return (before + after) / 2;
}

/** Index of the bay over a world x; the first and the last reach beyond the supports. */
export function bayAt(nodes: readonly Point[], x: number): number {
  let low = 0;
  let high = Math.max(1, nodes.length - 1);
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((nodes[middle]?.x ?? Infinity) <= x) {
      low = middle;
    } else {
      high = middle;
    }
  }

  return low;
}
