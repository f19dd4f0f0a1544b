import { Sheet, frame, along, tan, cos } from '../draw.mjs';

const r = 0.375, depth = 0.9, b = 3.5, across = 3.5, width = 0.875;

/** Two sections along the rope (square and plumb), one across it. */
export default function channel() {
  const sheet = new Sheet(960, 385, 'Channel of a base: square and plumb sections along the rope, and the section across it');
  section(sheet, 150, 0, 'square: level floor');
  section(sheet, 445, 13, 'plumb: floor slopes with the rope');
  mouth(sheet, 775);
  return sheet;
}

function section(sheet, x0, theta, heading) {
  const p = frame(x0, 205, 44), half = across / 2;
  const f = r / cos(theta), floor = t => f + t * tan(theta);
  const bottom = f - depth, top = bottom + b;
  const rope = (t, d) => p(t, t * tan(theta) + d / cos(theta));
  sheet.shape('rope', rope(-3, r), rope(3, r), rope(3, -r), rope(-3, -r));
  sheet.shape('wood', p(-half, floor(-half)), p(half, floor(half)), p(half, top), p(-half, top));
  sheet.line('dash', p(-half, floor(-half)), p(-half, bottom), p(half, bottom), p(half, floor(half)));
  sheet.line('axis', rope(-3.1, 0), rope(3.1, 0));
  sheet.line('axis', p(0, -1.6), p(0, top + 0.75));
  sheet.arrow(p(0, top + 0.2), p(0, top + 0.8), 'thin').text([p(0, top + 0.8)[0] + 6, p(0, top + 0.8)[1] + 6], 'n', { kind: 'i' });
  sheet.text([p(3.05, 0)[0], rope(3.05, 0)[1] - 22], theta ? '' : 't', { kind: 'i', at: 'end' });
  sheet.circle('ink', p(0, 0), 2.4);
  sheet.measure(p(0, bottom), p(0, floor(0)), 'c', { gap: 2 });
  sheet.measure(p(-half, bottom), p(-half, top), 'b', { off: 22, slide: -25 });
  sheet.measure(p(-half, top), p(half, top), '', { off: 16 });
  sheet.text([p(half, 0)[0] + 8, p(0, top)[1] - 12], theta ? '' : 'b_t', { kind: 'm' });
  if (!theta) {
    sheet.measure(p(1.1, 0), p(1.1, r), 'r', { gap: 8 });
    sheet.leader([p(-0.5, 0)[0], p(0, 1.8)[1]], p(-0.7, r + 0.02), 'floor, n = r', { at: 'middle' });
  } else {
    sheet.arrow(p(-3, 0), p(3.1, 0), 'ext').text([p(3.1, 0)[0] + 4, p(0, 0)[1] + 4], 't', { kind: 'i' });
    sheet.angle(p(0, 0), 0, -theta, 112, 'θ', { gap: 6 });
    sheet.leader([p(0.75, 0)[0], p(0, 2)[1]], p(1.2, floor(1.2)), 'floor', { at: 'middle' });
    sheet.leader([p(-half, 0)[0] - 10, 296], p(-half, (floor(-half) + bottom) / 2), 'shallow mouth', { at: 'middle' });
    sheet.text([p(-half, 0)[0] - 10, 328], 'c − (b_t / 2)·tan θ', { at: 'middle', kind: 's' });
    sheet.text([p(half, 0)[0] + 30, 328], 'c + (b_t / 2)·tan θ', { at: 'middle', kind: 's' });
    sheet.leader([p(half, 0)[0] + 30, 296], p(half, (floor(half) + bottom) / 2), 'deep mouth', { at: 'middle' });
  }
  sheet.text([x0, 372], heading, { at: 'middle', kind: 'h' });
}

function mouth(sheet, x0) {
  const p = frame(x0, 205, 44), w = width / 2, bottom = r - depth, top = bottom + b, edge = 2.6, spread = 1.25;
  sheet.shape('wood', p(-edge, bottom), p(-w, bottom), p(-w, r), p(w, r), p(w, bottom), p(edge, bottom), p(edge, top), p(-edge, top));
  for (const z of [-spread, spread]) {
    sheet.line('dash', p(z - 0.125, bottom), p(z - 0.125, bottom + 2), p(z + 0.125, bottom + 2), p(z + 0.125, bottom));
    sheet.line('axis', p(z, bottom - 0.2), p(z, bottom + 2.3));
  }
  sheet.circle('rope', p(0, 0), r * 44).circle('ink', p(0, 0), 2.4);
  sheet.measure(p(-w, bottom), p(w, bottom), 'width w', { off: -26 });
  sheet.measure(p(-spread, bottom), p(spread, bottom), 'keeper.spread', { off: -66 });
  sheet.measure(p(spread, bottom), p(spread, bottom + 2), 'keeper.depth', { off: -34, at: 'middle', slide: 0 });
  sheet.measure(p(-edge, bottom), p(-edge, r), 'c', { off: 16 });
  sheet.line('ext', p(-edge - 0.45, r), p(-w, r));
  sheet.leader([p(-1.6, 0)[0], p(0, top)[1] - 14], p(-spread, bottom + 1.8), 'keeper hole, blind', { at: 'middle' });
  sheet.text([x0, 372], 'across the rope', { at: 'middle', kind: 'h' });
}
