// Bundles the page's script and style into ../BridgeForm.Output/Preview/Bundle, from where they are embedded.
// `node build.mjs --check` builds anew and fails when what is committed differs by a byte.
import { build } from 'esbuild';
import { mkdir, readFile, writeFile } from 'node:fs/promises';

const here = new URL('./', import.meta.url);
const target = new URL('../BridgeForm.Output/Preview/Bundle/', import.meta.url);

async function bundle(entry, options) {
  const result = await build({
    absWorkingDir: here.pathname,
    entryPoints: [entry],
    bundle: true,
    minify: true,
    write: false,
    charset: 'ascii',
    legalComments: 'none',
    ...options,
  });
  return result.outputFiles[0].text;
}

const script = await bundle('src/main.ts', { format: 'iife', target: 'es2020' });
for (const forbidden of ['</script', '<!--']) {
  if (script.toLowerCase().includes(forbidden)) {
    throw new Error(`The bundle contains ${forbidden}, which would end or hide the script inside the page.`);
  }
}

const files = {
  'preview.js': script,
  'preview.css': await bundle('src/page.css', { target: ['chrome100', 'firefox100', 'safari15.4'] }),
  'page.html': await readFile(new URL('src/page.html', here), 'utf8'),
  'three-LICENSE.txt': await readFile(new URL('node_modules/three/LICENSE', here), 'utf8'),
};

await mkdir(target, { recursive: true });
const stale = [];
for (const [name, text] of Object.entries(files)) {
  const file = new URL(name, target);
  if (!process.argv.includes('--check')) {
    await writeFile(file, text);
  } else if ((await readFile(file, 'utf8').catch(() => '')) !== text) {
    stale.push(name);
  }
}

if (stale.length > 0) {
  console.error(`The committed bundle does not match its source: ${stale.join(', ')}. Run \`npm run build\` in src/BridgeForm.Preview.`);
  process.exit(1);
}

console.log(Object.entries(files).map(([name, text]) => `${name} ${text.length}`).join('\n'));
