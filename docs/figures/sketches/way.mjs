import { Sheet } from '../draw.mjs';

/** The way mark on a stick, folded over the arris of the face that is up and edge 1; and where its arrow points on the bridge. */
export default function way() {
  const sheet = new Sheet(920, 330, 'The way mark: which face is up, which edge is edge 1, which end is near');
  stick(sheet);
  bridge(sheet);
  return sheet;
}

/** X to the right, Y back and up, Z up: the face up and edge 1 are seen, edge 2 is behind. */
function stick(sheet) {
  const o = [70, 235], scale = 26;
  const p = (x, y, z) => [o[0] + scale * (x + y * 0.5), o[1] - scale * (y * 0.5 + z)];
  const long = 12, wide = 3.5, thick = 1.5;
  sheet.text([40, 30], 'seen from edge 1', { kind: 'h' });
  // y = 0 is edge 1 here, towards the eye; the near end lies at the right of someone who looks at edge 1 with the face up.
  sheet.shape('wood', p(0, 0, 0), p(long, 0, 0), p(long, 0, thick), p(0, 0, thick));
  sheet.shape('wood2', p(0, 0, thick), p(long, 0, thick), p(long, wide, thick), p(0, wide, thick));
  sheet.shape('wood', p(long, 0, 0), p(long, wide, 0), p(long, wide, thick), p(long, 0, thick));
  const tail = 10.6, tip = 8.4;
  sheet.shape('shade', p(tail, 0, thick), p(tip, 0, thick), p(tail, 0.9, thick));
  sheet.shape('shade', p(tail, 0, thick), p(tip, 0, thick), p(tail, 0, thick - 0.8));
  sheet.text([p(4, 1.7, thick)[0], p(4, 1.7, thick)[1]], 'face up');
  sheet.text([p(4, 0, 0.6)[0], p(4, 0, 0.6)[1]], 'edge 1');
  sheet.text([p(long, 0, 0)[0] - 20, p(long, 0, 0)[1] + 22], 'near end');
  sheet.text([p(0, 0, 0)[0] - 10, p(0, 0, 0)[1] + 22], 'far end');
  sheet.text([p(tip, 0, 0)[0] + 30, p(tip, 0, 0)[1] + 46], 'way mark: its tip towards the far end', { kind: 'm', at: 'end' });
}

function bridge(sheet) {
  sheet.text([560, 30], 'where the arrow points', { kind: 'h' });
  sheet.lines([560, 60], [
    'boards, stringers, rails, caps: towards B',
    'posts, braces: up',
    'bases, treads, packers: to the right, seen from A',
    '',
    'turned: the other way',
  ]);
  const y = 250;
  sheet.text([566, y + 40], 'A').text([880, y + 40], 'B');
  sheet.shape('wood', [580, y], [870, y], [870, y - 12], [580, y - 12]);
  sheet.arrow([660, y - 6], [790, y - 6], 'dim');
  for (const x of [600, 850]) {
    sheet.shape('wood2', [x - 8, y + 30], [x + 8, y + 30], [x + 8, y], [x - 8, y]);
    sheet.shape('wood', [x - 5, y - 12], [x + 5, y - 12], [x + 5, y - 80], [x - 5, y - 80]);
    sheet.arrow([x, y - 25], [x, y - 68], 'dim');
  }
}
