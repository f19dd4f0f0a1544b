import { Sheet, frame, sin, cos, tan } from '../draw.mjs';

/** Right brace against its post, drawn with larger leans than usual. */
export default function brace() {
  const sheet = new Sheet(960, 545, 'Geometry of a brace against the outer face of its post');
  const alpha = 14, beta = 24, d = 3.5, footPost = 3, dBrace = 3.5;
  const outer = footPost + d / cos(alpha), foot = outer + 12.5;
  const no = (foot - outer) / (tan(alpha) + tan(beta));
  const p = frame(110, 440, 19);
  const meet = [foot - no * tan(beta), no];
  const innerFoot = foot - dBrace / cos(beta), ni = (innerFoot - outer) / (tan(alpha) + tan(beta));
  const inner = [outer + ni * tan(alpha), ni];
  sheet.shape('wood', p(-2, 0), p(foot + 4, 0), p(foot + 4, -2.6), p(-2, -2.6));
  sheet.shape('wood', p(footPost, 0), p(outer, 0), p(outer + 22 * tan(alpha), 22), p(footPost + 22 * tan(alpha), 22));
  sheet.shape('wood2', p(foot, 0), p(...meet), p(...inner), p(innerFoot, 0));
  sheet.line('axis', p(0, -4.4), p(0, 9)).text([p(0, 9)[0] - 4, p(0, 9)[1] - 6], 'z = 0', { at: 'middle', kind: 's' });
  sheet.text(p(-1.4, -1.6), 'base').text(p(footPost + 20 * tan(alpha) + 0.4, 19.4), 'post');
  sheet.measure(p(0, -2.6), p(foot, -2.6), 'brace.foot', { off: -34 });
  sheet.line('ext', p(foot, 0), p(foot, -2.6));
  sheet.measure(p(0, 2), p(footPost, 2), 'post.foot', { gap: 0 });
  sheet.line('ext', p(footPost, 0), p(footPost, 2.4));
  sheet.line('ext', p(...meet), p(foot + 3.4, no));
  sheet.measure(p(foot + 3, 0), p(foot + 3, no), 'n_o', { off: 0.01, gap: 0 });
  sheet.measure(p(...meet), p(foot, 0), 'long edge', { off: 20 });
  sheet.measure(p(...inner), p(innerFoot, 0), 'short edge', { off: -12, slide: 42 });
  const mid = s => [foot - s * sin(beta), s * cos(beta)];
  const midIn = s => [mid(s)[0] - dBrace * cos(beta), mid(s)[1] - dBrace * sin(beta)];
  sheet.measure(p(...midIn(8)), p(...mid(8)), 'D_brace', { gap: 3, slide: -4 });
  const pn = 17;
  sheet.measure(p(footPost + pn * tan(alpha) + 0.05, pn), p(footPost + pn * tan(alpha) + d * cos(alpha), pn - d * sin(alpha)), 'D_post', { gap: 3 });
  sheet.line('ext', p(foot, 0), p(foot, 8));
  sheet.angle(p(foot, 0), -90, -90 - beta, 130, 'β', { gap: 12, turn: -2 });
  sheet.line('ext', p(outer, 0), p(outer, 13));
  sheet.angle(p(outer, 0), -90, -90 + alpha, 215, 'α', { gap: 12 });
  sheet.angle(p(...meet), 90 - beta + 180 - 180 + 2 * beta - 2 * beta, 90 + alpha, 62, 'α + β', { gap: 9, turn: -6 });

  sheet.lines([600, 60], [
    'n_o = (brace.foot − post.foot − D_post / cos α)',
    '\u2003\u2003/ (tan α + tan β)',
    'long edge = n_o / cos β',
    'short edge = long edge − D_brace·(tan β + cot(α + β))',
    '',
    'foot cut, from square: β',
    'top cut, from square: 90° − (α + β)',
  ], { kind: 's' });
  return sheet;
}
