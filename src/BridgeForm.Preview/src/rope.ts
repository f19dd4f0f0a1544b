import { BufferAttribute, Color, Group, Mesh, MeshLambertMaterial, type BufferGeometry } from 'three';
import { wire } from './full/materials';
import type { Shape } from './shape';

/** The ropes, which bend with the bridge. */
export interface Ropes { group: Group; follow: (shape: Shape) => void }

/** Takes the ropes' tubes as they come in the model and lets each point of them move with the nodes. */
export function buildRopes(tubes: Mesh[], colour: Color, plain: boolean): Ropes {
  const group = new Group();
  const material = plain ? ropeMaterial(colour) : wire(colour);
  const ropes = tubes.map((tube) => {
    const geometry = tube.geometry.clone().applyMatrix4(tube.matrixWorld);
    const mesh = new Mesh(geometry, material);
    mesh.castShadow = true;
    mesh.frustumCulled = false;
    group.add(mesh);
    const still = geometry.getAttribute('position').array.slice() as Float32Array;
    return { geometry, still, side: side(still) };
  });
  return { group, follow: (shape) => ropes.forEach((r) => bend(r.geometry, r.still, r.side, shape)) };
}

const side = (points: Float32Array): number => ((points[2] ?? 0) < 0 ? -1 : 1);

function bend(geometry: BufferGeometry, still: Float32Array, side: number, shape: Shape): void {
  const position = geometry.getAttribute('position') as BufferAttribute;
  for (let i = 0; i < position.count; i++) {
    const [x, y, z] = [still[3 * i] ?? 0, still[3 * i + 1] ?? 0, still[3 * i + 2] ?? 0];
    const by = shape.shift(x, side);
    position.setXYZ(i, x + by.x, y + by.y, z);
  }

  position.needsUpdate = true;
  geometry.computeBoundingSphere();
}

/** Strands laid round the axis: light and dark by angle and by place along the rope. */
function ropeMaterial(colour: Color): MeshLambertMaterial {
  const material = new MeshLambertMaterial({ color: colour.clone().multiplyScalar(1.15) });
  material.onBeforeCompile = (shader) => {
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', '#include <common>\nvarying float vLay;')
      .replace('#include <begin_vertex>', '#include <begin_vertex>\nvLay = atan(normal.z, normal.y) * 6.0 + position.x * 60.0;');
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', '#include <common>\nvarying float vLay;')
      .replace('#include <color_fragment>', `#include <color_fragment>
        diffuseColor.rgb *= 1.0 + 0.35 * sin(vLay) * (1.0 - smoothstep(0.6, 2.5, fwidth(vLay)));`);
  };
  return material;
}
