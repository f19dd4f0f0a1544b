import type { Finish, Part } from './glb';
import { byId, element, option } from './dom';
import type { BridgeView, CheckView, PieceView } from './view';

/** Everything beside the picture that is written anew for a new bridge. */
export function writePanel(view: BridgeView): void {
  document.title = view.name;
  byId('name').textContent = view.name;
  byId('lead').textContent = view.lead;
  byId('caution').textContent = view.caution;
  byId('key').replaceChildren(...view.facts.filter((f) => f.key).map((f) => {
    const pair = element('div', '');
    pair.append(element('dt', f.label), element('dd', f.text));
    return pair;
  }));
  byId('facts').replaceChildren(...view.facts.flatMap((f) => [element('dt', f.label), element('dd', f.text)]));
  writeChecks(view.checks);
  byId('load').hidden = view.cases.length === 0;
  byId('case').replaceChildren(option('', 'empty'), ...view.cases.map((c) => option(c.id, c.title)));
  byId('piece').replaceChildren(
    option('', 'nothing chosen'), ...view.pieces.map((p) => option(p.mark, `${p.mark} – ${p.role}, ${p.quantity} of them`)));
}

const STATUS: Record<CheckView['status'], string> = {
  pass: 'Holds', warn: 'Look again', fail: 'Does not hold', engineer: 'For an engineer',
};

function writeChecks(checks: CheckView[]): void {
  const count = (status: CheckView['status']): number => checks.filter((c) => c.status === status).length;
  const parts = [
    count('fail') > 0 ? `${count('fail')} do not hold` : 'none fails',
    count('warn') > 0 ? `${count('warn')} to look at again` : '',
    count('engineer') > 0 ? `${count('engineer')} for an engineer` : '',
  ].filter((text) => text !== '');
  byId('check-sum').textContent = `${checks.length} checks of the geometry: ${parts.join(', ')}.`;
  const failing = checks.filter((c) => c.status === 'fail').map((c) => c.title.toLowerCase());
  byId('fails').hidden = failing.length === 0;
  byId('fails').textContent = `Does not hold: ${failing.join('; ')}. See the checks.`;
  const order: CheckView['status'][] = ['fail', 'engineer', 'warn', 'pass'];
  const items = (list: CheckView[]): HTMLLIElement[] => list.map((c) => {
    const item = element('li', '');
    item.append(element('span', `${STATUS[c.status]}: `, `status ${c.status}`), c.title, element('small', c.detail), element('small', `Source: ${c.source}`));
    return item;
  });
  const sorted = [...checks].sort((a, b) => order.indexOf(a.status) - order.indexOf(b.status));
  byId('checks').replaceChildren(...items(sorted.filter((c) => c.status !== 'pass')));
  const held = sorted.filter((c) => c.status === 'pass');
  if (held.length > 0) {
    const more = document.createElement('details');
    const list = document.createElement('ul');
    list.style.cssText = 'list-style:none;margin:.5rem 0 0;padding:0';
    list.append(...items(held));
    more.append(element('summary', `${held.length} that hold`), list);
    const item = element('li', '');
    item.append(more);
    byId('checks').append(item);
  }
}

/** One choice a finish, each with a patch of its colours. */
export function writeFinishes(finishes: Finish[], choose: (index: number) => void): void {
  byId('finishes').replaceChildren(...finishes.map((finish, i) => {
    const label = document.createElement('label');
    const radio = document.createElement('input');
    Object.assign(radio, { type: 'radio', name: 'finish', value: String(i), checked: i === 0 });
    radio.addEventListener('change', () => { choose(i); });
    const patch = element('span', '', 'swatch');
    finish.colours.forEach((colour) => {
      const square = document.createElement('i');
      square.style.background = colour.getStyle();
      patch.append(square);
    });
    label.append(radio, patch, finish.name);
    return label;
  }));
}

/** What is known of a chosen part; null when none is. */
export function writePart(view: BridgeView, part: Part | null): void {
  const piece = part === null ? undefined : view.pieces.find((p) => p.mark === part.mark);
  byId('part-steps').hidden = piece === undefined;
  byId<HTMLSelectElement>('piece').value = piece?.mark ?? '';
  byId('part-card').replaceChildren(...(piece === undefined || part === null
    ? [element('p', 'Tap a part of the bridge, or choose one here.', 'soft')]
    : card(piece, part)));
}

function card(piece: PieceView, part: Part): HTMLElement[] {
  const title = element('h3', `${piece.mark}, ${piece.role}`);
  title.id = 'part-mark';
  title.dataset.mark = piece.mark;
  title.dataset.id = part.id;
  const list = document.createElement('dl');
  const where = `${part.owner.startsWith('F') ? 'frame' : 'bay'} ${part.owner}, ${part.id.slice(part.id.indexOf('/') + 1).replace(/-/g, ' ')}`;
  const rows: [string, string][] = [['Here', where], ['How many', piece.quantity === 1 ? 'one only' : `${piece.quantity}, all alike`], ...piece.lines];
  list.append(...rows.flatMap(([label, text]) => [element('dt', label), element('dd', text)]));
  return [title, element('p', `${piece.words}.`, 'soft'), list];
}
