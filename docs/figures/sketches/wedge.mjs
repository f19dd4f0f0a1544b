import { Sheet, along, cos, sin, tan } from '../draw.mjs';

/** Plan of a saw table: a cut of 65° with the saw at 48° and a wedge of 17° between fence and stick. */
export default function wedge() {
  const sheet = new Sheet(900, 345, 'A wedge against the fence of a mitre saw, seen from above');
  const turn = 17, saw = 48, pivot = [470, 80];
  sheet.shape('tool', [60, 56], [840, 56], [840, 80], [60, 80]);
  sheet.text([70, 73], 'fence');
  const left = 90;
  const reach = (pivot[0] - left) / cos(turn);
  const tip = pivot, low = along(tip, 180 - turn, reach);
  sheet.shape('shade', tip, [low[0], 80], low);
  sheet.text([low[0] + 14, 118], 'wedge', { kind: 'm' });
  const width = 62, down = along([0, 0], 90 - turn, width);
  const ahead = along(tip, -turn, 0);
  const bladeAt = s => along(tip, 90 + saw, s);
  const cutTo = width / sin(90 - (saw + turn));
  const a = tip, d = bladeAt(cutTo);
  const back = p => along(p, 180 - turn, 420);
  const stickLow = along(low, 180 - turn, 20);
  const lowEdge = [stickLow[0] + down[0], stickLow[1] + down[1]];
  sheet.shape('wood2', a, d, lowEdge, stickLow);
  sheet.text([low[0] + 60, low[1] + 14], 'stick', {});
  sheet.line('cut', along(tip, 90 + saw, -70), bladeAt(cutTo + 60));
  sheet.text([along(tip, 90 + saw, -70)[0] + 8, along(tip, 90 + saw, -70)[1] + 4], 'blade', { kind: 's' });
  sheet.line('ext', tip, [tip[0], 300]);
  sheet.angle(tip, 90, 90 + saw, 205, 'saw at 48°', { gap: 10, turn: -10 });
  const square = along(tip, 90 - turn, 215);
  sheet.line('dash', tip, square);
  sheet.text([square[0] + 6, square[1] + 4], 'square to the stick', { kind: 's' });
  sheet.angle(tip, 90 - turn, 90 + saw, 120, 'cut: 65°', { gap: -30, at: 'middle' });
  sheet.angle(tip, 180 - turn, 180, 260, '17°', { gap: -44, at: 'middle' });
  sheet.text([450, 335], 'wedge = cut − setting of the saw; it changes the mitre only', { at: 'middle', kind: 'h' });
  return sheet;
}
