import type { Mark } from './drawing.js';
import { type Box, transformBox, union } from './geometry.js';
import { pathBox } from './shapes.js';

/** The box around all shapes with their strokes; text and rasters do not count. */
export function marksBox(marks: readonly Mark[]): Box | undefined {
  let all: Box | undefined;
  for (const mark of marks) {
    if (mark.kind === 'shape') {
      const own = pathBox(mark.path);
      const edge = (mark.stroke?.width ?? 0) / 2;
      if (own)
        all = union(all, {
          left: own.left - edge,
          top: own.top - edge,
          right: own.right + edge,
          bottom: own.bottom + edge,
        });
    } else if (mark.kind === 'group') {
      const inside = marksBox(mark.marks);
      if (inside) all = union(all, mark.at ? transformBox(mark.at, inside) : inside);
    }
  }
  return all;
}
