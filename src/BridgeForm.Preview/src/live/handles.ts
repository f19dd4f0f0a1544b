import type { App } from '../app';
import type { BridgeView } from '../view';
import { lastOnly, newGesture } from './desk';
import type { Reading } from './engine';

/** A value that is dragged on the bridge: where its handle sits, and which way a metre of it goes. */
interface Handle {
  path: string;
  kind: string;
  label: string;
  /** Where the handle is, world metres. */
  at: (view: BridgeView) => [number, number, number];
  /** Direction in which the value grows by 1, world metres for a unit of the value. */
  along: (view: BridgeView) => [number, number, number];
  /** Step of an arrow key, in the value's unit. */
  step: number;
}

const middle = (view: BridgeView): { x: number; y: number; deck: number } => view.frames[Math.floor(view.frames.length / 2)] ?? { x: 0, y: 0, deck: 0 };

const HANDLES: Handle[] = [
  { path: 'site.span', kind: 'length', label: 'Span', step: 0.0254 * 6, at: (v) => [v.span, v.rise + 0.1, 0], along: () => [1, 0, 0] },
  { path: 'ropes.sag', kind: 'share', label: 'Sag', step: 0.001, at: (v) => [v.span / 2, v.ropeLowY - 0.05, v.ropeSpacing / 2], along: (v) => [0, -v.span, 0] },
  { path: 'ropes.spacing', kind: 'length', label: 'Rope spacing', step: 0.0254, at: (v) => [v.span * 0.3, middle(v).y, v.ropeSpacing / 2], along: () => [0, 0, 0.5] },
  {
    path: 'frames.post.length', kind: 'length', label: 'Post length', step: 0.0127, at: (v) => [middle(v).x, middle(v).y + middle(v).deck + v.guard, v.deckHalf], along: () => [0, 1, 0],
  },
  {
    path: 'frames.post.lean', kind: 'angle', label: 'Post lean', step: Math.PI / 360,
    at: (v) => [v.frames[1]?.x ?? 0, (v.frames[1]?.y ?? 0) + (v.frames[1]?.deck ?? 0) + v.guard, v.deckHalf + 0.15], along: (v) => [0, 0, v.guard],
  },
];

/** Handles over the picture; each is a slider for keyboard and screen reader too. */
export class Handles {
  private readonly buttons: { handle: Handle; button: HTMLButtonElement; tip: HTMLElement }[];
  private view: BridgeView | null = null;
  private reading: Reading | null = null;

  constructor(private readonly app: App, place: HTMLElement, private readonly move: (path: string, kind: string, number: number, gesture: number | null) => Promise<string>) {
    this.buttons = HANDLES.map((handle) => {
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'handle';
      button.setAttribute('role', 'slider');
      button.setAttribute('aria-label', handle.label);
      const tip = document.createElement('span');
      button.append(tip);
      place.append(button);
      this.bind(handle, button, tip);
      return { handle, button, tip };
    });
    app.stage.after.push(() => { this.place(); });
  }

  show(view: BridgeView): void {
    this.view = view;
    this.place();
  }

  read(reading: Reading): void {
    this.reading = reading;
    this.buttons.forEach(({ handle, button, tip }) => {
      const value = this.valueOf(handle);
      button.hidden = value === null;
      button.setAttribute('aria-valuetext', value?.text ?? '');
      button.setAttribute('aria-valuenow', String(value?.number ?? 0));
      tip.textContent = `${handle.label} ${value?.text ?? ''}`;
    });
  }

  /** A sag written as a length is dragged as one. */
  private valueOf(handle: Handle): { number: number; text: string; kind: string } | null {
    const value = this.reading?.values.find((v) => v.path === handle.path);
    if (value?.number === undefined) {
      return null;
    }

    const chosen = this.reading?.chosen?.find((c) => c.path === handle.path)?.text;
    const span = this.reading?.values.find((v) => v.path === 'site.span')?.number ?? 1;
    const text = value.given ? value.text : chosen ?? value.text;
    return handle.path === 'ropes.sag' && !text.includes('%') ? { number: value.number / span, text, kind: 'share' } : { number: value.number, text, kind: handle.kind };
  }

  private place(): void {
    const { view } = this;
    const usable = view !== null && (this.app.view === 'corner' || this.app.view === 'side' || this.app.view === 'along' || this.app.view === 'above');
    this.buttons.forEach(({ handle, button }) => {
      const spot = usable ? this.app.spot(...handle.at(view)) : null;
      button.style.visibility = spot === null ? 'hidden' : 'visible';
      if (spot !== null) {
        button.style.transform = `translate(${spot.x}px, ${spot.y}px) translate(-50%, -50%)`;
      }
    });
  }

  private bind(handle: Handle, button: HTMLButtonElement, tip: HTMLElement): void {
    let from: { x: number; y: number; value: number; pull: { x: number; y: number }; gesture: number } | null = null;
    const moved = lastOnly(async ({ number, gesture }: { number: number; gesture: number }) => {
      tip.textContent = `${handle.label} ${await this.move(handle.path, handle.kind, number, gesture)}`;
    });
    button.addEventListener('pointerdown', (e) => {
      const value = this.valueOf(handle);
      const pull = this.pull(handle);
      e.stopPropagation();
      if (value !== null && pull !== null) {
        from = { x: e.clientX, y: e.clientY, value: value.number, pull, gesture: newGesture() };
        button.setPointerCapture(e.pointerId);
      }
    });
    button.addEventListener('pointermove', (e) => {
      if (from === null) {
        return;
      }

      const { pull } = from;
      const long = pull.x * pull.x + pull.y * pull.y;
      const by = ((e.clientX - from.x) * pull.x + (e.clientY - from.y) * pull.y) / long;
      void moved({ number: from.value + by, gesture: from.gesture });
    });
    const end = (): void => { from = null; };
    button.addEventListener('pointerup', end);
    button.addEventListener('pointercancel', end);
    button.addEventListener('keydown', (e) => {
      const by = e.key === 'ArrowUp' || e.key === 'ArrowRight' ? 1 : e.key === 'ArrowDown' || e.key === 'ArrowLeft' ? -1 : 0;
      const value = this.valueOf(handle);
      if (by !== 0 && value !== null) {
        e.preventDefault();
        e.stopPropagation();
        void this.move(handle.path, handle.kind, value.number + by * handle.step, null);
      }
    });
  }

  /** Pixels on the screen for one unit of the value; null where it points at the eye. */
  private pull(handle: Handle): { x: number; y: number } | null {
    const { view } = this;
    if (view === null) {
      return null;
    }

    const at = handle.at(view);
    const way = handle.along(view);
    const small = 0.05;
    const [a, b] = [this.app.spot(...at), this.app.spot(at[0] + way[0] * small, at[1] + way[1] * small, at[2] + way[2] * small)];
    if (a === null || b === null) {
      return null;
    }

    const pull = { x: (b.x - a.x) / small, y: (b.y - a.y) / small };
    return Math.hypot(pull.x, pull.y) < 4 ? null : pull;
  }
}
