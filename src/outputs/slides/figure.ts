import type { FigureSpec, Mark } from '../../figures/index.js';
import type { Draft } from '../../layout/structure.js';
import { setLine } from '../../text/index.js';
import type { Easel } from './easel.js';
import type { SlideTools } from './lay-out.js';
import type { StageSpace } from './space.js';
import { SLIDE } from './tokens.js';

/** The figure over the whole stage, its alternative, and its data as a table that is read and not seen. */
export function paintFigure(
  figure: FigureSpec,
  space: StageSpace,
  section: Draft,
  easel: Easel,
  tools: SlideTools,
): void {
  const place = space.frame.box('figure');
  const drawing = tools.draw(figure, place.width, place.height);
  const { alternative } = figure;
  const scale = SLIDE.pointsPerPixel;
  const box = {
    page: space.page,
    x: easel.left(place.x, place.width) * scale,
    y: place.y * scale,
    width: place.width * scale,
    height: place.height * scale,
  };
  const node = easel.tree.add(section, 'Figure', { alt: `${alternative.label} ${alternative.reading}`, box });
  easel.content(node, [
    { kind: 'group', at: [1, 0, 0, 1, easel.left(place.x, place.width), place.y], marks: drawing.marks },
  ]);
  paintHiddenTable(figure, place.y, section, easel);
}

function paintHiddenTable(figure: FigureSpec, y: number, section: Draft, easel: Easel): void {
  const { tree } = easel;
  const { table: data } = figure.alternative;
  const table = tree.add(section, 'Table');
  const hidden = (node: Draft, text: string): void => {
    const line = setLine(easel.fonts, [{ text: `${text} `, data: { color: easel.colors.ink } }], {
      language: easel.language,
      direction: easel.direction,
      size: 4,
      leading: 4,
      weight: 400,
    });
    const mark: Mark = {
      kind: 'text',
      x: easel.left(SLIDE.side, line.width),
      baseline: y + 4,
      line,
      hidden: true,
    };
    easel.content(node, [mark]);
  };
  hidden(tree.add(table, 'Caption'), data.caption);
  const head = tree.add(tree.add(table, 'THead'), 'TR');
  for (const cell of data.head) hidden(tree.add(head, 'TH', { scope: 'Column' }), cell);
  const body = tree.add(table, 'TBody');
  for (const cells of data.rows) {
    const row = tree.add(body, 'TR');
    cells.forEach((cell, index) => {
      hidden(index === 0 ? tree.add(row, 'TH', { scope: 'Row' }) : tree.add(row, 'TD'), cell);
    });
  }
}
