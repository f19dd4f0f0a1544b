import { DoubleSide, MeshStandardMaterial, type Color, type MeshStandardMaterialParameters, type WebGLProgramParametersWithUniforms } from 'three';

/** Noise of places in the plane and in space, for grain and ground that come without pictures. */
const NOISE = `
  float dust(vec2 p) { p = fract(p * vec2(0.1031, 0.1130)); p += dot(p, p.yx + 19.19); return fract((p.x + p.y) * p.x); }
  float cloud(vec2 p) {
    vec2 i = floor(p); vec2 f = fract(p); f = f * f * (3.0 - 2.0 * f);
    return mix(mix(dust(i), dust(i + vec2(1, 0)), f.x), mix(dust(i + vec2(0, 1)), dust(i + vec2(1, 1)), f.x), f.y);
  }`;

function replace(shader: WebGLProgramParametersWithUniforms, vertex: [string, string][], fragment: [string, string][]): void {
  vertex.forEach(([at, text]) => { shader.vertexShader = shader.vertexShader.replace(at, `${at}\n${text}`); });
  fragment.forEach(([at, text]) => { shader.fragmentShader = shader.fragmentShader.replace(at, `${at}\n${text}`); });
}

/**
 * Wood as it grows: rings around a pith beside the piece, which its faces cut. So the grain runs along the sides, arches where a
 * face lies across the rings, and ends are end grain, each piece from another part of the trunk.
 */
export function wood(): MeshStandardMaterial {
  const material = new MeshStandardMaterial({ roughness: 0.75, metalness: 0 });
  material.onBeforeCompile = (shader) => {
    replace(shader, [
      ['#include <common>', 'varying vec3 vGrain; varying float vSeed; varying float vEnd;'],
      ['#include <begin_vertex>', `vGrain = position; vEnd = abs(normal.x);
        #ifdef USE_BATCHING
          vSeed = fract(getIndirectIndex(gl_DrawID) * 0.61803399);
        #else
          vSeed = 0.0;
        #endif`],
    ], [
      ['#include <common>', `varying vec3 vGrain; varying float vSeed; varying float vEnd; float lateWood;${NOISE}`],
      ['#include <color_fragment>', `{
        float x = vGrain.x;
        vec2 pith = vec2(0.07 * sin(vSeed * 41.0), -0.05 - 0.06 * fract(vSeed * 7.3));
        vec2 across = vGrain.yz - pith + 0.006 * vec2(sin(x * 1.7 + vSeed * 31.0), sin(x * 1.1 + vSeed * 57.0));
        float r = length(across) + 0.0012 * (cloud(vec2(x * 4.0 + vSeed * 91.0, atan(across.y, across.x) * 9.0)) - 0.5);
        float rings = r / (0.0035 + 0.002 * fract(vSeed * 13.7));
        float wide = fwidth(rings);
        float part = fract(rings);
        lateWood = smoothstep(0.35, 0.92, part) * (1.0 - smoothstep(0.94, 1.0, part)) * (1.0 - smoothstep(0.4, 1.3, wide));
        float fibre = cloud(vec2(x * 9.0 + vSeed * 53.0, (vGrain.y + 1.3 * vGrain.z) * 700.0));
        float stain = cloud(vec2(x * 0.8 + vSeed * 17.0, (vGrain.y + vGrain.z) * 14.0));
        float fine = 1.0 - smoothstep(0.0012, 0.005, fwidth(vGrain.y + 1.3 * vGrain.z));
        float end = step(0.6, vEnd);
        float tone = 1.0 - mix(0.30, 0.42, end) * lateWood + 0.16 * (fibre - 0.5) * fine * (1.0 - end) + 0.22 * (stain - 0.5);
        diffuseColor.rgb *= tone * mix(1.0, 0.78, end);
      }`],
      ['#include <roughnessmap_fragment>', 'roughnessFactor = 0.82 - 0.2 * lateWood;'],
    ]);
  };
  return material;
}

/** Everything around the bridge: its painted colours, broken up as earth, bark and stone are. */
export const EARTH = earth();

function earth(): MeshStandardMaterial {
  const material = new MeshStandardMaterial({ vertexColors: true, roughness: 0.95, metalness: 0 });
  material.onBeforeCompile = (shader) => {
    replace(shader, [
      ['#include <common>', 'varying vec3 vPlace;'],
      ['#include <project_vertex>', `vec4 placed = vec4(transformed, 1.0);
        #ifdef USE_INSTANCING
          placed = instanceMatrix * placed;
        #endif
        vPlace = (modelMatrix * placed).xyz;`],
    ], [
      ['#include <common>', `varying vec3 vPlace;${NOISE}`],
      ['#include <color_fragment>', `{
        vec2 p = vPlace.xz + 0.73 * vPlace.y;
        float near = 1.0 - smoothstep(0.01, 0.06, fwidth(p.x) + fwidth(p.y));
        float rough = 0.5 * cloud(p * 1.1) + 0.3 * cloud(p * 5.3) + near * 0.2 * cloud(p * 31.0) + (1.0 - near) * 0.1;
        diffuseColor.rgb *= 0.74 + 0.62 * rough;
      }`],
    ]);
  };
  return material;
}

/** Cloth, skin and hair: no earth on them. */
export const CLOTHED = new MeshStandardMaterial({ vertexColors: true, roughness: 0.8, metalness: 0 });

/** Blades and leaves: light falls through them, so both their sides are lit as the one that was turned to the sky. */
export function foliage(parameters: MeshStandardMaterialParameters): MeshStandardMaterial {
  const material = new MeshStandardMaterial({ side: DoubleSide, roughness: 0.9, metalness: 0, ...parameters });
  material.onBeforeCompile = (shader) => {
    shader.fragmentShader = shader.fragmentShader.replace('#include <normal_fragment_begin>', 'vec3 normal = normalize(vNormal); vec3 nonPerturbedNormal = normal;');
  };
  return material;
}

/** Bright wires, laid round the axis. */
export function wire(colour: Color): MeshStandardMaterial {
  const material = new MeshStandardMaterial({ color: colour.clone().multiplyScalar(1.25), roughness: 0.42, metalness: 0.85 });
  material.onBeforeCompile = (shader) => {
    replace(shader, [
      ['#include <common>', 'varying float vLay;'],
      ['#include <begin_vertex>', 'vLay = atan(normal.z, normal.y) * 6.0 + position.x * 60.0;'],
    ], [
      ['#include <common>', 'varying float vLay;'],
      ['#include <color_fragment>', 'diffuseColor.rgb *= 1.0 + 0.4 * sin(vLay) * (1.0 - smoothstep(0.6, 2.5, fwidth(vLay)));'],
    ]);
  };
  return material;
}

/** Still water: what little moves it is a breath of wind. */
export function stillWater(): MeshStandardMaterial {
  const material = new MeshStandardMaterial({ color: 0x2c5f66, roughness: 0.1, metalness: 0, transparent: true, opacity: 0.9 });
  material.onBeforeCompile = (shader) => {
    replace(shader, [
      ['#include <common>', 'varying vec3 vPlace;'],
      ['#include <project_vertex>', 'vPlace = (modelMatrix * vec4(transformed, 1.0)).xyz;'],
    ], [
      ['#include <common>', `varying vec3 vPlace;${NOISE}`],
      ['#include <normal_fragment_maps>', `{
        vec2 p = vPlace.xz * 2.1; float e = 0.2;
        vec2 tilt = vec2(cloud(p + vec2(e, 0.0)) - cloud(p - vec2(e, 0.0)), cloud(p + vec2(0.0, e)) - cloud(p - vec2(0.0, e)));
        normal = normalize(normal + 0.03 * (viewMatrix * vec4(tilt.x, 0.0, tilt.y, 0.0)).xyz);
      }`],
    ]);
  };
  return material;
}
