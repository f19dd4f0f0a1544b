import { Sheet, frame, tan, cos, sin } from '../draw.mjs';

/** Deck across: section along a bay, and section across the deck. */
export default function across() {
  const sheet = new Sheet(940, 300, 'Deck of treads on stringers: along a bay and across the bridge');
  const p = frame(60, 175, 12.6), bay = 35, bt = 3.5;
  for (const x of [0, bay]) {
    sheet.shape('wood', p(x - bt / 2, 0), p(x + bt / 2, 0), p(x + bt / 2, -5), p(x - bt / 2, -5));
    sheet.line('axis', p(x, -7), p(x, 11));
  }
  for (const [from, to] of [[-2.6, -0.06], [0.06, bay - 0.06], [bay + 0.06, bay + 2.6]]) {
    sheet.shape('wood', p(from, 0), p(to, 0), p(to, 5.5), p(from, 5.5));
  }
  const count = 6, pitch = bay / count;
  for (let i = 0; i < count; i++) {
    const x = (i + 0.5) * pitch;
    sheet.shape('wood2', p(x - 2.75, 5.5), p(x + 2.75, 5.5), p(x + 2.75, 7), p(x - 2.75, 7));
  }
  sheet.text(p(bay / 2, 2.3), 'stringer', { at: 'middle' }).text(p(bay / 2 - 2.9, 8.1), 'treads, spread evenly in each bay', { at: 'middle' });
  sheet.text(p(0.4, 10), 'mid-plane', { kind: 's' }).text(p(bay + 0.4, 10), 'mid-plane', { kind: 's' });
  sheet.measure(p(bay - 4, 0), p(bay - 4, 7), '', {});
  sheet.leader(p(bay - 6, -3), p(bay - 4, 1.2), 'deck thickness', { at: 'end', kind: 'm' });
  sheet.text(p(0, -6.9), 'base', { at: 'middle' }).text(p(bay, -6.9), 'base', { at: 'middle' });
  sheet.text([p(bay / 2, 0)[0], 288], 'along a bay', { at: 'middle', kind: 'h' });

  const q = frame(765, 175, 7.2), foot = 17.75, lean = 8, side = 0.8;
  sheet.shape('wood', q(-22, 0), q(22, 0), q(22, -5), q(-22, -5));
  for (const s of [-1, 1]) {
    sheet.shape('wood', q(s * foot, 0), q(s * (foot + 3.53), 0), q(s * (foot + 3.53 + 17 * tan(lean)), 17), q(s * (foot + 17 * tan(lean)), 17));
  }
  const w = foot - side;
  for (const z of [-w, -0.75, w - 1.5]) sheet.shape('wood', q(z, 0), q(z + 1.5, 0), q(z + 1.5, 5.5), q(z, 5.5));
  sheet.shape('wood2', q(-w, 5.5), q(w, 5.5), q(w, 7), q(-w, 7));
  sheet.measure(q(-w, 9), q(w, 9), 'tread', { gap: -1 });
  sheet.line('ext', q(-w, 7), q(-w, 9.4)).line('ext', q(w, 7), q(w, 9.4));
  sheet.measure(q(w, -5), q(foot, -5), 'side_gap', { off: -16, slide: -6 });
  sheet.line('ext', q(w, 0), q(w, -5)).line('ext', q(foot, 0), q(foot, -5));
  sheet.text([765, 288], 'across the bridge', { at: 'middle', kind: 'h' });
  return sheet;
}
