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
    about: 'Names are those of the program: can, jar, bag, sieve, pot, cup, or a food picture.',
  },
} as const satisfies CodeTable;

export const slideProblem = problemsOf(slideCodes);
