import { byId, element } from '../dom';
import type { Fault, Keys, KeyView } from './engine';

/** The file's text: typed freely, faults at their line, keys and choices offered where one is typed. */
export class TextTab {
  private readonly area = byId<HTMLTextAreaElement>('text');
  private readonly offers = byId('offers');
  private timer = 0;

  constructor(private readonly keys: Keys, put: (text: string) => void) {
    this.area.addEventListener('input', () => {
      clearTimeout(this.timer);
      byId('busy').textContent = 'reading it …';
      this.timer = window.setTimeout(() => { put(this.area.value); }, 250);
      this.offer();
    });
    this.area.addEventListener('keyup', (e) => {
      if (e.key.startsWith('Arrow') || e.key === 'Home' || e.key === 'End') {
        this.offer();
      }
    });
    this.area.addEventListener('click', () => { this.offer(); });
  }

  show(text: string): void {
    clearTimeout(this.timer);
    if (this.area.value !== text) {
      const { selectionStart, scrollTop } = this.area;
      this.area.value = text;
      this.area.setSelectionRange(Math.min(selectionStart, text.length), Math.min(selectionStart, text.length));
      this.area.scrollTop = scrollTop;
    }
  }

  faults(faults: Fault[]): void {
    this.area.toggleAttribute('aria-invalid', faults.length > 0);
    byId('fault-list').replaceChildren(...faults.map((fault) => {
      const item = element('li', '');
      const go = element('button', `Line ${fault.line}: ${fault.message}`);
      go.type = 'button';
      go.addEventListener('click', () => { this.go(fault.line, fault.column); });
      item.append(go);
      return item;
    }));
  }

  go(line: number, column: number): void {
    const lines = this.area.value.split('\n');
    const start = lines.slice(0, line - 1).reduce((n, l) => n + l.length + 1, 0);
    this.area.focus();
    this.area.setSelectionRange(start + column - 1, start + (lines[line - 1]?.length ?? 0));
    this.area.scrollTop = (line - 4) * parseFloat(getComputedStyle(this.area).lineHeight);
  }

  /** Keys that may stand where the caret is, or choices of the key on its line. */
  private offer(): void {
    const before = this.area.value.slice(0, this.area.selectionStart);
    const line = before.slice(before.lastIndexOf('\n') + 1);
    const above = this.above(before, line);
    const value = /^\s*([a-z_0-9]+):\s+(\S*)$/.exec(line);
    const key = value === null ? undefined : this.at([...above, value[1] ?? ''].join('.'));
    const typed = value === null ? line.trim() : value[2] ?? '';
    const words = value !== null ? this.choices(key) : /^\s*[a-z_0-9]*$/.test(line) ? this.names(above.join('.')) : [];
    const fitting = words.filter((w) => w.startsWith(typed) && w !== typed).slice(0, 12);
    this.offers.hidden = fitting.length === 0;
    this.offers.replaceChildren(...fitting.map((word) => {
      const button = element('button', word);
      button.type = 'button';
      button.addEventListener('click', () => { this.write(word + (value === null ? ':' : ''), typed.length); });
      return button;
    }));
  }

  private write(word: string, typed: number): void {
    const at = this.area.selectionStart;
    this.area.setRangeText(word, at - typed, at, 'end');
    this.area.focus();
    this.area.dispatchEvent(new Event('input'));
  }

  /** Keys that the caret's line stands under, outermost first. */
  private above(before: string, line: string): string[] {
    const path: string[] = [];
    let depth = line.length - line.trimStart().length;
    for (const one of before.split('\n').slice(0, -1).reverse()) {
      const name = /^(\s*)([a-z_0-9]+):\s*(#.*)?$/.exec(one);
      if (name !== null && (name[1] ?? '').length < depth) {
        path.unshift(name[2] ?? '');
        depth = (name[1] ?? '').length;
      }
    }

    return path;
  }

  private at(path: string): KeyView | undefined {
    return this.keys.groups.flatMap((g) => g.keys).find((k) => k.path === path);
  }

  private choices(key: KeyView | undefined): string[] {
    return key === undefined ? [] : key.choices ?? (key.form === 'flag' ? ['true', 'false'] : key.form === 'rope' ? this.keys.ropes : []);
  }

  private names(above: string): string[] {
    const start = above === '' ? '' : `${above}.`;
    return [...new Set(this.keys.groups.flatMap((g) => g.keys).filter((k) => k.path.startsWith(start))
      .map((k) => k.path.slice(start.length).split('.')[0] ?? ''))].sort();
  }
}
