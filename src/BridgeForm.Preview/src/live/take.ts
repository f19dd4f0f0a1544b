import { byId, element } from '../dom';
import type { Desk } from './desk';

/** Hands a file to the person. */
export function save(name: string, bytes: BlobPart, type = 'application/octet-stream'): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name;
  link.click();
  setTimeout(() => { URL.revokeObjectURL(link.href); }, 60_000);
}

const TYPES: Record<string, string> = { pdf: 'application/pdf', html: 'text/html', csv: 'text/csv', json: 'application/json', dxf: 'application/dxf', glb: 'model/gltf-binary', step: 'model/step', usdz: 'model/vnd.usdz+zip', '3mf': 'model/3mf' };

const WORDS: Record<string, string> = {
  model: 'The bridge as a model', preview: 'Page for the homeowner', profiles: 'Every piece, full size, DXF', router: 'Router paths, DXF',
  boards: 'Whole boards for the router, DXF', templates: 'Templates to print full size', sheets: 'Saw settings and labels', drawings: 'Drawings',
  crew: 'Survey, erection, upkeep', quote: 'Quote', tables: 'Cut list and other tables', report: 'Report for other programs',
  step: 'Exact solids for engineer and shop, STEP', ifc: 'Building model for the permit, IFC',
  usdz: 'Model to see in the garden with a telephone, USDZ',
  'scale-model': 'Small model to print, 3MF',
};

/** Everything that can be taken away: a button a kind, and one for all as a zip archive. */
export async function offerFiles(desk: Desk, say: (text: string) => void): Promise<void> {
  const kinds = await desk.engine.kinds();
  const made = async (kind: string): Promise<string[]> => {
    say(`Making ${WORDS[kind] ?? kind} …`);
    const before = new Set(Object.keys(shown));
    const names = await desk.engine.make(kind);
    say('');
    return names.filter((n) => !before.has(n));
  };
  const shown: Record<string, true> = {};
  const all = element('button', 'All files in one zip archive');
  all.type = 'button';
  all.id = 'take-all';
  all.addEventListener('click', () => {
    void (async () => {
      for (const kind of await desk.engine.usualKinds()) {
        await made(kind);
      }

      save('bridge.zip', await desk.engine.zip() as BlobPart, 'application/zip');
    })();
  });
  byId('files').replaceChildren(all, ...kinds.map((kind) => {
    const box = element('details', '');
    box.dataset.kind = kind;
    const list = element('ul', '');
    box.append(element('summary', WORDS[kind] ?? kind), list);
    box.addEventListener('toggle', () => {
      if (box.open) {
        void made(kind).then((names) => { list.replaceChildren(...names.filter((n) => of(kind, n)).map((n) => row(desk, n))); });
      }
    });
    return box;
  }));
}

/** Files of the kind `crew`. */
const CREW = ['survey.pdf', 'erection.pdf', 'erection.csv', 'upkeep.pdf'];

/** Which kind a file belongs to, by its name: as `make` names them. */
function of(kind: string, name: string): boolean {
  switch (kind) {
    case 'model': return name === 'model.glb';
    case 'step': return name === 'model.step';
    case 'ifc': return name === 'model.ifc';
    case 'usdz': return name === 'model.usdz';
    case 'scale-model': return name.startsWith('scale-model.');
    case 'preview': return name === 'preview.html';
    case 'drawings': return name === 'drawings.pdf';
    case 'report': return name === 'report.json';
    case 'sheets': return name === 'saw-setups.pdf' || name === 'labels.pdf';
    case 'crew': return CREW.includes(name);
    case 'quote': return name.startsWith('quote.');
    case 'tables': return name.endsWith('.csv') && !CREW.includes(name) && !name.startsWith('quote.') && !name.startsWith('scale-model.');
    case 'boards': return name.startsWith('boards/') || name.includes('/boards');
    default: return name.startsWith(`${kind}/`);
  }
}

function row(desk: Desk, name: string): HTMLElement {
  const line = element('li', '');
  const type = TYPES[name.split('.').pop() ?? ''] ?? 'application/octet-stream';
  const take = element('button', name);
  take.type = 'button';
  take.title = `Save ${name}`;
  take.addEventListener('click', () => { void desk.engine.file(name).then((bytes) => { save(name.replaceAll('/', '-'), bytes as BlobPart, type); }); });
  line.append(take);
  if (type === 'application/pdf' || type === 'text/html') {
    const look = element('button', 'Look');
    look.type = 'button';
    look.setAttribute('aria-label', `Look: ${name}`);
    look.addEventListener('click', () => {
      void desk.engine.file(name).then((bytes) => { window.open(URL.createObjectURL(new Blob([bytes as BlobPart], { type })), '_blank'); });
    });
    line.append(look);
  }

  return line;
}
