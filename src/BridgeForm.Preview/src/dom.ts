/** The element of that id; a page without it is a defect of the page. */
export function byId<T extends HTMLElement>(id: string): T {
  const element = document.getElementById(id);
  if (element === null) {
    throw new Error(`The page has no #${id}.`);
  }

  return element as T;
}

/** An element with a text inside. */
export function element<K extends keyof HTMLElementTagNameMap>(name: K, text: string, className = ''): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.textContent = text;
  made.className = className;
  return made;
}

export function option(value: string, text: string): HTMLOptionElement {
  const made = element('option', text);
  made.value = value;
  return made;
}
