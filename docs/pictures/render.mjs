// Renders a model.glb to a PNG in headless chromium, with plain ground and sky around it.
//   node docs/pictures/render.mjs MODEL.glb OUT.png [--view three-quarter|side|along|end]
// Needs `npm ci` in this folder and chromium at /usr/bin/chromium, or at the path in CHROMIUM.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';

const views = ['three-quarter', 'side', 'along', 'end'];
const usage = `usage: node render.mjs MODEL.glb OUT.png [--view ${views.join('|')}]`;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { view: { type: 'string', default: views[0] } },
});
if (positionals.length !== 2 || !views.includes(values.view)) {
  console.error(usage);
  process.exit(2);
}

const [model, picture] = positionals;
const site = 'http://pictures.invalid';
const types = { html: 'text/html', mjs: 'text/javascript', js: 'text/javascript', glb: 'model/gltf-binary' };

/** Serves the page, its modules and the model from disk; nothing leaves the machine. */
async function serve(route) {
  const path = new URL(route.request().url()).pathname;
  const file = path === '/model.glb' ? model : fileURLToPath(new URL('.' + path, import.meta.url));
  await route.fulfill({ body: readFileSync(file), contentType: types[path.split('.').pop()] });
}

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--no-sandbox'],
});
try {
  const page = await browser.newPage();
  page.on('console', message => console.error(message.text()));
  page.on('pageerror', error => console.error(error.message));
  await page.route('**/*', serve);
  await page.goto(`${site}/stage.html`);
  const url = await page.evaluate(view => window.picture(view), values.view);
  writeFileSync(picture, Buffer.from(url.split(',')[1], 'base64'));
} finally {
  await browser.close();
}
