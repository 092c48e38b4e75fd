import { type CodeTable, problemsOf } from '../diagnostics/index.js';

export const layoutCodes = {
  'layout/too-long': {
    severity: 'ask',
    rule: 'A sheet must fit on the two sides of one piece of paper.',
    about:
      'The second piece of paper gets lost, and what it says with it. The space in figures and above sections is used up before this is reported; type is never made smaller. Cut words, or move a part to another level. The sheet is still built so that you can see what is too much.',
  },
  'layout/too-tall': {
    severity: 'stop',
    rule: 'What may not be split must fit on one page.',
    about:
      'A caution, a row of a table, a question or a figure is read as one thing and is never split over two pages. This one is taller than a page. Make it shorter or turn it into several.',
  },
  'layout/cards': {
    severity: 'hint',
    rule: 'So many cards as are wished for should stand on one sheet.',
    about:
      'Each card carries the cautions of its lesson whole, at full size. Where they leave no room, fewer cards stand on a sheet and more sheets are made. Take fewer copies, or part the lesson in two.',
  },
  'layout/wide-word': {
    severity: 'ask',
    rule: 'Every word must fit in its place.',
    about:
      'Words are not hyphenated and type is not made smaller, so a word wider than its column sticks out. Use a shorter word, or give the column fewer neighbors.',
  },
  'layout/long-head': {
    severity: 'hint',
    rule: 'A heading should fit in three lines of the rail.',
    about:
      'Heads stand in the narrow rail beside their text. A longer head pushes the text away from it. Say it in fewer words; the first paragraph can say the rest.',
  },
} as const satisfies CodeTable;

export const layoutProblem = problemsOf(layoutCodes);
