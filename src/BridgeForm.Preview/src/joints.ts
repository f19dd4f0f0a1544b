import { chord } from './shape';
import type { BridgeView, CaseView } from './view';

/** Parts that run less than this into each other are seen to butt, metres: a sixteenth of an inch. */
const SEEN = 0.0016;

/**
 * Whether caps of neighbouring bays are seen to run into each other as drawn: over some frame the chords of its bays turn
 * towards each other by further than the empty bridge's, at the caps' height over the ropes.
 */
export function jointsMeet(view: BridgeView, load: CaseView, times: number): boolean {
  const design = view.frames;
  const nodes = design.map((f, i) => {
    const at = load.nodes[i] ?? [f.x, f.y];
    return { x: f.x + times * (at[0] - f.x), y: f.y + times * (at[1] - f.y) };
  });
  const turn = (of: readonly { x: number; y: number }[], i: number): number => chord(of, i).turn - chord(of, i - 1).turn;
  return design.some((f, i) => i > 0 && i < design.length - 1 && (turn(nodes, i) - turn(design, i)) * (f.deck + view.guard) > SEEN);
}
