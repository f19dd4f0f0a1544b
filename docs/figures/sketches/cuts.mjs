import { Sheet, frame, along, tan, cos, sin } from '../draw.mjs';

/** The three angles of a cut at the far end of a stick, and the stick's axes. */
export default function cuts() {
  const sheet = new Sheet(920, 400, 'Mitre, bevel and edge line of an end cut, and the axes of a piece');
  const mitre = 28, bevel = 24;
  const m = [Math.cos(mitre * Math.PI / 180) * cos(bevel), sin(mitre) * cos(bevel), sin(bevel)];
  picture(sheet, m);
  const wide = 3.5, thick = 1.5, edge = Math.atan(m[2] / m[0]) * 180 / Math.PI;

  const w = frame(560, 95, 22), cut = y => 10 - y * tan(mitre);
  sheet.text([560, 30], 'wide face, Z towards the eye', { kind: 'h' });
  sheet.shape('wood', w(0, -wide / 2), w(cut(-wide / 2), -wide / 2), w(cut(wide / 2), wide / 2), w(0, wide / 2));
  sheet.line('cut', w(cut(-wide / 2), -wide / 2), w(cut(wide / 2), wide / 2));
  sheet.line('ext', w(cut(-wide / 2), -wide / 2), w(cut(-wide / 2), wide / 2 + 0.9));
  sheet.angle(w(cut(-wide / 2), -wide / 2), -90, -90 - mitre, 84, 'mitre', { gap: 4, turn: 34, at: 'start' });
  axes(sheet, w(1.2, -0.6), 'X', 'Y');

  const n = frame(560, 230, 22), low = 10;
  sheet.text([560, 180], 'narrow face, seen along Y', { kind: 'h' });
  const at = z => low - z * tan(edge);
  sheet.shape('wood', n(0, -thick / 2), n(at(-thick / 2), -thick / 2), n(at(thick / 2), thick / 2), n(0, thick / 2));
  sheet.line('cut', n(at(-thick / 2), -thick / 2), n(at(thick / 2), thick / 2));
  sheet.line('ext', n(at(-thick / 2), -thick / 2), n(at(-thick / 2), thick / 2 + 1.2));
  sheet.angle(n(at(-thick / 2), -thick / 2), -90, -90 - edge, 54, 'edge line', { gap: 4, turn: 44, at: 'start' });
  axes(sheet, n(1.2, -0.5), 'X', 'Z', 24);

  const s = frame(560, 345, 22), b = z => 10 - z * tan(bevel);
  sheet.text([560, 290], 'cut across the line on the wide face', { kind: 'h' });
  sheet.shape('wood', s(0, -thick / 2), s(b(-thick / 2), -thick / 2), s(b(thick / 2), thick / 2), s(0, thick / 2));
  sheet.line('cut', s(b(-1.9), -1.9), s(b(1.9), 1.9));
  sheet.text([s(b(-1.9), 0)[0] + 6, s(0, -1.9)[1]], 'blade', { kind: 's' });
  sheet.line('ext', s(b(-thick / 2), -thick / 2), s(b(-thick / 2), 2.3));
  sheet.angle(s(b(-thick / 2), -thick / 2), -90, -90 - bevel, 60, 'bevel', { gap: 4, turn: 44, at: 'start' });
  sheet.lines([40, 325], [
    'm: unit normal of the cut, turned so that m·X is above 0, at both ends',
    'mitre = atan2(m_Y, m_X)',
    'bevel = asin(m_Z)',
    'edge line = atan(m_Z / m_X) = atan(tan(bevel) / cos(mitre))',
  ], { kind: 's' });
  return sheet;
}

function axes(sheet, o, right, up, length = 30) {
  sheet.arrow(o, [o[0] + 34, o[1]], 'thin').text([o[0] + 38, o[1] + 4], right, { kind: 'i' });
  sheet.arrow(o, [o[0], o[1] - length], 'thin').text([o[0] - 4, o[1] - length + 6], up, { kind: 'i', at: 'end' });
}

/** The stick in a slanting view: X to the right, Y back and up, Z up. */
function picture(sheet, m) {
  const scale = 24, o = [60, 200];
  const p = (x, y, z) => [o[0] + scale * (x * 0.98 + y * 0.62), o[1] - scale * (x * -0.12 + y * 0.5 + z * 0.95)];
  const hy = 1.75 * 1.5, hz = 0.75 * 1.5;
  const x = (y, z) => 10 - (y * m[1] + z * m[2]) / m[0];
  const face = (...c) => c.map(([y, z, far]) => p(far ? x(y, z) : 0, y, z));
  sheet.shape('wood', ...face([-hy, -hz, 0], [-hy, -hz, 1], [-hy, hz, 1], [-hy, hz, 0]));
  sheet.shape('wood', ...face([-hy, hz, 0], [-hy, hz, 1], [hy, hz, 1], [hy, hz, 0]));
  sheet.shape('shade', ...face([-hy, -hz, 1], [hy, -hz, 1], [hy, hz, 1], [-hy, hz, 1]));
  const c = p(x(0, 0), 0, 0);
  const tip = p(x(0, 0) + 4 * m[0], 4 * m[1], 4 * m[2]);
  sheet.arrow(c, tip, 'dim').text([tip[0] + 5, tip[1]], 'm', { kind: 'm' });
  const a = p(2.6, 0, hz);
  sheet.circle('ink', a, 2);
  for (const [d, name] of [[[2.6, 0, 0], 'X'], [[0, 2, 0], 'Y'], [[0, 0, 2.4], 'Z']]) {
    const q = p(2.6 + d[0], d[1], hz + d[2]);
    sheet.arrow(a, q, 'thin').text([q[0] + 5, q[1] + 2], name, { kind: 'i' });
  }
  sheet.text([p(0, -hy, -hz)[0] - 4, p(0, -hy, -hz)[1] + 22], 'near end').text([p(x(-hy, -hz), -hy, -hz)[0] + 8, p(x(-hy, -hz), -hy, -hz)[1] + 4], 'far end');
  sheet.text([40, 30], 'piece axes', { kind: 'h' });
}
