import { OrthographicCamera, Vector3 } from 'three';
import type { Shown } from './bridge';
import { extentOf, lookSquare, type Extent } from './cameras';
import { spotOf, type Overlay, type Pane, type Spot } from './overlay';
import type { Stage } from './stage';
import type { Dimension, Triple } from './view';

/** The measured view: the whole bridge from the side above, one frame seen along the bridge below. */
export interface Measure { paint: () => void; words: () => void }

export function buildMeasure(stage: Stage, shown: Shown, overlay: Overlay): Measure {
  const side = new OrthographicCamera(-1, 1, 1, -1, 1, 600);
  const front = new OrthographicCamera(-1, 1, 1, -1, 1, 600);
  const { view } = shown;
  const whole = extentOf(view);
  whole.low.y -= 0.75;
  const middle = Math.floor(view.frames.length / 2);
  const one = frameExtent(shown, whole, middle);
  const panes = (): [Pane, Pane] => {
    const { width, height } = stage.size;
    const split = Math.round(height * (width > 700 ? 0.5 : 0.46));
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
      const text = 84 / upper.width;
      lookSquare(side, whole, 'side', upper.width / upper.height, { left: 0.04, right: Math.min(0.24, text), top: 0.12, bottom: 0.1 });
      lookSquare(front, one, 'along', lower.width / lower.height, { left: 0.06, right: 0.06, top: 0.09, bottom: 0.1 });
      stage.renderer.setScissorTest(true);
      shown.only(null);
      shown.lay();
      draw(side, upper);
      const person = shown.state.person;
      shown.state.person = false;
      shown.only(new Set([view.frames[middle]?.name ?? '', view.bays[middle] ?? '']));
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
      overlay.tag({ x: 10, y: upper.y + 18 }, ['From the side'], 'start');
      overlay.tag({ x: 10, y: lower.y + 18 }, [`Looking along, frame ${view.frames[middle]?.name ?? ''}`], 'start');
      overlay.line({ x: 0, y: lower.y }, { x: lower.width, y: lower.y });
      overlay.line(spotOf(new Vector3(0, 0, 0), side, upper), spotOf(new Vector3(view.span, view.rise, 0), side, upper), { dashed: true });
      const deck = view.frames[middle]?.deck ?? 0;
      const above = spotOf(new Vector3(view.span / 2, view.ropeLowY + deck + view.guard, 0), side, upper).y - 26;
      view.dimensions.forEach((d, i) => {
        dimension(overlay, d, (p) => spotOf(new Vector3(...p), side, upper), upper, { drop: i === 0 ? LOWEST : 0, above });
      });
      const scale = lower.width / (front.right - front.left);
      const f = view.frames[middle];
      for (const z of [-view.ropeSpacing / 2, view.ropeSpacing / 2]) {
        overlay.dot(spotOf(new Vector3(f?.x ?? 0, f?.y ?? 0, z), front, lower), Math.max(3, view.ropeRadius * scale));
      }

      view.section.forEach((d) => { dimension(overlay, d, (p) => spotOf(new Vector3(...p), front, lower), lower, { drop: 0, above: null }); });
    },
  };
}

function frameExtent(shown: Shown, whole: Extent, i: number): Extent {
  const f = shown.view.frames[i];
  const y = f?.y ?? 0;
  const wide = Math.max(0.5, ...shown.parts.filter((p) => p.role === 'base').slice(0, 1).map((p) => {
    p.geometry.computeBoundingBox();
    return (p.geometry.boundingBox?.max.x ?? 1) / 2;
  }));
  return {
    low: new Vector3(whole.low.x, y - 0.27, -wide),
    high: new Vector3(whole.high.x, y + (f?.deck ?? 0.2) + shown.view.guard + 0.05, wide),
  };
}

/** The length's line stands at least so many pixels below the supports, clear of the words between. */
const LOWEST = 76;

/** An upright line shorter than this has its words elsewhere. */
const SHORT = 46;

/** `drop`: least pixels from the points down to the line; `above`: where the words of a short upright line go. */
interface Place { drop: number; above: number | null }

function dimension(overlay: Overlay, d: Dimension, at: (p: Triple) => Spot, pane: Pane, place: Place): void {
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
    overlay.tag({ x: Math.min(pane.x + pane.width - 56, Math.max(pane.x + 56, middle.x)), y }, words, 'middle');
  } else if (d.words !== 'beside') {
    const y = d.words === 'over' ? Math.max(pane.y + 22, Math.min(a.y, b.y) - 24) : Math.max(a.y, b.y) + 24;
    overlay.tag({ x: Math.min(pane.x + pane.width - 46, middle.x), y }, words, 'middle');
  } else if (long < SHORT && place.above !== null) {
    overlay.line({ x: middle.x, y: place.above }, { x: middle.x, y: Math.min(a.y, b.y) }, { width: 0.8 });
    overlay.tag({ x: middle.x, y: place.above }, words, 'middle');
  } else {
    overlay.tag({ x: middle.x + 6, y: middle.y }, words, 'start');
  }
}
