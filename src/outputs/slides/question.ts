import type { Block } from '../../document/index.js';
import type { Mark } from '../../figures/index.js';
import type { Draft } from '../../layout/structure.js';
import type { Easel } from './easel.js';
import type { SlideTools } from './lay-out.js';
import { checkFloor, type StageSpace } from './space.js';
import { STAGE_WIDTH, TYPE } from './tokens.js';

type Question = Block & { readonly kind: 'question' };

const COLUMNS = ['column-1', 'column-2', 'column-3', 'column-4'] as const;
const DISC = 32;

/** Columns from the title to the shelf; the answer keeps the places, frames the right one and shows all values. */
export function paintQuestion(
  question: Question,
  answered: boolean,
  space: StageSpace,
  section: Draft,
  easel: Easel,
  tools: SlideTools,
): void {
  const { tree, colors } = easel;
  const first = space.frame.box('column-1');
  const prompt = easel.set(question.prompt, TYPE.text, STAGE_WIDTH);
  easel.words(tree.add(section, 'P'), prompt, first.x, first.y - 16, STAGE_WIDTH);
  const top = first.y + prompt.height;
  const list = tree.add(section, 'L', { numbering: 'UpperAlpha' });
  question.choices.forEach((choice, index) => {
    const { x, width } = space.frame.box(COLUMNS[index] ?? 'column-4');
    const right = answered && choice.key?.right === true;
    const frame = { x, y: top, width, height: space.floor - top };
    easel.backdrop(
      right
        ? [
            easel.rect(
              { ...frame, height: frame.height - 5 },
              { fill: colors.white, line: 9, color: colors.petrol },
            ),
          ]
        : sides(easel, frame),
    );
    const row = tree.add(list, 'LI');
    const label = tree.add(row, 'Lbl');
    easel.content(label, [disc(easel, x + 24 + DISC, top + 24 + DISC, right)]);
    const letter = easel.set([{ text: choice.letter }], { size: 42, leading: 50, weight: 800 }, 2 * DISC, {
      align: 'center',
      color: right ? colors.white : colors.ink,
    });
    easel.words(label, letter, x + 24, top + 24 + DISC - 26, 2 * DISC);
    const body = tree.add(row, 'LBody');
    const words = easel.set(choice.inlines, TYPE.option, width - 2 * DISC - 64);
    easel.words(body, words, x + 2 * DISC + 44, top + 30, width - 2 * DISC - 64);
    let y = Math.max(top + 30 + words.height, top + 24 + 2 * DISC) + 20;
    if (answered && choice.key) {
      const value = easel.set(
        [{ text: choice.key.value }],
        TYPE.value,
        width - 40,
        right ? { color: colors.petrol } : {},
      );
      easel.words(body, value, x + 24, y, width - 40);
      y += value.height + 6;
      const why = easel.set([{ text: choice.key.why }], TYPE.small, width - 48);
      easel.words(body, why, x + 24, y, width - 48);
      y += why.height;
    }
    checkFloor(y, space, easel);
    const size = Math.min(answered ? 150 : 200, space.floor - y - 12);
    if (choice.sign && size >= 90) {
      const at = { x: x + width - size - 20, y: space.floor, width: size, height: size };
      easel.backdrop([easel.drawing(tools.sign(choice.sign, size), at, 1)]);
    }
  });
}

/** An open column: lines at both sides and on top, down to the shelf. */
function sides(easel: Easel, frame: { x: number; y: number; width: number; height: number }): Mark[] {
  const left = easel.left(frame.x, frame.width);
  const { color, width } = { color: easel.colors.ink, width: 5 };
  const [right, bottom] = [left + frame.width, frame.y + frame.height];
  return [
    {
      kind: 'shape',
      path: `M${left} ${bottom}L${left} ${frame.y}L${right} ${frame.y}L${right} ${bottom}`,
      stroke: { color, width },
    },
  ];
}

/** Handle length of a Bézier quarter circle (common practice). */
const KAPPA = 0.5523;

function disc(easel: Easel, centerX: number, y: number, filled: boolean): Mark {
  const r = DISC;
  const x = easel.left(centerX - r, 2 * r) + r;
  const k = r * KAPPA;
  const path = `M${x} ${y - r}C${x + k} ${y - r} ${x + r} ${y - k} ${x + r} ${y}C${x + r} ${y + k} ${x + k} ${y + r} ${x} ${y + r}C${x - k} ${y + r} ${x - r} ${y + k} ${x - r} ${y}C${x - r} ${y - k} ${x - k} ${y - r} ${x} ${y - r}Z`;
  const { ink, petrol, white } = easel.colors;
  return {
    kind: 'shape',
    path,
    fill: filled ? petrol : white,
    stroke: { color: filled ? petrol : ink, width: 4 },
  };
}
