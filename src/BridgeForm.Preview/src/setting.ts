import {
  BackSide, BoxGeometry, Color, CylinderGeometry, DodecahedronGeometry, Float32BufferAttribute, Group, Matrix4, Mesh,
  MeshBasicMaterial, MeshLambertMaterial, PlaneGeometry, Quaternion, SphereGeometry, Vector3, type BufferGeometry,
} from 'three';
import { groundMesh, groundOf, type Ground } from './ground';
import { painted, paintedMesh } from './painted';
import { dice, trees } from './trees';
import type { BridgeView, Landing } from './view';

/** Everything that is not the bridge: plain stand-ins so that it does not hang in the air. */
export interface Setting { group: Group; sky: Mesh; paintSky: (zenith: Color, horizon: Color) => void; land: Land }

/** Ground, stones, trees and water: what takes longest to build, and hangs on little of the bridge. `of` tells on what. */
export interface Land { group: Group; of: string }

const STONE = new Color(0xa9a69d);
const LOG = new Color(0x85725e);

export const landOf = (view: BridgeView): string =>
  JSON.stringify([view.span, view.rise, view.ground, view.water, view.landings, view.ropeSpacing, view.ropeLowY]);

export function buildLand(view: BridgeView): Land {
  const ground = groundOf(view);
  const group = new Group();
  group.add(groundMesh(view, ground), paintedMesh(stones(view, ground), true), paintedMesh(trees(view, ground), false));
  if (view.water !== null) {
    group.add(water(view, view.water));
  }

  return { group, of: landOf(view) };
}

/** The setting of a bridge, on a land that was built before where one is given. */
export function buildSetting(view: BridgeView, land: Land = buildLand(view)): Setting {
  const ground = groundOf(view);
  const group = new Group();
  const props = [
    ...support(view, view.landings[0], 0, 0, -1, ground),
    ...support(view, view.landings[1], view.span, view.rise, 1, ground),
  ];
  group.add(land.group, paintedMesh(props, true));
  const sky = skyDome();
  return { group, sky: sky.mesh, paintSky: sky.paint, land };
}

/** Landing, walkway and the two posts that stand in for whatever holds the ropes. `out` points away from the bridge. */
function support(view: BridgeView, landing: Landing, x: number, y: number, out: number, ground: Ground): BufferGeometry[] {
  const radius = Math.min(0.13, 0.1 * view.ropeSpacing);
  const slot = view.ropeRadius + 0.03;
  const half = view.ropeSpacing / 2;
  const reach = half + 0.28;
  const block = (x0: number, x1: number, top: number, height: number, z0: number, z1: number): BufferGeometry =>
    painted(new BoxGeometry(Math.abs(x1 - x0), height, z1 - z0).translate((x0 + x1) / 2, top - height / 2, (z0 + z1) / 2), STONE);
  const log = (r0: number, r1: number, height: number, middle: number, z: number): BufferGeometry =>
    painted(new CylinderGeometry(r0, r1, height, 20).translate(x + out * (landing.baseHalf + 0.1 + radius), middle, z), LOG);
  const shapes = ([[-reach, -half - slot], [-half + slot, half - slot], [half + slot, reach]] as const).map(([z0, z1]) =>
    block(x + out * (landing.baseHalf + 0.3 + 2 * radius), x - out * (landing.baseHalf + 0.05), landing.top, 0.6, z0, z1));
  const walkHalf = half - radius - 0.05;
  shapes.push(block(
    x + out * (landing.baseHalf + landing.gap), x + out * 1.5, landing.walk, landing.walk - landing.top + 0.4, -walkHalf, walkHalf));
  for (const z of [-half, half]) {
    const foot = Math.min(ground(x + out * 0.3, z), y) - 0.6;
    const top = landing.walk + view.guard + 0.14;
    shapes.push(log(radius * 0.92, radius, top - foot, (top + foot) / 2, z), log(radius * 0.55, radius * 0.92, 0.05, top + 0.025, z));
    if (landing.stay !== null) {
      const [ax, ay] = landing.stay;
      shapes.push(painted(new BoxGeometry(0.7, 0.7, 0.5).translate(ax, Math.max(ay, ground(ax, z) - 0.15), z), STONE));
    }
  }

  return shapes;
}

function water(view: BridgeView, level: number): Mesh {
  const mesh = new Mesh(
    new PlaneGeometry(view.span * 1.2, 6 * view.span + 200).rotateX(-Math.PI / 2).translate(view.span / 2, level, 0),
    new MeshLambertMaterial({ color: 0x6f96a3, transparent: true, opacity: 0.86 }));
  mesh.receiveShadow = true;
  return mesh;
}

function stones(view: BridgeView, ground: Ground): BufferGeometry[] {
  const roll = dice(7);
  return Array.from({ length: 70 }, () => {
    const z = (roll() - 0.5) * 26;
    const x = view.span / 2 + (roll() + roll() + roll() - 1.5) * Math.min(view.span, 40) * 0.3 - 0.8 * Math.sin(z * 0.21);
    const size = 0.05 + 0.22 * roll() ** 3;
    const at = new Matrix4().compose(
      new Vector3(x, ground(x, z) + size * 0.15, z),
      new Quaternion().setFromAxisAngle(new Vector3(roll(), roll(), roll()).normalize(), 6 * roll()),
      new Vector3(size * (1 + roll()), size * 0.7, size * (1 + 0.5 * roll())));
    return painted(new DodecahedronGeometry(1, 0).applyMatrix4(at), STONE.clone().multiplyScalar(0.7 + 0.3 * roll()), true);
  });
}

function skyDome(): { mesh: Mesh; paint: (zenith: Color, horizon: Color) => void } {
  const geometry = new SphereGeometry(1, 24, 16);
  const count = geometry.getAttribute('position').count;
  const colours = new Float32BufferAttribute(new Float32Array(count * 3), 3);
  geometry.setAttribute('color', colours);
  const mesh = new Mesh(geometry, new MeshBasicMaterial({ vertexColors: true, side: BackSide, fog: false, depthWrite: false, toneMapped: false }));
  mesh.renderOrder = -1;
  mesh.frustumCulled = false;
  return {
    mesh,
    paint: (zenith, horizon) => {
      for (let i = 0; i < count; i++) {
        const up = Math.max(0, geometry.getAttribute('position').getY(i));
        const colour = horizon.clone().lerp(zenith, Math.min(1, up * 1.6) ** 0.7);
        colours.setXYZ(i, colour.r, colour.g, colour.b);
      }

      colours.needsUpdate = true;
    },
  };
}
