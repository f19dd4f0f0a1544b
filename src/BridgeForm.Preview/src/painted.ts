import { Color, Float32BufferAttribute, Mesh, MeshLambertMaterial, type BufferGeometry, type Material } from 'three';
import { mergeGeometries } from 'three/examples/jsm/utils/BufferGeometryUtils.js';

/** Everything around the bridge is drawn with this one material in the plain scene, so that only one program must be compiled for it. */
export const PAINT = new MeshLambertMaterial({ vertexColors: true });

/** Gives a shape one colour; where it has colours already, they are tinted. `faceted` shows its faces. */
export function painted(geometry: BufferGeometry, colour: Color, faceted = false): BufferGeometry {
  const made = geometry.index === null ? geometry : geometry.toNonIndexed();
  const count = made.getAttribute('position').count;
  const own = made.getAttribute('color');
  const colours = new Float32Array(3 * count);
  for (let i = 0; i < count; i++) {
    colours[3 * i] = colour.r * (own?.getX(i) ?? 1);
    colours[3 * i + 1] = colour.g * (own?.getY(i) ?? 1);
    colours[3 * i + 2] = colour.b * (own?.getZ(i) ?? 1);
  }

  made.setAttribute('color', new Float32BufferAttribute(colours, 3));
  made.deleteAttribute('uv');
  if (faceted) {
    made.computeVertexNormals();
  }

  return made;
}

/** One mesh of many painted shapes. */
export function paintedMesh(shapes: BufferGeometry[], casts: boolean, material: Material = PAINT): Mesh {
  const mesh = new Mesh(mergeGeometries(shapes), material);
  mesh.castShadow = casts;
  mesh.receiveShadow = true;
  return mesh;
}
