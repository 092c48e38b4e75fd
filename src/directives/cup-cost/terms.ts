import type { TermTable } from '../../languages/index.js';

export type Key =
  | 'label'
  | 'label-of'
  | 'label-bare'
  | 'reading-cost'
  | 'reading-written'
  | 'reading-rung'
  | 'reading-open'
  | 'reading-brick'
  | 'and-then'
  | 'ask'
  | 'caption'
  | 'caption-of'
  | 'food'
  | 'cost'
  | 'sale'
  | 'no-sale'
  | 'row'
  | 'basis'
  | 'basis-of'
  | 'basis-brick'
  | 'whole'
  | 'from'
  | 'line'
  | 'line-food'
  | 'line-open'
  | 'estimated-all'
  | 'on-sale'
  | 'on-sale-until'
  | 'estimated'
  | 'sources'
  | 'how'
  | 'worked'
  | 'package'
  | 'bought'
  | 'cups'
  | 'write-price'
  | 'write-cups'
  | 'write-cost'
  | 'depends'
  | 'key-near';

export const terms: TermTable<Key> = {
  en: {
    label: 'What one cup costs: {foods}.',
    'label-of': 'What one cup of {food} costs: {foods}.',
    'label-bare': 'What one cup costs, a rung of bricks for each of {count} foods.',
    'reading-cost': 'One cup, from the cheapest: {rungs}.',
    'reading-written': 'One cup costs: {rungs}.',
    'reading-rung': '{letter}, {food}, {cost}',
    'reading-open': 'For {rungs}: ask for this week’s price.',
    'reading-brick': 'One brick stands for {brick}.',
    'and-then': '; ',
    ask: 'ask for this week’s price',
    caption: 'What one cup costs, as eaten',
    'caption-of': 'What one cup of {food} costs, as eaten',
    food: 'Food',
    cost: 'One cup costs',
    sale: 'On sale',
    'no-sale': 'no',
    row: '{letter}, {food}',
    basis: '1 cup as eaten, shelf prices. ',
    'basis-of': '1 cup of {food} as eaten, shelf prices. ',
    'basis-brick': '1 brick = {brick}. ',
    whole: 'Rounded to whole bricks. ',
    line: 'One cup: {rungs}.',
    'line-food': '{food}, {cost}',
    'line-open': 'For {foods}, ask for this week’s price.',
    'estimated-all': 'These are estimates. ',
    from: '{letter}: {shop}, {date}. ',
    'on-sale': 'On sale: {letter}, {cost}. ',
    'on-sale-until': 'On sale until {date}: {letter}, {cost}. ',
    estimated: {
      one: 'What a package of {letters} makes is an estimate. ',
      other: 'What packages of {letters} make is an estimate. ',
    },
    sources: { one: 'Source ', other: 'Sources ' },
    how: 'Price ÷ cups in the package = what one cup costs. ',
    worked: 'Worked: {price} ÷ {cups} = {cost}.',
    package: 'Price',
    bought: '{price} for {package}',
    cups: 'Cups in the package',
    'write-price': 'price this week of {food}',
    'write-cups': 'cups in the package of {food}',
    'write-cost': 'cost of one cup of {food}',
    depends: 'depends on the price',
    'key-near': 'A cent more or less is right too, because the cups are rounded.',
  },
};
