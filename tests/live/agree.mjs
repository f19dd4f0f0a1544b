// The page's engine and the command line's program: the same files, the same numbers, the same faults.
import assert from 'node:assert/strict';
import { readFile, readdir } from 'node:fs/promises';
import { put, textOf } from './page.mjs';

const samples = new URL('../../viewer-samples/', import.meta.url);

async function made(page, kinds) {
  return page.evaluate(async (wanted) => {
    const { engine } = window.live;
    let names = [];
    for (const kind of wanted ?? await engine.usualKinds()) names = await engine.make(kind);
    const files = {};
    for (const name of names) {
      const bytes = await engine.file(name);
      files[name] = btoa(Array.from(bytes, (b) => String.fromCharCode(b)).join(''));
    }
    return files;
  }, kinds ?? null);
}

export async function every_file_of_every_sample_is_the_command_lines_to_the_byte({ page, program }) {
  const wrong = [];
  const names = (await readdir(samples, { withFileTypes: true })).filter((e) => e.isDirectory()).map((e) => e.name);
  const asked = process.env.SAMPLES ? process.env.SAMPLES.split(',') : names;
  for (const name of asked) {
    const text = await readFile(new URL(`${name}/project.yaml`, samples), 'utf8').catch(() => null);
    if (text === null) continue;
    const plain = text.replace(/^prices:.*$/m, '');
    await put(page, plain);
    const [own, theirs] = [await made(page), program.make(plain)];
    const others = Object.keys(theirs.files).filter((f) => f !== 'manifest.json').sort();
    assert.ok(others.length > 20, `${name}: ${theirs.error}`);
    assert.deepEqual(Object.keys(own).sort(), others, name);
    wrong.push(...others.filter((f) => own[f] !== theirs.files[f].toString('base64')).map((f) => `${name}/${f}`));
  }

  assert.deepEqual(wrong, []);
}

// Values that a builder might write, some of them nonsense; the same ones each time.
const EDITS = {
  'site.span': ['18 ft', '41 ft 6 in', '9.4 m', '400 ft', '-3 ft'], 'site.rise': ['2 ft', '-18 in', '300 mm', '90 ft'],
  'use': ['public', 'private', 'cattle'], 'ropes.sag': ['4 %', '7.5 %', '30 in', '60 %'], 'ropes.spacing': ['50 in', '66 in', '3 in'],
  'frames.spacing': ['28 in', '38 in', '1 in'], 'frames.post.length': ['38 in', '46 in'], 'frames.post.lean': ['8 deg', '14 deg'],
  'frames.post.foot': ['19 in', '24 in'], 'frames.stance': ['plumb', 'square'], 'frames.base.section': ['4x6', '4x4', '3x8', '9x9'],
  'guard.rails.count': ['4', '7'], 'guard.cap.section': ['2x4', '2x8'], 'deck.board.section': ['2x6', '2x8', '5/4x6'],
  'loads.live': ['60 psf', '100 psf'], 'frames.channel.depth': ['5/8 in', '1 in'], 'frames.brace.foot': ['28 in', '31 in'],
};

// A program run from a checkout quotes its commands the way it was begun; the page has none, and quotes the installed program's.
const OWN_NAME = /'dotnet (?:run --project (?:"[^"]*"|\S+) --|bridgeform) /g;

function random(seed) {
  let state = seed;
  return (most) => { state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff; return Math.floor(state / 0x7fffffff * most) % most; };
}

function differences(a, b, path = '') {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b ? [] : [`${path}: ${a} and ${b}`];
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((k) => differences(a[k], b[k], `${path}.${k}`));
}

/** An edit as the desk makes it, stage by stage, without its picture: what the engine says is the page's own. */
async function worked([text, path, value]) {
  const { engine } = window.live;
  const edited = await engine.edit(text, path, value);
  const reading = await engine.open(edited.text, null);
  const faults = [...reading.faults];
  for (let more = reading.ok; more;) {
    const step = await engine.step();
    faults.push(...step.faults ?? []);
    more = step.more;
  }

  const report = faults.length > 0 ? null : new TextDecoder().decode((await engine.make('report'), await engine.file('report.json')));
  return { text: edited.text, faults, report };
}

export async function random_edits_get_the_same_answers_and_the_same_faults({ page, program }) {
  const next = random(Number(process.env.SEED ?? 7));
  const start = await textOf(page);
  let text = 'name: Agree\nunits: imperial\nsite:\n  span: 30 ft # ours\n';
  const wrong = [];
  let good = 0;
  for (let i = 0; i < Number(process.env.EDITS ?? 100); i++) {
    const paths = Object.keys(EDITS);
    const path = paths[next(paths.length)];
    const value = EDITS[path][next(EDITS[path].length)];
    const edited = await page.evaluate(worked, [text, path, value]);
    const theirs = program.make(edited.text, ['report']);
    const told = edited.faults.map((f) => `Line ${f.line}: ${f.message}`);
    if (theirs.files['report.json'] === undefined) {
      const said = theirs.error.replaceAll(OWN_NAME, "'bridgeform ").split('\n').flatMap((l) => {
        const [, line, message] = /^project\.yaml:(\d+):\d+: error: (.*) \[[a-z-]+\]$/.exec(l) ?? [null, null, /^bridgeform: error: (.*) \[[a-z-]+\]$/.exec(l)?.[1]];
        return message === undefined ? [] : [line === null ? `Line 1: ${message}` : `Line ${line}: ${message}`];
      });
      if (JSON.stringify(told) !== JSON.stringify(said)) wrong.push(`${path} ${value}: ${JSON.stringify(told)} and ${JSON.stringify(said)}`);
      continue;
    }

    good++;
    const own = JSON.parse(edited.report);
    const their = JSON.parse(theirs.files['report.json'].toString());
    delete own.files;
    delete their.files;
    wrong.push(...differences(own, their).slice(0, 3).map((d) => `${path} ${value}: ${d}`));
    text = edited.text;
  }

  assert.deepEqual(wrong.slice(0, 10), []);
  assert.ok(good > Number(process.env.EDITS ?? 100) / 4, `only ${good} bridges were compared`);
  await put(page, start);
}
