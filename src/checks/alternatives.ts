import type { Report } from '../diagnostics/index.js';
import type { Block, Numbers } from '../document/index.js';
import type { FigureSpec } from '../figures/index.js';
import { type Built, blocksOf, figuresOf, languageOf, plain, spoilsOf } from './built.js';
import { checkProblem } from './codes.js';
import { digitsIn } from './shown.js';

export interface AlternativesInput {
  readonly built: readonly Built[];
  /** What a figure names as its own may stand in its alternative. */
  readonly numbers?: Numbers;
}

/** Longest label of a figure, in characters. House figure. */
const LONGEST_LABEL = 120;

/**
 * A03: each picture and figure has an alternative of its own; a figure's alternative has the values that
 * the figure shows and no others; nothing on a blank worksheet, its alternatives least of all, says an
 * answer that the key gives.
 */
export function checkAlternatives({ built, numbers }: AlternativesInput, report: Report): void {
  const answers = answersOf(built);
  for (const output of built) {
    const tell: Tell = (message, hint, block) =>
      report.add(
        checkProblem('A03', `${output.name}: ${message}`, {
          ...(block?.place ? { place: block.place } : {}),
          hint,
          spoils: spoilsOf(output),
        }),
      );
    checkPictures(output, tell);
    checkFigures(output, numbers, tell);
    if (output.kind === 'sheet' && output.sheet.kind === 'worksheet') checkBlank(output, answers, tell);
    if (output.kind === 'deck')
      for (const slide of output.deck.slides)
        if (slide.stage.kind === 'ask' && slide.stage.question.choices.some((c) => c.key))
          tell(
            `slide ${slide.number} asks \`${slide.stage.question.id}\` and holds its answer.`,
            'Show the answer on the next step.',
            slide.stage.question,
          );
  }
}

type Tell = (message: string, hint: string, block?: Block) => void;

function checkPictures(output: Built, tell: Tell): void {
  const seen = new Map<string, unknown>();
  for (const block of blocksOf(output)) {
    if (block.kind !== 'picture') continue;
    const alt = plain(block.alt);
    if (alt === '')
      tell(
        'a picture has no alternative text.',
        'Write in the brackets what it shows: ![two cans, one dented](pictures/cans.svg).',
        block,
      );
    else if (/\.(?:png|jpe?g|svg|gif|webp)$/i.test(alt))
      tell(`"${alt}" is the name of a file, not what the picture shows.`, 'Write what it shows.', block);
    else if (seen.has(alt) && seen.get(alt) !== block.picture)
      tell(`two pictures share the alternative text "${alt}".`, 'Say what sets them apart.', block);
    seen.set(alt, block.picture);
  }
}

function checkFigures(output: Built, numbers: Numbers | undefined, tell: Tell): void {
  const labels = new Map<string, string>();
  const language = languageOf(output);
  for (const block of blocksOf(output)) {
    if (block.kind !== 'figure') continue;
    const { figure } = block;
    const { label, reading, table } = figure.alternative;
    const name = `the figure \`${figure.id}\``;
    if (plain(label) === '' || plain(reading) === '')
      tell(`${name} has no alternative text.`, 'Give it a label and a reading.', block);
    if (label.length > LONGEST_LABEL)
      tell(
        `the label of ${name} has ${label.length} characters; ${LONGEST_LABEL} is the most.`,
        'Say in it only what the figure is; values go into the reading.',
        block,
      );
    if (plain(label) !== '' && plain(label) === plain(reading))
      tell(
        `the label and the reading of ${name} are the same words.`,
        'Say in the label what it is, and its values in the reading.',
        block,
      );
    const other = labels.get(plain(label));
    if (other !== undefined && other !== figure.id)
      tell(`${name} has the same label as \`${other}\`.`, 'Say what sets them apart.', block);
    labels.set(plain(label), figure.id);
    if (table.rows.length === 0 || table.head.some((h) => plain(h) === ''))
      tell(
        `the data table of ${name} has no rows, or a column without a head.`,
        'Give every column a head and every row its cells.',
        block,
      );
    if (figure.mode === 'blank') continue;
    const own = figure.numbers.flatMap((id) => numbers?.get(id)?.text ?? []);
    const shown = digitsOf([...wordsIn(figure), ...own], language);
    for (const digit of digitsOf([reading], language))
      if (!shown.has(digit))
        tell(
          `the alternative of ${name} says ${digit}, which the figure does not show.`,
          'Take its values from the figure’s numbers.',
          block,
        );
    for (const value of valuesOf(figure))
      if (!plain(reading).includes(plain(value)))
        tell(
          `the alternative of ${name} leaves out ${plain(value)}.`,
          'Name every value that the figure shows at this level.',
          block,
        );
  }
}

function digitsOf(texts: readonly string[], language: string): ReadonlySet<string> {
  return new Set(texts.flatMap((t) => digitsIn(plain(t), language)));
}

/** Values that the figure prints beside its marks. */
function valuesOf(figure: FigureSpec): readonly string[] {
  switch (figure.kind) {
    case 'dot-lanes':
      return figure.lanes.flatMap((lane) => lane.dots.map((d) => d.text));
    case 'measure-row':
      // Amounts to pour are given, on a blank too; what they weigh is to be found.
      return pourWords(figure).under;
    case 'brick-rows':
      return figure.rows.flatMap((row) => (row.ends ? [row.ends.low, row.ends.high] : []));
    case 'share-rows':
      return figure.rows.map((row) => row.text);
    case 'dish':
      return figure.kinds.flatMap(({ text, parts, look }) =>
        parts > 0 && look !== 'waiting' && text !== '' ? [text] : [],
      );
    case 'dish-turn':
      return figure.lanes.map(({ text }) => text);
    case 'swaps':
      return figure.rows.flatMap(({ lanes }) => lanes.map(({ text }) => text));
    case 'cost-rungs':
      return figure.rungs.flatMap((rung) => (rung.value === null ? [] : [rung.text]));
    case 'tally-grid':
      return figure.rows.flatMap((row) =>
        row.lines.flatMap(({ text, percent }) => [text, percent].filter(Boolean)),
      );
    case 'change-band':
      return figure.posts.map(({ words }) => words);
    // Lines without a number, and steps of one's own, to which there is no answer.
    case 'line-choice':
    case 'step-tiles':
      return [];
    case 'week-bricks':
      return [...figure.days, figure.sum].flatMap(({ text }) => (text === '' ? [] : [text]));
  }
}

function pourWords({ vessels }: FigureSpec & { readonly kind: 'measure-row' }) {
  const pours = vessels.flatMap((vessel) => vessel.pours);
  return {
    amounts: pours.map(({ amount }) => amount),
    under: pours.flatMap(({ under }) => under.map(({ text }) => text)),
  };
}

/** All words of a figure in which a number may stand. */
function wordsIn(figure: FigureSpec): readonly string[] {
  const { label, table } = figure.alternative;
  const common = [label, table.caption, ...table.head, ...table.rows.flat()];
  switch (figure.kind) {
    case 'dot-lanes':
      return [
        ...common,
        ...figure.rows.map((r) => r.words),
        ...figure.lanes.flatMap((l) => [l.name, l.note ?? '', ...l.dots.map((d) => d.text)]),
      ];
    case 'measure-row':
      return [
        ...common,
        figure.words.check.text,
        ...figure.vessels.flatMap((v) => [v.name, v.note, ...v.pours.map((pour) => pour.name)]),
        ...pourWords(figure).amounts,
        ...pourWords(figure).under,
      ];
    case 'brick-rows':
      return [
        ...common,
        String(figure.worth),
        ...figure.rows.flatMap((r) => [
          r.name,
          r.note,
          r.ends?.words ?? '',
          r.ends?.low ?? '',
          r.ends?.high ?? '',
        ]),
      ];
    case 'share-rows':
      return [
        ...common,
        figure.words.brick,
        ...figure.rows.flatMap((row) => [row.name, row.text, row.range?.words ?? '']),
      ];
    case 'dish':
      return [
        ...common,
        figure.beside,
        ...figure.kinds.flatMap(({ name, notes, text, goalText }) => [name, ...notes, text, goalText]),
        ...figure.foods.flatMap(({ name, note }) => [name, note]),
      ];
    case 'dish-turn':
      return [
        ...common,
        figure.lost,
        ...figure.swaps.flatMap(({ old, fresh }) => [old.name, old.note, fresh.name, fresh.note]),
        ...figure.lanes.flatMap(({ name, text }) => [name, text]),
      ];
    case 'swaps':
      return [
        ...common,
        ...figure.rows.flatMap(({ old, fresh, job, lost, lanes }) => [
          ...[old, fresh].flatMap(({ name, note }) => [name, note]),
          job,
          lost,
          ...lanes.flatMap(({ name, text }) => [name, text]),
        ]),
      ];
    case 'cost-rungs':
      return [
        ...common,
        ...figure.rungs.flatMap(({ words, text }) => [words, text]),
        ...figure.posts.map(({ words }) => words),
      ];
    case 'tally-grid':
      return [
        ...common,
        figure.words.box,
        ...figure.rows.flatMap((row) => [
          row.name,
          ...row.lines.flatMap(({ word, text, percent }) => [word, text, percent]),
        ]),
      ];
    case 'change-band':
      return [
        ...common,
        ...[...figure.posts, ...figure.ticks, ...figure.marks].map(({ words }) => words),
        figure.stop?.why ?? '',
        figure.between?.words ?? '',
      ];
    case 'line-choice':
      return [...common, ...Object.values(figure.words)];
    case 'step-tiles':
      return [
        ...common,
        figure.words.boxes,
        ...figure.tiles.flatMap(({ month, action, effect }) => [
          month,
          action,
          effect.map(({ text }) => text).join(''),
        ]),
      ];
    case 'week-bricks':
      return [
        ...common,
        ...Object.values(figure.words),
        ...figure.goals.map((goal) => goal.words),
        ...[...figure.days, figure.sum].map(({ text }) => text),
      ];
  }
}

interface Answers {
  /** By id of figure: the values that the learner is to find. */
  readonly figures: ReadonlyMap<string, ReadonlySet<string>>;
  /** By label of a field: its answer. */
  readonly fields: ReadonlyMap<string, string>;
}

function answersOf(built: readonly Built[]): Answers {
  const figures = new Map<string, Set<string>>();
  const fields = new Map<string, string>();
  for (const output of built) {
    for (const figure of figuresOf(output)) {
      if (figure.mode !== 'key') continue;
      const known = figures.get(figure.id) ?? new Set<string>();
      for (const value of valuesOf(figure)) if (/\d/.test(value)) known.add(plain(value));
      figures.set(figure.id, known);
    }
    if (output.kind === 'sheet' && output.sheet.kind === 'key')
      for (const block of blocksOf(output))
        if (block.kind === 'table')
          for (const cell of block.rows.flat())
            if (cell.field?.answer) fields.set(cell.field.label, plain(cell.field.answer));
  }
  return { figures, fields };
}

/** What a blank worksheet must not say: in choices, in the names of fields, in the alternatives of figures. */
function checkBlank(output: Built, answers: Answers, tell: Tell): void {
  for (const block of blocksOf(output)) {
    if (block.kind === 'question' && block.choices.some((c) => c.key))
      tell(`the question \`${block.id}\` holds its answer.`, 'Answers belong on the key only.', block);
    if (block.kind === 'why')
      tell('a reason of the key stands on the blank worksheet.', 'Reasons belong on the key only.', block);
    if (block.kind === 'table')
      for (const cell of block.rows.flat()) {
        const answer = cell.field && answers.fields.get(cell.field.label);
        if (cell.field?.answer !== undefined)
          tell(`the field "${cell.field.label}" holds its answer.`, 'Answers belong on the key only.', block);
        else if (answer && says(cell.field?.label ?? '', answer))
          tell(
            `the name of the field "${cell.field?.label}" says its answer.`,
            'Name what is to be written, not its value.',
            block,
          );
      }
    if (block.kind === 'picture')
      leaks([block.alt], answersOfAll(answers), 'the alternative of a picture', block, tell);
    if (block.kind !== 'figure' || block.figure.mode !== 'blank') continue;
    const { figure } = block;
    const { label, reading, table } = figure.alternative;
    const own =
      answers.figures.get(figure.id) ??
      new Set(
        valuesOf(figure)
          .filter((v) => /\d/.test(v))
          .map(plain),
      );
    leaks(
      [label, reading, table.caption, ...table.rows.flat()],
      own,
      `the alternative of the figure \`${figure.id}\``,
      block,
      tell,
    );
  }
}

function answersOfAll(answers: Answers): ReadonlySet<string> {
  return new Set([...answers.figures.values()].flatMap((s) => [...s]));
}

function leaks(
  texts: readonly string[],
  own: ReadonlySet<string>,
  what: string,
  block: Block,
  tell: Tell,
): void {
  for (const answer of own)
    if (texts.some((t) => says(t, answer)))
      tell(
        `${what} says ${answer}, which is to be found by the learner.`,
        'Say what there is to do, without the value.',
        block,
      );
}

/** Whether a text says an answer as words of its own: `27` does not stand in `270`. */
function says(text: string, answer: string): boolean {
  const words = answer.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}.,])${words}(?![\\p{L}\\p{N}]|[.,]\\p{N})`, 'iu').test(plain(text));
}
