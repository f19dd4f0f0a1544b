import {
  BatchedMesh, BoxGeometry, MeshLambertMaterial, MeshStandardMaterial, Vector3, type BufferGeometry, type Color, type Matrix4,
} from 'three';
import type { SteelPiece } from './glb';

/** Plates and bolts of all joints in one mesh: instance i is piece i. */
export interface Steel { mesh: BatchedMesh; place: (at: (piece: SteelPiece) => Matrix4 | null, holes: boolean) => void }

/** Null where no joint has steel. */
export function buildSteel(pieces: SteelPiece[], colour: Color, plain: boolean): Steel | null {
  if (pieces.length === 0) {
    return null;
  }

  const exact = [...new Set(pieces.map((p) => p.geometry))];
  const blank = new Map(exact.map((g) => [g, blankOf(g)]));
  const geometries = [...new Set(exact.flatMap((g) => [g, blank.get(g) ?? g]))];
  const mesh = new BatchedMesh(
    pieces.length,
    geometries.reduce((sum, g) => sum + g.getAttribute('position').count, 0),
    geometries.reduce((sum, g) => sum + (g.index?.count ?? 0), 0),
    plain ? new MeshLambertMaterial({ color: colour }) : new MeshStandardMaterial({ color: colour, metalness: 0.55, roughness: 0.5 }));
  // Flush on the wood, whose shadow hides its own.
  mesh.castShadow = false;
  mesh.receiveShadow = true;
  mesh.frustumCulled = false;
  mesh.sortObjects = false;
  const ids = new Map(geometries.map((g) => [g, mesh.addGeometry(g)]));
  pieces.forEach((piece) => { mesh.setMatrixAt(mesh.addInstance(ids.get(piece.geometry) ?? 0), piece.place); });
  return {
    mesh,
    place: (at, holes) => {
      pieces.forEach((piece, i) => {
        const matrix = at(piece);
        mesh.setGeometryIdAt(i, ids.get(holes ? piece.geometry : blank.get(piece.geometry) ?? piece.geometry) ?? 0);
        mesh.setVisibleAt(i, matrix !== null);
        if (matrix !== null) {
          mesh.setMatrixAt(i, matrix);
        }
      });
      mesh.boundingBox = null;
      mesh.boundingSphere = null;
    },
  };
}

/** Sizes that differ by less than this are one, metres: single precision of the file. */
const SAME = 1e-5;

/**
 * A plate or a bolt as the box around it: bolts fill the holes but in the exploded view, and both are most of the triangles of a bridge
 * with plates. What is neither flat with straight edges nor round stays as it is.
 */
function blankOf(geometry: BufferGeometry): BufferGeometry {
  geometry.computeBoundingBox();
  const box = geometry.boundingBox;
  const at = geometry.getAttribute('position');
  if (box === null || at.count <= 24) {
    return geometry;
  }

  const [size, middle, point] = [box.getSize(new Vector3()), box.getCenter(new Vector3()), new Vector3()];
  const corners = new Set<string>();
  for (let i = 0; i < at.count; i++) {
    point.fromBufferAttribute(at, i).sub(middle);
    if ((['x', 'y', 'z'] as const).every((k) => Math.abs(Math.abs(point[k]) - size[k] / 2) < SAME)) {
      corners.add([point.x, point.y, point.z].map((c) => Math.sign(c)).join());
    }
  }

  const [thin, wide, long] = [size.x, size.y, size.z].sort((a, b) => a - b) as [number, number, number];
  if (corners.size < 8 && (wide - thin > 0.2 * wide || long < 1.5 * wide)) {
    return geometry;
  }

  const plain = new BoxGeometry(size.x, size.y, size.z).translate(middle.x, middle.y, middle.z);
  Object.keys(plain.attributes).filter((name) => !geometry.hasAttribute(name)).forEach((name) => plain.deleteAttribute(name));
  return plain;
}
