import { EngineTrouble, type WorkEngine } from './work';
import type { Answer, Fault, Reading, Step } from './engine';

/** What the page is told while the bridge of the present text is worked out. */
export interface Watcher {
  /** The text has changed, by whom: the page writes it where it did not come from. */
  text: (text: string, from: string) => void;
  reading: (reading: Reading) => void;
  /** Faults of the file, or of parts that do not fit; empty: none. The last good bridge stays. */
  faults: (faults: Fault[]) => void;
  drawn: (glb: ArrayBuffer, view: string) => Promise<void>;
  answered: (answer: Answer, view: string) => void;
  busy: (busy: boolean) => void;
  restarted: (why: string) => void;
}

let gestures = 0;
/** A number for all that one drag writes. */
export const newGesture = (): number => ++gestures;

/** Does one after another, and of those that wait only the last, as while a slider moves. */
export function lastOnly<T>(does: (value: T) => Promise<void>): (value: T) => Promise<void> {
  let next: { value: T } | null = null;
  let running: Promise<void> | null = null;
  const run = async (): Promise<void> => {
    try {
      while (next !== null) {
        const { value } = next;
        next = null;
        await does(value);
      }
    } finally {
      running = null;
    }
  };
  return (value) => {
    next = { value };
    return running ??= run();
  };
}

/** The project file on the desk: its text is the state, everything else follows from it. Undo is exact: texts are kept whole. */
export class Desk {
  text = '';
  prices: string | null = null;
  answer: Answer | null = null;
  reading: Reading | null = null;
  /** Until the present text is drawn, or found to be none. */
  drawn: Promise<void> = Promise.resolve();
  private readonly past: string[] = [];
  private readonly future: string[] = [];
  private edit = 0;
  private gesture: number | null = null;
  private writing: Promise<unknown> = Promise.resolve();

  constructor(readonly engine: WorkEngine, private readonly watcher: Watcher) {}

  get canUndo(): boolean { return this.past.length > 0; }
  get canRedo(): boolean { return this.future.length > 0; }

  /** A new text; those of one gesture, as while a slider moves, are undone together. */
  async put(text: string, from: string, gesture: number | null = null): Promise<void> {
    if (text === this.text) {
      this.watcher.busy(false);
      return;
    }

    if ((gesture === null || gesture !== this.gesture) && this.text !== '') {
      this.past.push(this.text);
    }

    this.gesture = gesture;

    this.future.length = 0;
    this.text = text;
    await this.changed(from);
  }

  async undo(): Promise<void> { await this.step(this.past, this.future); }
  async redo(): Promise<void> { await this.step(this.future, this.past); }

  /** One value written otherwise; null takes the key out. The problem where it cannot be. Waits for the edits before it. */
  set(path: string, value: string | null, gesture: number | null = null): Promise<string> {
    const written = this.writing.then(() => this.written(path, value, gesture));
    this.writing = written.catch(() => undefined);
    return written;
  }

  private async written(path: string, value: string | null, gesture: number | null): Promise<string> {
    for (;;) {
      const { edit: number, text: before } = this;
      this.watcher.busy(true);
      const { text, problem } = await this.guarded(() => this.engine.edit(before, path, value)) ?? { text: '', problem: 'the engine was restarted; try again' };
      if (before !== this.text) {
        // Somebody typed meanwhile: the value goes into what stands there now.
        continue;
      }

      if (text !== '') {
        void this.put(text, path, gesture);
      }

      if (number === this.edit) {
        this.watcher.busy(false);
      }

      return problem;
    }
  }

  /** Works out the bridge anew, from the price list on: the text is as it was. */
  async changed(from: string): Promise<void> {
    const number = ++this.edit;
    this.watcher.text(this.text, from);
    this.watcher.busy(true);
    let pictured = (): void => undefined;
    this.drawn = new Promise((done) => { pictured = done; });
    await this.guarded(async () => { await this.work(number, pictured); });
    pictured();
    if (number === this.edit) {
      this.watcher.busy(false);
    }
  }

  private async work(number: number, pictured: () => void): Promise<void> {
    const stale = (): boolean => number !== this.edit;
    const reading = await this.engine.open(this.text, this.prices);
    if (stale()) {
      return;
    }

    this.reading = reading;
    this.watcher.reading(reading);
    this.watcher.faults([...reading.faults, ...reading.priceFaults]);
    let next = reading.ok ? this.ahead() : null;
    while (next !== null) {
      const step: Step = await next;
      if (stale()) {
        return;
      }

      next = step.more && step.draws !== true ? this.ahead() : null;
      if ((step.faults ?? []).length > 0) {
        this.watcher.faults(step.faults ?? []);
      }

      if (step.draws === true) {
        const { glb, view } = await this.engine.geometry();
        if (stale()) {
          return;
        }

        // The engine goes on while the page draws.
        next = step.more ? this.ahead() : null;
        await this.watcher.drawn(glb, view);
        pictured();
      }

      if (step.done === true) {
        const { answer, view } = await this.engine.checks();
        if (stale()) {
          return;
        }

        this.answer = answer;
        this.watcher.answered(answer, view);
      }
    }
  }

  /** The next step; nobody may be there any more when it fails. */
  private ahead(): Promise<Step> {
    const step = this.engine.step();
    step.catch(() => undefined);
    return step;
  }

  private async step(from: string[], to: string[]): Promise<void> {
    const text = from.pop();
    if (text !== undefined) {
      to.push(this.text);
      this.text = text;
      this.gesture = null;
      await this.changed('history');
    }
  }

  /** Trouble in the engine is a defect: it begins anew, and the text is kept. */
  private async guarded<T>(work: () => Promise<T>): Promise<T | null> {
    try {
      return await work();
    } catch (trouble) {
      if (!(trouble instanceof EngineTrouble)) {
        throw trouble;
      }

      this.edit++;
      this.engine.renew();
      this.watcher.restarted(trouble.message);
      this.watcher.busy(false);
      return null;
    }
  }
}
