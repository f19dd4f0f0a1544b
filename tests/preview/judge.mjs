// node judge.mjs SAMPLES LONG-PREVIEW: judges pages against the reports made with them. SAMPLES holds a folder for each sample
// with its preview.html and report.json; alder-dell is tried in every way, wren-landing stands for a steep bridge.
// Prints one JSON object: name of the check → what is wrong, or an empty text when nothing is; checks that every sample passes
// are named "SAMPLE CHECK".
import { readFile, readdir } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { launch, open } from './browser.mjs';
import * as demoChecks from './checks.mjs';
import * as everySample from './every-sample.mjs';

const [folder, long] = process.argv.slice(2).map((path) => resolve(path));
const samples = {};
for (const name of (await readdir(folder)).sort()) {
  const preview = join(folder, name, 'preview.html');
  samples[name] = { preview, report: JSON.parse(await readFile(join(folder, name, 'report.json'), 'utf8')) };
}

const { anew, ...checks } = demoChecks;
const results = {};

async function judge(name, check, given) {
  try {
    const start = performance.now();
    await check(given);
    results[name] = '';
    if (process.env.SHOW_TIMES) console.error(name, Math.round(performance.now() - start), 'ms');
  } catch (error) {
    results[name] = String(error.message ?? error);
  }
}

const steep = samples['wren-landing'];
const demo = { ...samples['alder-dell'], long, steep: steep.preview, steepReport: steep.report };

async function timed(named) {
  const browser = await launch();
  for (const [name, check] of named) await judge(name, check, { browser, ...demo });
  await browser.close();
}

async function demoByItself(named) {
  const browser = await launch();
  const page = await open(browser, demo.preview, { width: 1280 });
  for (const [name, check] of named) {
    await anew(page);
    await judge(name, check, { browser, page, ...demo });
  }

  await browser.close();
}

async function samplesBySide() {
  const browser = await launch();
  for (const [sample, given] of Object.entries(samples).filter(([name]) => MINUTES || LOOKED.includes(name))) {
    const faults = [];
    const page = await open(browser, given.preview, { width: 1280, faults });
    const asked = Object.entries(everySample).filter(([name]) => isAsked(sample, name));
    for (const [name, check] of asked) await judge(`${sample} ${name}`, check, { browser, page, faults, ...given });
    await page.close();
  }

  await browser.close();
}

// What measures times has the machine to itself; the rest goes side by side, a browser for each half.
// A flat bridge, a metric one and a steep one stand for all, MINUTES=1 has each; so it has the full scene, which takes software twenty
// seconds and more, of each, and else of one.
const MINUTES = Boolean(process.env.MINUTES);
const LOOKED = ['alder-dell', 'fern-rise', 'wren-landing'];
const FULL = 'wren-landing';
const isAsked = (sample, name) => name !== 'fullScene' || sample === FULL || MINUTES;
const isTimed = ([name]) => name.startsWith('speed');
await timed(Object.entries(checks).filter(isTimed));
await Promise.all([demoByItself(Object.entries(checks).filter((c) => !isTimed(c))), samplesBySide()]);
console.log(JSON.stringify(results));
