// A sheet of plain lines for the figures of docs/bridge.md: black for things, one accent colour for measures.
// Points are [x, y] in pixels with y down; `frame` gives a map from drawing units (y up) to pixels.

const accent = '#b3401c';
const style = `
text{font-family:sans-serif;font-size:13px;fill:#1a1a1a;paint-order:stroke;stroke:#fff;stroke-width:3px;stroke-linejoin:round}
.m{fill:${accent}} .h{font-weight:bold} .s{font-size:11.5px} .i{font-style:italic}
.wood{fill:#f3ecdd;stroke:#1a1a1a;stroke-width:1.4;stroke-linejoin:round}
.wood2{fill:#e6dac2;stroke:#1a1a1a;stroke-width:1.4;stroke-linejoin:round}
.rope{fill:#cfd3d6;stroke:#1a1a1a;stroke-width:1.3}
.tool{fill:#e4e7ea;stroke:#1a1a1a;stroke-width:1.2;stroke-linejoin:round}
.ground{fill:#eceae4;stroke:none}
.line{fill:none;stroke:#1a1a1a;stroke-width:1.4;stroke-linejoin:round}
.thin{fill:none;stroke:#1a1a1a;stroke-width:0.9}
.dash{fill:none;stroke:#1a1a1a;stroke-width:0.9;stroke-dasharray:5 4}
.axis{fill:none;stroke:#1a1a1a;stroke-width:0.9;stroke-dasharray:10 3 2 3}
.dim{fill:none;stroke:${accent};stroke-width:1}
.ext{fill:none;stroke:${accent};stroke-width:0.6}
.cut{fill:none;stroke:${accent};stroke-width:2}
.shade{fill:${accent};fill-opacity:0.16;stroke:${accent};stroke-width:1.2;stroke-linejoin:round}
.head{fill:${accent}} .ink{fill:#1a1a1a}
`.replace(/\n/g, '');

const rad = degrees => degrees * Math.PI / 180;
const fix = x => (Math.round(x * 100) / 100 + 0).toString();
const pt = p => `${fix(p[0])},${fix(p[1])}`;
const escape = s => s.replace(/&/g, '&amp;').replace(/</g, '&lt;');

export const sin = d => Math.sin(rad(d));
export const cos = d => Math.cos(rad(d));
export const tan = d => Math.tan(rad(d));
export const along = (p, degrees, length) => [p[0] + length * cos(degrees), p[1] + length * sin(degrees)];

/** A map from drawing units, y up, to pixels. */
export const frame = (x0, y0, scale) => (x, y) => [x0 + scale * x, y0 - scale * y];

export class Sheet {
  #parts = [];

  constructor(width, height, title) {
    Object.assign(this, { width, height, title });
  }

  #add(tag, attributes, content) {
    const list = Object.entries(attributes).map(([k, v]) => ` ${k}="${v}"`).join('');
    this.#parts.push(content === undefined ? `<${tag}${list}/>` : `<${tag}${list}>${content}</${tag}>`);
    return this;
  }

  line(kind, ...points) {
    return this.#add('polyline', { class: kind, points: points.map(pt).join(' ') });
  }

  shape(kind, ...points) {
    return this.#add('polygon', { class: kind, points: points.map(pt).join(' ') });
  }

  circle(kind, center, radius) {
    return this.#add('circle', { class: kind, cx: fix(center[0]), cy: fix(center[1]), r: fix(radius) });
  }

  /** @param at anchor: start | middle | end; kind: m measure, h heading, s small, i italic. */
  text(p, words, { at = 'start', kind = '', turn = 0 } = {}) {
    const attributes = { x: fix(p[0]), y: fix(p[1]), 'text-anchor': at };
    if (kind) attributes.class = kind;
    if (turn) attributes.transform = `rotate(${fix(turn)} ${fix(p[0])} ${fix(p[1])})`;
    return this.#add('text', attributes, escape(words));
  }

  lines(p, rows, options = {}) {
    rows.forEach((row, i) => this.text([p[0], p[1] + i * 16], row, options));
    return this;
  }

  #head(tip, angle, kind) {
    const back = along(tip, angle, -8);
    const side = [-2.6 * sin(angle), 2.6 * cos(angle)];
    this.shape(kind, tip, [back[0] + side[0], back[1] + side[1]], [back[0] - side[0], back[1] - side[1]]);
  }

  arrow(p, q, kind = 'dim') {
    this.line(kind, p, q);
    const angle = Math.atan2(q[1] - p[1], q[0] - p[0]) * 180 / Math.PI;
    this.#head(q, angle, kind === 'dim' ? 'head' : 'ink');
    return this;
  }

  /** Leader from words to a point. */
  leader(from, to, words, { at = 'start', kind = '' } = {}) {
    this.line('thin', from, to);
    const dx = at === 'start' ? 4 : at === 'end' ? -4 : 0;
    const dy = at === 'middle' ? (from[1] < to[1] ? -5 : 14) : 4;
    return this.text([from[0] + dx, from[1] + dy], words, { at, kind });
  }

  /**
   * Measure between two points, drawn `off` pixels to the left of the way from p to q.
   * `slide` moves the words along the line, `gap` away from it. Short ones get their arrows from outside.
   */
  measure(p, q, words, { off = 0, slide = 0, gap = 0, at = 'middle' } = {}) {
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
    const u = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
    const n = [u[1], -u[0]];
    const move = (a, d, s = 0) => [a[0] + n[0] * d + u[0] * s, a[1] + n[1] * d + u[1] * s];
    const sign = Math.sign(off) || 1;
    const [a, b] = [move(p, off), move(q, off)];
    if (off) {
      this.line('ext', move(p, 3 * sign), move(a, 4 * sign));
      this.line('ext', move(q, 3 * sign), move(b, 4 * sign));
    }
    const angle = Math.atan2(u[1], u[0]) * 180 / Math.PI;
    const short = length < 24;
    this.line('dim', short ? move(a, 0, -14) : a, short ? move(b, 0, 14) : b);
    this.#head(a, short ? angle : angle + 180, 'head');
    this.#head(b, short ? angle + 180 : angle, 'head');
    const middle = [(a[0] + b[0]) / 2 + u[0] * slide, (a[1] + b[1]) / 2 + u[1] * slide];
    const away = 7 + gap;
    const place = [middle[0] + n[0] * away * sign, middle[1] + n[1] * away * sign];
    const flat = Math.abs(u[1]) < 0.5;
    const side = flat ? 'middle' : n[0] * sign > 0 ? 'start' : 'end';
    return this.text([place[0], place[1] + (flat && n[1] * sign > 0 ? 9 : flat ? 0 : 4)], words, { at: at === 'middle' ? side : at, kind: 'm' });
  }

  /** Angle at `center` from one direction to another, degrees on the page (clockwise from +x, y down). */
  angle(center, from, to, radius, words, { gap = 12, turn = 0, at } = {}) {
    const steps = Math.max(6, Math.ceil(Math.abs(to - from) / 3));
    const points = Array.from({ length: steps + 1 }, (_, i) => along(center, from + (to - from) * i / steps, radius));
    this.line('dim', ...points);
    const way = Math.sign(to - from);
    this.#head(points[steps], to + 90 * way, 'head');
    this.#head(points[0], from - 90 * way, 'head');
    const middle = (from + to) / 2 + turn;
    const place = along(center, middle, radius + gap);
    return this.text([place[0], place[1] + 4], words, { at: at ?? (Math.abs(cos(middle)) < 0.4 ? 'middle' : cos(middle) > 0 ? 'start' : 'end'), kind: 'm' });
  }

  toString() {
    return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${this.width} ${this.height}" width="${this.width}" height="${this.height}" role="img">\n`
      + `<title>${escape(this.title)}</title>\n<style>${style}</style>\n<rect width="${this.width}" height="${this.height}" fill="#fff"/>\n`
      + this.#parts.join('\n') + '\n</svg>\n';
  }
}
