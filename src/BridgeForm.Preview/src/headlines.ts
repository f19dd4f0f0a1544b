import { byId, element } from './dom';
import type { BridgeView } from './view';

/** A telephone names so many titles and counts the others where there are more than one over: the bridge must be seen too. */
const FEW = 3;

/** What stands at the top: as PreviewVerdict.cs writes it for the bridge that the page was made with. */
export function writeHeadlines(view: BridgeView): void {
  const list = element('ul', '');
  list.append(...view.headlines.map((h) => {
    const item = element('li', '', h.danger ? 'danger' : '');
    item.append(element('strong', `${h.label}:`), ` ${h.text}.`);
    return item;
  }));
  const box = byId<HTMLDetailsElement>('headlines');
  box.hidden = view.headlines.length === 0;
  // Where people fall, nobody has to open anything; what was opened stays open for the same bridge, edited.
  box.open ||= view.headlines.some((h) => h.danger);
  box.replaceChildren(element('summary', `Read first: ${view.headlines.map((h) => h.label.toLowerCase()).join(', ')}`), list);
  const { fails } = view;
  const few = fails.length > FEW + 1 ? FEW : fails.length;
  byId('fails').hidden = fails.length === 0;
  byId('fails').replaceChildren(
    `Does not hold: ${fails.slice(0, few).join('; ')}`,
    ...(few === fails.length ? [] : [
      element('span', `; ${fails.slice(few).join('; ')}`, 'rest'), element('span', ` and ${fails.length - few} more`, 'more'),
    ]),
    '. See the checks.');
}
