import type { Block } from '../../document/index.js';
import type { LineChoice } from '../../figures/index.js';
import type { ViewContext } from '../contract.js';
import type { BandResult } from './compute-band.js';
import type { ExerciseLine } from './compute-lines.js';
import type { BandValues } from './schema.js';

const WHY = { straight: 'why-straight', sudden: 'why-sudden', real: 'why-real' } as const;

/** Which line is real? The figure with three lines, the question, and on the key which it is and why it levels off. */
export function exercise(values: BandValues, { lines }: BandResult, context: ViewContext): Block[] {
  const { say, where, cite } = context;
  const onKey = where === 'key';
  const lettered = lines.map((line, index) => ({ line, letter: [...say('letters')][index] ?? '' }));
  const right = lettered.find(({ line }) => line.kind === 'real')?.letter ?? '';
  return [
    { kind: 'figure', figure: figureOf(values, lettered, right, context) },
    {
      kind: 'question',
      id: values.id,
      prompt: [{ text: say('prompt') }],
      choices: lettered.map(({ line: { kind }, letter }) => ({
        letter,
        inlines: [{ text: say(kind) }],
        ...(onKey
          ? {
              key: {
                right: kind === 'real',
                value: say(kind === 'real' ? 'is-real' : 'not-real'),
                why: say(WHY[kind]),
              },
            }
          : {}),
      })),
      ...(onKey ? { answer: [{ text: say('answer', { letter: right }) }] } : {}),
    },
    ...(onKey ? [{ kind: 'why' as const, inlines: [{ text: say('why') }] }] : []),
    {
      kind: 'basis',
      inlines: [
        { text: `${say('basis-lines')} ${say('source', { count: 1 })}` },
        cite('hall-2011'),
        { text: '.' },
      ],
    },
  ];
}

function figureOf(
  { id }: BandValues,
  lettered: readonly { readonly line: ExerciseLine; readonly letter: string }[],
  right: string,
  { say, where }: ViewContext,
): LineChoice {
  const onKey = where === 'key';
  const [a, b, c] = lettered;
  const told = {
    'letters-a': a?.letter ?? '',
    'letters-b': b?.letter ?? '',
    'letters-c': c?.letter ?? '',
    a: say(a?.line.kind ?? 'real'),
    b: say(b?.line.kind ?? 'real'),
    c: say(c?.line.kind ?? 'real'),
  };
  return {
    kind: 'line-choice',
    id,
    mode: onKey ? 'key' : 'blank',
    lines: lettered.map(({ line: { kind, points }, letter }) => ({
      letter,
      points,
      ...(onKey
        ? { verdict: { real: kind === 'real', words: say(kind === 'real' ? 'is-real' : 'not-real') } }
        : {}),
    })),
    words: { from: say('today'), to: say('two-years'), warning: say('warning') },
    numbers: [],
    alternative: {
      label: say('lines-label'),
      reading: [say('lines-reading', told), ...(onKey ? [say('lines-key', { letter: right })] : [])].join(
        ' ',
      ),
      table: {
        caption: say('lines-caption'),
        head: [say('line'), say('shape')],
        rows: lettered.map(({ line, letter }) => [letter, say(line.kind)]),
      },
    },
  };
}
