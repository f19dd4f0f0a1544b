import { BatchedMesh, MeshLambertMaterial, MeshStandardMaterial, type Color, type Matrix4 } from 'three';
import type { SteelPiece } from './glb';

/** Plates and bolts of all joints in one mesh: instance i is piece i. */
export interface Steel { mesh: BatchedMesh; place: (at: (piece: SteelPiece) => Matrix4 | null) => void }

/** Null where no joint has steel. */
export function buildSteel(pieces: SteelPiece[], colour: Color, plain: boolean): Steel | null {
  if (pieces.length === 0) {
    return null;
  }

  const geometries = [...new Set(pieces.map((p) => p.geometry))];
  const mesh = new BatchedMesh(
    pieces.length,
    geometries.reduce((sum, g) => sum + g.getAttribute('position').count, 0),
    geometries.reduce((sum, g) => sum + (g.index?.count ?? 0), 0),
    plain ? new MeshLambertMaterial({ color: colour }) : new MeshStandardMaterial({ color: colour, metalness: 0.55, roughness: 0.5 }));
  mesh.castShadow = true;
  mesh.receiveShadow = true;
  mesh.frustumCulled = false;
  mesh.sortObjects = false;
  const ids = new Map(geometries.map((g) => [g, mesh.addGeometry(g)]));
  pieces.forEach((piece) => { mesh.setMatrixAt(mesh.addInstance(ids.get(piece.geometry) ?? 0), piece.place); });
  return {
    mesh,
    place: (at) => {
      pieces.forEach((piece, i) => {
        const matrix = at(piece);
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
