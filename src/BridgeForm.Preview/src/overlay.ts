import type { Camera, Vector3 } from 'three';

/** Lines and words over the picture, drawn anew with each frame. Pixels from the top left of the stage. */
export interface Overlay {
  svg: SVGSVGElement;
  ink: string;
  paper: string;
  clear: (width: number, height: number) => void;
  line: (a: Spot, b: Spot, options?: { dashed?: boolean; width?: number; colour?: string }) => void;
  dot: (a: Spot, radius: number, colour?: string) => void;
  /** A small arrowhead at a, pointing away from b. */
  arrow: (a: Spot, b: Spot) => void;
  /** A label: one or two lines of text on a patch of paper. Gives its box. */
  tag: (at: Spot, lines: string[], anchor: 'start' | 'middle' | 'end') => Box;
}

export interface Spot { x: number; y: number }
export interface Box { x: number; y: number; width: number; height: number }
export interface Pane { x: number; y: number; width: number; height: number }

const NS = 'http://www.w3.org/2000/svg';
export const FONT = 13;

export function buildOverlay(svg: SVGSVGElement): Overlay {
  const add = (name: string, attributes: Record<string, string | number>, text?: string): void => {
    const element = document.createElementNS(NS, name);
    Object.entries(attributes).forEach(([key, value]) => { element.setAttribute(key, String(value)); });
    if (text !== undefined) {
      element.textContent = text;
    }

    svg.append(element);
  };
  const overlay: Overlay = {
    svg,
    ink: '#000',
    paper: '#fff',
    clear: (width, height) => {
      svg.replaceChildren();
      svg.setAttribute('viewBox', `0 0 ${width} ${height}`);
    },
    line: (a, b, options = {}) => {
      const dash: Record<string, string> = options.dashed === true ? { 'stroke-dasharray': '7 4' } : {};
      const ends = { x1: a.x, y1: a.y, x2: b.x, y2: b.y };
      add('line', { ...ends, stroke: overlay.paper, 'stroke-width': (options.width ?? 1.2) + 2, 'stroke-opacity': 0.7 });
      add('line', { ...ends, stroke: options.colour ?? overlay.ink, 'stroke-width': options.width ?? 1.2, ...dash });
    },
    dot: (a, radius, colour) => { add('circle', { cx: a.x, cy: a.y, r: radius, fill: colour ?? overlay.ink, stroke: overlay.paper, 'stroke-width': 1.5 }); },
    arrow: (a, b) => {
      const turn = Math.atan2(a.y - b.y, a.x - b.x);
      const corner = (by: number): string => `${a.x - 8 * Math.cos(turn + by)},${a.y - 8 * Math.sin(turn + by)}`;
      add('polygon', { points: `${a.x},${a.y} ${corner(0.3)} ${corner(-0.3)}`, fill: overlay.ink });
    },
    tag: (at, lines, anchor) => {
      const box = tagBox(at, lines, anchor);
      const { width } = box;
      add('rect', { ...box, rx: 3, fill: overlay.paper, 'fill-opacity': 0.92 });
      lines.forEach((text, i) => {
        add('text', {
          x: box.x + width / 2, y: box.y + FONT + 1 + i * (FONT + 3), fill: overlay.ink, 'text-anchor': 'middle',
          'font-family': 'system-ui, sans-serif', 'font-size': i === 0 ? FONT : FONT - 1.5, 'font-weight': i === 0 ? 650 : 400,
        }, text);
      });
      return box;
    },
  };
  return overlay;
}

/** The patch of paper of a label. */
function tagBox(at: Spot, lines: string[], anchor: 'start' | 'middle' | 'end'): Box {
  const width = Math.max(...lines.map((t, i) => t.length * (i === 0 ? FONT * 0.63 : FONT * 0.53))) + 10;
  const height = lines.length * (FONT + 3) + 5;
  const x = anchor === 'start' ? at.x : anchor === 'end' ? at.x - width : at.x - width / 2;
  return { x, y: at.y - height / 2, width, height };
}

/** What is drawn on, or only measured. */
export type Pen = Pick<Overlay, 'line' | 'arrow' | 'tag'>;

/** A pen that draws nothing and keeps the boxes of what it would draw. */
export function measuringPen(): { pen: Pen; boxes: Box[]; tags: Box[] } {
  const [boxes, tags]: [Box[], Box[]] = [[], []];
  const pen: Pen = {
    line: (a, b) => { boxes.push({ x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) }); },
    arrow: () => undefined,
    tag: (at, lines, anchor) => {
      const box = tagBox(at, lines, anchor);
      boxes.push(box);
      tags.push(box);
      return box;
    },
  };
  return { pen, boxes, tags };
}

/** Where a point of the world appears in a pane; z tells whether it lies in front of the camera (below 1). */
export function spotOf(point: Vector3, camera: Camera, pane: Pane): Spot & { z: number } {
  const p = point.clone().project(camera);
  return { x: pane.x + (p.x + 1) / 2 * pane.width, y: pane.y + (1 - p.y) / 2 * pane.height, z: p.z };
}
