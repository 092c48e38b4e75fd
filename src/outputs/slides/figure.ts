import type { FigureSpec } from '../../figures/index.js';
import type { Easel } from './easel.js';
import { hide } from './hidden.js';
import type { StageSpace } from './space.js';
import { SLIDE } from './tokens.js';
import type { SlideTools } from './tools.js';

/** The figure over the whole stage, its alternative, and its data as a table that is read and not seen. */
export function paintFigure(figure: FigureSpec, space: StageSpace, easel: Easel, tools: SlideTools): void {
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
  const alt = `${alternative.label} ${alternative.reading}`;
  const node = easel.tree.add(space.section, 'Figure', { alt, box });
  easel.content(node, [easel.drawing(drawing.marks, place, 1)]);
  hideTable(figure, place.y, space, easel);
}

function hideTable(figure: FigureSpec, y: number, space: StageSpace, easel: Easel): void {
  const { tree } = easel;
  const { table: data } = figure.alternative;
  const table = tree.add(space.section, 'Table');
  hide(tree.add(table, 'Caption'), data.caption, y, easel);
  const head = tree.add(tree.add(table, 'THead'), 'TR');
  for (const cell of data.head) hide(tree.add(head, 'TH', { scope: 'Column' }), cell, y, easel);
  const body = tree.add(table, 'TBody');
  for (const cells of data.rows) {
    const row = tree.add(body, 'TR');
    cells.forEach((cell, index) => {
      hide(index === 0 ? tree.add(row, 'TH', { scope: 'Row' }) : tree.add(row, 'TD'), cell, y, easel);
    });
  }
}
