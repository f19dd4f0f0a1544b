import { byId, element } from '../dom';
import type { Way, Ways } from './engine';

/** Ways to a bridge that passes, each with one button that tries it. */
export function writeWays(found: Ways, tries: (way: Way) => void): void {
  const place = byId('ways');
  if (found.ways.length === 0) {
    place.replaceChildren(
      element('p', found.passing ? 'No check fails: nothing need change.' : `Nothing that passes was found, of ${found.looked} designs looked at.`),
      list(found.why));
    return;
  }

  place.replaceChildren(
    element('p', `${found.looked} designs looked at, all checks of each. What licensed engineers decide is left to them.`, 'soft'),
    ...found.ways.map((way) => {
      const box = element('article', '', 'way');
      const button = element('button', 'Try it');
      button.type = 'button';
      button.setAttribute('aria-label', `Try it: ${way.name}`);
      button.addEventListener('click', () => { tries(way); });
      const figures = element('dl', '', 'facts');
      figures.append(...way.figures.flatMap((f) => [element('dt', f.name), element('dd', f.text)]));
      box.append(
        element('h3', way.name.charAt(0).toUpperCase() + way.name.slice(1)),
        list(way.changes.map((c) => `${c.path}: ${c.before === '' ? 'as by rule' : c.before} → ${c.after}; ${c.reason}`)), figures, button);
      return box;
    }));
}

function list(sentences: string[]): HTMLUListElement {
  const items = element('ul', '');
  items.append(...sentences.map((s) => element('li', s)));
  return items;
}
