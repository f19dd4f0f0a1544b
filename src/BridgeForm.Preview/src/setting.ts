import {
  BackSide, BoxGeometry, BufferGeometry, Color, CylinderGeometry, DodecahedronGeometry, Float32BufferAttribute, Group,
  IcosahedronGeometry, InstancedMesh, Matrix4, Mesh, MeshBasicMaterial, MeshLambertMaterial, PlaneGeometry, Quaternion,
  SphereGeometry, Vector3,
} from 'three';
import { groundMesh, groundOf, type Ground } from './ground';
import type { BridgeView, Landing } from './view';

/** Everything that is not the bridge: plain stand-ins so that it does not hang in the air. */
export interface Setting { group: Group; ground: Ground; sky: Mesh; paintSky: (zenith: Color, horizon: Color) => void }

export function buildSetting(view: BridgeView): Setting {
  const ground = groundOf(view);
  const group = new Group();
  group.add(groundMesh(view, ground), ...stones(view, ground), ...trees(view, ground));
  group.add(...support(view, view.landings[0], 0, 0, -1, ground), ...support(view, view.landings[1], view.span, view.rise, 1, ground));
  if (view.water !== null) {
    group.add(water(view, view.water));
  }

  const sky = skyDome();
  return { group, ground, sky: sky.mesh, paintSky: sky.paint };
}

/** Landing, walkway and the two posts that stand in for whatever holds the ropes. */
function support(view: BridgeView, landing: Landing, x: number, y: number, out: number, ground: Ground): Mesh[] {
  const stone = new MeshLambertMaterial({ color: 0x9c9a93 });
  const log = new MeshLambertMaterial({ color: 0x6d5138 });
  const radius = Math.min(0.13, 0.1 * view.ropeSpacing);
  const slot = view.ropeRadius + 0.03;
  const half = view.ropeSpacing / 2;
  const reach = half + 0.28;
  const block = (x0: number, x1: number, top: number, height: number, z0: number, z1: number): Mesh =>
    shaded(new Mesh(new BoxGeometry(Math.abs(x1 - x0), height, z1 - z0).translate((x0 + x1) / 2, top - height / 2, (z0 + z1) / 2), stone));
  const meshes = ([[-reach, -half - slot], [-half + slot, half - slot], [half + slot, reach]] as const).map(([z0, z1]) =>
    block(x + out * (landing.baseHalf + 0.3 + radius * 2), x - out * (landing.baseHalf + 0.05), landing.top, 0.6, z0, z1));
  const walkHalf = half - radius - 0.05;
  meshes.push(block(x + out * (landing.baseHalf + landing.gap), x + out * 1.5, landing.walk, landing.walk - landing.top + 0.4, -walkHalf, walkHalf));
  const postX = x + out * (landing.baseHalf + 0.1 + radius);
  for (const z of [-half, half]) {
    const foot = Math.min(ground(postX, z), y) - 0.6;
    const top = landing.walk + view.guard + 0.14;
    meshes.push(shaded(new Mesh(new CylinderGeometry(radius * 0.92, radius, top - foot, 20).translate(postX, (top + foot) / 2, z), log)));
    meshes.push(shaded(new Mesh(new CylinderGeometry(radius * 0.55, radius * 0.92, 0.05, 20).translate(postX, top + 0.025, z), log)));
    if (landing.stay !== null) {
      const [ax, ay] = landing.stay;
      meshes.push(shaded(new Mesh(new BoxGeometry(0.7, 0.7, 0.5).translate(ax, Math.max(ay, ground(ax, z) - 0.15), z), stone)));
    }
  }

  return meshes;
}

function shaded(mesh: Mesh): Mesh {
  mesh.castShadow = true;
  mesh.receiveShadow = true;
  return mesh;
}

function water(view: BridgeView, level: number): Mesh {
  const size = 6 * view.span + 200;
  const mesh = new Mesh(
    new PlaneGeometry(view.span * 1.2, size).rotateX(-Math.PI / 2).translate(view.span / 2, level, 0),
    new MeshLambertMaterial({ color: 0x6f96a3, transparent: true, opacity: 0.86 }));
  mesh.receiveShadow = true;
  return mesh;
}

/** The same numbers for every bridge of the same size: pictures of a bridge never differ. */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1664525 + 1013904223) % 4294967296;
    return state / 4294967296;
  };
}

function stones(view: BridgeView, ground: Ground): InstancedMesh[] {
  const roll = dice(7);
  const count = 70;
  const mesh = new InstancedMesh(new DodecahedronGeometry(1, 0), new MeshLambertMaterial({ color: 0x8f8c84, flatShading: true }), count);
  for (let i = 0; i < count; i++) {
    const z = (roll() - 0.5) * 26;
    const x = view.span / 2 + (roll() + roll() + roll() - 1.5) * Math.min(view.span, 40) * 0.3 - 0.8 * Math.sin(z * 0.21);
    const size = 0.05 + 0.22 * roll() ** 3;
    mesh.setMatrixAt(i, new Matrix4().compose(
      new Vector3(x, ground(x, z) + size * 0.15, z),
      new Quaternion().setFromAxisAngle(new Vector3(roll(), roll(), roll()).normalize(), 6 * roll()),
      new Vector3(size * (1 + roll()), size * 0.7, size * (1 + 0.5 * roll()))));
  }

  mesh.castShadow = true;
  mesh.receiveShadow = true;
  return [mesh];
}

/** Far enough aside not to hide the bridge, most of them behind it as seen from the right. */
function trees(view: BridgeView, ground: Ground): InstancedMesh[] {
  const roll = dice(11);
  const count = 30;
  const blobs = 4;
  const trunks = new InstancedMesh(new CylinderGeometry(0.6, 1, 1, 8), new MeshLambertMaterial({ color: 0x6b5a48 }), count);
  const crowns = new InstancedMesh(new IcosahedronGeometry(1, 1), new MeshLambertMaterial({ flatShading: true }), count * blobs);
  for (let i = 0; i < count; i++) {
    const behind = i % 4 !== 0;
    const z = behind ? -(7 + 32 * roll()) : 16 + 24 * roll();
    const sideways = roll() < 0.5 ? -1 : 1;
    const x = view.span / 2 + sideways * (view.span / 2 + (behind ? -0.12 * view.span : 2) + roll() * (12 + view.span * 0.4));
    const tall = 3.5 + 4.5 * roll();
    const foot = ground(x, z) - 0.2;
    const thin = 0.03 * tall;
    trunks.setMatrixAt(i, new Matrix4().makeTranslation(x, foot + tall * 0.3, z).scale(new Vector3(thin, tall * 0.6, thin)));
    for (let k = 0; k < blobs; k++) {
      const r = tall * (0.17 + 0.1 * roll());
      const turn = 6.28 * roll();
      const at = new Vector3(
        x + Math.cos(turn) * tall * 0.11 * k, foot + tall * (0.55 + 0.12 * k), z + Math.sin(turn) * tall * 0.11 * (blobs - k));
      crowns.setMatrixAt(i * blobs + k, new Matrix4().makeTranslation(at.x, at.y, at.z).scale(new Vector3(r, r * 0.9, r)));
      crowns.setColorAt(i * blobs + k, new Color().setHSL(0.2 + 0.08 * roll(), 0.26, 0.3 + 0.12 * roll()));
    }
  }

  return [trunks, crowns];
}

function skyDome(): { mesh: Mesh; paint: (zenith: Color, horizon: Color) => void } {
  const geometry: BufferGeometry = new SphereGeometry(1, 24, 16);
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
