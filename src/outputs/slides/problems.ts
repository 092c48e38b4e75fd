import { type CodeTable, problemsOf } from '../../diagnostics/index.js';

export const slideCodes = {
  'slides/too-long': {
    severity: 'stop',
    rule: 'Everything on a slide fits at 24 points or more.',
    about:
      'Words that do not fit would have to shrink, and then the back row cannot read them. Cut words, or part the slide in two.',
  },
  'slides/wide-word': {
    severity: 'stop',
    rule: 'No word on a slide is wider than its place.',
    about: 'A word is never cut or hyphenated on a slide. Use a shorter one.',
  },
  'slides/same-title': {
    severity: 'ask',
    rule: 'Every slide has a title of its own.',
    about: 'People who find their way by titles cannot tell two slides with one title apart.',
  },
  'slides/no-picture': {
    severity: 'stop',
    rule: 'A picture named on a slide must exist.',
    about:
      'Names are those of the program: can, jar, sack, bag, sieve, pot, cup, or a food picture. A picture that does not exist would leave a hole on the shelf.',
  },
  'slides/no-place': {
    severity: 'stop',
    rule: 'What stands in a slide is shown on it.',
    about:
      'A slide shows one figure, or one question, or a few words, or the steps of its activity. Anything beside these would be left out in silence. Give it a slide of its own, put it in `say` or `do`, or leave it to the sheet.',
  },
  'slides/wordy': {
    severity: 'hint',
    rule: 'A slide has at most 35 words beside its figure and its shelf.',
    about:
      'Who reads does not listen. Cut words, or put them in `say`. Cautions and the shelf do not count: they are never cut.',
  },
} as const satisfies CodeTable;

export type SlideCode = keyof typeof slideCodes;

export const slideProblem = problemsOf(slideCodes);
