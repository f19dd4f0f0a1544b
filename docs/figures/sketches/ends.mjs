import { Sheet, frame, along, sin, cos, tan } from '../draw.mjs';

/** Where boards, rails and caps end: at a frame's mid-plane, and at an end frame. */
export default function ends() {
  const sheet = new Sheet(900, 275, 'Ends of boards at a frame and at an end frame');
  const p = frame(270, 130, 50), half = 1.75, kink = 8, thick = 0.75, gap = 0.12;
  sheet.shape('wood', p(-half, 0), p(half, 0), p(half, -1.6), p(-half, -1.6)).text(p(-1.5, -1.2), 'base');
  for (const s of [-1, 1]) {
    const at = (d, h) => p(s * (d * cos(kink / 2) - h * sin(kink / 2)), d * sin(kink / 2) + h * cos(kink / 2));
    const endAt = h => (gap / 2 + h * sin(kink / 2)) / cos(kink / 2);
    sheet.shape('wood2', at(endAt(0), 0), at(4, 0), at(4, thick), at(endAt(thick), thick));
  }
  sheet.line('axis', p(0, -1.9), p(0, 1.9)).text([p(0, 1.9)[0] + 6, p(0, 1.9)[1] + 4], 'mid-plane, t = 0');
  sheet.measure(p(-gap / 2, 1.15), p(gap / 2, 1.15), '', {});
  sheet.text([p(-0.5, 0)[0], p(0, 1.15)[1] - 6], 'butt_gap', { at: 'end', kind: 'm' });
  sheet.text([270, 262], 'at a frame: cut by its mid-plane', { at: 'middle', kind: 'h' });

  const q = frame(690, 130, 50), fall = 12;
  sheet.shape('wood', q(-half, 0), q(half, 0), q(half, -1.6), q(-half, -1.6)).text(q(-1.5, -1.2), 'end base');
  sheet.shape('ground', q(-4, -1.6), q(half, -1.6), q(half, -1.95), q(-4, -1.95)).text(q(-3.9, -1.86), 'landing', { kind: 's' });
  const u = t => half * tan(fall) - t * tan(fall);
  sheet.shape('wood2', q(-half, u(-half)), q(3.6, u(3.6)), q(3.6, u(3.6) + thick), q(-half, u(-half) + thick));
  sheet.line('axis', q(0, -1.9), q(0, 1.9)).text([q(0, 1.9)[0] + 6, q(0, 1.9)[1] + 4], 'mid-plane');
  sheet.line('ext', q(-half, 0), q(-half, 1.9));
  sheet.leader([q(-half, 0)[0] - 14, q(0, 1.6)[1]], q(-half, 1.3), 'runs on to the outer face', { at: 'end' });
  sheet.text([690, 262], 'at an end frame', { at: 'middle', kind: 'h' });
  return sheet;
}
