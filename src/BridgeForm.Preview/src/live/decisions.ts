import { element, option } from '../dom';
import { lastOnly, newGesture } from './desk';
import type { Keys, KeyView, Reading, Value } from './engine';

/** What a control does with a value: writes it, or takes the key out (null). What one `gesture` writes is undone together. */
export type Write = (path: string, value: string | null, gesture: number | null) => Promise<string>;
/** A number of a slider as people write it. */
export type Say = (kind: string, number: number) => Promise<string>;

/** Kinds that a slider sets; how far it goes either way of the present value: a share of it, or in its own unit. */
const SLIDES: Record<string, number> = { length: 0.5, angle: 0.5, share: 0.5 };

/** One value with its control. */
class Control {
  readonly box: HTMLElement;
  private readonly field: HTMLInputElement | HTMLSelectElement;
  private readonly slider: HTMLInputElement | null;
  private readonly leave: HTMLButtonElement;
  private readonly problem: HTMLElement;
  private value: Value | null = null;

  constructor(readonly key: KeyView, label: string, private readonly sections: () => string[], ropes: string[], private readonly write: Write, private readonly say: Say) {
    const id = `key-${key.path.replaceAll('.', '-')}`;
    this.box = element('div', '', 'control');
    const name = element('label', label);
    name.htmlFor = id;
    const help = element('details', '', 'help');
    const summary = element('summary', '?');
    summary.setAttribute('aria-label', `What is ${label}?`);
    help.append(summary, element('p', `${key.words}.${key.note === undefined ? '' : ` Left out: ${key.note}.`}`));
    this.field = this.made(ropes);
    this.field.id = id;
    this.problem = element('p', '', 'problem');
    this.problem.id = `${id}-problem`;
    this.problem.setAttribute('role', 'alert');
    this.field.setAttribute('aria-describedby', this.problem.id);
    this.leave = element('button', 'by rule', 'leave');
    this.leave.type = 'button';
    this.leave.title = 'Take the value out of the file: a rule or the default stands in';
    this.leave.setAttribute('aria-label', `${label}: by rule`);
    this.leave.addEventListener('click', () => { void this.give(null, null); });
    this.slider = key.kind !== undefined && key.kind in SLIDES ? this.sliding(label) : null;
    const row = element('div', '', 'fields');
    row.append(this.field, this.leave);
    this.box.append(name, help, row, ...(this.slider === null ? [] : [this.slider]), this.problem);
    this.field.addEventListener('change', () => { void this.give(this.field.value.trim(), null); });
  }

  show(value: Value | undefined, chosen: string | undefined): void {
    this.value = value ?? null;
    const text = value?.given === true ? value.text : chosen ?? value?.text ?? '';
    if (this.field instanceof HTMLSelectElement) {
      this.options(text);
    }

    if (document.activeElement !== this.field || this.field instanceof HTMLSelectElement) {
      this.field.value = text;
    }

    this.problem.textContent = '';
    this.field.removeAttribute('aria-invalid');
    this.box.classList.toggle('ruled', value?.given !== true);
    this.leave.hidden = value?.given !== true;
    this.range(value);
  }

  focus(): void { this.field.focus(); }

  private made(ropes: string[]): HTMLInputElement | HTMLSelectElement {
    const { form, choices } = this.key;
    if (form === 'choice' || form === 'flag' || form === 'section' || form === 'rope') {
      const select = document.createElement('select');
      const words = form === 'choice' ? choices ?? [] : form === 'flag' ? ['true', 'false'] : form === 'rope' ? ropes : [];
      select.append(...words.map((w) => option(w, w)));
      return select;
    }

    const input = document.createElement('input');
    Object.assign(input, { type: 'text', autocomplete: 'off', spellcheck: false });
    return input;
  }

  /** Sections are those on sale; what the file says is among them, wherever it comes from. */
  private options(text: string): void {
    const select = this.field as HTMLSelectElement;
    if (this.key.form === 'section') {
      select.replaceChildren(...this.sections().map((s) => option(s, s)));
    }

    if (text !== '' && ![...select.options].some((o) => o.value === text)) {
      select.prepend(option(text, text));
    }
  }

  private sliding(label: string): HTMLInputElement {
    const slider = document.createElement('input');
    Object.assign(slider, { type: 'range', step: 'any' });
    slider.setAttribute('aria-label', `${label}, slider`);
    let before = '';
    let gesture = newGesture();
    const moved = lastOnly(async (): Promise<void> => {
      const text = await this.say(this.key.kind ?? '', Number(slider.value));
      if (text !== '' && text !== before) {
        before = text;
        this.field.value = text;
        await this.give(text, gesture);
      }
    });
    slider.addEventListener('input', () => { void moved(null); });
    slider.addEventListener('change', () => {
      void moved(null).then(() => {
        [before, gesture] = ['', newGesture()];
        this.range(this.value);
      });
    });
    return slider;
  }

  private range(value: Value | undefined | null): void {
    const { slider, key } = this;
    if (slider === null || document.activeElement === slider && value !== null && slider.matches(':active')) {
      return;
    }

    slider.hidden = value?.number === undefined;
    const now = value?.number ?? 0;
    const reach = Math.max(Math.abs(now) * (SLIDES[key.kind ?? ''] ?? 0.5), key.kind === 'length' ? 0.1 : 0.02);
    slider.min = String(Math.max(key.least ?? -Infinity, now - reach));
    slider.max = String(Math.min(key.most ?? Infinity, now + reach));
    slider.value = String(now);
  }

  private async give(text: string | null, gesture: number | null): Promise<void> {
    const problem = text === '' ? '' : await this.write(this.key.path, text, gesture);
    this.problem.textContent = problem;
    this.field.toggleAttribute('aria-invalid', problem !== '');
  }

  /** A fault of the file at this value. */
  fault(message: string): void {
    this.problem.textContent = message;
    this.field.setAttribute('aria-invalid', 'true');
  }
}

/** All controls: the first ten, then every group. */
export class Decisions {
  private readonly controls: Control[] = [];
  private reading: Reading | null = null;

  constructor(place: HTMLElement, keys: Keys, write: Write, say: Say) {
    const all = keys.groups.flatMap((g) => g.keys);
    const make = (key: KeyView, group: string): HTMLElement => {
      const label = labelOf(key.path, group);
      const control = new Control(key, label, () => this.sectionsFor(key.path), keys.ropes, write, say);
      this.controls.push(control);
      return control.box;
    };
    const first = element('section', '', 'first');
    first.append(element('h2', 'What decides most'), ...keys.first.flatMap((path) => {
      const key = all.find((k) => k.path === path);
      return key === undefined ? [] : [make(key, '')];
    }));
    place.replaceChildren(first, ...keys.groups.map((group) => {
      const more = element('details', '', 'group');
      more.append(element('summary', capital(group.name)), ...group.keys.filter((k) => !keys.first.includes(k.path)).map((k) => make(k, group.name)));
      return more;
    }));
  }

  show(reading: Reading): void {
    this.reading = reading;
    const values = new Map(reading.values.map((v) => [v.path, v]));
    const chosen = new Map((reading.chosen ?? []).map((c) => [c.path, c.text]));
    this.controls.forEach((c) => { c.show(values.get(c.key.path), chosen.get(c.key.path)); });
  }

  private sectionsFor(path: string): string[] {
    const stock = this.reading?.values.find((v) => v.path === path.replace(/section$/, 'stock'))?.text;
    const lists = this.reading?.sections ?? [];
    return (lists.find((s) => s.stock === stock) ?? { names: [...new Set(lists.flatMap((s) => s.names))] }).names;
  }
}

const GROUP_ROOT: Record<string, string> = { site: 'site', walkway: 'deck', frame: 'frames', guard: 'guard', ropes: 'ropes', loads: 'loads', shop: 'shop' };

/** What a builder calls the values that stand first, where no group says what they are of. */
const FIRST: Record<string, string> = {
  'site.span': 'Span', 'site.rise': 'Rise', 'ropes.sag': 'Sag of the ropes', 'ropes.spacing': 'Spacing of the ropes', 'ropes.type': 'Rope',
  'frames.spacing': 'Spacing of the frames', 'frames.post.foot': 'Foot of the posts', 'frames.post.length': 'Length of the posts',
  'frames.post.lean': 'Lean of the posts',
};

/** Words of the path; in a group without the group's own. */
function labelOf(path: string, group: string): string {
  const first = group === '' ? FIRST[path] : undefined;
  if (first !== undefined) {
    return first;
  }

  const words = path.split('.').filter((w, i, all) => !(i === 0 && all.length > 1 && w === GROUP_ROOT[group]));
  return capital(words.join(' ').replaceAll('_', ' '));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
