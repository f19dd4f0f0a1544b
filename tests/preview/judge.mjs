// node judge.mjs PREVIEW REPORT [LONG-PREVIEW [STEEP-PREVIEW STEEP-REPORT]]: judges a page against the report made with it.
// Prints one JSON object: name of the check → what is wrong, or an empty text when nothing is.
import { readFile } from 'node:fs/promises';
import { launch } from './browser.mjs';
import * as checks from './checks.mjs';

const [preview, reportFile, long, steep, steepFile] = process.argv.slice(2);
const report = JSON.parse(await readFile(reportFile, 'utf8'));
const steepReport = steepFile && JSON.parse(await readFile(steepFile, 'utf8'));
const results = {};
const browser = await launch();
for (const [name, check] of Object.entries(checks)) {
  try {
    const start = performance.now();
    await check({ browser, preview, report, long, steep, steepReport });
    results[name] = '';
    if (process.env.SHOW_TIMES) console.error(name, Math.round(performance.now() - start), 'ms');
  } catch (error) {
    results[name] = String(error.message ?? error);
  }
}

await browser.close();
console.log(JSON.stringify(results));
