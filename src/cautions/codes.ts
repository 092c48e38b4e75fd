import { type CodeTable, problemsOf } from '../diagnostics/index.js';

/** Codes of the cautions: the register, what pulls an entry, and how it prints. */
export const cautionCodes = {
  'cautions/shape': {
    severity: 'stop',
    rule: 'Every entry of the register has all its fields, and they agree with each other.',
    about:
      'A register that cannot be read in full could lose a caution without a word. Mend the entry at the place that is named; the entries around it show the fields.',
  },
  'cautions/unknown-topic': {
    severity: 'stop',
    rule: 'Every topic of a lesson is known.',
    about:
      'Topics pull cautions, so a slip of the pen would lose them. Write a topic as the register has it, or add it to the quiet topics if it needs no caution.',
  },
  'cautions/unknown-flag': {
    severity: 'stop',
    rule: 'Every flag of a food is known to the register.',
    about:
      'Flags pull cautions, so a misspelt one would lose them. Mend the food table, or add the flag to the register with what it pulls.',
  },
  'cautions/unknown-id': {
    severity: 'stop',
    rule: 'A caution that a lesson calls by id stands in the register.',
    about:
      'A call that leads nowhere prints nothing. Write the id as the register has it, or give the lesson’s own caution all it needs: severity, source, review-by and three wordings.',
  },
  'cautions/own': {
    severity: 'stop',
    rule: 'A lesson’s own caution carries severity, source, review day and a wording for short, plain and fuller.',
    about:
      'It prints beside the register’s cautions and must hold as much. A caution without one of its wordings would be missing at that level.',
  },
  'cautions/unpulled': {
    severity: 'ask',
    rule: 'A caution that a lesson takes off is seen by whoever reviews the lesson.',
    about:
      'Topics and words can be wrong about a lesson: the scale of a map is no body scale. `unpull` in the front matter takes such a caution off, with a reason, a role and a day. This line stays as long as the entry does.',
  },
  'cautions/unpull-in-vain': {
    severity: 'ask',
    rule: 'A lesson takes off only cautions that its topics or words alone have pulled.',
    about:
      'What a food, a figure or a call in the lesson pulls cannot be taken off, and an entry for a caution that nothing pulls hides what it was for. Take the entry out.',
  },
  'cautions/review-past': {
    severity: 'stop',
    rule: 'A lesson’s own caution is used only until its review day.',
    about:
      'After that day nobody answers for the wording. Let its owner read it again, then write the next day into `review-by`.',
  },
  'cautions/reworded': {
    severity: 'ask',
    rule: 'A lesson that words a caution of the register anew at a level has that wording confirmed.',
    about:
      'Confirmations hold for the wording of the register only. A level may reword a caution and never remove it; a dietitian or pharmacist has to read the new words.',
  },
  'cautions/refused': {
    severity: 'stop',
    rule: 'Nothing unsafe is made: the register’s refusals hold for every lesson.',
    about:
      'The figure, row or sentence is not made, and on the draft the reason stands in its place. There is no switch for it; do what the hint says instead.',
  },
  'cautions/withheld': {
    severity: 'stop',
    rule: 'Pages that would do harm as they stand are built as drafts only.',
    about:
      'The content is made so that you can look at it, and marked as a draft until it is mended. There is no switch for it; do what the hint says.',
  },
  'cautions/no-wording': {
    severity: 'stop',
    rule: 'Every pulled caution has its wording in the language of each output.',
    about:
      'No output falls back to another language in silence. Send the entry to translation; the outputs in other languages are built.',
  },
  'cautions/slot': {
    severity: 'stop',
    rule: 'Every slot of a caution is filled from the local pack, the register’s values or the figure.',
    about:
      'A phone line or temperature is never typed into a wording and never left empty. Add the line to the local pack of the site; the output that needs it is withheld until then.',
  },
  'cautions/old-line': {
    severity: 'stop',
    rule: 'Emergency, poison and eating-disorder lines are within their shelf life.',
    about:
      'People in need call what the page prints. Check the line, then write the new day into the local pack. Until then the proof names the kind of line without its number.',
  },
  'cautions/budget': {
    severity: 'ask',
    rule: 'The boxes of a sheet stay within about 130 words at short and plain, and 300 at fuller.',
    about:
      'Too many warnings hide the one that matters. Nothing is dropped. Look at what pulls each line: the lesson may be two lessons.',
  },
  'cautions/boxes': {
    severity: 'ask',
    rule: 'A lesson pulls at most 8 boxes.',
    about:
      'Each box is a group of people who must find their own line. Nothing is dropped. Look at what pulls each: the lesson may be two lessons.',
  },
  'cautions/words-not-checked': {
    severity: 'hint',
    rule: 'Words that pull cautions are looked for in English only.',
    about:
      'Other languages need their own list. Until there is one, a person has to read the text for what the topics and foods did not pull.',
  },
} as const satisfies CodeTable;

export const cautionProblem = problemsOf(cautionCodes);
