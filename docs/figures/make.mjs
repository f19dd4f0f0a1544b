// Writes the figures of docs/bridge.md: node docs/figures/make.mjs
// Each file in sketches/ exports one function that returns a Sheet; the figure takes the file's name.
import { readdirSync, writeFileSync } from 'node:fs';

const here = new URL('.', import.meta.url);
for (const file of readdirSync(new URL('sketches/', here)).sort()) {
  const { default: sketch } = await import(new URL(`sketches/${file}`, here));
  writeFileSync(new URL(file.replace(/\.mjs$/, '.svg'), here), sketch().toString());
}
