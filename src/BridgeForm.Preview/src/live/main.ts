import type { BridgeFormPage } from '../main';
import type { BridgeView } from '../view';
import { byId, element } from '../dom';
import { Decisions } from './decisions';
import { Desk } from './desk';
import { writeAnswer, writeFigures } from './figures';
import { Handles } from './handles';
import { canKeep, forget, fromLink, keep, kept, linkTo } from './keep';
import { offerFiles, save } from './take';
import { TextTab } from './text';
import { writeWays } from './ways';
import { WorkEngine, WorkSearcher, type Cargo } from './work';
import type { Answer, Check, Fault, Way } from './engine';

declare const bridgeForm: BridgeFormPage;

const cargo: Cargo = {
  script: byId('worker').textContent ?? '',
  assets: byId('assets').textContent ?? '',
  given: { 'preview.js': byId('preview-script').textContent ?? '' },
};
const engine = new WorkEngine(cargo);
const searcher = new WorkSearcher(cargo);
const variants: Record<string, { text: string; answer: Answer } | undefined> = {};
let accepted: Answer | null = null;
let tried: { before: string } | null = null;
let decisions: Decisions | null = null;
let textTab: TextTab | null = null;
let handles: Handles | null = null;
let pictured = false;

const desk = new Desk(engine, {
  text: (text, from) => {
    searcher.stop();
    status('searching', '');
    if (from !== 'text') {
      textTab?.show(text);
    }

    keep(text);
    byId<HTMLButtonElement>('undo').disabled = !desk.canUndo;
    byId<HTMLButtonElement>('redo').disabled = !desk.canRedo;
    if (from !== 'way') {
      settle();
    }
  },
  reading: (reading) => {
    decisions?.show(reading);
    handles?.read(reading);
  },
  faults: (faults) => { writeFaults(faults); },
  drawn: async (glb, view) => {
    const told = JSON.parse(view) as BridgeView;
    await bridgeForm.show({ view: told, glb }, pictured);
    pictured = true;
    handles?.show(told);
  },
  answered: (answer, view) => {
    const told = JSON.parse(view) as BridgeView;
    bridgeForm.app?.tell(told);
    handles?.show(told);
    accepted ??= answer;
    writeFigures(answer, accepted);
    writeAnswer(answer, (check) => { point(check); });
    byId('ask-ways').hidden = false;
    if (answer.checks.some((c) => c.status === 'fails') && tried === null) {
      void search();
    }
  },
  busy: (busy) => { byId('busy').textContent = busy ? 'working it out …' : ''; },
  restarted: (why) => {
    status('notice', `The engine stopped (${why}) and was begun anew; the file is as you left it.`);
    void desk.changed('engine');
  },
});

function status(id: string, text: string): void {
  byId(id).textContent = text;
  byId(id).hidden = text === '';
}

function writeFaults(faults: Fault[]): void {
  textTab?.faults(faults);
  const first = faults[0];
  status('file-faults', first === undefined ? '' : `The file cannot be built as it stands, the picture is the last good one. Line ${first.line}: ${first.message}`
    + (faults.length > 1 ? ` And ${faults.length - 1} more: see the file.` : ''));
}

/** The parts of a check are chosen one after another. */
function point(check: Check): void {
  const parts = check.parts ?? [];
  const index = bridgeForm.app?.shown?.parts.findIndex((p) => parts.includes(p.id)) ?? -1;
  bridgeForm.app?.choose(index < 0 ? null : index);
  byId('stage').scrollIntoView({ block: 'nearest' });
}

function progress(count: number, best: string): string {
  return `${count} designs looked at${best === '' ? '' : `; ${best}`} …`;
}

async function search(): Promise<void> {
  const text = desk.text;
  status('searching', 'Looking for ways that pass …');
  try {
    const found = await searcher.propose(text, desk.prices, (count, best) => { status('searching', `Looking for ways that pass: ${progress(count, best)}`); });
    if (text === desk.text) {
      status('searching', '');
      writeWays(found, (way) => { void tryWay(way); });
    }
  } catch {
    // An edit has ended the search.
  }
}

async function tryWay(way: Way): Promise<void> {
  tried = { before: desk.text };
  byId('trial').hidden = false;
  byId('trial-words').textContent = `You look at the way with the ${way.name}. Keep it, or go back to your own.`;
  await desk.put(way.text, 'way');
}

/** What was tried is settled by keeping it, going back, or any other edit. */
function settle(): void {
  tried = null;
  byId('trial').hidden = true;
}

function accept(): void {
  accepted = desk.answer;
  settle();
  if (desk.answer !== null) {
    writeFigures(desk.answer, accepted);
  }
}

function variant(name: 'A' | 'B'): void {
  if (desk.answer !== null) {
    variants[name] = { text: desk.text, answer: desk.answer };
    compare();
  }
}

function compare(): void {
  const { A, B } = variants;
  byId<HTMLButtonElement>('show-a').disabled = A === undefined;
  byId<HTMLButtonElement>('show-b').disabled = B === undefined;
  const table = byId('compared');
  table.hidden = A === undefined || B === undefined;
  if (A === undefined || B === undefined) {
    return;
  }

  const names = [...new Set([...A.answer.figures, ...B.answer.figures].map((f) => f.name))];
  const rows = names.map((name) => [name, ...[A, B].map((v) => v.answer.figures.find((f) => f.name === name)?.text ?? '')]);
  const fails = ['checks that do not hold', ...[A, B].map((v) => String(v.answer.checks.filter((c) => c.status === 'fails').length))];
  table.replaceChildren(...[['Design', 'A', 'B'], fails, ...rows].map((row, i) => {
    const line = document.createElement('tr');
    line.append(...row.map((cell, j) => element(i === 0 || j === 0 ? 'th' : 'td', cell)));
    return line;
  }));
}

async function read(file: File): Promise<void> {
  if (file.size > 1_000_000) {
    status('notice', `${file.name} is too large for a project file or a price list.`);
    return;
  }

  const text = await file.text();
  if (file.name.toLowerCase().endsWith('.csv')) {
    desk.prices = text;
    status('prices', `Prices: ${file.name}`);
    await desk.changed('prices');
    return;
  }

  const before = desk.text;
  accepted = null;
  await desk.put(text, 'file');
  if (desk.reading?.ok !== true) {
    status('notice', `${file.name} cannot be read as a bridge; its text is in the file's tab, undo brings back yours.`);
    tab('file');
    if (before === '') {
      await desk.put(await engine.starter(false), 'file');
    }
  } else {
    status('notice', '');
  }
}

function tab(name: 'decisions' | 'file'): void {
  (['decisions', 'file'] as const).forEach((one) => {
    byId(`tab-${one}`).setAttribute('aria-selected', String(one === name));
    byId<HTMLButtonElement>(`tab-${one}`).tabIndex = one === name ? 0 : -1;
    byId(`pane-${one}`).hidden = one !== name;
  });
}

async function begin(event: SubmitEvent): Promise<void> {
  event.preventDefault();
  const [span, rise] = ['ask-span', 'ask-rise'].map((id) => byId<HTMLInputElement>(id).value.trim());
  const isPublic = byId<HTMLInputElement>('ask-public').checked;
  const metric = /m\s*$/.test(span ?? '');
  const say = byId('ask-answer');
  byId<HTMLButtonElement>('ask-go').disabled = true;
  say.textContent = 'Looking for a bridge that passes …';
  try {
    const found = await searcher.start(span ?? '', rise ?? '', isPublic, metric, (count, best) => { say.textContent = progress(count, best); });
    const way = found.ways[0];
    if (way === undefined) {
      say.replaceChildren(element('span', 'Nothing that passes was found. '), ...found.why.map((w) => element('span', `${w} `)));
      return;
    }

    accepted = null;
    say.textContent = '';
    byId<HTMLDialogElement>('ask').close();
    await desk.put(way.text, 'start');
  } catch (trouble) {
    say.textContent = `The search stopped: ${trouble instanceof Error ? trouble.message : String(trouble)}`;
  } finally {
    byId<HTMLButtonElement>('ask-go').disabled = false;
  }
}

function bind(): void {
  const click = (id: string, does: () => void): void => { byId(id).addEventListener('click', does); };
  click('undo', () => { void desk.undo(); });
  click('redo', () => { void desk.redo(); });
  click('accept', accept);
  click('trial-keep', accept);
  click('trial-back', () => { void desk.put(tried?.before ?? desk.text, 'back'); });
  click('ask-ways', () => { void search(); });
  click('keep-a', () => { variant('A'); });
  click('keep-b', () => { variant('B'); });
  click('show-a', () => { void desk.put(variants.A?.text ?? desk.text, 'variant'); });
  click('show-b', () => { void desk.put(variants.B?.text ?? desk.text, 'variant'); });
  click('save-file', () => { save('project.yaml', desk.text, 'text/yaml'); });
  click('new', () => { byId<HTMLDialogElement>('ask').showModal(); });
  click('ask-close', () => { byId<HTMLDialogElement>('ask').close(); });
  click('forget', () => {
    forget();
    status('notice', 'Forgotten: the browser keeps nothing of this page until the next change.');
  });
  click('share', () => {
    void linkTo(desk.text).then((link) => {
      if (link === null) {
        save('project.yaml', desk.text, 'text/yaml');
      } else {
        void navigator.clipboard.writeText(link).then(() => { status('notice', 'The link is in the clipboard.'); }, () => { location.hash = link.split('#')[1] ?? ''; });
      }
    });
  });
  byId('ask-form').addEventListener('submit', (e) => { void begin(e as SubmitEvent); });
  byId('open').addEventListener('change', (e) => {
    const input = e.target as HTMLInputElement;
    const file = input.files?.[0];
    if (file !== undefined) {
      void read(file).finally(() => { input.value = ''; });
    }
  });
  (['decisions', 'file'] as const).forEach((name, i, all) => {
    click(`tab-${name}`, () => { tab(name); });
    byId(`tab-${name}`).addEventListener('keydown', (e) => {
      if (e.key === 'ArrowLeft' || e.key === 'ArrowRight') {
        const other = all[1 - i] ?? 'file';
        tab(other);
        byId(`tab-${other}`).focus();
      }
    });
  });
  window.addEventListener('dragover', (e) => { e.preventDefault(); });
  window.addEventListener('drop', (e) => {
    e.preventDefault();
    const file = e.dataTransfer?.files[0];
    if (file !== undefined) {
      void read(file);
    }
  });
  window.addEventListener('keydown', (e) => {
    if ((e.ctrlKey || e.metaKey) && e.key.toLowerCase() === 'z' && !(e.target instanceof HTMLTextAreaElement)) {
      e.preventDefault();
      void (e.shiftKey ? desk.redo() : desk.undo());
    }
  });
}

async function main(): Promise<void> {
  bind();
  tab('decisions');
  status('kept', canKeep() ? '' : 'Not kept: this browser keeps nothing for this page. Save the file before you close it.');
  // What the page opens with is drawn from what it was made with, before the engine has begun.
  await bridgeForm.ready;
  const view = byId('view').textContent ?? '';
  pictured = view !== '';
  if (bridgeForm.app !== null) {
    handles = new Handles(bridgeForm.app, byId('stage'), async (path, kind, number, gesture) => {
      const text = await engine.say(kind, number, desk.reading?.metric ?? false);
      await desk.set(path, text, gesture);
      await desk.drawn;
      return text;
    });
    if (view !== '') {
      handles.show(JSON.parse(view) as BridgeView);
    }
  }

  const keys = await engine.keys();
  decisions = new Decisions(
    byId('pane-decisions'), keys, async (path, value, gesture) => {
      const problem = await desk.set(path, value, gesture);
      await desk.drawn;
      return problem;
    }, (kind, number) => engine.say(kind, number, desk.reading?.metric ?? false));
  textTab = new TextTab(keys, (text) => { void desk.put(text, 'text'); });
  await offerFiles(desk, (text) => { status('making', text); });
  await desk.put(await fromLink() ?? kept() ?? byId('first-file').textContent ?? '', 'start');
  document.body.dataset.live = 'ready';
}

Object.assign(globalThis, { live: { desk, engine } });
void main().catch((trouble: unknown) => {
  status('notice', `The page could not begin: ${trouble instanceof Error ? trouble.message : String(trouble)}`);
});
