import { byId, element } from '../dom';
import type { Answer, Check, Figure, Status } from './engine';

/** Key figures, with what changed since the design that was last kept. */
export function writeFigures(now: Answer, kept: Answer | null): void {
  byId('figures').replaceChildren(...now.figures.map((figure) => {
    const box = element('div', '');
    const before = kept?.figures.find((f) => f.name === figure.name);
    box.append(element('dt', capital(figure.name)), element('dd', figure.text));
    if (before !== undefined && before.text !== figure.text) {
      box.append(element('dd', `was ${before.text}${percent(before, figure)}`, 'was'));
    }

    return box;
  }));
}

function percent(before: Figure, now: Figure): string {
  if (before.number === undefined || now.number === undefined || Math.abs(before.number) < 1e-9) {
    return '';
  }

  const share = Math.round((now.number / before.number - 1) * 100);
  return share === 0 ? '' : `, ${share > 0 ? '+' : '−'}${Math.abs(share)} %`;
}

const WORDS: Record<Status, string> = { fails: 'Does not hold', review: 'To review', engineer: 'For a licensed engineer', holds: 'Holds' };

/** Checks with what can be done: fails and looks open, the rest counted. */
export function writeAnswer(answer: Answer, show: (check: Check) => void): void {
  const groups = (['fails', 'review', 'engineer', 'holds'] as Status[])
    .map((status) => ({ status, list: answer.checks.filter((c) => c.status === status) })).filter((g) => g.list.length > 0);
  byId('answers').replaceChildren(...groups.map(({ status, list }) => {
    const more = element('details', '');
    more.open = status === 'fails';
    const items = element('ul', '');
    items.append(...list.map((check) => item(check, show)));
    more.append(element('summary', `${WORDS[status]}: ${list.length}`, `status ${status}`), items);
    return more;
  }));
}

function item(check: Check, show: (check: Check) => void): HTMLElement {
  const line = element('li', '');
  const more = element('details', '', 'check');
  more.append(element('summary', check.sentence), element('small', check.detail), element('small', `Source: ${check.source}`));
  if (check.status === 'fails' || check.status === 'review') {
    more.append(element('small', `What helps: ${check.help}.`));
  }

  if ((check.parts ?? []).length > 0) {
    const button = element('button', 'Show it on the bridge');
    button.type = 'button';
    button.addEventListener('click', () => { show(check); });
    more.append(button);
  }

  line.append(more);
  return line;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
