import { Box3, OrthographicCamera, Vector3 } from 'three';
import type { Shown } from './bridge';
import { cornersOf, extentOf, lookSquare, type Extent } from './cameras';
import { measuringPen, spotOf, type Box, type Overlay, type Pane, type Pen, type Spot } from './overlay';
import type { Stage } from './stage';
import type { BridgeView, Dimension, Triple } from './view';

/** The measured view: the whole bridge from the side above, one frame seen along the bridge below. */
export interface Measure { paint: () => void; words: () => void }

export function buildMeasure(stage: Stage, shown: Shown, overlay: Overlay): Measure {
  const side = new OrthographicCamera(-1, 1, 1, -1, 1, 600);
  const front = new OrthographicCamera(-1, 1, 1, -1, 1, 600);
  const { view } = shown;
  const whole = extentOf(view);
  whole.high.y = Math.max(whole.high.y, shown.person.y + 1.8);
  const middle = Math.floor(view.frames.length / 2);
  const seen = new Set([view.frames[middle]?.name ?? '', view.bays[middle] ?? '']);
  const one = partsExtent(shown, seen);
  const title = `Looking along, frame ${view.frames[middle]?.name ?? ''}`;
  const sideWords = (pen: Pen, pane: Pane): void => {
    pen.tag({ x: 10, y: pane.y + 18 }, ['From the side'], 'start');
    const above = overMiddle(view, (p) => spotOf(p, side, pane));
    view.dimensions.forEach((d, i) => {
      dimension(pen, d, (p) => spotOf(new Vector3(...p), side, pane), { drop: i === 0 ? LOWEST : 0, above });
    });
  };
  const frontWords = (pen: Pen, pane: Pane): void => {
    pen.tag({ x: 10, y: pane.y + 18 }, [title], 'start');
    view.section.forEach((d) => { dimension(pen, d, (p) => spotOf(new Vector3(...p), front, pane), { drop: 0, above: null }); });
  };
  const panes = (): [Pane, Pane] => {
    const { width, height } = stage.size;
    const split = Math.round(height * 0.5);
    return [{ x: 0, y: 0, width, height: split }, { x: 0, y: split, width, height: height - split }];
  };
  const draw = (camera: OrthographicCamera, pane: Pane): void => {
    const bottom = stage.size.height - pane.y - pane.height;
    stage.renderer.setViewport(pane.x, bottom, pane.width, pane.height);
    stage.renderer.setScissor(pane.x, bottom, pane.width, pane.height);
    stage.renderer.render(stage.scene, camera);
  };
  return {
    paint: () => {
      const [upper, lower] = panes();
      fit(side, whole, 'side', upper, sideWords);
      fit(front, one, 'along', lower, frontWords);
      stage.renderer.setScissorTest(true);
      shown.only(null);
      shown.lay();
      draw(side, upper);
      const person = shown.state.person;
      shown.state.person = false;
      shown.only(seen);
      shown.lay();
      shown.ropes.visible = false;
      draw(front, lower);
      shown.state.person = person;
      shown.only(null);
      shown.ropes.visible = true;
      shown.lay();
      stage.renderer.setScissorTest(false);
      stage.renderer.setViewport(0, 0, stage.size.width, stage.size.height);
    },
    words: () => {
      const [upper, lower] = panes();
      overlay.line({ x: 0, y: lower.y }, { x: lower.width, y: lower.y });
      overlay.line(spotOf(new Vector3(0, 0, 0), side, upper), spotOf(new Vector3(view.span, view.rise, 0), side, upper), { dashed: true });
      sideWords(overlay, upper);
      const scale = lower.width / (front.right - front.left);
      const f = view.frames[middle];
      for (const z of [-view.ropeSpacing / 2, view.ropeSpacing / 2]) {
        overlay.dot(spotOf(new Vector3(f?.x ?? 0, f?.y ?? 0, z), front, lower), Math.max(3, view.ropeRadius * scale));
      }

      frontWords(overlay, lower);
    },
  };
}

/** Around all parts of some frames and bays of the empty bridge. */
function partsExtent(shown: Shown, owners: ReadonlySet<string>): Extent {
  const box = new Box3();
  shown.parts.filter((p) => owners.has(p.owner)).forEach((p) => {
    p.geometry.computeBoundingBox();
    if (p.geometry.boundingBox !== null) {
      cornersOf(p.geometry.boundingBox).forEach((c) => box.expandByPoint(c.applyMatrix4(p.place)));
    }
  });
  return { low: box.min, high: box.max };
}

/** Pixels of paper between what is drawn and the pane's edges. */
const EDGE = 6;

/** Words never take more than this share of a pane: the bridge is still to be seen. */
const MOST_ROOM = 0.8;

/** Room on one side moves the bridge to the other by half as much, so that a few dozen rounds come to rest within a pixel. */
const MOST_ROUNDS = 60;

/** Below the heading, pixels. */
const HEADING = 34;

/** The bridge as large as leaves room in the pane for its dimensions and their words, which keep their size. */
function fit(camera: OrthographicCamera, extent: Extent, along: 'side' | 'along', pane: Pane, words: (pen: Pen, pane: Pane) => void): void {
  const room = { left: 2 * EDGE, right: 2 * EDGE, top: HEADING, bottom: 2 * EDGE };
  const fills = (): boolean => room.left + room.right > MOST_ROOM * pane.width || room.top + room.bottom > MOST_ROOM * pane.height;
  for (let k = 0; k < MOST_ROUNDS && !fills(); k++) {
    lookSquare(camera, extent, along, pane.width / pane.height, {
      left: room.left / pane.width, right: room.right / pane.width, top: room.top / pane.height, bottom: room.bottom / pane.height,
    });
    const { pen, boxes, tags } = measuringPen();
    words(pen, pane);
    const over = overflow(boxes, tags, pane);
    if (Math.max(over.left, over.right, over.top, over.bottom) < 1) {
      return;
    }

    room.left += over.left;
    room.right += over.right;
    room.top += over.top;
    room.bottom += over.bottom;
  }
}

/** How far boxes reach beyond a pane, and over its heading, the first of the tags. */
function overflow(boxes: Box[], tags: Box[], pane: Pane): { left: number; right: number; top: number; bottom: number } {
  const most = (list: number[]): number => Math.max(0, ...list);
  const [heading, ...others] = tags;
  const onHeading = heading === undefined ? [] : others
    .filter((t) => t.x < heading.x + heading.width && t.y < heading.y + heading.height)
    .map((t) => heading.y + heading.height - t.y);
  return {
    left: most(boxes.map((b) => pane.x + EDGE - b.x)),
    right: most(boxes.map((b) => b.x + b.width - (pane.x + pane.width - EDGE))),
    top: most([...boxes.slice(1).map((b) => pane.y + EDGE - b.y), ...onHeading]),
    bottom: most(boxes.map((b) => b.y + b.height - (pane.y + pane.height - EDGE))),
  };
}

/** Just above the rails around mid-span, as wide as words there are, pixels. */
function overMiddle(view: BridgeView, at: (p: Vector3) => Spot): number {
  const x = at(new Vector3(view.span / 2, 0, 0)).x;
  const tops = view.frames.map((f) => at(new Vector3(f.x, f.y + f.deck + view.guard + 0.05, 0)));
  const near = tops.filter((s) => Math.abs(s.x - x) < HALF_WORDS);
  const rail = at(new Vector3(view.span / 2, view.ropeLowY + (view.frames[Math.floor(view.frames.length / 2)]?.deck ?? 0) + view.guard, 0));
  return Math.min(rail.y, ...near.map((s) => s.y)) - 26;
}

/** Half the width of the words over mid-span, and a little, pixels. */
const HALF_WORDS = 64;

/** The length's line stands at least so many pixels below the supports, clear of the words between. */
const LOWEST = 76;

/** An upright line shorter than this has its words elsewhere. */
const SHORT = 46;

/** `drop`: least pixels from the points down to the line; `above`: where the words of a short upright line go. */
interface Place { drop: number; above: number | null }

function dimension(overlay: Pen, d: Dimension, at: (p: Triple) => Spot, place: Place): void {
  const [from, to] = [at(d.from), at(d.to)];
  const [a, b] = [at(d.lineFrom), at(d.lineTo)];
  const lower = Math.max(0, place.drop - (Math.max(a.y, b.y) - Math.max(from.y, to.y)));
  a.y += lower;
  b.y += lower;
  overlay.line(from, a, { width: 0.8 });
  overlay.line(to, b, { width: 0.8 });
  overlay.line(a, b, { width: 1.4 });
  const long = Math.hypot(a.x - b.x, a.y - b.y);
  if (long > 14) {
    overlay.arrow(a, b);
    overlay.arrow(b, a);
  }

  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const upright = Math.abs(a.y - b.y) > Math.abs(a.x - b.x);
  const words = [d.text, d.label];
  if (!upright) {
    const y = long > 94 ? middle.y : Math.max(a.y, b.y) + 22;
    overlay.tag({ x: middle.x, y }, words, 'middle');
  } else if (d.words !== 'beside') {
    const y = d.words === 'over' ? Math.min(a.y, b.y) - 24 : Math.max(a.y, b.y) + 24;
    overlay.tag({ x: middle.x, y }, words, 'middle');
  } else if (long < SHORT && place.above !== null) {
    overlay.line({ x: middle.x, y: place.above }, { x: middle.x, y: Math.min(a.y, b.y) }, { width: 0.8 });
    overlay.tag({ x: middle.x, y: place.above }, words, 'middle');
  } else {
    overlay.tag({ x: middle.x + 6, y: middle.y }, words, 'start');
  }
}
