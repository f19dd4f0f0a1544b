import type { Finish, Part } from './glb';
import type { State } from './bridge';
import { byId, element, option } from './dom';
import { enlargement } from './enlarged';
import { writeHeadlines } from './headlines';
import { jointsMeet } from './joints';
import type { BridgeView, CaseView, CheckView, PieceView } from './view';

/** Everything beside the picture that is written anew for a new bridge. */
export function writePanel(view: BridgeView): void {
  document.title = view.name;
  byId('name').textContent = view.name;
  byId('lead').textContent = view.lead;
  byId('verdict').textContent = view.verdict;
  byId('verdict').classList.toggle('fail', view.fails.length > 0);
  byId('caution').textContent = view.caution;
  writeHeadlines(view);
  byId('key').replaceChildren(...view.facts.filter((f) => f.key).map((f) => {
    const pair = element('div', '');
    pair.append(element('dt', f.label), element('dd', f.text));
    return pair;
  }));
  byId('facts').replaceChildren(...view.facts.flatMap((f) => [element('dt', f.label), element('dd', f.text)]));
  writeChecks(view.checks);
  byId('load').hidden = view.cases.length === 0;
  byId('case').replaceChildren(option('', 'Bridge empty'), ...view.cases.filter((c) => c.id !== EMPTY).map((c) => option(c.id, c.title)));
  byId('piece').replaceChildren(
    option('', 'nothing chosen'), ...view.pieces.map((p) => option(p.mark, `${p.mark} – ${p.role}, ${p.quantity} of them`)));
}

/** Id of the case with nothing on the bridge: it is the bridge as it is first shown. */
const EMPTY = 'dead';

/** What the chosen load is, and how the picture shows it. */
export function writeLoad(view: BridgeView, state: State): void {
  const text = state.load === null
    ? `Nobody on the bridge. ${view.cases.find((c) => c.id === EMPTY)?.text ?? ''}`.trim()
    : `${state.load.text} ${drawnAs(view, state, state.load)}`;
  // Writing the same words anew would have them read out again.
  if (byId('load-text').textContent !== text) {
    byId('load-text').textContent = text;
  }
}

function drawnAs(view: BridgeView, state: State, load: CaseView): string {
  if (state.empty) {
    return 'The measured view shows the bridge empty; the other views show it under this load.';
  }

  const joints = jointsMeet(view, load, state.times) ? ` ${JOINTS}` : '';
  if (!state.large) {
    return `Drawn to true scale.${joints}`;
  }

  const times = enlargement(view, load);
  return times === null ? 'Nothing moves that could be drawn larger.'
    : (times > 1 ? `Drawn ${times} times as large.` : 'Drawn to true scale: larger would be too much.') + joints;
}

/** Said where it is seen; the check of the room that joints need says how much. */
const JOINTS = 'Joints are not modeled: where caps or rails run into each other, real ones give way so far or press.';

function writeChecks(checks: CheckView[]): void {
  const groups = ORDER.map((status) => ({ status, list: checks.filter((c) => c.status === status) })).filter((g) => g.list.length > 0);
  byId('check-sum').textContent = `${checks.length} checks: ${groups.map((g) => GROUP[g.status](g.list.length)).join(', ')}.`;
  byId('checks').replaceChildren(...groups.map(({ status, list }) => {
    const more = document.createElement('details');
    // What asks for something is read at once; what holds and what waits for the engineer is counted.
    more.open = status === 'fail' || status === 'warn';
    const items = document.createElement('ul');
    items.append(...list.map(checkItem));
    more.append(element('summary', GROUP[status](list.length), `status ${status}`), items);
    const item = element('li', '');
    item.append(more);
    return item;
  }));
}

const ORDER: CheckView['status'][] = ['fail', 'warn', 'engineer', 'pass'];

const GROUP: Record<CheckView['status'], (count: number) => string> = {
  pass: (n) => (n === 1 ? '1 holds' : `${n} hold`),
  warn: (n) => `${n} to review`,
  fail: (n) => (n === 1 ? '1 does not hold' : `${n} do not hold`),
  engineer: (n) => `${n} for an engineer`,
};

/** One sentence; formula, factors and source unfold under it. */
function checkItem(check: CheckView): HTMLLIElement {
  const item = element('li', '', 'check');
  const more = document.createElement('details');
  more.append(element('summary', 'How this was found'), element('small', check.detail), element('small', `Source: ${check.source}`));
  item.append(element('p', check.sentence), more);
  return item;
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
  document.body.classList.toggle('chosen', piece !== undefined);
  byId<HTMLSelectElement>('piece').value = piece?.mark ?? '';
  byId('part-card').replaceChildren(...(piece === undefined || part === null
    ? [element('p', 'Tap a part of the bridge, or choose one here.', 'soft')]
    : card(piece, part)));
}

/** What is said of a piece where it stands: its near end is not at the same end of every place. */
function linesAt(piece: PieceView, part: Part): [string, string][] {
  return piece.turned.find((t) => t.parts.includes(part.id))?.lines ?? piece.lines;
}

function card(piece: PieceView, part: Part): HTMLElement[] {
  const title = element('h3', `${piece.mark}, ${piece.role}`);
  title.id = 'part-mark';
  title.dataset.mark = piece.mark;
  title.dataset.id = part.id;
  const list = document.createElement('dl');
  const where = `${part.owner.startsWith('F') ? 'frame' : 'bay'} ${part.owner}, ${part.id.slice(part.id.indexOf('/') + 1).replace(/-/g, ' ')}`;
  const rows: [string, string][] = [['Here', where], ['How many', piece.quantity === 1 ? 'one only' : `${piece.quantity}, all alike`], ...linesAt(piece, part)];
  list.append(...rows.flatMap(([label, text]) => [element('dt', label), element('dd', text)]));
  return [title, element('p', `${piece.words}.`, 'soft'), list];
}
