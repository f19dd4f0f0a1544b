import { Sheet, frame, along } from '../draw.mjs';

/** Elevation: supports, ropes, frames, world axes. Sag drawn deeper than it is. */
export default function world() {
  const sheet = new Sheet(900, 400, 'Elevation of a bridge with its measures and the world axes');
  const span = 10, rise = 0.8, sag = 1.15, bays = 10, post = 1.25;
  const p = frame(130, 235, 60);
  const y = x => rise * x / span - 4 * sag * x * (span - x) / span ** 2;
  const node = i => [i * span / bays, y(i * span / bays)];
  const slope = x => rise / span - 4 * sag * (span - 2 * x) / span ** 2;

  sheet.shape('ground', [0, 395], [0, p(0, -0.12)[1]], p(-0.12, -0.12), p(0.2, -1.6), p(2.2, -2.2), p(5, -2.45), p(8, -2),
    p(9.9, -1.2), p(10.12, 0.68), [900, p(0, 0.68)[1]], [900, 395]);

  const up = i => {
    if (i === 0 || i === bays) return [0, 1];
    const s = slope(node(i)[0]);
    return [-s / Math.hypot(1, s), 1 / Math.hypot(1, s)];
  };
  const at = (i, n) => [node(i)[0] + n * up(i)[0], node(i)[1] + n * up(i)[1]];
  sheet.line('line', ...Array.from({ length: 41 }, (_, k) => p(k * span / 40, y(k * span / 40))));
  for (const n of [0.16, post + 0.12]) {
    sheet.line('line', ...Array.from({ length: bays + 1 }, (_, i) => p(...at(i, n))));
  }
  for (const n of [0.45, 0.75, 1.05]) sheet.line('thin', ...Array.from({ length: bays + 1 }, (_, i) => p(...at(i, n))));
  for (let i = 0; i <= bays; i++) {
    sheet.line('line', p(...at(i, 0)), p(...at(i, post + 0.12)));
    sheet.circle('ink', p(...node(i)), 2.6);
  }
  sheet.line('line', p(0, 0), along(p(0, 0), 148, 95));
  sheet.line('line', p(span, rise), along(p(span, rise), 32, 95));
  sheet.text(along(p(0, 0), 148, 95), 'backstay', { at: 'middle', kind: 's' });
  sheet.text([p(0, 0)[0] - 10, p(0, 0)[1] - 8], 'A', { at: 'end', kind: 'h' });
  sheet.text([p(span, rise)[0] + 10, p(span, rise)[1] - 8], 'B', { kind: 'h' });

  sheet.line('dash', p(0, 0), p(span, rise));
  sheet.measure(p(5, y(5)), p(5, rise / 2), 'sag', { off: 0, slide: -14, gap: 2 });
  sheet.measure(p(0, -2.55), p(span, -2.55), 'span', { gap: -1 });
  sheet.line('ext', p(0, -0.1), p(0, -2.62));
  sheet.line('ext', p(span, rise - 0.1), p(span, -2.62));
  sheet.line('ext', p(0, 0), p(span + 1.95, 0));
  sheet.measure(p(span + 1.8, 0), p(span + 1.8, rise), 'rise', { off: 0, gap: 2 });

  const foot = p(...node(1)), s = Math.atan(-slope(node(1)[0])) * 180 / Math.PI;
  const tipT = along(foot, s, 120), tipN = p(...at(1, post + 0.75));
  sheet.arrow(foot, tipT, 'thin').text([tipT[0] + 4, tipT[1] + 13], 't', { kind: 'i' });
  sheet.arrow(p(...at(1, post)), tipN, 'thin').text([tipN[0] + 7, tipN[1] + 4], 'n', { kind: 'i' });
  sheet.line('ext', foot, [foot[0] + 120, foot[1]]);
  sheet.angle(foot, 0, s, 100, 'θ', { gap: 6 });
  sheet.leader([p(...at(7, post))[0] - 30, 45], p(...at(7, post + 0.12)), 'F07, a frame', { at: 'middle' });
  sheet.leader([p(8.5, 0)[0] + 5, 75], p(8.5, y(8.5) + post + 0.15), 'B09, a bay', { at: 'middle' });

  const o = [40, 90];
  sheet.arrow(o, [o[0] + 52, o[1]], 'line').text([o[0] + 57, o[1] + 4], 'x', { kind: 'i' });
  sheet.arrow(o, [o[0], o[1] - 52], 'line').text([o[0] + 6, o[1] - 46], 'y', { kind: 'i' });
  sheet.circle('line', o, 5).circle('ink', o, 1.6).text([o[0] - 8, o[1] + 18], 'z, to the right walking from A to B', { kind: 's' });
  return sheet;
}
