import { App, VIEWS, type ViewName } from './app';
import { byId } from './dom';
import { bindControls } from './controls';
import { writePanel } from './panel';
import { drawStill } from './still';
import type { BridgeFile, BridgeView } from './view';

/** What other scripts on the page may use: hand over a new bridge, look at the one shown. */
export interface BridgeFormPage {
  show: (file: BridgeFile, stay?: boolean) => Promise<void>;
  ready: Promise<void>;
  app: App | null;
}

const app = tryApp();

/** Shows a bridge in place of the one before, without loading the page anew. */
async function show(file: BridgeFile, stay = false): Promise<void> {
  if (app !== null) {
    await app.show(file, stay);
    return;
  }

  document.body.classList.add('fallback');
  writePanel(file.view);
  const stage = byId('stage');
  await drawStill(byId<HTMLElement>('canvas') as unknown as HTMLCanvasElement, file, 2 * stage.clientWidth, 2 * stage.clientHeight);
  stage.removeAttribute('tabindex');
  stage.setAttribute('role', 'img');
  stage.setAttribute('aria-label', `Still picture of ${file.view.name}. ${file.view.lead}`);
  stage.querySelectorAll('.note').forEach((note) => { note.remove(); });
  stage.insertAdjacentHTML('beforeend', '<p class="note">This browser draws no three-dimensional pictures (WebGL is off), so here is a still one.</p>');
}

function tryApp(): App | null {
  try {
    return new App();
  } catch {
    return null;
  }
}

/** A model may lie packed in the page; a GLB begins with other bytes than a gzip stream. */
async function unpacked(bytes: Uint8Array<ArrayBuffer>): Promise<ArrayBuffer> {
  return bytes[0] !== 0x1f || bytes[1] !== 0x8b
    ? bytes.buffer
    : new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
}

async function inline(): Promise<BridgeFile | null> {
  const text = byId('view').textContent ?? '';
  if (text === '') {
    return null;
  }

  const coded = atob((byId('model').textContent ?? '').trim());
  const bytes = Uint8Array.from(coded, (c) => c.charCodeAt(0));
  return { view: JSON.parse(text) as BridgeView, glb: await unpacked(bytes) };
}

if (app !== null) {
  bindControls(app);
}

const ready = inline().then((file) => (file === null ? undefined : show(file)));
const page: BridgeFormPage = { show, app, ready };
Object.assign(globalThis, { bridgeForm: page });
export { VIEWS, type ViewName };
