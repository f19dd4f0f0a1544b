// Takes the picture of the live page as somebody sees it who opens it at a desk.
//   node docs/pictures/live.mjs LIVE.html OUT.png
// Needs `npm ci` in this folder and chromium at /usr/bin/chromium, or at the path in CHROMIUM.
import { resolve } from 'node:path';
import { chromium } from 'playwright-core';

const [file, picture] = process.argv.slice(2);
if (picture === undefined) {
  console.error('usage: node live.mjs LIVE.html OUT.png');
  process.exit(2);
}

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--no-sandbox'],
});
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme: 'light', reducedMotion: 'reduce' });
  page.on('pageerror', (error) => { throw error; });
  await page.goto(`file://${resolve(file)}`);
  await page.waitForFunction(() => document.body.dataset.live === 'ready' && document.getElementById('busy').textContent === '', null, { timeout: 120000 });
  // The setting is built anew when nothing has been changed for a second.
  await page.waitForTimeout(3000);
  await page.screenshot({ path: picture });
} finally {
  await browser.close();
}
