// Plain ground for a bridge: two banks as high as the end bases' bottom faces, between them a ravine with a brook. A
// backdrop, no survey.
import * as THREE from 'three';

const slope = 2.6; // metres from a bank's edge to the floor of the ravine, measured level
const steps = 220;
const grass = new THREE.Color(0x8c9a63), earth = new THREE.Color(0x85805c), water = new THREE.Color(0x7f9aa3);

/** Ground under and around a bridge, `half` metres to every side. */
export function surroundings(bridge, half) {
  const { from, to, bankA, bankB, floor } = measures(bridge);
  const ground = new THREE.PlaneGeometry(1, 1, steps, 1);
  const at = ground.attributes.position;
  const colours = new Float32Array(3 * at.count);
  for (let i = 0; i < at.count; i++) {
    // Columns are spread finely over the ravine, coarsely beyond.
    const u = at.getX(i) * 2;
    const x = (from + to) / 2 + Math.sign(u) * ((to - from) / 2 + 1) * Math.min(1, Math.abs(u) / 0.9)
      + Math.sign(u) * Math.max(0, Math.abs(u) - 0.9) / 0.1 * half;
    at.setXYZ(i, x, heightAt(x), at.getY(i) * 2 * half);
    colourAt(x).toArray(colours, 3 * i);
  }
  ground.setAttribute('color', new THREE.BufferAttribute(colours, 3));
  ground.computeVertexNormals();
  const mesh = new THREE.Mesh(ground, new THREE.MeshStandardMaterial({ vertexColors: true, roughness: 1, side: THREE.DoubleSide }));
  mesh.receiveShadow = true;
  return mesh;

  function downAt(x) {
    return THREE.MathUtils.smoothstep(Math.min(x - from, to - x) - 0.12, 0, Math.min(slope, (to - from) / 3));
  }

  function heightAt(x) {
    const bank = x < (from + to) / 2 ? bankA : bankB;
    return THREE.MathUtils.lerp(bank - 0.004, floor, downAt(x));
  }

  function colourAt(x) {
    const down = downAt(x), brook = Math.abs(x - (from + to) / 2) < (to - from) / 9;
    return brook ? water : grass.clone().lerp(earth, THREE.MathUtils.smoothstep(down, 0.1, 0.9));
  }
}

/** Inner edges of the end frames, and levels. */
function measures(bridge) {
  const frames = bridge.getObjectByName('frames')?.children ?? [];
  const whole = new THREE.Box3().setFromObject(bridge);
  const base = frame => frame?.getObjectByName('base') ?? frame?.children[0];
  const a = frames.length ? box(base(frames[0])) : whole, b = frames.length ? box(base(frames.at(-1))) : whole;
  const lowest = frames.reduce((y, f) => Math.min(y, new THREE.Box3().setFromObject(f).min.y), whole.min.y);
  return { from: a.max.x, to: b.min.x, bankA: a.min.y, bankB: b.min.y, floor: lowest - 1.5 };
}

const box = node => new THREE.Box3().setFromObject(node);
