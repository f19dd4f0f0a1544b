import { BatchedMesh, Color, Matrix4, MeshLambertMaterial, type BufferGeometry } from 'three';
import { wood } from './full/materials';
import type { Finish, Part } from './glb';

/** All wooden parts in one mesh: instance i is part i. */
export interface Wood { mesh: BatchedMesh; parts: Part[]; paint: (finish: Finish, chosen: ReadonlySet<number>, same: ReadonlySet<number>) => void }

/** Blue stands apart from every wood colour, for people who see no difference between red and green as well. */
export const CHOSEN = new Color(0.02, 0.24, 0.95);
const SAME = new Color(0.25, 0.5, 0.95);

/** Builds the mesh of all parts; `plain` for machines that draw without a graphics chip. */
export function buildWood(parts: Part[], plain: boolean): Wood {
  const geometries = [...new Set(parts.map((p) => p.geometry))];
  const count = (of: (g: BufferGeometry) => number): number => geometries.reduce((sum, g) => sum + of(g), 0);
  const mesh = new BatchedMesh(
    Math.max(1, parts.length),
    Math.max(3, count((g) => g.getAttribute('position').count)),
    Math.max(3, count((g) => g.index?.count ?? 0)),
    plain ? woodMaterial() : wood());
  mesh.castShadow = true;
  mesh.receiveShadow = true;
  mesh.frustumCulled = false;
  mesh.sortObjects = false;
  const ids = new Map(geometries.map((g) => [g, mesh.addGeometry(g)]));
  parts.forEach((part) => {
    const instance = mesh.addInstance(ids.get(part.geometry) ?? 0);
    mesh.setMatrixAt(instance, part.place);
    mesh.setColorAt(instance, new Color(1, 1, 1));
  });
  return {
    mesh,
    parts,
    paint: (finish, chosen, same) => parts.forEach((part, i) => {
      const own = finish.colours[part.wood] ?? finish.colours[0] ?? SAME;
      mesh.setColorAt(i, chosen.has(i) ? CHOSEN : same.has(i) ? SAME : tinted(own, i));
    }),
  };
}

/** Puts every part where the function says. */
export function placeWood(wood: Wood, at: (part: Part, index: number) => Matrix4 | null): void {
  wood.parts.forEach((part, i) => {
    const matrix = at(part, i);
    wood.mesh.setVisibleAt(i, matrix !== null);
    if (matrix !== null) {
      wood.mesh.setMatrixAt(i, matrix);
    }
  });
  wood.mesh.boundingBox = null;
  wood.mesh.boundingSphere = null;
}

/** No two boards of a stack are alike: a little lighter or darker, a little warmer or cooler, always the same for a part. */
function tinted(wood: Color, i: number): Color {
  const a = fraction(Math.sin(i * 12.9898 + 1) * 43758.5453);
  const b = fraction(Math.sin(i * 78.233 + 2) * 12543.123);
  const light = 0.86 + 0.28 * a;
  return new Color(wood.r * light * (1 + 0.05 * (b - 0.5)), wood.g * light, wood.b * light * (1 - 0.12 * (b - 0.5)));
}

const fraction = (x: number): number => x - Math.floor(x);

/** Grain along the part's own length (its x axis), end grain darker on its ends; no picture is loaded. */
function woodMaterial(): MeshLambertMaterial {
  const material = new MeshLambertMaterial();
  material.onBeforeCompile = (shader) => {
    shader.vertexShader = shader.vertexShader
      .replace('#include <common>', '#include <common>\nvarying vec3 vGrain; varying float vSeed; varying float vEnd;')
      .replace('#include <begin_vertex>', `#include <begin_vertex>
        vGrain = position; vEnd = abs(normal.x);
        #ifdef USE_BATCHING
          vSeed = fract(getIndirectIndex(gl_DrawID) * 0.61803399);
        #else
          vSeed = 0.0;
        #endif`);
    shader.fragmentShader = shader.fragmentShader
      .replace('#include <common>', `#include <common>
        varying vec3 vGrain; varying float vSeed; varying float vEnd;
        float grainHash(vec2 p) { p = fract(p * vec2(0.1031, 0.1130)); p += dot(p, p.yx + 19.19); return fract((p.x + p.y) * p.x); }
        float grainNoise(vec2 p) {
          vec2 i = floor(p); vec2 f = fract(p); f = f * f * (3.0 - 2.0 * f);
          return mix(mix(grainHash(i), grainHash(i + vec2(1, 0)), f.x), mix(grainHash(i + vec2(0, 1)), grainHash(i + vec2(1, 1)), f.x), f.y);
        }`)
      .replace('#include <color_fragment>', `#include <color_fragment>
        {
          float across = vGrain.y + vGrain.z * 0.7 + 0.006 * sin(vGrain.x * 2.3 + vSeed * 40.0);
          float wide = fwidth(across);
          float broad = grainNoise(vec2(vGrain.x * 0.9 + vSeed * 91.0, across * 60.0));
          float keepBroad = 1.0 - smoothstep(0.006, 0.03, wide);
          float tone = 1.0 + 0.30 * (broad - 0.5) * keepBroad;
          tone *= mix(1.0, 0.74, step(0.6, vEnd));
          diffuseColor.rgb *= tone;
        }`);
  };
  return material;
}
