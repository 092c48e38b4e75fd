import type { View } from '../../src/directives/contract.js';
import type { Block, Cell, Inline } from '../../src/document/index.js';
import type { FigureSpec } from '../../src/figures/index.js';

/** Every string anywhere in a value, with the way to it: `blocks.0.figure.alternative.label`. */
export function stringsIn(value: unknown, path = ''): { readonly path: string; readonly text: string }[] {
  if (typeof value === 'string') return [{ path, text: value }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    // A place says where in the lesson something stands; it is never printed.
    key === 'place' ? [] : stringsIn(inner, path === '' ? key : `${path}.${key}`),
  );
}

/** Every number anywhere in a value but its place. */
export function numbersAnywhere(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === 'place' ? [] : numbersAnywhere(inner)));
}

/** The blocks of a view, those of its stages too. */
export function blocksOf(view: View): readonly Block[] {
  const staged = (view.stages ?? []).flatMap((stage): readonly Block[] => {
    switch (stage.kind) {
      case 'show':
        return [stage.block];
      case 'ask':
      case 'answer':
        return [stage.question];
      case 'words':
        return stage.blocks;
      default:
        return [];
    }
  });
  return [...view.blocks, ...staged];
}

export function figuresOf(view: View): readonly FigureSpec[] {
  return blocksOf(view).flatMap((block) => (block.kind === 'figure' ? [block.figure] : []));
}

/** What is printed and told, as lines of plain text: easy to read beside what was meant. */
export function outline(view: View): string[] {
  const lines = blocksOf(view).flatMap(lineOf);
  return view.shelf ? [...lines, `shelf: ${plain(view.shelf)}`] : lines;
}

function lineOf(block: Block): string[] {
  switch (block.kind) {
    case 'figure':
      return figureLines(block.figure);
    case 'choose':
      return block.items.map((item) => `choose ${item.letter}: ${plain(item.inlines)}`);
    case 'question':
      return [
        `question ${block.id}: ${plain(block.prompt)}`,
        ...block.choices.map(({ letter, inlines, sign, key }) => {
          const told = key ? ` | ${key.right ? 'right' : 'wrong'}, ${key.value}: ${key.why}` : '';
          return `  ${letter}${sign ? ` (${sign})` : ''} ${plain(inlines)}${told}`;
        }),
      ];
    case 'card':
      return goalCardLines(block);
    case 'write':
      return [`write ${block.lines}: ${block.label}`];
    case 'heading':
    case 'paragraph':
    case 'basis':
    case 'figure-caution':
    case 'why':
      return [`${block.kind}: ${plain(block.inlines)}`];
    case 'list':
      return block.items.flatMap((item) => item.flatMap(lineOf).map((line) => `- ${line}`));
    case 'table':
      return [
        ...(block.caption ? [`caption: ${block.caption}`] : []),
        ...[block.head, ...block.rows].map(
          (row) => `| ${row.map((cell) => plain(cell.inlines) + fieldWords(cell)).join(' | ')} |`,
        ),
      ];
    default:
      return [block.kind];
  }
}

/** A box to write in, with its answer on a key. */
function fieldWords({ field }: Cell): string {
  if (!field) return '';
  return `[${field.label}${field.answer === undefined ? '' : ` = ${field.answer}`}]`;
}

function goalCardLines({ id, card, copies, cautions }: Block & { readonly kind: 'card' }): string[] {
  const words = (card.sure?.words ?? []).map(({ text, picked }) => (picked ? `(${text})` : text));
  return [
    `goal-card ${id}: ${card.title}, ${copies} copies`,
    ...card.fields.map(({ label, answer }) => `  field ${label}${answer === undefined ? '' : `: ${answer}`}`),
    ...(card.sure ? [`  ${card.sure.label} ${words.join(', ')} | ${card.sure.hint}`] : []),
    ...cautions.map(({ inlines }) => `  caution: ${plain(inlines)}`),
  ];
}

function figureLines(figure: FigureSpec): string[] {
  const { alternative } = figure;
  return [
    `figure ${figure.id} (${figure.kind}, ${figure.mode})`,
    `  label: ${alternative.label}`,
    `  reading: ${alternative.reading}`,
    `  table: ${alternative.table.caption}`,
    ...[alternative.table.head, ...alternative.table.rows].map((row) => `    ${row.join(' | ')}`),
    ...(figure.kind === 'dot-lanes'
      ? [
          ...figure.rows.map((row) => `  row ${row.letter} (${row.sign}): ${row.words}`),
          ...figure.lanes.map((lane) => {
            const note = lane.note ? ` (${lane.note})` : '';
            const look = lane.look ? ` [${lane.look.from} to ${lane.look.to}: ${lane.look.word}]` : '';
            return `  lane ${lane.name}${note}: ${lane.dots.map((dot) => `${dot.letter} ${dot.text}`).join(', ')}${look}`;
          }),
        ]
      : []),
    ...(figure.kind === 'tally-grid'
      ? figure.rows.map(({ letter, name, lines }) => {
          const counts = lines.map(({ word, text, percent }) =>
            [word, text || 'open', percent].filter(Boolean).join(' '),
          );
          return `  row ${letter}: ${name} [${counts.join(', ')}]`;
        })
      : []),
    ...(figure.kind === 'brick-rows'
      ? figure.rows.map((row) => {
          const ends = row.ends ? ` ends ${row.ends.low} and ${row.ends.high}, ${row.look}` : '';
          return `  row ${row.name} (${row.sign}): ${row.note}${ends}`;
        })
      : []),
    ...(figure.kind === 'cost-rungs'
      ? [
          ...figure.rungs.map((rung) => `  rung ${rung.letter} (${rung.sign}): ${rung.words}, ${rung.text}`),
          `  posts: ${figure.posts.map(({ words }) => words).join(', ')}`,
        ]
      : []),
    ...(figure.kind === 'share-rows'
      ? figure.rows.map((row) => `  row ${row.name}: ${row.text}${row.range ? ` [${row.range.words}]` : ''}`)
      : []),
    ...(figure.kind === 'dish'
      ? [
          `  ${figure.shape}: ${figure.kinds.map(({ letter, name, text }) => `${letter} ${text} ${name}`).join(' | ')}`,
          `  ${figure.foods.map(({ name, parts }) => `${name} ${parts}`).join(', ')}`,
        ]
      : []),
    ...(figure.kind === 'dish-turn'
      ? [`  ${figure.shape}: ${figure.swaps.length} swaps, ${figure.lanes.length} lanes`]
      : []),
    ...(figure.kind === 'swaps'
      ? figure.rows.map(
          ({ old, fresh, job, lanes }) => `  ${old.name} -> ${fresh.name} (${job}): ${lanes.length} lanes`,
        )
      : []),
    ...(figure.kind === 'change-band'
      ? [
          ...figure.marks.map(({ words }) => `  mark ${words}`),
          ...figure.posts.map(({ words, number }) => `  post ${words} (${number})`),
          ...(figure.stop ? [`  ${figure.stop.head} ${figure.stop.why}`] : []),
          ...(figure.between ? [`  between: ${figure.between.words}`] : []),
        ]
      : []),
    ...(figure.kind === 'line-choice'
      ? [
          ...figure.lines.map(
            ({ letter, verdict }) => `  line ${letter}${verdict ? `: ${verdict.words}` : ''}`,
          ),
          `  ${figure.words.warning}`,
        ]
      : []),
    ...(figure.kind === 'step-tiles'
      ? [
          ...figure.tiles.map(
            ({ month, action, effect, current }) =>
              `  tile ${month}${current ? ' (look here)' : ''}: ${[action, effect.map(({ text }) => text).join('')].filter(Boolean).join(' | ')}`,
          ),
          `  ${figure.words.boxes}`,
        ]
      : []),
    ...(figure.kind === 'week-bricks'
      ? figure.days.map(
          (day) => `  day ${day.name}: ${day.text}${day.strength ? ' ring' : ''}${day.balance ? ' B' : ''}`,
        )
      : []),
  ].map((line) => line.trimEnd());
}

export function plain(inlines: readonly Inline[]): string {
  return inlines
    .map((inline) => (inline.cite === undefined ? inline.text : `<${inline.cite}>`))
    .join('')
    .replaceAll('\u00a0', ' ');
}
