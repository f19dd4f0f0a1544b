import { BoxGeometry, Color, CylinderGeometry, Matrix4, Quaternion, SphereGeometry, TorusGeometry, Vector3, type BufferGeometry } from 'three';
import { along, type Ground } from './ground';
import { painted } from './painted';
import type { BridgeView, Landing, SupportKind } from './view';

const STONE = new Color(0xa9a69d);
const LOG = new Color(0x85725e);
const BARK = new Color(0x6a5b49);
const PLANK = new Color(0x9c8a6c);
const STEEL = new Color(0x6d7275);
const ROPE = new Color(0x8d9193);

/** From here on a bridge whose ends differ by so much of its span is taken to lead up to a tree, where its file names no support. */
const STEEP = 0.2;

/** How far behind a support the middle of a post stands, metres: what the model draws of a rope that goes on ends inside it. */
const BEHIND = 0.42;

/** What a support is: as the file says, else a tree at the upper end of a steep bridge over unknown ground, else posts. */
export function kindOf(view: BridgeView, end: 0 | 1): SupportKind {
  const upper = view.rise > 0 ? 1 : 0;
  const steep = view.ground.length < 2 && Math.abs(view.rise) > STEEP * view.span && end === upper;
  return view.landings[end].support ?? (steep ? 'tree' : 'post');
}

/** The end stands up in a tree or on a platform: over the site's ground, or over ground that stays as it is at the other end. */
export function isRaised(view: BridgeView, end: 0 | 1): boolean {
  const kind = kindOf(view, end);
  const below = view.ground.length > 1 ? along(view.ground, end === 0 ? 0 : view.span) : view.landings[end === 0 ? 1 : 0].top;
  return (kind === 'tree' || kind === 'platform') && view.landings[end].top - below > 0.6;
}

/** Whatever holds the ropes at one end, by others: landing, support, saddles and what the ropes go to. */
export function support(view: BridgeView, end: 0 | 1, ground: Ground): BufferGeometry[] {
  const kind = kindOf(view, end);
  const at: End = {
    view, end, ground, landing: view.landings[end], x: end === 0 ? 0 : view.span, y: end === 0 ? 0 : view.rise, out: end === 0 ? -1 : 1,
    half: view.ropeSpacing / 2, radius: kind === 'tree' ? Math.min(0.24, 0.16 * view.ropeSpacing) : Math.min(0.13, 0.1 * view.ropeSpacing),
  };
  const timber = kind === 'platform' || (kind === 'tree' && isRaised(view, end));
  return [
    ...(timber ? platform(at) : landing(at, kind === 'abutment')),
    ...[-at.half, at.half].flatMap((z) => (at.landing.stay === null ? held(at, z, kind) : stayed(at, z, at.landing.stay, kind))),
  ];
}

interface End {
  view: BridgeView; end: 0 | 1; ground: Ground; landing: Landing; x: number; y: number;
  /** Away from the bridge: -1 or 1. */
  out: number;
  half: number; radius: number;
}

/** A box from and to in the direction away from the bridge, its top, its height and its sides. */
function block(at: End, from: number, to: number, top: number, height: number, z0: number, z1: number, colour: Color): BufferGeometry {
  return painted(new BoxGeometry(Math.abs(to - from), height, z1 - z0).translate(at.x + at.out * (from + to) / 2, top - height / 2, (z0 + z1) / 2), colour);
}

/** A round bar between two points, its radii at both. */
export function bar(from: Vector3, to: Vector3, r0: number, r1: number, colour: Color, sides = 12): BufferGeometry {
  const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), to.clone().sub(from).normalize());
  const place = new Matrix4().compose(from.clone().add(to).multiplyScalar(0.5), turn, new Vector3(1, 1, 1));
  return painted(new CylinderGeometry(r1, r0, from.distanceTo(to), sides).applyMatrix4(place), colour);
}

/** Stone under the end frame, with slots for the ropes, and the walking surface behind it. */
function landing(at: End, wide: boolean): BufferGeometry[] {
  const { landing: { top, walk, gap, baseHalf }, half, view } = at;
  const slot = view.ropeRadius + 0.03;
  const reach = half + (wide ? 0.6 : 0.28);
  const back = baseHalf + (wide ? 0.9 : 0.3 + 2 * at.radius);
  const foot = Math.min(at.ground(at.x - at.out * 0.05, 0), at.ground(at.x + at.out * back, half));
  const high = Math.max(0.6, top - foot + 0.3);
  const walkHalf = half - at.radius - 0.05;
  return [
    ...([[-reach, -half - slot], [-half + slot, half - slot], [half + slot, reach]] as const)
      .map(([z0, z1]) => block(at, back, -(baseHalf + 0.05), top, high, z0, z1, STONE)),
    block(at, baseHalf + gap, 1.5, walk, walk - top + 0.4, -walkHalf, walkHalf, STONE),
    ...(wide ? [-1, 1].map((side) => block(
      at, 0.1, 1.9, walk + 0.12, walk + 0.12 - foot + 0.3, side < 0 ? -reach - 0.3 : reach, side < 0 ? -reach : reach + 0.3, STONE)) : []),
  ];
}

/** Planks on legs, as wide as the bridge. */
function platform(at: End): BufferGeometry[] {
  const { landing: { top, walk, gap, baseHalf }, half } = at;
  const reach = half + 0.35;
  const deep = 2;
  const planks = Array.from({ length: 13 }, (_, i) => {
    const from = baseHalf + gap + i * 0.147;
    return block(at, from, from + 0.14, walk, 0.045, -half + at.radius + 0.06, half - at.radius - 0.06, PLANK.clone().multiplyScalar(0.9 + 0.05 * ((i * 7) % 5)));
  });
  const legs = [0.25, deep - 0.15].flatMap((back) => [-reach + 0.12, reach - 0.12].map((z) => {
    const foot = at.ground(at.x + at.out * back, z) - 0.2;
    return block(at, back - 0.07, back + 0.07, top - 0.16, Math.max(0.1, top - 0.16 - foot), z - 0.07, z + 0.07, LOG);
  }));
  return [
    ...planks,
    ...[0.25, deep - 0.15].map((back) => block(at, back - 0.05, back + 0.05, walk - 0.045, walk - 0.045 - top + 0.16, -half + at.radius + 0.06, half - at.radius - 0.06, LOG)),
    block(at, deep, -(baseHalf + 0.05), top, 0.16, -reach, -half - at.view.ropeRadius - 0.02, LOG),
    block(at, deep, -(baseHalf + 0.05), top, 0.16, half + at.view.ropeRadius + 0.02, reach, LOG),
    block(at, baseHalf + 0.05, -(baseHalf + 0.05), top, 0.16, -half + at.view.ropeRadius + 0.02, half - at.view.ropeRadius - 0.02, LOG),
    ...legs,
  ];
}

/** The rope ends here: round a post or a trunk in two turns, or at a plate in the abutment's wall. */
function held(at: End, z: number, kind: SupportKind): BufferGeometry[] {
  const { landing: { walk, baseHalf }, view, radius } = at;
  const behind = Math.max(BEHIND, baseHalf + 0.1 + radius);
  const x = at.x + at.out * behind;
  const rope = Math.max(0.008, view.ropeRadius);
  if (kind === 'abutment') {
    const face = at.x + at.out * (BEHIND - 0.04);
    return [
      block(at, BEHIND - 0.06, BEHIND + 0.5, at.y + 0.25, 0.55, z - 0.28, z + 0.28, STONE),
      painted(new BoxGeometry(0.03, 0.24, 0.24).translate(face - at.out * 0.03, at.y, z), STEEL),
      bar(new Vector3(face, at.y, z), new Vector3(face - at.out * 0.13, at.y, z), 2.4 * rope, 1.6 * rope, STEEL),
    ];
  }

  const foot = Math.min(at.ground(x, z), at.y) - 0.6;
  const turns = [-1.1, 1.1].map((k) => painted(
    new TorusGeometry(radius + 0.6 * rope, rope, 6, 28).rotateX(Math.PI / 2).translate(x, at.y + k * rope, z), ROPE));
  // The saddle keeps the rope from cutting into the wood; clips hold its end.
  const saddle = painted(new CylinderGeometry(radius + 0.004, radius + 0.004, 7 * rope, 24, 1, true).translate(x, at.y, z), STEEL);
  const clips = [0.05, 0.1, 0.15].map((d) => painted(
    new BoxGeometry(2 * rope, 4.5 * rope, 4.5 * rope).translate(x - at.out * (radius + d), at.y, z), STEEL));
  const top = walk + view.guard + 0.14;
  return kind === 'tree'
    ? [...trunk(x, foot, z, radius, Math.max(top + 1.8, at.y + 4)), ...turns, saddle, ...clips]
    : [
      bar(new Vector3(x, foot, z), new Vector3(x, top, z), radius, radius * 0.92, LOG, 20),
      bar(new Vector3(x, top, z), new Vector3(x, top + 0.05, z), radius * 0.92, radius * 0.55, LOG, 20),
      ...turns, saddle, ...clips,
    ];
}

/** A trunk with its roots, and the limbs that carry its crown. */
function trunk(x: number, foot: number, z: number, radius: number, top: number): BufferGeometry[] {
  const up = (y: number, dx = 0, dz = 0): Vector3 => new Vector3(x + dx, y, z + dz);
  const limbs = [0.3, 2.4, 4.5].map((turn, i) => {
    const from = up(top - 0.5 - 0.25 * i);
    return bar(from, from.clone().add(new Vector3(Math.cos(turn) * 0.9, 1.3, Math.sin(turn) * 0.9)), radius * 0.4, radius * 0.12, BARK, 8);
  });
  return [
    bar(up(foot), up(foot + 0.95), radius * 1.7, radius * 1.12, BARK, 14),
    bar(up(foot + 0.95), up(top), radius * 1.12, radius * 0.72, BARK, 14),
    ...limbs,
  ];
}

/** The rope goes on: over a saddle under the end frame, down to a block where it meets the ground. */
function stayed(at: End, z: number, stay: readonly [number, number], kind: SupportKind): BufferGeometry[] {
  const rope = Math.max(0.008, at.view.ropeRadius);
  const foot = at.ground(at.x + at.out * 0.1, z) - 0.5;
  const under = at.y - rope;
  const meets = whereItMeets(at, z, stay);
  return [
    ...(kind === 'tree' ? bracket(at, z, under - 2 * rope)
      : [bar(new Vector3(at.x, Math.min(foot, under - 0.3), z), new Vector3(at.x, under - 2 * rope, z), at.radius, at.radius * 0.95, LOG, 16)]),
    painted(new BoxGeometry(2.4 * at.radius, 4 * rope, 6 * rope).translate(at.x, under - 1.2 * rope, z), STEEL),
    painted(new SphereGeometry(2.4 * rope, 12, 8).scale(1.6, 0.8, 1).translate(at.x, under - 0.6 * rope, z), STEEL),
    painted(new BoxGeometry(0.8, 0.6, 0.7).translate(meets.x + at.out * 0.3, meets.y - 0.12, z), STONE),
    painted(new BoxGeometry(0.03, 0.22, 0.22).translate(meets.x - at.out * 0.11, meets.y + 0.06, z), STEEL),
  ];
}

/** A trunk behind the end frame, and the timber on it that the saddle lies on. */
function bracket(at: End, z: number, top: number): BufferGeometry[] {
  const { landing: { walk, baseHalf }, view, radius } = at;
  const behind = Math.max(BEHIND, baseHalf + 0.1 + radius);
  const x = at.x + at.out * behind;
  const foot = Math.min(at.ground(x, z), at.y) - 0.6;
  return [
    ...trunk(x, foot, z, radius, Math.max(walk + view.guard + 1.94, at.y + 4)),
    block(at, -0.08, behind, top, 0.18, z - 0.08, z + 0.08, LOG),
  ];
}

/** Where ropes that go on are held in the ground. */
export function anchors(view: BridgeView, ground: Ground): { x: number; y: number; z: number }[] {
  return view.landings.flatMap(({ stay }, end) => (stay === null ? [] : [-view.ropeSpacing / 2, view.ropeSpacing / 2].map((z) => (
    { ...whereItMeets({ x: end * view.span, y: end * view.rise, ground }, z, stay), z }))));
}

/** The first place on the way to the anchor where the rope is at the ground; the anchor itself where it hangs free as far. */
export function whereItMeets(at: { x: number; y: number; ground: Ground }, z: number, stay: readonly [number, number]): { x: number; y: number } {
  for (let k = 1; k <= 200; k++) {
    const [x, y] = [at.x + (stay[0] - at.x) * k / 200, at.y + (stay[1] - at.y) * k / 200];
    if (y <= at.ground(x, z) + 0.05) {
      return { x, y };
    }
  }

  return { x: stay[0], y: stay[1] };
}
