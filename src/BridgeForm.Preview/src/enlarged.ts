import type { BridgeView, CaseView } from './view';

/** Movements are enlarged so that the greatest one is about this share of the span. */
const ENLARGED = 0.05;

/** A smaller movement is none, metres. */
const STILL = 0.0005;

/** How many times as large movements under a load can be drawn, 1 when larger would be too much; null when nothing moves. */
export function enlargement(view: BridgeView, load: CaseView): number | null {
  const most = Math.max(0, ...load.nodes.map(([x, y], i) => Math.hypot(x - (view.frames[i]?.x ?? x), y - (view.frames[i]?.y ?? y))));
  return most > STILL ? [50, 20, 10, 5, 2].find((k) => k <= ENLARGED * view.span / most) ?? 1 : null;
}
