import { VIEWS, type App, type ViewName } from './app';
import { byId } from './dom';
import { enlargement } from './enlarged';
import { writeLoad } from './panel';
import { printPicture, takePicture } from './picture';

/** A press that moves less than this many pixels is a tap. */
const TAP = 6;

/** Joins the page's buttons, keys, mouse and fingers to what they do. */
export function bindControls(app: App): void {
  document.querySelectorAll<HTMLElement>('[data-view]').forEach((button) => {
    button.addEventListener('click', () => { app.setView(button.dataset.view as ViewName); });
  });
  document.querySelectorAll<HTMLElement>('[data-do]').forEach((button) => {
    button.addEventListener('click', () => {
      const what = button.dataset.do ?? '';
      if (what === 'print') {
        globalThis.print();
      } else if (what === 'save') {
        void save(app);
      } else {
        app.act(what);
      }
    });
  });
  byId('apart-amount').addEventListener('input', (e) => { app.setApart(Number((e.target as HTMLInputElement).value) / 100); });
  byId('piece').addEventListener('change', (e) => {
    const mark = (e.target as HTMLSelectElement).value;
    if (mark === '') {
      app.choose(null);
    } else {
      app.choosePiece(mark);
    }
  });
  byId('person').addEventListener('change', (e) => {
    if (app.shown !== null) {
      app.shown.state.person = (e.target as HTMLInputElement).checked;
      app.lay();
    }
  });
  byId('case').addEventListener('change', () => { load(app); });
  document.querySelectorAll('[name="times"]').forEach((radio) => { radio.addEventListener('change', () => { load(app); }); });
  // Whoever prints, by the button or by the browser's own way, gets the picture.
  let folded = false;
  const headlines = byId<HTMLDetailsElement>('headlines');
  globalThis.addEventListener('beforeprint', () => {
    printPicture(app);
    folded = !headlines.open;
    headlines.open = true;
  });
  globalThis.addEventListener('afterprint', () => { headlines.open = !folded; });
  bindPointer(app);
  byId('stage').addEventListener('keydown', (e) => { key(app, e); });
}

function bindPointer(app: App): void {
  const stage = byId('stage');
  let down: { x: number; y: number; id: number; still: boolean } | null = null;
  stage.addEventListener('pointerdown', (e) => { down = { x: e.clientX, y: e.clientY, id: e.pointerId, still: true }; });
  stage.addEventListener('pointermove', (e) => {
    if (down === null || down.id !== e.pointerId) {
      return;
    }

    if (Math.hypot(e.clientX - down.x, e.clientY - down.y) > TAP) {
      down.still = false;
    }

    if (app.view === 'walk' && !down.still) {
      app.look(e.clientX - down.x, e.clientY - down.y);
      [down.x, down.y] = [e.clientX, e.clientY];
    }
  });
  const up = (e: PointerEvent): void => {
    if (down?.still === true && down.id === e.pointerId && e.button === 0) {
      const box = stage.getBoundingClientRect();
      app.choose(app.partAt(e.clientX - box.left, e.clientY - box.top));
      aboveTheSheet(app);
    }

    down = null;
  };
  stage.addEventListener('pointerup', up);
  stage.addEventListener('pointercancel', () => { down = null; });
}

function key(app: App, e: KeyboardEvent): void {
  const view = VIEWS[Number(e.key) - 1];
  const arrow = ({ ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] } as Record<string, [number, number]>)[e.key];
  if (e.ctrlKey || e.metaKey || e.altKey) {
    return;
  }

  if (arrow !== undefined) {
    app.turn(arrow[0], arrow[1], e.shiftKey);
  } else if (view !== undefined) {
    app.setView(view);
  } else if (e.key === '+' || e.key === '=') {
    app.act('in');
  } else if (e.key === '-') {
    app.act('out');
  } else if (e.key === 'Home') {
    app.frame();
  } else if (e.key === 'Escape') {
    app.choose(null);
  } else if (e.key === 'n' || e.key === 'p') {
    throughPieces(app, e.key === 'n' ? 1 : -1);
  } else {
    return;
  }

  e.preventDefault();
}

function throughPieces(app: App, by: number): void {
  const marks = app.shown?.view.pieces.map((p) => p.mark) ?? [];
  const chosen = app.shown?.state.chosen ?? null;
  const at = chosen === null ? (by > 0 ? -1 : 0) : marks.indexOf(app.shown?.parts[chosen]?.mark ?? '');
  const next = marks[(at + by + marks.length) % marks.length];
  if (next !== undefined) {
    app.choosePiece(next);
  }
}

function load(app: App): void {
  const { shown } = app;
  if (shown === null) {
    return;
  }

  const { view, state } = shown;
  state.load = view.cases.find((c) => c.id === byId<HTMLSelectElement>('case').value) ?? null;
  state.large = document.querySelector<HTMLInputElement>('[name="times"][value="large"]')?.checked === true;
  state.times = state.large && state.load !== null ? enlargement(view, state.load) ?? 1 : 1;
  writeLoad(view, state);
  app.lay();
}

/** On a telephone what is known of a part lies over the lower half of the window: the picture moves to the upper. */
function aboveTheSheet(app: App): void {
  if (app.shown?.state.chosen != null && matchMedia('(max-width: 899px)').matches) {
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    byId('stage').scrollIntoView({ block: 'start', behavior: still ? 'auto' : 'smooth' });
  }
}

async function save(app: App): Promise<void> {
  const view = document.querySelector(`[data-view="${app.view}"]`)?.textContent ?? app.view;
  const link = document.createElement('a');
  link.href = await takePicture(app);
  link.download = `${fileName(app.shown?.view.name ?? 'bridge')}-${fileName(view)}.png`;
  link.click();
}

const fileName = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '');
