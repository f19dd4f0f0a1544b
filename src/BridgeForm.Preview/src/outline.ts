import { BufferGeometry, EdgesGeometry, LineBasicMaterial, LineSegments, type BufferGeometry as Geometry } from 'three';
import type { Shown } from './bridge';

/** White edges around the chosen part: seen without colours too. */
export interface Outline { lines: LineSegments; around: (shown: Shown, chosen: number | null) => void }

export function outline(): Outline {
  const lines = new LineSegments(new BufferGeometry(), new LineBasicMaterial({ color: 0xffffff, toneMapped: false }));
  lines.matrixAutoUpdate = false;
  lines.visible = false;
  lines.frustumCulled = false;
  let of: Geometry | null = null;
  return {
    lines,
    around: (shown, chosen) => {
      const part = chosen === null ? undefined : shown.parts[chosen];
      lines.visible = part !== undefined;
      if (part === undefined || chosen === null) {
        return;
      }

      if (of !== part.geometry) {
        lines.geometry.dispose();
        lines.geometry = new EdgesGeometry(part.geometry, 20);
        of = part.geometry;
      }

      lines.matrix.copy(shown.matrixOf(chosen));
      lines.matrixWorldNeedsUpdate = true;
    },
  };
}
