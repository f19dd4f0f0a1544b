import { Sheet, frame, sin, cos, tan } from '../draw.mjs';

// Sizes in inches: those of the bundled demo.
const base = { length: 58, depth: 5.5 };
const channel = { width: 0.875, depth: 0.625, z: 23 };
const post = { foot: 18.25, lean: 8, length: 40, wide: 3.5 };
const brace = { foot: 28.25, lean: 12, wide: 3.5 };
const rope = 0.375;

/** One frame seen from A, in the plane of z and n. */
export default function frameFigure() {
  const sheet = new Sheet(880, 690, 'A frame seen in its own plane, with its measures');
  const top = rope - channel.depth + base.depth, bottom = rope - channel.depth;
  const p = frame(430, 585, 10.6);
  const both = draw => [-1, 1].forEach(s => draw((z, n) => p(s * z, n), s));

  const meets = (brace.foot - post.foot - post.wide / cos(post.lean)) / (tan(post.lean) + tan(brace.lean));
  both(q => {
    const outer = post.foot + post.wide / cos(post.lean);
    const inner = brace.foot - brace.wide / cos(brace.lean);
    const inside = (inner - outer) / (tan(post.lean) + tan(brace.lean));
    sheet.shape('wood', q(brace.foot, top), q(brace.foot - meets * tan(brace.lean), top + meets), q(inner - inside * tan(brace.lean), top + inside), q(inner, top));
    const head = n => post.foot + (post.wide / 2) / cos(post.lean) + post.length * sin(post.lean) + n;
    const hn = top + post.length * cos(post.lean);
    sheet.shape('wood', q(post.foot, top), q(outer, top), q(head(post.wide / 2 * cos(post.lean)), hn - post.wide / 2 * sin(post.lean)),
      q(head(-post.wide / 2 * cos(post.lean)), hn + post.wide / 2 * sin(post.lean)));
  });
  // The head is cut square to n: drawn over the slanting end.
  const hn = top + post.length * cos(post.lean);
  const zc = post.foot + (post.wide / 2) / cos(post.lean) + post.length * sin(post.lean);
  both(q => {
    const half = post.wide / 2 / cos(post.lean), outer = post.foot + post.wide / cos(post.lean);
    sheet.shape('wood', q(post.foot, top), q(outer, top), q(zc + half, hn), q(zc - half, hn));
    sheet.shape('wood2', q(zc - 2.75, hn), q(zc + 2.75, hn), q(zc + 2.75, hn + 1.5), q(zc - 2.75, hn + 1.5));
    const gap = (post.length - 1.5 / cos(post.lean) - 6 * 3.5) / 7;
    for (let i = 0; i < 6; i++) {
      const h = 1.5 / cos(post.lean) + (i + 1) * gap + i * 3.5;
      const at = (s, d) => q(post.foot + s * sin(post.lean) - d * cos(post.lean), top + s * cos(post.lean) + d * sin(post.lean));
      sheet.shape('wood2', at(h, 0), at(h + 3.5, 0), at(h + 3.5, 0.75), at(h, 0.75));
    }
  });
  const w = channel.width / 2, c = channel.z;
  sheet.shape('wood', p(-29, bottom), p(-c - w, bottom), p(-c - w, rope), p(-c + w, rope), p(-c + w, bottom), p(c - w, bottom), p(c - w, rope), p(c + w, rope), p(c + w, bottom), p(29, bottom), p(29, top), p(-29, top));
  both(q => sheet.circle('rope', q(c, 0), rope * 10.6));
  for (let i = 0; i < 6; i++) {
    const z = -17.75 + i * (35.5 - 5.5) / 5;
    sheet.shape('wood2', p(z, top), p(z + 5.5, top), p(z + 5.5, top + 1.5), p(z, top + 1.5));
  }

  sheet.line('axis', p(0, -1.2), p(0, hn + 8));
  sheet.arrow(p(0, hn + 4), p(0, hn + 8), 'thin').text([p(0, hn + 8)[0] + 8, p(0, hn + 8)[1] + 8], 'n', { kind: 'i' });
  sheet.line('axis', p(-31, 0), p(31, 0));
  sheet.arrow(p(30, 0), p(35, 0), 'thin').text([p(35, 0)[0] + 5, p(35, 0)[1] + 4], 'z', { kind: 'i' });

  sheet.measure(p(-c, -1), p(c, -1), 'ropes.spacing', { off: -22, slide: -60 });
  sheet.measure(p(-29, bottom), p(29, bottom), 'base.length', { off: -62, slide: -60 });
  sheet.measure(p(0, top + 5), p(post.foot, top + 5), 'post.foot', {});
  sheet.line('ext', p(post.foot, top), p(post.foot, top + 5.5));
  sheet.line('ext', p(brace.foot, top), p(brace.foot, top + 10.2));
  sheet.measure(p(0, top + 9.7), p(brace.foot, top + 9.7), 'brace.foot', { slide: -95 });
  sheet.measure(p(-29, bottom), p(-29, top), 'b', { off: 22 });
  sheet.measure(p(0, top + 1.5), p(0, hn + 1.5), 'guard height', { slide: 70, gap: 2 });
  sheet.line('ext', p(-zc + 2.75, hn + 1.5), p(2, hn + 1.5));

  const slant = (s, d) => p(-(post.foot + s * sin(post.lean) - d * cos(post.lean)), top + s * cos(post.lean) + d * sin(post.lean));
  sheet.measure(slant(0, 0), slant(2 * 3.5 + 4.9, 0), 'h of a rail', { off: -34 });
  const axis = (s, side) => p(side * (post.foot + post.wide / 2 / cos(post.lean) + s * sin(post.lean)), top + s * cos(post.lean));
  sheet.line('axis', axis(0, 1), axis(post.length + 3, 1));
  sheet.measure(axis(0, 1), axis(post.length, 1), 'post.length', { off: -92, slide: 90 });
  sheet.line('ext', p(post.foot, top), p(post.foot, top + 26));
  sheet.angle(p(post.foot, top), -90, -82, 230, 'α, post.lean', { gap: 14, turn: -7, at: 'end' });
  sheet.line('ext', p(brace.foot, top), p(brace.foot, top + 17));
  sheet.angle(p(brace.foot, top), -90, -102, 165, '');
  sheet.line('ext', p(brace.foot - 1, top + 15.4), p(brace.foot + 4.6, top + 18)).text([p(brace.foot + 5, 0)[0], p(0, top + 17.8)[1]], 'β, brace.lean', { kind: 'm' });

  const label = (words, from, to, at) => sheet.leader(from, to, words, { at });
  label('cap', [p(-zc, 0)[0] - 70, p(0, hn + 4)[1]], p(-zc - 2, hn + 1), 'end');
  label('post', [p(-zc, 0)[0] - 62, p(0, hn - 6)[1]], p(-zc - 0.2, hn - 6), 'end');
  label('brace', [p(-32, 0)[0] - 10, p(0, top + 9)[1]], p(-27.5, top + 6), 'end');
  label('base', [p(-33, 0)[0], p(0, top + 2.5)[1]], p(-28, top - 1), 'end');
  label('rail', [p(-12, 0)[0], p(0, hn - 3)[1]], slant(post.length - 4.25, 0.75), 'start');
  label('board', [p(-9, 0)[0], p(0, top + 4.2)[1]], p(-9, top + 1), 'middle');
  label('rope in its channel', [p(15.5, 0)[0], p(0, top - 2.4)[1]], p(c - 0.25, 0.2), 'end');
  sheet.text(p(-3, top - 3), 'node', { at: 'end', kind: 's' });
  sheet.line('thin', [p(-3, top - 3)[0] + 3, p(-3, top - 3)[1]], p(-0.2, 0.1));
  sheet.circle('ink', p(0, 0), 2.6);
  sheet.text([430, 682], 'right side: z above 0; the left side is its mirror image', { at: 'middle', kind: 's' });
  return sheet;
}
