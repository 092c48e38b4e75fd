import type { Mark } from './drawing.js';
import { type Box, transformBox, union } from './geometry.js';
import { pathBox } from './shapes.js';

/** The box around what shows of all shapes and their strokes; text and rasters do not count. */
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
      const inside = cut(marksBox(mark.marks), mark.clip);
      if (inside) all = union(all, mark.at ? transformBox(mark.at, inside) : inside);
    }
  }
  return all;
}

/** What a clip lets through of a box, told by the box around the clip. */
function cut(box: Box | undefined, clip: string | undefined): Box | undefined {
  const by = clip === undefined ? undefined : pathBox(clip);
  if (!box || clip === undefined) return box;
  if (!by) return undefined;
  const left = Math.max(box.left, by.left);
  const top = Math.max(box.top, by.top);
  const right = Math.min(box.right, by.right);
  const bottom = Math.min(box.bottom, by.bottom);
  return left < right && top < bottom ? { left, top, right, bottom } : undefined;
}
