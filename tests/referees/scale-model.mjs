// Judges models to print. With names of 3MF files: reads each with three.js' loader and prints what it sees, one JSON object a line:
// {"items": [{"name", "pieces": bodies that are left when what touches is one, "bodies": [{"name", "volume": mm3, "status":
// manifold-3d's, "low", "high": box in mm}]}]}. With --together and the name of a JSON file of models, each [{"name", "bodies":
// [{"points", "corners"}]}], the items where they stand when the model is put together, in mm: prints [{"one", "other", "volume",
// "depth"}] a line for the pairs that have anything in common; depth is the thickness of a sheet of the same volume and surface.
import fs from 'node:fs';
import Module from 'manifold-3d';
import { DOMParser } from 'linkedom';

const wasm = await Module();
wasm.setup();
const { Manifold, Mesh } = wasm;

const bodyOf = (points, corners) => Manifold.ofMesh(new Mesh({
  numProp: 3, vertProperties: Float32Array.from(points), triVerts: Uint32Array.from(corners),
}));
const union = (bodies) => bodies.reduce((all, body) => all.add(body));

async function read(file) {
  globalThis.DOMParser = DOMParser; // the loader is made for browsers
  const { ThreeMFLoader } = await import('three/addons/loaders/3MFLoader.js');
  const bytes = fs.readFileSync(file);
  const scene = new ThreeMFLoader().parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));
  scene.updateMatrixWorld(true);
  return { items: scene.children.map(itemOf) };
}

// The loader gives every triangle corners of its own: what lies at one place is one again.
function welded(places) {
  const numbers = new Map();
  const points = [];
  const corners = Array.from({ length: places.count }, (_, i) => {
    const at = [places.getX(i), places.getY(i), places.getZ(i)];
    const key = at.join();
    if (!numbers.has(key)) {
      numbers.set(key, numbers.size);
      points.push(...at);
    }

    return numbers.get(key);
  });
  return [points, corners];
}

function itemOf(item) {
  const bodies = [];
  item.traverse((node) => {
    if (node.isMesh) {
      const places = node.geometry.getAttribute('position').clone().applyMatrix4(node.matrixWorld);
      bodies.push({ name: node.name, body: bodyOf(...welded(places)) });
    }
  });
  return {
    name: item.name,
    pieces: union(bodies.map((b) => b.body)).decompose().filter((p) => p.volume() > 0).length, // a closed hole has less than none
    bodies: bodies.map(({ name, body }) => {
      const box = body.boundingBox();
      return { name, volume: body.volume(), status: body.status(), low: box.min, high: box.max };
    }),
  };
}

function clashes(items) {
  const solids = items.map(({ name, bodies }) => ({ name, body: union(bodies.map((b) => bodyOf(b.points, b.corners))) }));
  const boxes = solids.map((s) => s.body.boundingBox());
  const apart = (a, b) => [0, 1, 2].some((i) => a.max[i] <= b.min[i] || b.max[i] <= a.min[i]);
  const found = [];
  solids.forEach((one, i) => {
    solids.slice(i + 1).forEach((other, k) => {
      if (apart(boxes[i], boxes[i + 1 + k])) {
        return;
      }

      for (const common of one.body.intersect(other.body).decompose()) {
        const volume = common.volume();
        found.push({ one: one.name, other: other.name, volume, depth: 2 * volume / common.surfaceArea() });
      }
    });
  });
  return found;
}

const [first, ...rest] = process.argv.slice(2);
if (first === '--together') {
  JSON.parse(fs.readFileSync(rest[0], 'utf8')).forEach((items) => console.log(JSON.stringify(clashes(items))));
} else {
  for (const file of [first, ...rest]) {
    console.log(JSON.stringify(await read(file)));
  }
}
