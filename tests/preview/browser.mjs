// Opens pages in Debian's Chromium with software drawing, and keeps what they complain about.
import { chromium } from 'playwright-core';

/** Widths of a telephone, a tablet and a desk, pixels. */
export const SIZES = [360, 768, 1440];

export const program = process.env.CHROMIUM ?? '/usr/bin/chromium';
const drawing = ['--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--no-sandbox'];
const withoutDrawing = ['--disable-gpu', '--disable-3d-apis', '--no-sandbox'];

export function launch(webgl = true) {
  return chromium.launch({ executablePath: program, args: webgl ? drawing : withoutDrawing });
}

/** Drawn pixels on a pixel of the page, along each edge: where software draws, what is seen of layout and words needs no more. */
const COARSE = 0.5;

/** A page of the given size showing the file; `faults` collects console messages, errors and requests. */
export async function open(browser, file, { width, height = 800, dark = false, faults = [], still = true, fine = false, query = '' }) {
  const page = await browser.newPage({
    viewport: { width, height }, colorScheme: dark ? 'dark' : 'light', reducedMotion: still ? 'reduce' : 'no-preference',
    deviceScaleFactor: fine ? 1 : COARSE,
  });
  page.on('console', (m) => { if (['error', 'warning'].includes(m.type())) faults.push(`console: ${m.text()}`); });
  page.on('pageerror', (e) => faults.push(`error: ${e.message}`));
  page.on('request', (r) => { if (r.url() !== `file://${file}${query}` && !/^(data|blob):/.test(r.url())) faults.push(`request: ${r.url()}`); });
  // The full scene takes software a while before the page is loaded.
  page.setDefaultNavigationTimeout(120000);
  await page.goto(`file://${file}${query}`);
  await page.evaluate(() => bridgeForm.ready);
  return page;
}

/** Shares of the stage's pixels: red-brown wood, green, blue mark; and the number of different colours. */
export function pixels(page) {
  return page.evaluate(() => {
    bridgeForm.app?.stage.draw();
    const source = document.getElementById('canvas');
    const copy = document.createElement('canvas');
    [copy.width, copy.height] = [source.width, source.height];
    const ink = copy.getContext('2d');
    ink.drawImage(source, 0, 0);
    const { data } = ink.getImageData(0, 0, copy.width, copy.height);
    const colours = new Set();
    let [brown, green, blue, all] = [0, 0, 0, 0];
    for (let i = 0; i < data.length; i += 4) {
      if (data[i + 3] < 255) continue;
      const [r, g, b] = [data[i], data[i + 1], data[i + 2]];
      all++;
      colours.add((r >> 3) * 1024 + (g >> 3) * 32 + (b >> 3));
      if (r > 1.45 * g && g > b) brown++;
      if (g > r && g > 1.2 * b) green++;
      if (b > 1.6 * r && b > 1.2 * g) blue++;
    }

    const whole = copy.width * copy.height;
    return { brown: brown / whole, green: green / whole, blue: blue / whole, opaque: all / whole, colours: colours.size };
  });
}
