import type { Answer, Engine, Keys, Reading, Searcher, Step, Ways } from './engine';

/** What a page carries for its workers: their script, the packed runtime, and files that the runtime is given. */
export interface Cargo { script: string; assets: string; given: Record<string, string> }

/** Told while a search runs: designs looked at, and the best so far in words. */
type Looked = (count: number, best: string) => void;
interface Waiting { done: (result: unknown) => void; failed: (trouble: Error) => void; looked?: Looked }

/** Trouble in the engine itself: a defect, not a fault of the file. */
export class EngineTrouble extends Error {}

/** A worker with the engine in it. */
class Post {
  private readonly worker: Worker;
  private readonly waiting = new Map<number, Waiting>();
  private last = 0;
  readonly begun: Promise<unknown>;

  constructor(cargo: Cargo) {
    const url = URL.createObjectURL(new Blob([cargo.script], { type: 'text/javascript' }));
    this.worker = new Worker(url);
    this.worker.onmessage = (message: MessageEvent<{ id: number; result?: unknown; trouble?: string; looked?: number; best?: string }>) => {
      const { id, result, trouble, looked, best } = message.data;
      const waiting = this.waiting.get(id);
      if (looked !== undefined) {
        waiting?.looked?.(looked, best ?? '');
        return;
      }

      this.waiting.delete(id);
      if (trouble === undefined) {
        waiting?.done(result);
      } else {
        waiting?.failed(new EngineTrouble(trouble));
      }
    };
    this.worker.onerror = (e) => { this.fail(e.message); };
    this.begun = this.call('begin', [cargo.assets, cargo.given]);
    this.begun.catch(() => undefined);
  }

  call<T>(call: string, args: unknown[] = [], looked?: Looked): Promise<T> {
    const id = ++this.last;
    return new Promise<T>((done, failed) => {
      this.waiting.set(id, { done: done as (result: unknown) => void, failed, ...(looked === undefined ? {} : { looked }) });
      this.worker.postMessage({ id, call, args });
    });
  }

  async told<T>(call: string, args: unknown[] = [], looked?: Looked): Promise<T> {
    return JSON.parse(text(await this.call<Uint8Array>(call, args, looked))) as T;
  }

  end(): void {
    this.worker.terminate();
    this.fail('ended');
  }

  private fail(why: string): void {
    const all = [...this.waiting.values()];
    this.waiting.clear();
    all.forEach((w) => { w.failed(new EngineTrouble(why)); });
  }
}

function text(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes);
}

/** The engine in a worker; begun anew by `renew` after trouble. */
export class WorkEngine implements Engine {
  private post: Post;

  constructor(private readonly cargo: Cargo) {
    this.post = new Post(cargo);
  }

  renew(): void {
    this.post.end();
    this.post = new Post(this.cargo);
  }

  keys(): Promise<Keys> { return this.post.told('Keys'); }
  starter(metric: boolean): Promise<string> { return this.post.call('Starter', [metric]); }
  open(file: string, prices: string | null): Promise<Reading> { return this.post.told('Open', [file, prices]); }
  async edit(file: string, path: string, value: string | null): Promise<{ text: string; problem: string }> {
    const [written, problem] = await Promise.all([
      value === null ? this.post.call<string>('Remove', [file, path]) : this.post.call<string>('Write', [file, path, value]),
      this.post.call<string>('Problem'),
    ]);
    return { text: written, problem };
  }
  say(kind: string, number: number, metric: boolean): Promise<string> { return this.post.call('Say', [kind, number, metric]); }
  step(): Promise<Step> { return this.post.told('Step'); }
  async geometry(): Promise<{ glb: ArrayBuffer; view: string }> {
    const [glb, view] = await Promise.all([this.post.call<Uint8Array>('Glb'), this.post.call<Uint8Array>('View')]);
    return { glb: glb.buffer as ArrayBuffer, view: text(view) };
  }
  async checks(): Promise<{ answer: Answer; view: string }> {
    const [answer, view] = await Promise.all([this.post.told<Answer>('Checked'), this.post.call<Uint8Array>('View')]);
    return { answer, view: text(view) };
  }
  make(kind: string): Promise<string[]> { return this.post.call('Make', [kind]); }
  file(name: string): Promise<Uint8Array> { return this.post.call('File', [name]); }
  zip(): Promise<Uint8Array> { return this.post.call('Zip'); }
  kinds(): Promise<string[]> { return this.post.call('Kinds'); }
  usualKinds(): Promise<string[]> { return this.post.call('UsualKinds'); }
}

/** Searches in a worker that is begun on first use and ended by `stop`. */
export class WorkSearcher implements Searcher {
  private post: Post | null = null;

  constructor(private readonly cargo: Cargo) {}

  propose(file: string, prices: string | null, looked: Looked): Promise<Ways> {
    return this.begun().told('Propose', [file, prices], looked);
  }

  start(span: string, rise: string, isPublic: boolean, metric: boolean, looked: Looked): Promise<Ways> {
    return this.begun().told('Start', [span, rise, isPublic, metric], looked);
  }

  stop(): void {
    this.post?.end();
    this.post = null;
  }

  private begun(): Post {
    this.post ??= new Post(this.cargo);
    return this.post;
  }
}
