import { type CodeTable, problemsOf } from '../../diagnostics/index.js';

/** Codes of the local pack. */
export const localCodes = {
  'local/shape': {
    severity: 'stop',
    rule: 'A file of the local pack is YAML and has the entries that its kind needs, no others.',
    about:
      'A misspelt entry would be lost without a word, and a phone line with it. Compare the file with the one in assets/local/lantern-street.',
  },
  'local/line-old': {
    severity: 'ask',
    rule: 'A phone line or place is used only within its shelf life.',
    about:
      'People call what the page prints. Past the shelf life pages print the words of `instead`. Call the line, then write the new day into `dated`.',
  },
  'local/food-old': {
    severity: 'ask',
    rule: 'The label of a local food is used only within its shelf life.',
    about:
      'Makers change what is in a package without changing its name. Read the label in the shop again, mend what changed, then write the new day into `dated`.',
  },
  'local/notice-old': {
    severity: 'ask',
    rule: 'A notice prints only until its last day and within its shelf life.',
    about:
      'A market that has closed or a test that is no longer free sends people on a walk for nothing. The notice does not print any more; take it out or bring its days up to date.',
  },
  'local/notice-number': {
    severity: 'stop',
    rule: 'A notice names a phone line by its name in braces; no number is typed into it.',
    about:
      'A number typed into a sentence has no shelf life and is overlooked when the line changes. Write it once into lines.yaml: pages print it from there, and words without it once it is old.',
  },
  'local/notice-room': {
    severity: 'stop',
    rule: 'No more than two notices stand on a handout, a worksheet or the slides on one day.',
    about:
      'Notices take room from the lesson on every side of the paper. Give them days that do not overlap, or leave some to the leader’s page.',
  },
  'local/price': {
    severity: 'stop',
    rule: 'A price names a food, a package that can be weighed, a sum, a shop of the site, its day and how it was got.',
    about:
      'A price without shop, day and size says nothing, and a slip of the point makes a cup ten times as dear. Sale prices stand in their own column, because they are somebody’s luck on a day.',
  },
  'local/date-ahead': {
    severity: 'ask',
    rule: 'No line, place, label or notice is dated after the day of the build.',
    about:
      'A day in the future keeps an entry from ever growing old. Write the day on which the entry was written or last called, or build with the right `--on` day.',
  },
  'local/invented-number': {
    severity: 'stop',
    rule: 'An invented site prints only numbers from 555-0100 to 555-0199 and the emergency number.',
    about:
      'Any other number may ring at a real home. Those hundred numbers are kept free for examples. For a real site set `invented: false` and write its real lines.',
  },
} as const satisfies CodeTable;

export const localProblem = problemsOf(localCodes);
