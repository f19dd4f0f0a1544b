// Cameras. Each view is a direction to look from; the distance is the least at which all wood is in the picture.
import * as THREE from 'three';

const margin = 0.88;
const towards = {
  'three-quarter': { from: [-0.6, 0.155, 0.72], fov: 27 },
  side: { from: [0, 0.05, 1], fov: 18 },
  end: { from: [-1, 0.06, 0], fov: 16 },
};

/** The camera of a view. */
export function cameraFor(view, bridge, aspect) {
  return view === 'along' ? onDeck(bridge, aspect) : fitted(towards[view], bridge, aspect);
}

/** From a walker's eyes just behind the end frame at A. */
function onDeck(bridge, aspect) {
  const eyes = 1.62;
  const walked = node => /^(board|tread)/.test(node.name);
  const deck = [];
  bridge.traverse(node => node.isMesh && walked(node) && deck.push(new THREE.Box3().setFromObject(node)));
  const first = deck.reduce((a, b) => (b.min.x < a.min.x ? b : a)), last = deck.reduce((a, b) => (b.max.x > a.max.x ? b : a));
  const camera = new THREE.PerspectiveCamera(52, aspect, 0.05, 400);
  camera.position.set(first.min.x - 1.1, first.max.y + eyes, 0);
  camera.lookAt(last.max.x, last.max.y + 0.35, 0);
  camera.updateMatrixWorld();
  return camera;
}

function fitted({ from, fov }, bridge, aspect) {
  const points = corners(bridge);
  const camera = new THREE.PerspectiveCamera(fov, aspect, 0.1, 2000);
  const direction = new THREE.Vector3(...from).normalize();
  const target = new THREE.Box3().setFromPoints(points).getCenter(new THREE.Vector3());
  let distance = 50;
  for (let round = 0; round < 12; round++) {
    place(camera, target, direction, distance);
    const seen = new THREE.Box2().setFromPoints(points.map(p => new THREE.Vector2().copy(p.clone().project(camera))));
    const middle = seen.getCenter(new THREE.Vector2()), size = seen.getSize(new THREE.Vector2());
    const depth = target.clone().project(camera).z;
    target.copy(new THREE.Vector3(middle.x, middle.y, depth).unproject(camera));
    distance *= Math.max(size.x, size.y) / 2 / margin;
  }
  place(camera, target, direction, distance);
  return camera;
}

function place(camera, target, direction, distance) {
  camera.position.copy(target).addScaledVector(direction, distance);
  camera.lookAt(target);
  camera.updateMatrixWorld();
}

/** Corners of every wooden part's box, in the world; ropes may run out of the picture. */
function corners(bridge) {
  const points = [];
  bridge.traverse(node => {
    if (!node.isMesh || node.parent.name === 'ropes') return;
    node.geometry.computeBoundingBox();
    const { min, max } = node.geometry.boundingBox;
    for (const x of [min.x, max.x]) for (const y of [min.y, max.y]) for (const z of [min.z, max.z]) {
      points.push(new THREE.Vector3(x, y, z).applyMatrix4(node.matrixWorld));
    }
  });
  return points;
}
