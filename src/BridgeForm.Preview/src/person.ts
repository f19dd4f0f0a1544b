import { CapsuleGeometry, Color, Matrix4, Quaternion, SphereGeometry, Vector3, type BufferGeometry, type Mesh } from 'three';
import { mergeGeometries } from 'three/examples/jsm/utils/BufferGeometryUtils.js';
import { CLOTHED } from './full/materials';
import { painted, paintedMesh } from './painted';

/** Height of the mannequin, metres. Common practice, no source. */
export const PERSON_HEIGHT = 1.7;

const CLOTH = new Color(0x55707f);
const TROUSERS = new Color(0x4a4f57);
const SKIN = new Color(0xcaa78c);
const HAIR = new Color(0x4b3a2d);
const SHOE = new Color(0x3a3430);
const DARK = new Color(0x25211f);

type Spot = [number, number, number];

/** Somebody walking, feet at the origin, facing +x. `near`: with a face and fingers, for one who is looked at. */
export function personShape(near: boolean): BufferGeometry {
  const shapes: BufferGeometry[] = [];
  const [rings, sides] = near ? [4, 12] : [2, 6];
  const limb = (from: Spot, to: Spot, radius: number, colour: Color): void => {
    const [a, b] = [new Vector3(...from), new Vector3(...to)];
    const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), b.clone().sub(a).normalize());
    const at = new Matrix4().compose(a.clone().add(b).multiplyScalar(0.5), turn, new Vector3(1, 1, 1));
    shapes.push(painted(new CapsuleGeometry(radius, a.distanceTo(b), rings, sides).applyMatrix4(at), colour));
  };
  const ball = (at: Spot, size: Spot, colour: Color, fine = 1): void => {
    shapes.push(painted(new SphereGeometry(1, Math.round(sides * fine), Math.round(sides * fine * 0.75)).scale(...size).translate(...at), colour));
  };
  // Legs: the left one in front, its heel on the ground.
  limb([0.2, 0.1, 0.1], [0.1, 0.48, 0.1], 0.052, TROUSERS);
  limb([0.1, 0.48, 0.1], [0, 0.86, 0.09], 0.072, TROUSERS);
  limb([-0.26, 0.12, -0.1], [-0.06, 0.48, -0.1], 0.052, TROUSERS);
  limb([-0.06, 0.48, -0.1], [0, 0.86, -0.09], 0.072, TROUSERS);
  ball([0.24, 0.045, 0.1], [0.13, 0.045, 0.048], SHOE);
  ball([-0.25, 0.075, -0.1], [0.12, 0.05, 0.048], SHOE);
  // Hips, chest and shoulders, wider than deep.
  ball([0, 0.92, 0], [0.115, 0.13, 0.165], TROUSERS);
  ball([0.01, 1.13, 0], [0.115, 0.23, 0.165], CLOTH);
  ball([0.02, 1.3, 0], [0.125, 0.14, 0.19], CLOTH);
  limb([0.02, 1.36, 0.17], [-0.06, 1.1, 0.22], 0.046, CLOTH);
  limb([-0.06, 1.1, 0.22], [0.06, 0.9, 0.23], 0.036, SKIN);
  limb([0.02, 1.36, -0.17], [0.06, 1.1, -0.22], 0.046, CLOTH);
  limb([0.06, 1.1, -0.22], [0.22, 0.94, -0.23], 0.036, SKIN);
  limb([0.02, 1.4, 0], [0.03, 1.48, 0], 0.05, SKIN);
  ball([0.04, PERSON_HEIGHT - 0.125, 0], [0.095, 0.118, 0.076], SKIN, 1.4);
  ball([0.022, PERSON_HEIGHT - 0.1, 0], [0.098, 0.1, 0.083], HAIR, 1.4);
  hand(limb, ball, [0.085, 0.85, 0.232], near);
  hand(limb, ball, [0.255, 0.895, -0.232], near);
  if (near) {
    face(limb, ball);
  }

  return mergeGeometries(shapes);
}

type Limb = (from: Spot, to: Spot, radius: number, colour: Color) => void;
type Ball = (at: Spot, size: Spot, colour: Color) => void;

function hand(limb: Limb, ball: Ball, [x, y, z]: Spot, near: boolean): void {
  ball([x, y, z], [0.036, 0.045, 0.017], SKIN);
  for (let k = 0; near && k < 4; k++) {
    const across = x - 0.022 + 0.016 * k;
    limb([across, y - 0.03, z], [across + 0.01, y - 0.078 + 0.006 * Math.abs(k - 1.5), z - 0.004], 0.008, SKIN);
  }

  if (near) {
    limb([x + 0.03, y + 0.01, z], [x + 0.05, y - 0.032, z - 0.006], 0.009, SKIN);
  }
}

function face(limb: Limb, ball: Ball): void {
  const eyes = PERSON_HEIGHT - 0.12;
  limb([0.13, eyes - 0.005, 0], [0.146, eyes - 0.036, 0], 0.011, SKIN);
  for (const side of [-1, 1]) {
    ball([0.122, eyes, side * 0.03], [0.012, 0.009, 0.014], new Color(0xe9e4dc));
    ball([0.132, eyes, side * 0.03], [0.004, 0.006, 0.006], DARK);
    limb([0.128, eyes + 0.022, side * 0.018], [0.12, eyes + 0.024, side * 0.044], 0.004, HAIR);
    ball([0.035, eyes - 0.015, side * 0.078], [0.016, 0.027, 0.009], SKIN);
  }

  limb([0.126, eyes - 0.066, -0.019], [0.126, eyes - 0.066, 0.019], 0.005, new Color(0xa5705f));
}

/** The one for scale. */
export function buildPerson(plain: boolean): Mesh {
  return paintedMesh([personShape(true)], true, plain ? undefined : CLOTHED);
}
