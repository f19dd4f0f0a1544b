import {
  type BatchedMesh, ConeGeometry, CylinderGeometry, Group, InstancedMesh, Matrix4, MeshLambertMaterial, Vector3, type Color,
} from 'three';
import { apartMove, type Leaving } from './apart';
import { thinGrass } from './full/growth';
import { readGlb, type Finish, type Part } from './glb';
import { crowd, isPeople } from './people';
import { buildPerson } from './person';
import { buildRopes, type Ropes } from './rope';
import { buildSetting, type Land, type Setting } from './setting';
import { buildSteel } from './steel';
import { bayAt, designShape, loadedShape, type Shape } from './shape';
import type { BridgeFile, BridgeView, CaseView } from './view';
import { buildWood, placeWood, type Wood } from './wood';

/** How the bridge stands and what is shown of it. */
export interface State {
  load: CaseView | null;
  /** The movement is to be enlarged, and as how large it is drawn then. */
  large: boolean;
  times: number;
  /** The bridge is drawn empty, whatever load is chosen: dimensions are those of the empty bridge. */
  empty: boolean;
  finish: number;
  chosen: number | null;
  /** Frame taken apart, by index, and how far, 0 to 1; null: the bridge is whole. */
  apart: { frame: number; amount: number } | null;
  person: boolean;
  /** One sees through the eyes of somebody on the bridge. */
  inside: boolean;
}

/** One bridge in the scene. */
export interface Shown {
  view: BridgeView;
  parts: Part[];
  ropes: Group;
  finishes: Finish[];
  wood: Wood;
  group: Group;
  setting: Setting;
  state: State;
  shape: () => Shape;
  /** Puts everything where the state says. */
  lay: () => void;
  /** Where the person's feet are. */
  person: Vector3;
  /** The walking surface on the middle line over a world x. */
  deckAt: (x: number) => Vector3;
  /** Where a part is now. */
  matrixOf: (index: number) => Matrix4;
  /** Marks the only parts to draw; null draws all. */
  only: (owners: ReadonlySet<string> | null) => void;
}

/** The bridge with its setting, on a land that was built before where one is given. */
export async function buildBridge(file: BridgeFile, plain: boolean, land?: Land): Promise<Shown> {
  const { view } = file;
  const loaded = await readGlb(file.glb);
  const wood = buildWood(loaded.parts, plain);
  const ropes: Ropes = buildRopes(loaded.ropes, loaded.ropeColour as Color, plain);
  const steel = buildSteel(loaded.steel, loaded.steelColour, plain);
  const setting = buildSetting(view, plain, land);
  const person = buildPerson(plain);
  const arrows = new Group();
  const group = new Group();
  group.add(wood.mesh, ropes.group, setting.group, setting.sky, person, arrows);
  if (steel !== null) {
    group.add(steel.mesh);
  }

  thinGrass(setting.land.group, 2 * triangles(wood.mesh) + (steel === null ? 0 : triangles(steel.mesh)));

  const state: State = { load: null, large: false, times: 1, empty: false, finish: 0, chosen: null, apart: null, person: true, inside: false };
  let shape = designShape(view);
  let owners: ReadonlySet<string> | null = null;
  const shown: Shown = {
    view, parts: loaded.parts, ropes: ropes.group, finishes: loaded.finishes, wood, group, setting, state,
    shape: () => shape,
    matrixOf: (index) => {
      const matrix = new Matrix4();
      wood.mesh.getMatrixAt(index, matrix);
      return matrix;
    },
    person: person.position,
    only: (names) => { owners = names; },
    deckAt: (x) => deckAt(view, shape, x),
    lay: () => {
      const drawn = drawnLoad(state);
      shape = drawn === null ? designShape(view) : loadedShape(view, drawn, state.times);
      const visible = state.apart === null ? owners : apartOwners(view, state.apart.frame);
      const place = (part: Leaving & { owner: string }): Matrix4 | null => {
        if (visible !== null && !visible.has(part.owner)) {
          return null;
        }

        const at = shape.move(part.owner).clone();
        return state.apart === null ? at.multiply(part.place) : at.multiply(apartMove(view, state.apart, part)).multiply(part.place);
      };
      placeWood(wood, place);
      steel?.place(place, state.apart !== null);
      ropes.follow(shape);
      ropes.group.visible = state.apart === null;
      const chosen = state.chosen === null ? undefined : loaded.parts[state.chosen];
      const same = new Set(chosen === undefined ? [] : loaded.parts.flatMap((p, i) => (p.mark === chosen.mark ? [i] : [])));
      wood.paint(loaded.finishes[state.finish] as Finish, new Set(state.chosen === null ? [] : [state.chosen]), same);
      person.visible = state.person && state.apart === null && !state.inside && !(drawn !== null && isPeople(drawn));
      person.position.copy(shown.deckAt(view.span * 0.36)).add(new Vector3(0, 0, view.deckHalf * 0.2));
      showLoads(arrows, shown, plain);
    },
  };
  return shown;
}

/** Of all that a mesh of many shapes shows. */
function triangles(mesh: BatchedMesh): number {
  let sum = 0;
  for (let i = 0; i < mesh.instanceCount; i++) {
    sum += (mesh.getGeometryRangeAt(mesh.getGeometryIdAt(i))?.count ?? 0) / 3;
  }

  return sum;
}

/** The load the bridge is drawn under, null: none. */
function drawnLoad(state: State): CaseView | null {
  return state.empty ? null : state.load;
}

/** The frame and the bay behind it. */
export function apartOwners(view: BridgeView, frame: number): Set<string> {
  return new Set([view.frames[frame]?.name ?? '', view.bays[frame] ?? view.bays[frame - 1] ?? '']);
}

function deckAt(view: BridgeView, shape: Shape, x: number): Vector3 {
  const surface = (i: number): Vector3 => {
    const f = view.frames[i];
    return f === undefined ? new Vector3() : new Vector3(f.x - f.deck * Math.sin(f.turn), f.y + f.deck * Math.cos(f.turn), 0).applyMatrix4(shape.move(f.name));
  };
  const [start, end] = [surface(0), surface(view.frames.length - 1)];
  if (x <= start.x || x >= end.x) {
    return new Vector3(x, x <= start.x ? view.landings[0].walk : view.landings[1].walk, 0);
  }

  const b = bayAt(view.frames.map((f) => ({ x: f.x - f.deck * Math.sin(f.turn), y: 0 })), x);
  const [p, q] = [surface(b), surface(b + 1)];
  const share = Math.min(1, Math.max(0, (x - p.x) / Math.max(Number.EPSILON, q.x - p.x)));
  return new Vector3(x, p.y + (q.y - p.y) * share, 0);
}

/** The people who are the load; where it is none, an arrow above the caps over each frame that carries more than empty, as long as the load is large. */
function showLoads(group: Group, shown: Shown, plain: boolean): void {
  group.children.forEach((child) => { (child as InstancedMesh).geometry.dispose(); });
  group.clear();
  const load = drawnLoad(shown.state);
  if (load === null || shown.state.apart !== null) {
    return;
  }

  if (isPeople(load)) {
    group.add(crowd(shown, load, plain));
    return;
  }

  const most = Math.max(...load.extra);
  const at = load.extra.flatMap((force, i) => (most > 1 && force > 0.02 * most ? [{ i, long: 0.25 + 0.6 * force / most }] : []));
  if (at.length === 0) {
    return;
  }

  const colour = new MeshLambertMaterial({ color: 0xb4380f, emissive: 0x3a1004 });
  const shafts = new InstancedMesh(new CylinderGeometry(0.022, 0.022, 1, 10), colour, at.length);
  const heads = new InstancedMesh(new ConeGeometry(0.075, 0.18, 14), colour, at.length);
  const over = shown.view.guard + 0.06;
  at.forEach(({ i, long }, k) => {
    const f = shown.view.frames[i];
    const foot = shown.deckAt((shown.shape().nodes[i] ?? { x: f?.x ?? 0 }).x);
    heads.setMatrixAt(k, new Matrix4().makeRotationX(Math.PI).setPosition(foot.x, foot.y + over + 0.09, 0));
    shafts.setMatrixAt(k, new Matrix4().makeScale(1, long, 1).setPosition(foot.x, foot.y + over + 0.16 + long / 2, 0));
  });
  shafts.castShadow = true;
  group.add(shafts, heads);
}
