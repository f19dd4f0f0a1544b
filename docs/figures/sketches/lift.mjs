import { Sheet, frame, tan } from '../draw.mjs';

/** A board that falls away from a base's middle rests on its edge; the packer fills what is left. */
export default function lift() {
  const sheet = new Sheet(960, 325, 'Lift of the boards at a base, and the packer under them');
  const half = 1.75, delta = 11, scale = 62, thick = 0.75;
  const p = frame(300, 155, scale), lifted = half * tan(delta);
  const under = t => lifted - t * tan(delta);
  const before = t => lifted - t * tan(8);
  sheet.shape('wood', p(-half, 0), p(half, 0), p(half, -1.5), p(-half, -1.5));
  sheet.text(p(-1.6, -1.2), 'base');
  const board = (from, to, f) => sheet.shape('wood2', p(from, f(from)), p(to, f(to)), p(to, f(to) + thick), p(from, f(from) + thick));
  board(-4.2, -0.03, before);
  board(0.03, 4.4, under);
  sheet.line('axis', p(0, -1.7), p(0, 1.6));
  sheet.text([p(0, 1.6)[0] + 6, p(0, 1.6)[1] + 4], 'mid-plane, t = 0');
  sheet.line('ext', p(half, 0), p(4.4, 0));
  sheet.angle(p(half, 0), 0, delta, 130, 'δ', { gap: 6 });
  sheet.measure(p(0, 0), p(0, lifted), 'lift', { gap: 6 });
  sheet.measure(p(0, -1.5), p(half, -1.5), 'b_t / 2', { off: -14 });
  sheet.line('ext', p(half, 0), p(half, -1.5));
  sheet.leader([p(2.6, 0)[0], p(0, -0.9)[1]], p(half, 0), 'rests on this edge');
  sheet.text(p(-3.7, 1.12), 'board of the bay towards A', { kind: 's' }).text(p(1.95, 0.92), 'board of the bay towards B', { kind: 's' });
  sheet.text([300, 312], 'lift = (b_t / 2)·tan δ, the larger of the two boards’', { at: 'middle', kind: 'h' });

  const q = frame(800, 155, 62);
  const gap = t => 0.12 + lifted - t * tan(delta) * 0.9 - 0.1;
  const thin = 0.9;
  sheet.shape('wood', q(-half, 0), q(half, 0), q(half, -1.5), q(-half, -1.5));
  sheet.shape('shade', q(-half, 0), q(thin, 0), q(thin, gap(thin)), q(-half, gap(-half)));
  sheet.line('line', q(-half - 0.5, gap(-half - 0.5)), q(half + 0.45, gap(half + 0.45)));
  sheet.text(q(-half - 0.5, gap(-half - 0.5) + 0.22), 'underside of the boards', { kind: 's' });
  sheet.leader([q(-1.1, 0)[0], q(0, -0.75)[1]], q(-1, 0.2), 'packer', { at: 'middle' });
  sheet.measure(q(thin, 0), q(thin, gap(thin)), '', {});
  sheet.text([q(thin, 0)[0], q(0, -0.5)[1]], '1.5 mm here', { at: 'middle', kind: 'm' });
  sheet.text([800, 312], 'packer, cut back to 1.5 mm', { at: 'middle', kind: 'h' });
  return sheet;
}
