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
      const text = 150 / upper.width;
      lookSquare(side, whole, 'side', upper.width / upper.height, { left: 0.04, right: Math.min(0.2, text), top: 0.12, bottom: 0.1 });
      lookSquare(front, one, 'along', lower.width / lower.height, { left: 0.06, right: 0.06, top: 0.1, bottom: 0.2 });
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
      view.dimensions.forEach((d) => { dimension(overlay, d, (p) => spotOf(new Vector3(...p), side, upper), upper); });
      const scale = lower.width / (front.right - front.left);
      const f = view.frames[middle];
      for (const z of [-view.ropeSpacing / 2, view.ropeSpacing / 2]) {
        overlay.dot(spotOf(new Vector3(f?.x ?? 0, f?.y ?? 0, z), front, lower), Math.max(3, view.ropeRadius * scale));
      }

      view.section.forEach((d) => { dimension(overlay, d, (p) => spotOf(new Vector3(...p), front, lower), lower); });
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
    low: new Vector3(whole.low.x, y - 0.35, -wide),
    high: new Vector3(whole.high.x, y + (f?.deck ?? 0.2) + shown.view.guard + 0.05, wide),
  };
}

function dimension(overlay: Overlay, d: Dimension, at: (p: Triple) => Spot, pane: Pane): void {
  const [from, to, a, b] = [at(d.from), at(d.to), at(d.lineFrom), at(d.lineTo)];
  overlay.line(from, a, { width: 0.8 });
  overlay.line(to, b, { width: 0.8 });
  overlay.line(a, b, { width: 1.4 });
  if (Math.hypot(a.x - b.x, a.y - b.y) > 20) {
    overlay.arrow(a, b);
    overlay.arrow(b, a);
  }

  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const upright = Math.abs(a.y - b.y) > Math.abs(a.x - b.x);
  if (!upright) {
    const room = Math.abs(a.x - b.x) > 150;
    overlay.tag(clamp({ x: middle.x, y: room ? middle.y : Math.max(a.y, b.y) + 22 }, pane, 62), [d.text, d.label], 'middle');
  } else if (middle.x + 110 > pane.x + pane.width) {
    overlay.tag({ x: pane.x + pane.width - 4, y: Math.max(pane.y + 22, Math.min(a.y, b.y) - 24) }, [d.text, d.label], 'end');
  } else {
    overlay.tag({ x: middle.x + 6, y: middle.y }, [d.text, d.label], 'start');
  }
}

function clamp(at: Spot, pane: Pane, half: number): Spot {
  return { x: Math.min(pane.x + pane.width - half, Math.max(pane.x + half, at.x)), y: at.y };
}
