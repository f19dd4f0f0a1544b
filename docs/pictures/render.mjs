// Draws the full scene of a preview as somebody on the bank sees it, eyes 1.6 m above the ground, with one person on the bridge for scale.
//   node docs/pictures/render.mjs PREVIEW.html OUT.png [--view bank|loaded|walk]
// Needs `npm ci` in this folder and chromium at /usr/bin/chromium, or at the path in CHROMIUM.
import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';

const views = ['bank', 'loaded', 'walk'];
const { values, positionals } = parseArgs({ allowPositionals: true, options: { view: { type: 'string', default: views[0] } } });
if (positionals.length !== 2 || !views.includes(values.view)) {
  console.error(`usage: node render.mjs PREVIEW.html OUT.png [--view ${views.join('|')}]`);
  process.exit(2);
}

const [preview, picture] = positionals;
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--no-sandbox'],
});
try {
  const page = await browser.newPage({ viewport: { width: 1200, height: 675 }, colorScheme: 'light', reducedMotion: 'reduce' });
  page.on('pageerror', (error) => { throw error; });
  page.setDefaultTimeout(300000);
  await page.goto(`file://${resolve(preview)}?scene=full`);
  await page.evaluate(() => bridgeForm.ready);
  await page.addStyleTag({ content: '#stage { position: fixed !important; inset: 0; z-index: 9; height: 100vh !important } #overlay { display: none }' });
  await page.waitForFunction(() => bridgeForm.app.stage.size.width === innerWidth);
  const url = await page.evaluate((view) => {
    const { app } = bridgeForm;
    const { eye, size } = app.stage;
    const choice = document.getElementById('case');
    if (view === 'loaded') {
      choice.value = 'live-full';
      choice.dispatchEvent(new Event('change'));
    }

    if (view === 'walk') {
      app.setView('walk');
      for (let k = 0; k < 2; k++) app.act('forward');
    } else {
      // As far away as shows the whole bridge, then down to somebody's height, looking at its middle.
      app.setView('corner');
      const { span, frames, guard } = app.shown.view;
      const middle = frames[Math.floor(frames.length / 2)];
      const onBridge = { x: span / 2, y: middle.y + middle.deck + guard / 2, z: 0 };
      eye.position.y = app.shown.setting.ground(eye.position.x, eye.position.z) + 1.6;
      eye.lookAt(onBridge.x, onBridge.y + 0.2, onBridge.z);
      eye.updateMatrixWorld();
    }

    app.stage.renderer.shadowMap.needsUpdate = true;
    app.stage.draw();
    const copy = document.createElement('canvas');
    [copy.width, copy.height] = [size.width, size.height];
    copy.getContext('2d').drawImage(document.getElementById('canvas'), 0, 0, size.width, size.height);
    return copy.toDataURL('image/png');
  }, values.view);
  writeFileSync(picture, Buffer.from(url.split(',')[1], 'base64'));
} finally {
  await browser.close();
}
