// node times.mjs LIVE.html [BAYS…]: how long the live page takes, in Debian's Chromium without graphics hardware. Prints a table:
// from opening the file to the first picture and to the first answer; from an edit to its picture (GLB received) and to its checks,
// median of a hundred; the longest stretches of the page's own thread; memory after edits 100 and 500. Run it on a quiet machine.
import { resolve } from 'node:path';
import { launch } from '../preview/browser.mjs';
import { openLive, put, rest } from './page.mjs';

const [live, ...spans] = process.argv.slice(2);
const url = `file://${resolve(live)}`;
const browser = await launch();
const median = (all) => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)];
const told = (name, value) => { console.log(`${name.padEnd(58)} ${value}`); };

async function opened() {
  const page = await (await browser.newContext({ viewport: { width: 1400, height: 900 }, offline: true })).newPage();
  const start = performance.now();
  await page.goto(url);
  await page.evaluate(() => bridgeForm.ready);
  const picture = performance.now() - start;
  await page.waitForFunction(() => document.body.dataset.live === 'ready', null, { timeout: 60000 });
  await rest(page);
  const answer = performance.now() - start;
  await page.context().close();
  return { picture, answer };
}

const first = [];
for (let i = 0; i < 5; i++) first.push(await opened());
told('first picture from disk, median of 5', `${Math.round(median(first.map((f) => f.picture)))} ms`);
told('first answer from disk, median of 5', `${Math.round(median(first.map((f) => f.answer)))} ms`);

/** Edits by a hundredth of the span; when the engine has handed over the picture and the checks. */
async function edits(page, span, count) {
  return page.evaluate(async ([ft, n]) => {
    const { desk, engine } = window.live;
    const times = [];
    for (let i = 0; i < n; i++) {
      const time = {};
      const [geometry, checks] = [engine.geometry.bind(engine), engine.checks.bind(engine)];
      let start = 0;
      engine.geometry = async () => { const made = await geometry(); time.glb ??= performance.now() - start; return made; };
      engine.checks = async () => { const made = await checks(); time.checks ??= performance.now() - start; return made; };
      const { text } = await engine.edit(desk.text, 'site.span', `${(ft + (i % 40) / 20).toFixed(2)} ft`);
      start = performance.now();
      await desk.put(text, 'test');
      Object.assign(engine, { geometry, checks });
      if (time.glb !== undefined) times.push(time);
    }
    return times;
  }, [span, count]);
}

async function memory(page) {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  return page.evaluate(async () => (performance.measureUserAgentSpecificMemory ? (await performance.measureUserAgentSpecificMemory()).bytes : performance.memory.usedJSHeapSize) / 1e6);
}

for (const span of (spans.length > 0 ? spans : ['30', '600']).map(Number)) {
  const { page, context } = await openLive(browser, url);
  await put(page, `name: Times (invented)\nsite: { span: ${span} ft }\nframes: { spacing: 3 ft }\n`);
  await edits(page, span, 10);
  await page.evaluate(() => {
    window.long = [];
    new PerformanceObserver((list) => { window.long.push(...list.getEntries().map((e) => e.duration)); }).observe({ entryTypes: ['longtask'] });
  });
  const times = await edits(page, span, span > 100 ? 10 : 100);
  const bays = await page.evaluate(() => window.bridgeForm.app.shown.view.frames.length - 1);
  told(`${span} ft, ${bays} bays: edit to picture received, median of ${times.length}`, `${Math.round(median(times.map((t) => t.glb)))} ms`);
  told(`${span} ft, ${bays} bays: edit to checks received`, `${Math.round(median(times.map((t) => t.checks)))} ms`);
  const long = await page.evaluate(() => window.long);
  told(`${span} ft: tasks over 50 ms on the page's thread, WebGL among them`, `${long.length}, longest ${Math.round(Math.max(0, ...long))} ms`);
  if (span <= 100) {
    const early = await memory(page);
    const at100 = median(times.slice(-20).map((t) => t.checks));
    await edits(page, span, 380);
    const late = await edits(page, span, 20);
    told(`${span} ft: heap after edit 100 and 500`, `${early.toFixed(0)} and ${(await memory(page)).toFixed(0)} MB`);
    told(`${span} ft: checks at edit 100 and 500`, `${Math.round(at100)} and ${Math.round(median(late.map((t) => t.checks)))} ms`);
  }

  await context.close();
}

await browser.close();
