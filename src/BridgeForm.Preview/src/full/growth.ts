import {
  BufferGeometry, CanvasTexture, Color, Euler, Float32BufferAttribute, IcosahedronGeometry, InstancedMesh, Matrix4, Mesh,
  PlaneGeometry, Quaternion, SRGBColorSpace, Vector3, type Object3D,
} from 'three';
import { pathAt, smooth, type Ground } from '../ground';
import { paintedMesh } from '../painted';
import { bar, isRaised } from '../support';
import { crowns, dice, mayGrow, treesOf } from '../trees';
import type { BridgeView } from '../view';
import { EARTH, foliage } from './materials';

const TUFTS = 38000;

/** Fewer than these are no meadow. */
const FEWEST = 12000;
const BLADES = 7;
const LEAVES = 330;
const STONES = 120;
const BARK = new Color(0x6b6258);

/** Grass as far as single blades are told from a meadow. */
export function grass(view: BridgeView, ground: Ground): InstancedMesh {
  const roll = dice(23);
  const [wide, deep] = [view.span + 26, 22 + 0.75 * view.span];
  const grow = Math.sqrt(Math.max(1, wide * deep / 1100));
  const mesh = new InstancedMesh(tuft(), foliage({ vertexColors: true }), TUFTS);
  const [place, turn, colour] = [new Matrix4(), new Quaternion(), new Color()];
  let count = 0;
  for (let tries = 0; count < TUFTS && tries < 3 * TUFTS; tries++) {
    const x = view.span / 2 + (roll() - 0.5) * wide;
    const z = 1 + 0.1 * view.span + (roll() - 0.5) * deep;
    if (!grassy(view, ground, x, z)) {
      continue;
    }

    const patch = 0.6 + 0.4 * Math.sin(x * 0.9) * Math.sin(z * 0.7 + 1);
    const tall = (0.07 + 0.13 * roll() * patch) * Math.sqrt(grow);
    turn.setFromEuler(new Euler(0, roll() * 6.28, 0));
    mesh.setMatrixAt(count, place.compose(new Vector3(x, ground(x, z) - 0.01, z), turn, new Vector3(grow, tall, grow)));
    mesh.setColorAt(count, colour.setHSL(0.18 + 0.07 * roll(), 0.3 + 0.14 * roll(), 0.4 + 0.16 * roll()));
    count++;
  }

  mesh.count = count;
  mesh.name = GRASS;
  mesh.userData = { grown: count };
  mesh.receiveShadow = true;
  mesh.frustumCulled = false;
  return mesh;
}

const GRASS = 'grass';

/** As much grass as leaves a picture within its triangles, beside a bridge that takes so many of them; tufts stand in no order. */
export function thinGrass(land: Object3D, taken: number): void {
  const mesh = land.getObjectByName(GRASS) as InstancedMesh | undefined;
  if (mesh !== undefined) {
    mesh.count = Math.min(mesh.userData.grown as number, Math.max(FEWEST, Math.floor((ROOM - taken) / BLADES)));
  }
}

/** Triangles of grass and bridge together, its shadow as well: what is left of 600,000 beside trees, stones and a crowd. */
const ROOM = 345000;

/** No grass on the path, under stones of landings, in water or on the bed of a stream, nor on bare slopes. */
function grassy(view: BridgeView, ground: Ground, x: number, z: number): boolean {
  const back = Math.max(-x, x - view.span);
  const landing = back > -0.5 && back < 1.8 && Math.abs(z) < view.ropeSpacing / 2 + 0.4 && !isRaised(view, x < view.span / 2 ? 0 : 1);
  return !landing && pathAt(view, x, z) < 0.3 && Math.abs(ground(x + 0.2, z) - ground(x - 0.2, z)) < 0.36 && mayGrow(view, ground, x, z, 0);
}

function tuft(): BufferGeometry {
  const roll = dice(3);
  const [points, colours, normals] = [[] as number[], [] as number[], [] as number[]];
  for (let i = 0; i < BLADES; i++) {
    const [x, z, turn, lean] = [(roll() - 0.5) * 0.16, (roll() - 0.5) * 0.16, roll() * 3.14, (roll() - 0.5) * 0.09];
    const [dx, dz] = [0.01 * Math.cos(turn), 0.01 * Math.sin(turn)];
    points.push(x - dx, 0, z - dz, x + dx, 0, z + dz, x + lean, 0.6 + 0.4 * roll(), z + lean * 0.8);
    normals.push(0, 1, 0.25, 0, 1, 0.25, 0, 1, 0.25);
    colours.push(0.62, 0.66, 0.5, 0.62, 0.66, 0.5, 1.15, 1.15, 1);
  }

  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(points, 3));
  geometry.setAttribute('normal', new Float32BufferAttribute(normals, 3));
  geometry.setAttribute('color', new Float32BufferAttribute(colours, 3));
  return geometry;
}

/** Trunks with limbs. */
export function trunks(view: BridgeView, ground: Ground): Mesh {
  const roll = dice(29);
  const shapes = treesOf(view, ground).flatMap(({ x, y, z, tall }) => {
    const up = (share: number): Vector3 => new Vector3(x + 0.02 * tall * Math.sin(share * 5), y + tall * share, z);
    const limbs = [0, 1, 2, 3].map((k) => {
      const [from, turn] = [up(0.36 + 0.07 * k), 1.7 * k + 6.28 * roll()];
      return bar(from, from.clone().add(new Vector3(Math.cos(turn), 1.1, Math.sin(turn)).multiplyScalar(0.16 * tall)), 0.011 * tall, 0.004 * tall, BARK, 6);
    });
    return [bar(up(0), up(0.12), 0.034 * tall, 0.022 * tall, BARK, 9), bar(up(0.12), up(0.72), 0.022 * tall, 0.008 * tall, BARK, 9), ...limbs];
  });
  return paintedMesh(shapes, true, EARTH);
}

/** Leaves: cards of a spray each, on the skins of the balls that a crown is made of. */
export function leaves(view: BridgeView, ground: Ground): InstancedMesh {
  const roll = dice(31);
  const all = [...treesOf(view, ground), ...crowns(view)];
  const material = foliage({ map: spray(), alphaTest: 0.42 });
  const mesh = new InstancedMesh(new PlaneGeometry(1, 1), material, Math.max(1, all.length * LEAVES));
  const [place, turn, colour, out] = [new Matrix4(), new Quaternion(), new Color(), new Vector3()];
  const front = new Vector3(0, 0, 1);
  const tint = { h: 0, s: 0, l: 0 };
  all.forEach((tree, t) => {
    tree.tint.getHSL(tint);
    for (let i = 0; i < LEAVES; i++) {
      const ball = i % 8;
      const up = ball / 7;
      const size = tree.tall * (0.19 - 0.09 * up) * (0.9 + 0.25 * roll());
      const [around, high] = [6.28 * roll(), 2 * roll() - 0.8];
      const flat = Math.sqrt(Math.max(0, 1 - high * high));
      out.set(flat * Math.cos(around), high, flat * Math.sin(around)).normalize();
      const swing = ball * 2.4 + t;
      const middle = new Vector3(
        tree.x + Math.cos(swing) * tree.tall * 0.15 * (1 - 0.7 * up), tree.y + tree.tall * (0.42 + 0.47 * up),
        tree.z + Math.sin(swing) * tree.tall * 0.15 * (1 - 0.7 * up));
      turn.setFromUnitVectors(front, out).multiply(new Quaternion().setFromAxisAngle(front, 6.28 * roll()))
        .multiply(new Quaternion().setFromEuler(new Euler(roll() - 0.5, roll() - 0.5, 0)));
      const depth = 0.7 + 0.35 * roll();
      mesh.setMatrixAt(t * LEAVES + i, place.compose(middle.addScaledVector(out, size * depth), turn, new Vector3().setScalar(0.12 * tree.tall * (0.7 + 0.6 * roll()))));
      mesh.setColorAt(t * LEAVES + i, colour.setHSL(tint.h + 0.03 * (roll() - 0.5), tint.s + 0.08, (0.3 + 0.3 * depth) * (0.78 + 0.22 * high) * (0.75 + 0.4 * roll())));
    }
  });
  mesh.castShadow = true;
  mesh.receiveShadow = true;
  mesh.frustumCulled = false;
  return mesh;
}

/** A spray of leaves, drawn here: no picture is loaded. */
function spray(): CanvasTexture {
  const roll = dice(37);
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [128, 128];
  const ink = canvas.getContext('2d');
  for (let i = 0; ink !== null && i < 44; i++) {
    const [far, turn] = [50 * Math.sqrt(roll()), 6.28 * roll()];
    ink.save();
    ink.translate(64 + far * Math.cos(turn), 64 + far * Math.sin(turn));
    ink.rotate(6.28 * roll());
    ink.fillStyle = `hsl(${70 + 20 * roll()} 14% ${60 + 35 * roll()}%)`;
    ink.beginPath();
    ink.ellipse(0, 0, 10, 4.6, 0, 0, 6.3);
    ink.fill();
    ink.restore();
  }

  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  return texture;
}

/** Stones as water rounds them: one shape, turned and stretched. */
export function stones(view: BridgeView, ground: Ground): InstancedMesh {
  const roll = dice(7);
  const shape = new IcosahedronGeometry(1, 2);
  const at = shape.getAttribute('position');
  for (let i = 0; i < at.count; i++) {
    const [x, y, z] = [at.getX(i), at.getY(i), at.getZ(i)];
    const f = 1 + 0.13 * Math.sin(2.3 * x + 1) * Math.sin(2.9 * y + 2) + 0.08 * Math.sin(4.1 * z + 2.3 * x);
    at.setXYZ(i, x * f, y * f * 0.7, z * f);
  }

  shape.setAttribute('normal', new Float32BufferAttribute(at.array.slice(), 3));
  shape.normalizeNormals();
  shape.setAttribute('color', new Float32BufferAttribute(new Float32Array(3 * at.count).fill(1), 3));
  const mesh = new InstancedMesh(shape, EARTH, STONES);
  const [place, turn, colour] = [new Matrix4(), new Quaternion(), new Color()];
  for (let i = 0; i < STONES; i++) {
    const z = (roll() - 0.5) * 26;
    const x = view.span / 2 + (roll() + roll() + roll() - 1.5) * Math.min(view.span, 40) * 0.3 - 0.8 * Math.sin(z * 0.21);
    const size = 0.05 + 0.24 * roll() ** 3;
    turn.setFromEuler(new Euler(0.4 * (roll() - 0.5), 6.28 * roll(), 0.4 * (roll() - 0.5)));
    mesh.setMatrixAt(i, place.compose(new Vector3(x, ground(x, z) + size * 0.2, z), turn, new Vector3(size * (1 + roll()), size, size * (1 + 0.5 * roll()))));
    mesh.setColorAt(i, colour.setHSL(0.09, 0.05 + 0.05 * roll(), 0.34 + 0.22 * roll() * smooth(0, 0.2, size)));
  }

  mesh.castShadow = true;
  mesh.receiveShadow = true;
  mesh.frustumCulled = false;
  return mesh;
}
