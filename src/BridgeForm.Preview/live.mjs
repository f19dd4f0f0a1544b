// Puts the live page together: node live.mjs PUBLISHED PREVIEW.html PROJECT.yaml NOTICES.txt VERSION OUT.html
// PUBLISHED is the folder of the engine as it was published for browsers; PREVIEW.html a preview of PROJECT.yaml, with which the page
// opens before its engine has begun; NOTICES.txt what the runtime asks to be handed on; VERSION the program's. One file comes out, with everything in it.
import { build } from 'esbuild';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';

const [published, preview, project, runtimeNotices, version, out] = process.argv.slice(2);
const here = new URL('./', import.meta.url);
const read = (name) => readFile(new URL(`src/live/${name}`, here), 'utf8');

async function bundle(entry, format) {
  const result = await build({
    absWorkingDir: here.pathname, entryPoints: [entry], bundle: true, minify: true, write: false, charset: 'ascii', legalComments: 'none', format, target: 'es2022',
  });
  return result.outputFiles[0].text;
}

// What stands in a script element of its own must not end it.
function inside(text, what) {
  if (/<\/script|<!--/i.test(text)) {
    throw new Error(`${what} contains what would end or hide a script.`);
  }

  return text;
}

const assets = {};
for (const name of (await readdir(`${published}/wwwroot/_framework`)).sort()) {
  if (!/\.(br|gz|map|pdb|symbols)$/.test(name)) {
    assets[name] = gzipSync(await readFile(`${published}/wwwroot/_framework/${name}`), { level: 9 }).toString('base64');
  }
}

const policy = "default-src 'none'; script-src 'unsafe-inline' 'wasm-unsafe-eval' blob:; worker-src blob:; style-src 'unsafe-inline'; "
  + "img-src data: blob:; connect-src 'none'; base-uri 'none'; form-action 'none'";
const style = (await build({ absWorkingDir: here.pathname, entryPoints: ['src/live/live.css'], minify: true, write: false, target: ['chrome111', 'firefox113', 'safari16.4'] })).outputFiles[0].text;
const script = inside(await bundle('src/live/main.ts', 'iife'), 'The page');
const worker = inside(await bundle('src/live/worker.ts', 'iife'), 'The worker');
const notices = inside((await readFile(new URL('../../THIRD-PARTY-NOTICES.md', here), 'utf8')) + (await readFile(runtimeNotices, 'utf8')), 'The notices')
  .replaceAll('-->', '-- >');
const first = inside(await readFile(project, 'utf8'), 'The first file');

function once(page, from, to) {
  if (page.split(from).length !== 2) {
    throw new Error(`The page does not hold '${from.slice(0, 60)}' once.`);
  }

  return page.replace(from, () => to);
}

let page = await readFile(preview, 'utf8');
page = page.replace(/(http-equiv="Content-Security-Policy" content=")[^"]*/, (_, head) => head + policy);
page = once(page, '</style>\n<noscript>', `${style}</style>\n<noscript>`);
page = once(page, '<body>', `<body class="live">\n${await read('ask.html')}`);
page = once(page, '<header>', `${(await read('bench.html')).split('\n')[0]}\n<header>`);
page = once(page, '</header>', `</header>\n${(await read('bench.html')).split('\n').slice(1).join('\n')}`);
page = once(page, '<div id="panel">', `<div id="panel">\n${once(await read('answers.html'), 'VERSION', version)}`);
page = once(page, '\n<script>', '\n<script id="preview-script">');
// The first bridge packed: every hole and bolt of its joints is in it.
page = page.replace(/(id="model">)([^<]*)/, (_, head, glb) => head + gzipSync(Buffer.from(glb.trim(), 'base64'), { level: 9 }).toString('base64'));
page = once(page, '</body>', [
  `<!-- Of others:\n${notices}-->`,
  `<script type="application/octet-stream" id="assets">${JSON.stringify(assets)}</script>`,
  `<script type="text/plain" id="worker">${worker}</script>`,
  `<script type="text/plain" id="first-file">${first}</script>`,
  `<script>${script}</script>`,
  '</body>',
].join('\n'));
await writeFile(out, page);
console.log(`${out} ${(page.length / 1e6).toFixed(2)} MB`);
