import { EngineTrouble, type WorkEngine } from './work';
import type { Answer, Fault, Reading } from './engine';

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

/** The project file on the desk: its text is the state, everything else follows from it. Undo is exact: texts are kept whole. */
export class Desk {
  text = '';
  prices: string | null = null;
  answer: Answer | null = null;
  reading: Reading | null = null;
  private readonly past: string[] = [];
  private readonly future: string[] = [];
  private edit = 0;

  constructor(readonly engine: WorkEngine, private readonly watcher: Watcher) {}

  get canUndo(): boolean { return this.past.length > 0; }
  get canRedo(): boolean { return this.future.length > 0; }

  /** A new text; `together` joins it to the one before, as while a slider moves. */
  async put(text: string, from: string, together = false): Promise<void> {
    if (text === this.text) {
      this.watcher.busy(false);
      return;
    }

    if (!together && this.text !== '') {
      this.past.push(this.text);
    }

    this.future.length = 0;
    this.text = text;
    await this.changed(from);
  }

  async undo(): Promise<void> { await this.step(this.past, this.future); }
  async redo(): Promise<void> { await this.step(this.future, this.past); }

  /** One value written otherwise; null takes the key out. The problem where it cannot be. */
  async set(path: string, value: string | null, together = false): Promise<string> {
    const number = this.edit;
    this.watcher.busy(true);
    const { text, problem } = await this.guarded(() => this.engine.edit(this.text, path, value)) ?? { text: '', problem: 'the engine was restarted; try again' };
    if (text !== '') {
      await this.put(text, path, together);
    }

    if (number === this.edit) {
      this.watcher.busy(false);
    }

    return problem;
  }

  /** Works out the bridge anew, from the price list on: the text is as it was. */
  async changed(from: string): Promise<void> {
    const number = ++this.edit;
    this.watcher.text(this.text, from);
    this.watcher.busy(true);
    await this.guarded(async () => { await this.work(number); });
    if (number === this.edit) {
      this.watcher.busy(false);
    }
  }

  private async work(number: number): Promise<void> {
    const stale = (): boolean => number !== this.edit;
    const reading = await this.engine.open(this.text, this.prices);
    if (stale()) {
      return;
    }

    this.reading = reading;
    this.watcher.reading(reading);
    this.watcher.faults([...reading.faults, ...reading.priceFaults]);
    for (let more = reading.ok; more;) {
      const step = await this.engine.step();
      if (stale()) {
        return;
      }

      more = step.more;
      if ((step.faults ?? []).length > 0) {
        this.watcher.faults(step.faults ?? []);
      }

      if (step.draws === true) {
        const { glb, view } = await this.engine.geometry();
        if (stale()) {
          return;
        }

        await this.watcher.drawn(glb, view);
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

  private async step(from: string[], to: string[]): Promise<void> {
    const text = from.pop();
    if (text !== undefined) {
      to.push(this.text);
      this.text = text;
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
