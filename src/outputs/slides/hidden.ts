import type { Mark } from '../../figures/index.js';
import type { Draft } from '../../layout/structure.js';
import { setLine } from '../../text/index.js';
import type { Easel } from './easel.js';
import { SLIDE } from './tokens.js';

/** Words that are read aloud and found by a search, and not seen. */
export function hide(node: Draft, text: string, y: number, easel: Easel): void {
  const line = setLine(easel.fonts, [{ text: `${text} `, data: { color: easel.palette.ink } }], {
    language: easel.language,
    direction: easel.direction,
    size: 4,
    leading: 4,
    weight: 400,
  });
  const x = easel.left(SLIDE.side, line.width);
  const mark: Mark = { kind: 'text', x, baseline: y + 4, line, hidden: true };
  easel.content(node, [mark]);
}
