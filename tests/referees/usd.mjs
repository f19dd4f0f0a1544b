// Reads the USDZ files named on the command line with three.js' loader; prints as JSON, a line a file: {"meshes": [{"path", "volume":
// m3, "low", "high": box in metres, "colour", "opacity"}]}.
import fs from 'node:fs';
import { Box3, Vector3 } from 'three';
import { USDLoader } from 'three/addons/loaders/USDLoader.js';

function measure(mesh) {
  const places = mesh.geometry.getAttribute('position');
  const index = mesh.geometry.index;
  const at = (i) => new Vector3().fromBufferAttribute(places, index ? index.getX(i) : i).applyMatrix4(mesh.matrixWorld);
  const points = Array.from({ length: index ? index.count : places.count }, (_, i) => at(i));
  const box = new Box3().setFromPoints(points);
  const relative = points.map((p) => p.clone().sub(points[0]));
  let volume = 0;
  for (let i = 0; i < relative.length; i += 3) {
    volume += relative[i].dot(relative[i + 1].clone().cross(relative[i + 2])) / 6;
  }

  return { volume, low: box.min.toArray(), high: box.max.toArray() };
}

function read(file) {
  const bytes = fs.readFileSync(file);
  const scene = new USDLoader().parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));
  scene.updateMatrixWorld(true);
  const meshes = [];
  scene.traverse((node) => {
    if (node.isMesh) {
      const path = [];
      for (let at = node; at.name; at = at.parent) {
        path.unshift(at.name);
      }

      meshes.push({ path: path.join('/'), ...measure(node), colour: node.material.color.toArray(), opacity: node.material.opacity });
    }
  });
  return { meshes };
}

process.argv.slice(2).forEach((file) => console.log(JSON.stringify(read(file))));
