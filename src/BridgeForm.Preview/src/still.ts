import { Vector3 } from 'three';
import { readGlb } from './glb';
import type { BridgeFile } from './view';

const LIGHT = new Vector3(-0.3, 0.85, 0.45).normalize();
const BACK = new Vector3(-0.62, 0.32, 0.72).normalize();

/** A still picture without WebGL: every triangle that faces the reader, from the back to the front. */
export async function drawStill(canvas: HTMLCanvasElement, file: BridgeFile, width: number, height: number): Promise<void> {
  const { parts, finishes, ropes, ropeColour, steel, steelColour } = await readGlb(file.glb);
  const bodies = [
    ...parts.map((p) => ({ geometry: p.geometry, place: p.place, colour: finishes[0]?.colours[p.wood] })),
    ...ropes.map((r) => ({ geometry: r.geometry, place: r.matrixWorld, colour: ropeColour })),
    ...steel.map((s) => ({ geometry: s.geometry, place: s.place, colour: steelColour })),
  ];
  const right = new Vector3(0, 1, 0).cross(BACK).normalize();
  const up = BACK.clone().cross(right);
  const faces: { points: number[]; depth: number; fill: string }[] = [];
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const part of bodies) {
    const position = part.geometry.getAttribute('position');
    const index = part.geometry.index;
    const { colour } = part;
    if (index === null || colour === undefined) {
      continue;
    }

    const world = Array.from({ length: position.count }, (_, i) => new Vector3().fromBufferAttribute(position, i).applyMatrix4(part.place));
    for (let i = 0; i < index.count; i += 3) {
      const [a, b, c] = [world[index.getX(i)], world[index.getX(i + 1)], world[index.getX(i + 2)]];
      if (a === undefined || b === undefined || c === undefined) {
        continue;
      }

      const normal = b.clone().sub(a).cross(c.clone().sub(a)).normalize();
      if (normal.dot(BACK) <= 0) {
        continue;
      }

      const points = [a, b, c].flatMap((p) => [p.dot(right), -p.dot(up)]);
      points.forEach((v, k) => {
        if (k % 2 === 0) {
          [x0, x1] = [Math.min(x0, v), Math.max(x1, v)];
        } else {
          [y0, y1] = [Math.min(y0, v), Math.max(y1, v)];
        }
      });
      const light = 0.62 + 0.5 * Math.max(0, normal.dot(LIGHT));
      faces.push({ points, depth: a.dot(BACK) + b.dot(BACK) + c.dot(BACK), fill: colour.clone().multiplyScalar(light).getStyle() });
    }
  }

  canvas.width = width;
  canvas.height = height;
  const scale = 0.92 * Math.min(width / (x1 - x0), height / (y1 - y0));
  const [left, top] = [width / 2 - scale * (x0 + x1) / 2, height / 2 - scale * (y0 + y1) / 2];
  const ink = canvas.getContext('2d');
  if (ink === null) {
    return;
  }

  for (const { points, fill } of faces.sort((a, b) => a.depth - b.depth)) {
    ink.beginPath();
    for (let k = 0; k < 6; k += 2) {
      ink.lineTo(left + scale * (points[k] ?? 0), top + scale * (points[k + 1] ?? 0));
    }

    ink.closePath();
    ink.fillStyle = ink.strokeStyle = fill;
    ink.fill();
    ink.stroke();
  }
}
