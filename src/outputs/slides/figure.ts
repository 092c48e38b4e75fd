import type { FigureSpec, Mark } from '../../figures/index.js';
import type { Draft } from '../../layout/structure.js';
import { setLine } from '../../text/index.js';
import type { Easel } from './easel.js';
import type { SlideTools } from './lay-out.js';
import type { StageSpace } from './space.js';
import { SLIDE, STAGE_WIDTH } from './tokens.js';

/** The figure over the whole stage, its alternative, and its data as a table that is read and not seen. */
export function paintFigure(
  figure: FigureSpec,
  space: StageSpace,
  section: Draft,
  easel: Easel,
  tools: SlideTools,
): void {
  const height = space.floor - space.y;
  const drawing = tools.draw(figure, STAGE_WIDTH, height);
  const { alternative } = figure;
  const scale = SLIDE.pointsPerPixel;
  const box = {
    page: space.page,
    x: easel.left(SLIDE.side, STAGE_WIDTH) * scale,
    y: space.y * scale,
    width: STAGE_WIDTH * scale,
    height: height * scale,
  };
  const node = easel.tree.add(section, 'Figure', { alt: `${alternative.label} ${alternative.reading}`, box });
  easel.content(node, [
    { kind: 'group', at: [1, 0, 0, 1, easel.left(SLIDE.side, STAGE_WIDTH), space.y], marks: drawing.marks },
  ]);
  paintHiddenTable(figure, space.y, section, easel);
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
