// node judge.mjs LIVE.html PROGRAM: judges the live page against the command line program (a path, or a .dll that dotnet runs).
// ONLY=PART OF A NAME and SKIP=PATTERN choose among the checks. Prints a line a check, "ok" or what is wrong, and ends with 1 where any is wrong. SHOW_TIMES=1 tells how long each took.
import { resolve } from 'node:path';
import { launch } from '../preview/browser.mjs';
import * as agree from './agree.mjs';
import * as desk from './desk.mjs';
import * as reach from './reach.mjs';
import { anew, openLive } from './page.mjs';
import { Program } from './program.mjs';

const [live, program] = process.argv.slice(2).map((path) => resolve(path));
const url = `file://${live}`;
const browser = await launch();
const only = process.env.ONLY ?? '';
const skipped = process.env.SKIP ? new RegExp(process.env.SKIP) : /^$/;
let wrong = 0;
const shared = await openLive(browser, url);
const checks = { ...desk, ...reach, ...agree };
for (const [name, check] of Object.entries(checks)) {
  if (!name.includes(only) || skipped.test(name)) continue;
  const start = performance.now();
  let fault = '';
  try {
    await anew(shared);
    await check({ browser, url, ...shared, program: new Program(program) });
  } catch (error) {
    fault = String(error.stack ?? error);
    wrong++;
  }

  const took = process.env.SHOW_TIMES ? ` ${Math.round(performance.now() - start)} ms` : '';
  console.log(`${fault === '' ? 'ok' : 'WRONG'} ${name.replaceAll('_', ' ')}${took}${fault === '' ? '' : `\n    ${fault}`}`);
}

await browser.close();
process.exit(wrong === 0 ? 0 : 1);
