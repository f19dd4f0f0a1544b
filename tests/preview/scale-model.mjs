// node scale-model.mjs FILE.3mf: has Chromium read it with three.js' loader, as a page does, with the browser's own reader of XML.
// Prints JSON: {"faults": console messages and errors, "items": [{"name", "bodies", "low", "high": box in mm, "volume": mm3}]}.
import { readFile } from 'node:fs/promises';
import { join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { launch } from './browser.mjs';

const three = fileURLToPath(new URL('../referees/node_modules/three', import.meta.url));
const home = 'http://three.invalid/'; // no network: the driver answers from the folder above
const model = await readFile(process.argv[2]);
const page = `<!DOCTYPE html><meta charset="utf-8"><script type="importmap">
{"imports": {"three": "${home}build/three.module.js", "three/addons/": "${home}examples/jsm/"}}</script>`;

async function answer(route) {
  const path = normalize(new URL(route.request().url()).pathname);
  if (path === '/') return route.fulfill({ contentType: 'text/html', body: page });
  if (path === '/model.3mf') return route.fulfill({ contentType: 'model/3mf', body: model });
  return route.fulfill({ contentType: 'text/javascript', body: await readFile(join(three, path)) });
}

async function read() {
  const { Box3, Vector3 } = await import('three');
  const { ThreeMFLoader } = await import('three/addons/loaders/3MFLoader.js');
  const scene = new ThreeMFLoader().parse(await (await fetch('/model.3mf')).arrayBuffer());
  scene.updateMatrixWorld(true);
  return scene.children.map((item) => {
    const box = new Box3().setFromObject(item, true);
    let [bodies, volume] = [0, 0];
    item.traverse((node) => {
      if (!node.isMesh) return;
      bodies++;
      const places = node.geometry.getAttribute('position');
      const index = node.geometry.index;
      const at = (i) => new Vector3().fromBufferAttribute(places, index ? index.getX(i) : i).applyMatrix4(node.matrixWorld);
      for (let i = 0; i < (index ? index.count : places.count); i += 3) {
        volume += at(i).sub(box.min).dot(at(i + 1).sub(box.min).cross(at(i + 2).sub(box.min))) / 6;
      }
    });
    return { name: item.name, bodies, low: box.min.toArray(), high: box.max.toArray(), volume };
  });
}

const browser = await launch(false);
const tab = await browser.newPage();
const faults = [];
tab.on('console', (m) => { if (['error', 'warning'].includes(m.type())) faults.push(m.text()); });
tab.on('pageerror', (e) => faults.push(e.message));
await tab.route(`${home}**`, answer);
await tab.goto(home);
const items = await tab.evaluate(read);
await browser.close();
console.log(JSON.stringify({ faults, items }));
