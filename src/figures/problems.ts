import { type CodeTable, problemsOf } from '../diagnostics/index.js';

export const figureCodes = {
  'figures/labels-collide': {
    severity: 'stop',
    rule: 'No word in a figure may lie on another word or on a dot.',
    about:
      'Words that lie on each other cannot be read, and a number that lost a digit is a wrong number. Shorten the words that the message names, show fewer rows or measures (`show=`, `rows=`), or give this level its own figure.',
  },
  'figures/does-not-fit': {
    severity: 'stop',
    rule: 'A figure must fit into the room it has, with its words whole.',
    about:
      'Nothing is made smaller to fit, because small type is what people cannot read. Shorten the words that the message names, or show fewer rows or measures.',
  },
  'figures/too-high': {
    severity: 'stop',
    rule: 'A figure on a slide must fit between the title and the shelf.',
    about:
      'Rows are never pushed into each other and type never becomes smaller. Show fewer measures or rows, shorten the title to one line, or let the shelf say less.',
  },
  'figures/too-many': {
    severity: 'stop',
    rule: 'A slide shows at most three measures and four rows.',
    about:
      'From the back of a hall more than that cannot be followed. Choose what the talk needs with `show=` or `rows=`; the handout may hold the rest.',
  },
  'figures/bricks-too-narrow': {
    severity: 'stop',
    rule: 'A brick is at least 3.6 mm wide on paper and 28 pixels on a slide.',
    about:
      'Narrower bricks cannot be counted or crossed out with a pencil. Let one brick be worth more, so that there are fewer.',
  },
  'figures/not-drawable': {
    severity: 'stop',
    rule: 'What is drawn on a lane or in bricks is a number from zero up.',
    about:
      'Lanes and bricks start at zero, so a negative amount has no place on them; an amount that is not known is drawn as a dashed ring, never as zero.',
  },
  'figures/no-picture': {
    severity: 'stop',
    rule: 'A picture must be one that is listed in `assets/pictures/pictures.tsv`.',
    about:
      'Every listed picture stands in color and in one ink, so that both builds show the same thing. Use a name from the list, or put your own picture into the lesson.',
  },
  'figures/svg-broken': {
    severity: 'stop',
    rule: 'A vector picture must be well-formed SVG.',
    about:
      'What cannot be read cannot be drawn whole. Open the picture in a drawing program and save it again as plain SVG.',
  },
  'figures/svg-unsafe': {
    severity: 'stop',
    rule: 'A vector picture holds drawings only: no scripts, no links, nothing from outside the file.',
    about:
      'Sheets and slides are opened offline and by strangers. Scripts, event attributes, embedded pages, entities and references to other files are refused, not removed, so that nobody trusts a picture that is not what it was.',
  },
  'figures/svg-text': {
    severity: 'stop',
    rule: 'A vector picture must not hold text.',
    about:
      'Text in a picture cannot be translated, is lost to readers who listen, and needs fonts that may be missing. Turn it into outlines if it is part of the picture (a sign on a jar), or say it in the lesson.',
  },
  'figures/svg-unsupported': {
    severity: 'stop',
    rule: 'A vector picture uses shapes, colors, gradients and clips only.',
    about:
      'Filters, masks, patterns, animations and style sheets have no safe form on paper. Save the picture as plain SVG with presentation attributes and flattened effects.',
  },
  'figures/svg-too-large': {
    severity: 'stop',
    rule: 'A vector picture is at most one million characters, 64 levels deep and 20,000 shapes.',
    about:
      'Larger pictures make files that old printers and phones give up on. Simplify the paths in a drawing program.',
  },
  'figures/svg-simplified': {
    severity: 'hint',
    rule: 'Some refinements of a vector picture are drawn in a simpler way.',
    about:
      'A gradient along a line becomes its middle color, a focal point moves to the center, and a repeating gradient runs once. Look at the page; if it matters, change the picture.',
  },
  'figures/one-ink-converted': {
    severity: 'hint',
    rule: 'A colored picture of the lesson is turned into black lines in the one-ink build.',
    about:
      'Pale areas become white with a black outline and dark areas become black, since the print shop has black only. Look at the one-ink page; if the picture cannot be made out, draw it in black lines on white.',
  },
} as const satisfies CodeTable;

export const figureProblem = problemsOf(figureCodes);
