import {
  BackSide, Color, DodecahedronGeometry, Float32BufferAttribute, Group, Matrix4, Mesh,
  MeshBasicMaterial, MeshLambertMaterial, PlaneGeometry, Quaternion, SphereGeometry, Vector3, type BufferGeometry, type Material,
} from 'three';
import * as growth from './full/growth';
import { EARTH, stillWater } from './full/materials';
import { groundMesh, groundOf, type Ground } from './ground';
import { painted, paintedMesh } from './painted';
import { anchors, kindOf, support } from './support';
import { dice, trees, treesOf, type Tree } from './trees';
import type { BridgeView, SupportKind } from './view';

/** Everything that is not the bridge: plain stand-ins so that it does not hang in the air. */
export interface Setting { group: Group; sky: Mesh; paintSky: (zenith: Color, horizon: Color) => void; land: Land; ground: Ground; kinds: SupportKind[]; anchors: { x: number; y: number; z: number }[] }

/** Ground, stones, trees and water: what takes longest to build, and hangs on little of the bridge. `of` tells on what. */
export interface Land { group: Group; of: string; trees: Tree[] }

const STONE = new Color(0xa9a69d);

export const landOf = (view: BridgeView): string =>
  JSON.stringify([view.span, view.rise, view.ground, view.water, view.landings, view.ropeSpacing, view.ropeLowY]);

export function buildLand(view: BridgeView, plain: boolean): Land {
  const ground = groundOf(view);
  const group = new Group();
  if (!plain) {
    group.add(groundMesh(view, ground, EARTH), growth.stones(view, ground), growth.trunks(view, ground), growth.leaves(view, ground), growth.grass(view, ground));
    if (view.water !== null) {
      group.add(water(view, view.water, stillWater()));
    }

    return { group, of: landOf(view), trees: treesOf(view, ground) };
  }

  group.add(groundMesh(view, ground), paintedMesh(stones(view, ground), true), paintedMesh(trees(view, ground), false));
  if (view.water !== null) {
    group.add(water(view, view.water, new MeshLambertMaterial({ color: 0x6f96a3, transparent: true, opacity: 0.86 })));
  }

  return { group, of: landOf(view), trees: treesOf(view, ground) };
}

/** The setting of a bridge, on a land that was built before where one is given. */
export function buildSetting(view: BridgeView, plain: boolean, land: Land = buildLand(view, plain)): Setting {
  const ground = groundOf(view);
  const group = new Group();
  const props = [
    ...support(view, 0, ground),
    ...support(view, 1, ground),
  ];
  group.add(land.group, paintedMesh(props, true, plain ? undefined : EARTH));
  const sky = skyDome();
  return { group, sky: sky.mesh, paintSky: sky.paint, land, ground, kinds: [kindOf(view, 0), kindOf(view, 1)], anchors: anchors(view, ground) };
}

function water(view: BridgeView, level: number, material: Material): Mesh {
  const mesh = new Mesh(
    new PlaneGeometry(view.span * 1.2, 6 * view.span + 200).rotateX(-Math.PI / 2).translate(view.span / 2, level, 0),
    material);
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
