import { type CodeTable, type Place, type Problem, problemsOf } from '../diagnostics/index.js';
import { type Basis, type Food, gramsOf } from '../nutrition/index.js';

/** What directives report while they read and compute. A rule of `editor-checks` keeps its own code. */
export const directiveCodes = {
  'directives/basis': {
    severity: 'stop',
    rule: 'A basis names one amount, and if wanted the state in which all rows stand.',
    about:
      'Rows can be compared only on the same portion. Write 1 cup, ready to eat; 1/2 cup, with liquid; 100 g; or 1 can (15 oz).',
  },
  'directives/rows': {
    severity: 'stop',
    rule: 'A directive needs as many rows as its figure can hold.',
    about: 'Too few rows compare nothing; too many do not fit on paper or on the screen.',
  },
  'directives/row-fact': {
    severity: 'stop',
    rule: 'After its first words a row holds facts, each written name = value and parted by semicolons.',
    about: 'A fact that is not understood would be lost in silence, so it is reported instead.',
  },
  'directives/nutrient': {
    severity: 'stop',
    rule: 'A measure is the name of a nutrient in the tables.',
    about: 'Names are plain: sodium, fiber, vitamin C, saturated fat.',
  },
  'directives/no-such-food': {
    severity: 'stop',
    rule: 'A food in a directive must stand in the food tables.',
    about: 'Numbers come from a record, never from memory. The message offers the nearest names.',
  },
  'directives/amount': {
    severity: 'stop',
    rule: 'An amount must be one that the food can be weighed in.',
    about:
      'Many foods have no weight for every measure in the tables. Use one that the message offers, or a weight.',
  },
  'directives/label': {
    severity: 'stop',
    rule: 'A number from a label is written with its unit and its basis.',
    about:
      'The same can may state its sodium with or without the liquid; without the basis nothing can be computed from it.',
  },
  'directives/question': {
    severity: 'stop',
    rule: 'A question has one prompt, two to four options, each with its reason, and one answer that is computed.',
    about:
      'The answer is worked out from the same records as the figures, so that a key can never be wrong on its own.',
  },
  'quiz/too-close-to-call': {
    severity: 'stop',
    rule: 'The best option must differ from the next by more than food tables can tell.',
    about:
      'Food records differ from one batch to the next. Below 10 percent (house rule) the answer could be either; ask about other foods or another measure.',
  },
  'directives/dish-kind': {
    severity: 'stop',
    rule: 'A food of two kinds says on its row which of them it counts as.',
    about:
      'Beans, peas and lentils may count as protein or as grain and starch, never as both, or the parts of the dish would not add up to twelve.',
  },
  'directives/need': {
    severity: 'stop',
    rule: 'A need is one that foods can be tested against, and every food of the dish passes it or is replaced.',
    about:
      'A dish that is called vegan or gluten-free and still holds one food that is not is worse than no dish. What is not known is no pass.',
  },
  'directives/swap': {
    severity: 'stop',
    rule: 'A swap names a food of the dish, an arrow and the food that takes its place.',
    about: 'Write the old food as the dish has it: 3 oz salmon, baked -> 3/4 cup lentils, cooked.',
  },
  'directives/same-row': {
    severity: 'stop',
    rule: 'Each row of a figure is a form of its own.',
    about:
      'Two rows for one record would stand on the same dot and look like a finding. Name another form, or take one row out.',
  },
  'quiz/prompt': {
    severity: 'ask',
    rule: 'A question asks for what its rule computes.',
    about:
      'A question that asks for the most while its answer is the least makes a key that contradicts the page. If the words are right as they stand, give the reason.',
  },
  'directives/move': {
    severity: 'stop',
    rule: 'A move has minutes and a kind.',
    about:
      'Only moderate and vigorous minutes are added up, and only strength and balance work count as days, so each move says which it is. Moderate: you can talk, but not sing. Vigorous: only a few words at a time.',
  },
  'directives/low-day': {
    severity: 'ask',
    rule: 'A day of a man below 1,500 kcal is shown only with a reason.',
    about:
      'So little food leaves gaps for most men. Add foods, or let the page say that the day shows what is missing and is no plan; below 1,200 kcal a day cannot go out as a plan at all.',
  },
  'step-plan/month': {
    severity: 'stop',
    rule: 'Steps stand in the order of their months, inside the plan, and at most two start in one month.',
    about: 'A strip is read in time order, and more than two new things at once are seldom kept up.',
  },
  'step-plan/action': {
    severity: 'ask',
    rule: 'A step is one action that can be counted.',
    about:
      'Write one verb and how much or how often: swap one sweet drink a day for water. If the words are right as they stand, give the reason.',
  },
  'pace-chart/example': {
    severity: 'stop',
    rule: 'A chart of weight is about one invented adult with height and weight, and for a band with sex and age.',
    about:
      'The model needs all of them, and holds for ages 19 to 78. Write woman, 45, 165 cm, 82 kg, mostly sitting; or man, 45, 5 ft 9 in, 210 lb. Never a reader.',
  },
  'pace-chart/change': {
    severity: 'stop',
    rule: 'A change is a few hundred calories a day less, 750 at most, and may grow by steps.',
    about:
      'The 2013 AHA/ACC/TOS guideline names 500 or 750 kcal a day less, and no fewer than 1,200 kcal a day for women and 1,500 for men. Write 250 kcal a day; or 100 kcal a day; 200 kcal a day from month 4.',
  },
  'pace-chart/to-lose': {
    severity: 'stop',
    rule: 'A pace table needs how much the invented adult loses, with its unit.',
    about: 'Write to-lose="60 lb" or to-lose="25 kg". The pace eases as less is left.',
  },
  'hands-up/question': {
    severity: 'stop',
    rule: 'A show of hands asks one question about a habit and takes two to four answers in words of their own.',
    about: 'More cannot be counted in a room. The answers stand as a list below the question.',
  },
  'hands-up/count': {
    severity: 'stop',
    rule: 'Every answer is counted in the same way: once, or before and after, or not at all.',
    about:
      'Shares are worked out of all answers; one that is missing would make the others look larger. Nobody at all is 0.',
  },
  'teach-back/open': {
    severity: 'stop',
    rule: 'A prompt is open: yes or no does not answer it.',
    about: 'Yes tells the speaker nothing. Ask what, how or where, or say show me or tell me.',
  },
  'teach-back/burden': {
    severity: 'ask',
    rule: 'A prompt finds out how clear the speaker was and puts nobody to the test.',
    about: 'If the words are right as they stand, such as in "the test on the label", give the reason.',
  },
  'teach-back/objective': {
    severity: 'stop',
    rule: 'A prompt asks about an objective of the lesson.',
    about: 'Objectives are counted from 1, in the order of the front matter.',
  },
  'goal-card/fields': {
    severity: 'stop',
    rule: 'A goal card has some of its five fields, each once: what, how-much, when, how-often and how-sure.',
    about: 'More fields make a form of it. A card is for one small thing that its owner will do.',
  },
  'goal-card/sample': {
    severity: 'stop',
    rule: 'A sample fills the fields of its card in a few words, and how-sure in one of four.',
    about: 'The sample stands on the key. The four words are not yet, maybe, likely and sure.',
  },
  L09: {
    severity: 'stop',
    rule: 'No count of 1 to 10 people is kept or printed.',
    about:
      'So few may point to somebody in the room. Count live on the slide, where nothing is kept, or put answers together.',
  },
  'safe-food/topic': {
    severity: 'stop',
    rule: 'A card on safe food names topics for which the register has times and temperatures.',
    about:
      'Times and temperatures come from one table and are never typed. Take a topic that the message offers.',
  },
  N03: {
    severity: 'stop',
    rule: 'Compared foods share portion and basis.',
    about:
      'A row with its liquid is what a label says, not what is eaten, and is never "ready to eat". Take the drained form, or a basis without a state; then the figure says which row is a label row.',
  },
  'directives/prices': {
    severity: 'stop',
    rule: 'Prices are those of the shops of the lesson’s site, read in the same weeks.',
    about:
      'A price without a shop and a day says nothing, and prices of different seasons cannot stand beside each other. Name a site, and a shop that it has.',
  },
  N13: {
    severity: 'ask',
    rule: 'A price is printed only within its shelf life, 90 days unless its row says otherwise.',
    about:
      'Past it pages print “ask for this week’s price” and no cents. Walk the shops with the price form, then write the new rows into prices.csv.',
  },
  N18: {
    severity: 'stop',
    rule: 'What rinsing takes away is stated only inside the published range, on the basis of the study.',
    about:
      'The studies start from the label value for beans and liquid together. A label that is already for drained food, or says no basis, cannot be used.',
  },
} as const satisfies CodeTable;

const problem = problemsOf(directiveCodes);

/** What the core, or a table, answered instead of a value. */
export interface Refused {
  readonly reason: string;
  readonly hint?: string;
  readonly near?: readonly string[];
}

/** A refusal of the core or of a table as a problem at its place. */
export function readProblem(code: keyof typeof directiveCodes, refused: Refused, place: Place): Problem {
  const told = refused.near?.every((name) => refused.hint?.includes(name)) ?? true;
  const near = told ? undefined : `Try: ${refused.near?.join('; ')}.`;
  const hint = [refused.hint, near].filter(Boolean).join(' ');
  return problem(code, clipped(refused.reason, LONGEST_REASON), {
    place,
    ...(hint ? { hint } : {}),
    ...(refused.near?.length ? { expected: refused.near } : {}),
  });
}

/** A food that is not in the tables, with the nearest names. */
export function foodProblem(
  written: string,
  found: { readonly near: readonly string[] },
  place: Place,
): Problem {
  return readProblem(
    'directives/no-such-food',
    { reason: `There is no ${quoted(written)} in the food tables.`, near: found.near },
    place,
  );
}

/**
 * A food that cannot stand on the basis: its measure is not known, or it is in another state (N03).
 */
export function basisProblem(food: Food, basis: Basis, refused: Refused, place: Place): Problem {
  const weighed = gramsOf(basis.amount, food);
  const unweighed = !weighed.ok && weighed.reason === refused.reason;
  return readProblem(unweighed ? 'directives/amount' : 'N03', refused, place);
}

/** The author's words in a message: in quotes, cut when they are long. */
export function quoted(words: string): string {
  return `"${clipped(words, LONGEST_QUOTE)}"`;
}
const LONGEST_QUOTE = 80;
/** The core quotes what it cannot read, however long it is. */
const LONGEST_REASON = 300;

function clipped(words: string, most: number): string {
  return words.length > most ? `${words.slice(0, most)}…` : words;
}
