import { CapsuleGeometry, Group, Mesh, MeshLambertMaterial, SphereGeometry, Vector3 } from 'three';

/** Height of the mannequin, metres. Common practice, no source. */
export const PERSON_HEIGHT = 1.7;

/** A plain walking mannequin, feet at the origin, facing +x. */
export function buildPerson(): Group {
  const cloth = new MeshLambertMaterial({ color: 0x3f5b6d });
  const skin = new MeshLambertMaterial({ color: 0xcdb9a4 });
  const person = new Group();
  const limb = (from: [number, number, number], to: [number, number, number], radius: number, material: MeshLambertMaterial): void => {
    const [a, b] = [new Vector3(...from), new Vector3(...to)];
    const mesh = new Mesh(new CapsuleGeometry(radius, a.distanceTo(b), 4, 10), material);
    mesh.position.copy(a).add(b).multiplyScalar(0.5);
    mesh.quaternion.setFromUnitVectors(new Vector3(0, 1, 0), b.sub(a).normalize());
    mesh.castShadow = true;
    person.add(mesh);
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
  const head = new Mesh(new SphereGeometry(0.11, 16, 12).scale(0.95, 1.12, 0.85), skin);
  head.position.set(0.04, PERSON_HEIGHT - 0.125, 0);
  head.castShadow = true;
  person.add(head);
  return person;
}
