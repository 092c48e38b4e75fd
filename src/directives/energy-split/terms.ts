import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'carbohydrate'
  | 'protein'
  | 'fat'
  | 'alcohol'
  | 'label'
  | 'label-short'
  | 'label-bare'
  | 'lead-half'
  | 'lead-most'
  | 'lead-open'
  | 'lead-blank'
  | 'reading-row'
  | 'reading-row-bare'
  | 'reading-blank-row'
  | 'reading-blank-bare'
  | 'brick'
  | 'range'
  | 'caption'
  | 'part'
  | 'grams'
  | 'energy'
  | 'share'
  | 'usual'
  | 'no-range'
  | 'to-fill'
  | 'all'
  | 'under'
  | 'inside'
  | 'over'
  | 'row-range'
  | 'no-plan'
  | 'example'
  | 'plan'
  | 'missing'
  | 'meal'
  | 'eaten-meal'
  | 'total'
  | 'open'
  | 'counted'
  | 'counted-alcohol'
  | 'sources'
  | 'shelf'
  | 'shelf-bare'
  | 'ratio'
  | 'therapy'
  | 'task'
  | 'task-share'
  | 'task-bricks'
  | 'task-open'
  | 'factor'
  | 'field-energy'
  | 'field-share'
  | 'field-total'
  | 'percent'
  | 'calories'
  | 'key-energy'
  | 'key-share'
  | 'key-rounded';

export const terms: TermTable<Key> = {
  en: {
    carbohydrate: 'carbohydrate',
    protein: 'protein',
    fat: 'fat',
    alcohol: 'alcohol',
    label: 'Rows of bricks: where the energy comes from, in an example from {first} to {last}.',
    'label-short': 'Rows of bricks: where the energy comes from, starting with {first}.',
    'label-bare': 'Rows of bricks: where the energy of one example comes from.',
    'lead-half': 'Most of the energy here comes from {part}.',
    'lead-most': 'Of all parts, {part} gives the most energy here.',
    'lead-open': 'Something in this food is not known, so no share is known.',
    'lead-blank': 'Each row has twenty empty bricks to fill.',
    'reading-row': '{part}: {share}, usual range {range}.',
    'reading-row-bare': '{part}: {share}.',
    'reading-blank-row': '{part}: usual range {range}.',
    'reading-blank-bare': '{part}: no range.',
    brick: '1 brick is {brick} of the energy',
    range: 'usual range for adults',
    caption: 'Where the energy comes from',
    part: 'Part',
    grams: 'Grams',
    energy: 'Energy',
    share: 'Share of the energy',
    usual: 'Usual range for adults',
    'no-range': 'none',
    'to-fill': 'to fill in',
    all: 'All',
    under: 'under the usual range',
    inside: 'in the usual range',
    over: 'over the usual range',
    'row-range': { one: '{parts} is {lies}', other: '{parts} are {lies}' },
    'no-plan': 'This is an example of what is missing, not a plan.',
    example: 'An example day, not your plan.',
    plan: 'A day written as a plan for a group, not made for you.',
    missing: 'An example day that shows what is missing.',
    meal: 'An example meal, not a whole day.',
    'eaten-meal': '{meal}: {foods}.',
    total: 'Energy: {energy}.',
    open: 'Not known in full: {foods}.',
    counted: 'Counted as {carbohydrate} for a gram of carbohydrate, {protein} of protein, {fat} of fat.',
    'counted-alcohol':
      'Counted as {carbohydrate} for a gram of carbohydrate, {protein} of protein, {fat} of fat, {alcohol} of alcohol.',
    sources: { one: 'Source ', other: 'Sources ' },
    shelf: '{example} Energy: {energy}. Brackets: usual range for adults.',
    'shelf-bare': '{example} Energy: {energy}.',
    ratio: 'For each gram of protein and carbohydrate together there are {ratio} grams of fat.',
    therapy:
      'Ketogenic eating for epilepsy takes {therapy} of the energy from fat. It is a treatment that is prescribed, and a team runs it.',
    task: 'Grams × calories in a gram = calories. Work out each row, then add the rows up.',
    'task-share': 'Calories of one part ÷ all calories × 100 = its share.',
    'task-bricks': 'Then fill one brick for each {brick}.',
    'task-open': 'Something in this food is not known, so there is no share to work out.',
    factor: 'Calories in a gram',
    'field-energy': 'Calories from {part}',
    'field-share': 'Share of {part}',
    'field-total': 'All calories',
    percent: '%',
    calories: 'calories',
    'key-energy': '{part}: {grams} × {factor} = {energy}.',
    'key-share': '{energy} ÷ {all} × 100 = {share}.',
    'key-rounded': 'One point more or less is right too, since grams are rounded.',
  },
};
