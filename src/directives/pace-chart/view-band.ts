import type { Block, Inline } from '../../document/index.js';
import type { ChangeBand } from '../../figures/index.js';
import type { View, ViewContext } from '../contract.js';
import { withNumbers } from '../words.js';
import type { BandResult } from './compute-band.js';
import { exercise } from './exercise.js';
import type { BandValues } from './schema.js';
import { asText, joined, numbersBy, stepSlots, stepsIn, unitOf, whoOf, withExample } from './words.js';

/** The band with its words: gains that are not weight come first; on a worksheet which line is real. */
export function viewBand(values: BandValues, computed: BandResult, context: ViewContext): View {
  const { where } = context;
  if (where === 'worksheet' || where === 'key') return { blocks: exercise(values, computed, context) };
  const figure: Block & { kind: 'figure' } = { kind: 'figure', figure: figureOf(values, computed, context) };
  if (where === 'slide')
    return { blocks: [], stages: [{ kind: 'show', block: figure }], shelf: shelf(values, context) };
  return {
    blocks: [
      { kind: 'paragraph', inlines: sentences(values, computed, context) },
      figure,
      ...more(values, computed, context),
      ...(where === 'staff'
        ? [{ kind: 'paragraph' as const, inlines: [{ text: context.say('staff') }] }]
        : []),
      { kind: 'basis', inlines: basis(values, computed, context) },
    ],
  };
}

const isFull = ({ level, where }: ViewContext) =>
  level === 'fuller' || level === 'staff' || where === 'staff';

/** Slots of all posts, for `postsIn`. */
function postSlots({ posts }: BandResult, context: ViewContext): Readonly<Record<string, string>> {
  const unit = unitOf(context);
  return Object.fromEntries(
    posts.flatMap((post) =>
      post === 'stop'
        ? [['stop', `stop.${unit}`]]
        : [
            [`p${post}`, `month-${post}.${unit}`],
            [`w${post}`, `month-${post}.months`],
          ],
    ),
  );
}

/** `4 to 8 lb less after 3 months and 6 to 12 lb less after 6 months`. */
function postsIn(
  { posts }: BandResult,
  slots: Readonly<Record<string, string>>,
  { say, list }: ViewContext,
): string {
  return list(
    posts.map((post) =>
      post === 'stop'
        ? say('stops', { less: slots.stop ?? '' })
        : say('after', { less: slots[`p${post}`] ?? '', months: slots[`w${post}`] ?? '' }),
    ),
  );
}

function sentences(values: BandValues, computed: BandResult, context: ViewContext): Inline[] {
  const { say, level } = context;
  const { id, example } = values;
  const who = whoOf(example, context);
  const by = (names: Readonly<Record<string, string>>) => numbersBy(id, names, context);
  const [steps, posts] = [stepSlots(values), postSlots(computed, context)];
  const all: Inline[][] = [[{ text: say('gains') }]];
  if (level === 'short')
    all.push(
      withNumbers(
        (slots) =>
          say('result-short', {
            who,
            steps: stepsIn(values, slots, context),
            posts: postsIn(computed, slots, context),
          }),
        by({ ...steps, ...posts }),
      ),
    );
  else {
    all.push(withNumbers((slots) => say('eats', { who, steps: stepsIn(values, slots, context) }), by(steps)));
    all.push(withNumbers((slots) => say('result', { posts: postsIn(computed, slots, context) }), by(posts)));
  }
  all.push([{ text: say('levels') }]);
  return joined(all);
}

/** What stands below the figure: water, the stop, and for fuller readers where gains begin and the check. */
function more(values: BandValues, computed: BandResult, context: ViewContext): Block[] {
  const { say, level } = context;
  const { id, example } = values;
  const who = whoOf(example, context);
  const unit = unitOf(context);
  const by = (names: Readonly<Record<string, string>>) => numbersBy(id, names, context);
  const all: Inline[][] = level === 'short' ? [] : [[{ text: say('water') }]];
  if (computed.stopped)
    all.push(withNumbers((slots) => say('stop-why', { ...slots, who }), by({ months: 'stop.months' })));
  else if (isFull(context)) {
    all.push(withNumbers((slots) => say('gains-start', { ...slots, who }), by({ gains: `gains.${unit}` })));
    if (computed.ruled)
      all.push(
        withNumbers(
          (slots) => say('rule', slots),
          by({ year: `rule-year.${unit}`, end: `rule-end.${unit}` }),
        ),
      );
  }
  return all.length === 0 ? [] : [{ kind: 'paragraph', inlines: joined(all) }];
}

function figureOf(values: BandValues, computed: BandResult, context: ViewContext): ChangeBand {
  const { say, text, level, where } = context;
  const { id, example, months } = values;
  const unit = unitOf(context);
  const scale = computed.scales[unit];
  const who = whoOf(example, context);
  const full = isFull(context) && where !== 'slide' && !computed.stopped;
  const nameOf = (post: number | 'stop') => (post === 'stop' ? 'stop' : `month-${post}`);
  const whenOf = (post: number | 'stop') =>
    post === 'stop' ? say('where-stops') : text(`${id}.month-${post}.months`);
  const lessOf = (post: number | 'stop') => text(`${id}.${nameOf(post)}.${unit}`);
  const named = computed.posts.flatMap((post) => (post === 'stop' ? [] : [post]));
  const ends = named.includes(months) ? [] : [{ month: months, words: text(`${id}.months`) }];
  const steps = stepsIn(values, asText(id, stepSlots(values), context), context);
  const gains = text(`${id}.gains.${unit}`);
  return {
    kind: 'change-band',
    id,
    mode: 'shown',
    months,
    points: scale.points,
    marks: scale.marks.map((at) => ({
      at,
      words: level === 'short' ? '' : say('mark', { mark: text(`${id}.mark-${at}.${unit}`) }),
    })),
    ticks: [
      ...(where === 'slide' ? [] : [{ month: 0, words: say('start') }]),
      ...named.map((month) => ({ month, words: whenOf(month) })),
      ...ends,
    ],
    posts: computed.posts.flatMap((post, index) => {
      const point = scale.posts[index];
      return point ? [{ ...point, words: lessOf(post), number: `${id}.${nameOf(post)}.${unit}` }] : [];
    }),
    ...(computed.stopped ? { stop: { head: say('stop-head'), why: say('stop-short', { who }) } } : {}),
    ...(full ? { between: { ...scale.gains, words: say('between', { gains }) } } : {}),
    today: say('today'),
    numbers: [
      ...Object.values(stepSlots(values)).map((name) => `${id}.${name}`),
      ...computed.posts.map((post) => `${id}.${nameOf(post)}.${unit}`),
      ...named.map((month) => `${id}.month-${month}.months`),
      ...(level === 'short' ? [] : scale.marks.map((at) => `${id}.mark-${at}.${unit}`)),
      ...(full ? [`${id}.gains.${unit}`] : []),
    ],
    alternative: {
      label: say('label', { months: text(`${id}.months`) }),
      reading: [
        say('reading', { who, steps }),
        say('reading-posts', {
          posts: postsIn(computed, asText(id, postSlots(computed, context), context), context),
        }),
        say('levels'),
        ...(computed.stopped ? [say('stop-short', { who })] : []),
        ...(full ? [say('gains-start', { gains, who })] : []),
      ].join(' '),
      table: {
        caption: say('caption', { who }),
        head: [say('when'), say('less')],
        rows: computed.posts.map((post) => [whenOf(post), lessOf(post)]),
      },
    },
  };
}

function basis(values: BandValues, { stopped }: BandResult, context: ViewContext): Inline[] {
  const { say, cite } = context;
  const { id, example } = values;
  const withGains = isFull(context) && !stopped;
  const stated = numbersBy(id, { activity: 'activity', fat: 'fat', kept: 'kept', lowest: 'lowest' }, context);
  return [
    ...withExample(id, example, context, (told) => say('basis', { example: told })),
    { text: ' ' },
    ...withNumbers((slots) => say('spread', slots), stated),
    { text: ` ${say('source', { count: withGains ? 2 : 1 })}` },
    cite('hall-2011'),
    ...(withGains ? [{ text: ', ' }, cite('aha-acc-tos-2013')] : []),
    { text: '.' },
  ];
}

function shelf(values: BandValues, context: ViewContext): Inline[] {
  const { say, cite } = context;
  const more = { ...stepSlots(values), kept: 'kept' };
  return [
    ...withExample(
      values.id,
      values.example,
      context,
      (example, slots) =>
        say('basis-slide', {
          example,
          steps: stepsIn(values, slots, context),
          kept: slots.kept ?? '',
        }),
      more,
    ),
    { text: ` ${say('source', { count: 1 })}` },
    cite('hall-2011'),
    { text: '.' },
  ];
}
