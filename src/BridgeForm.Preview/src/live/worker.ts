/// <reference lib="webworker" />
/** Runs the engine beside the page: unpacks the runtime that the page hands over, and answers one call after another. */

interface Runtime { getAssemblyExports: (name: string) => Promise<Exports> }
interface Exports { BridgeForm: { Live: { Engine: Record<string, (...args: unknown[]) => unknown> } } }
interface Builder { withResourceLoader: (load: (type: string, name: string, uri: string) => unknown) => void; create: () => Promise<Runtime> }

const scope = self as unknown as DedicatedWorkerGlobalScope;
let engine: Record<string, (...args: unknown[]) => unknown> | null = null;

async function unpacked(packed: string): Promise<ArrayBuffer> {
  const coded = atob(packed);
  const bytes = Uint8Array.from(coded, (c) => c.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer();
}

async function begin(assets: Record<string, string>, given: Record<string, string>): Promise<void> {
  Object.assign(scope, { dotnetSidecar: true });
  const urls: Record<string, string> = {};
  for (const name of Object.keys(assets).filter((n) => n.endsWith('.js'))) {
    const text = new TextDecoder().decode(await unpacked(assets[name] ?? ''));
    // The runtime asks where it comes from; it comes from this page alone.
    const script = text.replaceAll('import.meta.url', JSON.stringify(`https://page.invalid/${name}`));
    urls[name] = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
  }

  const { dotnet } = await import(/* @vite-ignore */ urls['dotnet.js'] ?? '') as { dotnet: Builder };
  dotnet.withResourceLoader((_, name, uri) => {
    const base = [name, uri].map((n) => n.split('/').pop()?.split('?')[0] ?? '').find((n) => n in assets) ?? name;
    const type = base.endsWith('.wasm') ? 'application/wasm' : 'application/octet-stream';
    return base.endsWith('.js') ? urls[base] : unpacked(assets[base] ?? '').then((bytes) => new Response(bytes, { headers: { 'content-type': type } }));
  });
  const runtime = await dotnet.create();
  engine = (await runtime.getAssemblyExports('BridgeForm.Live.dll')).BridgeForm.Live.Engine;
  Object.entries(given).forEach(([name, text]) => engine?.Give?.(name, text));
}

interface Asked { id: number; call: string; args: unknown[] }

/** One call after another, in the order in which they come. */
let queue: Promise<void> = Promise.resolve();
scope.onmessage = (message: MessageEvent<Asked>) => {
  queue = queue.then(() => answer(message.data));
};

async function answer({ id, call, args }: Asked): Promise<void> {
  try {
    if (call === 'begin') {
      await begin(JSON.parse(args[0] as string) as Record<string, string>, args[1] as Record<string, string>);
      scope.postMessage({ id, result: null });
      return;
    }

    const looked = (count: number, best: string): void => { scope.postMessage({ id, looked: count, best }); };
    const passed = call === 'Propose' || call === 'Start' ? [...args, looked] : args;
    const result = engine?.[call]?.(...passed);
    // A copy of its own: what the runtime hands out may lie in its memory.
    const own = result instanceof Uint8Array ? result.slice() : result;
    scope.postMessage({ id, result: own }, own instanceof Uint8Array ? [own.buffer] : []);
  } catch (trouble) {
    scope.postMessage({ id, trouble: trouble instanceof Error ? trouble.message : String(trouble) });
  }
}
