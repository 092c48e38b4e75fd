import { type CodeTable, problemsOf } from '../diagnostics/index.js';

/** The editor's rules that are checked, by code. `check --explain CODE` prints them. */
export const checkCodes = {
  N02: {
    severity: 'stop',
    rule: 'The same quantity has the same value in deck, sheet, worksheet, key and alternative text of one build.',
    about:
      'A reader who finds two values trusts neither. Every shown number comes from one computed value, found by its id, and is rounded once. Show it with `:n[…]{of=…}` or from its figure instead of typing it.',
  },
  N03: {
    severity: 'stop',
    rule: 'Compared foods share portion and basis, or the figure names how they differ; food with its liquid is never ready to eat.',
    about:
      'A cup with its liquid and a cup drained are different amounts of food, so setting them side by side misleads. Put all rows on one basis, or compare labels with labels.',
  },
  N04: {
    severity: 'stop',
    rule: 'A missing value is shown as not known, never as 0, and a total with a missing part says at least.',
    about:
      'A blank in a food table means that nobody measured it. Shown as zero it looks like a promise. Leave the number to the program, which prints the words.',
  },
  N18: {
    severity: 'stop',
    rule: 'What is said about rinsing or draining lies within the published range, on the basis of the studies.',
    about:
      'Studies start from the label value with the liquid, and they disagree. A share outside their range, or without its basis, is not what they found. Say the range, or let rinse-drop show it.',
  },
  S17: {
    severity: 'stop',
    rule: 'A caution that the lesson pulls stands whole at every level, on every sheet, worksheet, key and deck, and on the finished pages.',
    about:
      'People at risk read one sheet, at one level. A caution that is missing there, shortened, split over pages or printed after what it guards does not reach them. Nothing can switch this off: mend the output that lost it.',
  },
  S18: {
    severity: 'stop',
    rule: 'No before and after bodies, no calories to burn off, no body scales or tapes, no question about weight in public.',
    about:
      'Such words shame people and can bring an eating disorder back. Show food, kitchens, shoes or gains that are not weight, and ask about a habit. Kitchen scales are fine.',
  },
  P12: {
    severity: 'stop',
    rule: 'The levels of one passage do not contradict each other in number, verb or yes and no.',
    about:
      'People compare sheets at home. A level may say less, never something else. Use the same number, the same verb and the same yes or no as the level beside it.',
  },
  A03: {
    severity: 'stop',
    rule: 'Every picture and figure has its own text alternative, with the values of the figure and no answer of a blank worksheet.',
    about:
      'Listeners get the figure from these words alone. Missing, repeated or differing words leave them with less or with something else; an answer in them spoils the exercise. Write what the picture shows.',
  },
  A04: {
    severity: 'stop',
    rule: 'Headings step down without a gap, tables have header cells, figures are tagged with their alternative, and every document has title and language.',
    about:
      'Screen readers move by these. A jump or a table without heads makes people lose their place. Use the next heading level, and give each column a head.',
  },
} as const satisfies CodeTable;

export const checkProblem = problemsOf(checkCodes);
