/** What the browser keeps between visits: the file's text; every name begins alike, so that all can be forgotten. */
const NAME = 'bridgeform-live-file';

/** Whether the browser lets this page keep anything. */
export function canKeep(): boolean {
  try {
    localStorage.setItem(`${NAME}-test`, '1');
    localStorage.removeItem(`${NAME}-test`);
    return true;
  } catch {
    return false;
  }
}

export function keep(text: string): void {
  try {
    localStorage.setItem(NAME, text);
  } catch {
    // Full, or forbidden since: the page has said that nothing is sure to be kept.
  }
}

export function kept(): string | null {
  try {
    return localStorage.getItem(NAME);
  } catch {
    return null;
  }
}

export function forget(): void {
  try {
    localStorage.removeItem(NAME);
  } catch {
    // Nothing is kept then.
  }
}

/** Most characters of a link's fragment that every browser and mail program passes on. */
const LONGEST = 8192;

/** A link with the file in its fragment; null where it would be too long, or the page has no address to share. */
export async function linkTo(text: string): Promise<string | null> {
  if (!location.protocol.startsWith('http')) {
    return null;
  }

  const packed = new Uint8Array(await new Response(new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'))).arrayBuffer());
  const coded = btoa(String.fromCharCode(...packed)).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
  return coded.length > LONGEST ? null : `${location.href.split('#')[0] ?? ''}#file=${coded}`;
}

/** The file in this page's own fragment; null where there is none, or what is there is none. */
export async function fromLink(): Promise<string | null> {
  const coded = /^#file=([A-Za-z0-9_-]+)$/.exec(location.hash)?.[1];
  if (coded === undefined || coded.length > LONGEST) {
    return null;
  }

  try {
    const bytes = Uint8Array.from(atob(coded.replaceAll('-', '+').replaceAll('_', '/')), (c) => c.charCodeAt(0));
    return await new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).text();
  } catch {
    return null;
  }
}
