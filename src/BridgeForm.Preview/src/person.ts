import { CapsuleGeometry, Color, Matrix4, Quaternion, SphereGeometry, Vector3, type BufferGeometry, type Mesh } from 'three';
import { painted, paintedMesh } from './painted';

/** Height of the mannequin, metres. Common practice, no source. */
export const PERSON_HEIGHT = 1.7;

/** A plain walking mannequin, feet at the origin, facing +x. */
export function buildPerson(): Mesh {
  const cloth = new Color(0x55707f);
  const skin = new Color(0xcdb9a4);
  const shapes: BufferGeometry[] = [];
  const limb = (from: [number, number, number], to: [number, number, number], radius: number, colour: Color): void => {
    const [a, b] = [new Vector3(...from), new Vector3(...to)];
    const turn = new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), b.clone().sub(a).normalize());
    const at = new Matrix4().compose(a.clone().add(b).multiplyScalar(0.5), turn, new Vector3(1, 1, 1));
    shapes.push(painted(new CapsuleGeometry(radius, a.distanceTo(b), 4, 10).applyMatrix4(at), colour));
  };
  limb([0.2, 0.07, 0.1], [0.1, 0.48, 0.1], 0.055, cloth);
  limb([0.1, 0.48, 0.1], [0, 0.88, 0.09], 0.07, cloth);
  limb([-0.26, 0.1, -0.1], [-0.06, 0.48, -0.1], 0.055, cloth);
  limb([-0.06, 0.48, -0.1], [0, 0.88, -0.09], 0.07, cloth);
  limb([0, 0.95, 0], [0.02, 1.27, 0], 0.145, cloth);
  limb([0.02, 1.36, 0.19], [-0.06, 1.1, 0.22], 0.045, cloth);
  limb([-0.06, 1.1, 0.22], [0.08, 0.88, 0.22], 0.04, skin);
  limb([0.02, 1.36, -0.19], [0.06, 1.1, -0.22], 0.045, cloth);
  limb([0.06, 1.1, -0.22], [0.24, 0.92, -0.22], 0.04, skin);
  limb([0.02, 1.42, 0], [0.03, 1.5, 0], 0.05, skin);
  limb([0.24, 0.035, 0.1], [0.12, 0.035, 0.1], 0.035, skin);
  limb([-0.24, 0.07, -0.1], [-0.32, 0.12, -0.1], 0.035, skin);
  shapes.push(painted(new SphereGeometry(0.1, 16, 12).scale(0.95, 1.2, 0.82).translate(0.04, PERSON_HEIGHT - 0.12, 0), skin));
  return paintedMesh(shapes, true);
}
