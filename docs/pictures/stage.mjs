// The picture itself, made inside the browser: model, light, surroundings, camera.
import * as THREE from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';
import { cameraFor } from './views.mjs';
import { surroundings } from './surroundings.mjs';

const width = 1600, height = 900;
const sky = 0xdce8ee;
const finer = 2; // drawn this many times larger, then reduced: smooth thin edges

/** Renders /model.glb and returns it as the URL of a PNG. */
export async function picture(view) {
  const { scene: bridge } = await new GLTFLoader().loadAsync('./model.glb');
  bridge.updateMatrixWorld(true);
  dress(bridge);

  const scene = new THREE.Scene();
  scene.background = new THREE.Color(sky);
  const box = new THREE.Box3().setFromObject(bridge), size = box.getSize(new THREE.Vector3()).length();
  scene.fog = new THREE.Fog(sky, 2.5 * size, 11 * size);
  scene.add(bridge, surroundings(bridge, 12 * size), ...lights(box));
  return drawn(scene, cameraFor(view, bridge, width / height));
}

/** Slightly different shades from part to part, as in a stack of lumber, and fine dark edges. */
function dress(bridge) {
  const edges = new Map();
  const ink = new THREE.LineBasicMaterial({ color: 0x241a10, transparent: true, opacity: 0.38 });
  const parts = [];
  bridge.traverse(node => node.isMesh && parts.push(node));
  parts.forEach((part, i) => {
    part.castShadow = part.receiveShadow = true;
    if (part.material.metalness > 0.5) return;
    part.material = part.material.clone();
    part.material.color.offsetHSL(0, 0, 0.035 * Math.sin(i * 12.9898));
    if (!edges.has(part.geometry)) edges.set(part.geometry, new THREE.EdgesGeometry(part.geometry, 20));
    part.add(new THREE.LineSegments(edges.get(part.geometry), ink));
  });
}

function lights(box) {
  const size = box.getSize(new THREE.Vector3()), middle = box.getCenter(new THREE.Vector3());
  const reach = size.length() / 2 + 2;
  const sun = new THREE.DirectionalLight(0xfff1dc, 2.6);
  sun.position.copy(middle).add(new THREE.Vector3(-0.35, 1, 0.75).multiplyScalar(reach * 2));
  sun.target.position.copy(middle);
  sun.castShadow = true;
  sun.shadow.mapSize.set(4096, 4096);
  sun.shadow.radius = 3;
  sun.shadow.bias = -0.0004;
  sun.shadow.normalBias = 0.012;
  Object.assign(sun.shadow.camera, { left: -reach, right: reach, top: reach, bottom: -reach, near: 0.1, far: reach * 5 });
  return [sun, sun.target, new THREE.HemisphereLight(0xeaf3fa, 0x8f8a72, 1.9)];
}

function drawn(scene, camera) {
  const renderer = new THREE.WebGLRenderer({ antialias: true, preserveDrawingBuffer: true });
  renderer.setPixelRatio(finer);
  renderer.setSize(width, height);
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = THREE.PCFShadowMap;
  renderer.toneMapping = THREE.ACESFilmicToneMapping;
  renderer.toneMappingExposure = 0.92;
  renderer.render(scene, camera);
  const canvas = Object.assign(document.createElement('canvas'), { width, height });
  const context = canvas.getContext('2d');
  context.imageSmoothingQuality = 'high';
  context.drawImage(renderer.domElement, 0, 0, width, height);
  return canvas.toDataURL('image/png');
}
