import type { TermTable } from '../../languages/index.js';
import type { Effect } from './compute-effect.js';
import type { Month, Told } from './schema.js';

export type Sureness = 'not-yet' | 'maybe' | 'likely' | 'sure';

export type Key =
  | Month
  | `${Month}-long`
  | Effect['way']
  | Effect['per']
  | 'nutrient'
  | Sureness
  | 'unknown'
  | Told
  | 'food'
  | 'food-measure'
  | 'food-sized'
  | 'next'
  | 'next-one'
  | 'keep'
  | 'boxes'
  | 'intro'
  | 'intro-fuller'
  | 'own'
  | 'sample'
  | 'leader'
  | 'leader-private'
  | 'card-title'
  | 'my-step'
  | 'how-sure'
  | 'smaller'
  | 'told'
  | 'portion'
  | 'portion-day'
  | 'portion-week'
  | 'rinsed'
  | 'estimated'
  | 'sources'
  | 'label'
  | 'label-one'
  | 'reading-step'
  | 'reading-effect'
  | 'reading-keep'
  | 'reading-boxes'
  | 'reading-now'
  | 'reading-blank'
  | 'caption'
  | 'month'
  | 'step'
  | 'change'
  | 'nothing-told'
  | 'to-fill';

export const terms: TermTable<Key> = {
  en: {
    jan: 'Jan',
    feb: 'Feb',
    mar: 'Mar',
    apr: 'Apr',
    may: 'May',
    jun: 'Jun',
    jul: 'Jul',
    aug: 'Aug',
    sep: 'Sep',
    oct: 'Oct',
    nov: 'Nov',
    dec: 'Dec',
    'jan-long': 'January',
    'feb-long': 'February',
    'mar-long': 'March',
    'apr-long': 'April',
    'may-long': 'May',
    'jun-long': 'June',
    'jul-long': 'July',
    'aug-long': 'August',
    'sep-long': 'September',
    'oct-long': 'October',
    'nov-long': 'November',
    'dec-long': 'December',
    day: 'Each day: {effect}',
    week: 'Each week: {effect}',
    once: 'Each time: {effect}',
    serving: 'In {basis}: {effect}',
    less: 'less',
    more: 'more',
    nutrient: '{amount} {change} {nutrient}',
    unknown: 'How much {nutrient}: {amount}',
    'added sugars': 'added sugar',
    sugars: 'sugar',
    sodium: 'sodium',
    'saturated fat': 'saturated fat',
    fiber: 'fiber',
    food: '{amount} {change} of {food}',
    'food-measure': '{amount} {measure} {change} of {food}',
    'food-sized': '{amount} {measure} {change}: {food}',
    next: 'Then, from {first} to {last}',
    'next-one': 'Then, in {first}',
    keep: 'Keep your steps going',
    boxes: 'Check a box for each week that you kept the step.',
    intro: 'Take one small step. Keep it. Then add the next.',
    'intro-fuller':
      'Take one small step, and keep it for some weeks before you add the next. A step that you can count is easier to keep.',
    own: 'Now plan your own. Write one small step into a tile: one action that you can count. You do not have to fill them all.',
    sample: 'A filled sample. Yours will differ.',
    leader:
      'Let each person choose one step to begin with, not all of them. Who is not yet sure, or only may be, makes the step smaller: half as much, or half as often.',
    'leader-private': 'Nobody shows a plan or hands it in.',
    'card-title': 'My first step',
    'my-step': 'I will',
    'how-sure': 'How sure am I?',
    'not-yet': 'not yet',
    maybe: 'maybe',
    likely: 'likely',
    sure: 'sure',
    smaller: 'Below “likely”? Make it smaller.',
    told: 'Steps are counted in food, such as cups or cans.',
    portion: '{month}: {portion}, {food}.',
    'portion-day': '{month}: {portion}, {food}; {times} a day.',
    'portion-week': '{month}: {portion}, {food}; {times} a week.',
    rinsed: '{month}: {basis}, as on the label; findings differ, so we show a range.',
    estimated: 'The weight of {portion} is an estimate.',
    sources: { one: 'Source ', other: 'Sources ' },
    label: 'A strip of tiles with small steps, from {first} to {last}.',
    'label-one': 'A tile with one small step, for {first}.',
    'reading-step': '{month}: {action}',
    'reading-effect': '{month}: {action} ({effect})',
    'reading-keep': '{month}: keep the steps going',
    'reading-boxes': 'Each tile has four boxes, one for each week.',
    'reading-now': 'The tile for {month} stands out.',
    'reading-blank':
      'Empty tiles for steps of your own, from {first} to {last}. Each has lines for one action, and four boxes, one for each week.',
    caption: 'Small steps, by month',
    month: 'Month',
    step: 'Step',
    change: 'What it changes',
    'nothing-told': 'not told',
    'to-fill': 'to fill in',
  },
};
