/** What the engine says; PageKeys, PageState, PageBuild, PageAnswer and PageSearch in C# write it. SI units. */
export interface KeyView {
  path: string;
  form: 'text' | 'choice' | 'whole' | 'number' | 'flag' | 'section' | 'quantity' | 'rope';
  kind?: string;
  choices?: string[];
  least?: number;
  most?: number;
  imperial?: string;
  metric?: string;
  note?: string;
  words: string;
}
export interface Keys { first: string[]; groups: { name: string; keys: KeyView[] }[]; ropes: string[] }

export interface Fault { line: number; column: number; code: string; message: string }
export interface Value { path: string; text: string; number?: number; given: boolean; good: boolean }
export interface Reading {
  ok: boolean;
  metric: boolean;
  faults: Fault[];
  priceFaults: Fault[];
  values: Value[];
  chosen?: { path: string; text: string; rule: string }[];
  sections?: { stock: string; names: string[] }[];
}

export interface Step { stage?: string; more: boolean; draws?: boolean; done?: boolean; faults?: Fault[] }
export interface Figure { name: string; text: string; number?: number }
export type Status = 'fails' | 'review' | 'engineer' | 'holds';
export interface Check { id: string; title: string; status: Status; ratio?: number; sentence: string; detail: string; source: string; help: string; parts?: string[] }
export interface Answer { verdict: string; caution: string; headlines: { label: string; text: string; danger: boolean }[]; figures: Figure[]; checks: Check[] }
export interface Way { name: string; text: string; changes: { path: string; before: string; after: string; reason: string }[]; figures: { name: string; text: string }[] }
export interface Ways { looked: number; passing: boolean; why: string[]; ways: Way[] }

/** The project file's bridge, wherever it is worked out. Calls are answered in the order in which they are made. */
export interface Engine {
  keys(): Promise<Keys>;
  starter(metric: boolean): Promise<string>;
  open(text: string, prices: string | null): Promise<Reading>;
  /** The text with a value written, or without it where that is null. */
  edit(text: string, path: string, value: string | null): Promise<{ text: string; problem: string }>;
  say(kind: string, number: number, metric: boolean): Promise<string>;
  step(): Promise<Step>;
  geometry(): Promise<{ glb: ArrayBuffer; view: string }>;
  checks(): Promise<{ answer: Answer; view: string }>;
  make(kind: string): Promise<string[]>;
  file(name: string): Promise<Uint8Array>;
  zip(): Promise<Uint8Array>;
  kinds(): Promise<string[]>;
  /** Those that `make` writes where none is named. */
  usualKinds(): Promise<string[]>;
}

/** Searches; a worker of its own, ended by an edit. */
export interface Searcher {
  propose(text: string, prices: string | null, looked: (count: number, best: string) => void): Promise<Ways>;
  start(span: string, rise: string, isPublic: boolean, metric: boolean, looked: (count: number, best: string) => void): Promise<Ways>;
  stop(): void;
}
