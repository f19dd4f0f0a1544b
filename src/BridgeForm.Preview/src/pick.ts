import { Box3, Matrix4, Ray, Vector3 } from 'three';
import type { Part } from './glb';

/** Index of the part that a ray meets first; null when it meets none. `at` tells where a part is, null when it is not drawn. */
export function firstHit(ray: Ray, parts: readonly Part[], at: (index: number) => Matrix4 | null): number | null {
  const near: { index: number; enters: number; local: Ray; place: Matrix4 }[] = [];
  const spot = new Vector3();
  parts.forEach((part, index) => {
    const place = at(index);
    if (place === null) {
      return;
    }

    const local = ray.clone().applyMatrix4(place.clone().invert());
    const box = boxOf(part);
    const hit = box.containsPoint(local.origin) ? spot.copy(local.origin) : local.intersectBox(box, spot);
    if (hit !== null) {
      near.push({ index, enters: hit.applyMatrix4(place).distanceTo(ray.origin), local, place });
    }
  });
  let [best, nearest] = [null as number | null, Infinity];
  for (const { index, enters, local, place } of near.sort((a, b) => a.enters - b.enters)) {
    if (enters > nearest) {
      break;
    }

    const part = parts[index];
    const distance = part === undefined ? Infinity : throughTriangles(ray, local, part, place);
    if (distance < nearest) {
      [best, nearest] = [index, distance];
    }
  }

  return best;
}

function boxOf(part: Part): Box3 {
  if (part.geometry.boundingBox === null) {
    part.geometry.computeBoundingBox();
  }

  return part.geometry.boundingBox ?? new Box3();
}

/** Distance to the nearest outward triangle of a part; infinite when the ray passes by. */
function throughTriangles(ray: Ray, local: Ray, part: Part, place: Matrix4): number {
  const position = part.geometry.getAttribute('position');
  const index = part.geometry.index;
  const [a, b, c, spot] = [new Vector3(), new Vector3(), new Vector3(), new Vector3()];
  let nearest = Infinity;
  for (let i = 0; index !== null && i < index.count; i += 3) {
    a.fromBufferAttribute(position, index.getX(i));
    b.fromBufferAttribute(position, index.getX(i + 1));
    c.fromBufferAttribute(position, index.getX(i + 2));
    if (local.intersectTriangle(a, b, c, true, spot) !== null) {
      nearest = Math.min(nearest, spot.applyMatrix4(place).distanceTo(ray.origin));
    }
  }

  return nearest;
}
