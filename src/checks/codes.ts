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
  E09: {
    severity: 'ask',
    rule: 'A rule that binds from a later day is not told as though it were in force.',
    about:
      'People act on what a sheet says is law, and labels under the old rule stay lawful until the day. Name the day from which the rule binds, or leave the rule out.',
  },
  E03: {
    severity: 'stop',
    rule: 'No food is said to heal, and no lesson changes a medicine.',
    about:
      'People leave out pills because a sheet praised a food. Name what the food holds, name the type of medicine, and send people to their care team.',
  },
  S01: {
    severity: 'stop',
    rule: 'Potassium salt and food rich in potassium never go out without their caution.',
    about:
      'Weak kidneys and some medicines keep potassium in the blood, which can stop a heart. Keep the caution, or take the content out.',
  },
  S02: {
    severity: 'stop',
    rule: 'Less carbohydrate, skipped meals and fasts never go out without the cautions on low blood sugar and ketoacidosis, and no plan goes below what a group sheet may.',
    about:
      'Insulin and some tablets go on lowering blood sugar when the food is gone. Keep the cautions; a medical team plans very low carbohydrate.',
  },
  S03: {
    severity: 'stop',
    rule: 'Less sodium never goes out without the lines on lithium, water pills and heart failure.',
    about: 'Lithium rises in the blood when salt falls. Keep the cautions, or take the content out.',
  },
  S04: {
    severity: 'stop',
    rule: 'Calcium and iron at a time of day never go out without the lines on thyroid pills, antibiotics and bone pills.',
    about: 'Minerals keep such pills from working. Keep the cautions, or take the content out.',
  },
  S05: {
    severity: 'stop',
    rule: 'More or fewer greens never go out without the line on warfarin.',
    about:
      'A sudden change in vitamin K changes how the blood clots. Keep the caution, or say nothing of the amount.',
  },
  S06: {
    severity: 'stop',
    rule: 'Grapefruit, aged food, liver and star fruit never go out without their lines.',
    about: 'Each is safe for most people and dangerous for some. Keep the caution, or take the food out.',
  },
  S08: {
    severity: 'stop',
    rule: 'A free-from word never goes out without "read the label" and cross-contact.',
    about:
      'Recipes change, and a spoon is enough. Keep both cautions, or write what the dish is made without.',
  },
  S09: {
    severity: 'stop',
    rule: 'Wheat-free is not gluten-free, oats need their label, and nobody stops gluten before the test.',
    about:
      'Barley and rye hold gluten too, and a test after the change finds nothing. Use the term gluten-free with its cautions.',
  },
  S10: {
    severity: 'stop',
    rule: 'No honey, main-drink swap or homemade formula for babies, and no food of a choking shape without its caution.',
    about:
      'A baby can die of what an adult never notices. Take it out, or keep the caution that goes with it.',
  },
  S11: {
    severity: 'stop',
    rule: 'No straight-line forecast of weight and no personal number in group material.',
    about:
      'Weight change slows down, and people blame themselves when it does. Use pace-chart with its invented adult; a dietitian sets personal targets.',
  },
  S12: {
    severity: 'stop',
    rule: 'No day below 1,200 kcal goes out as a plan, and no treatment by starving as advice.',
    about:
      'Such plans need a clinic that watches the blood. Show an example of what is missing, and say that it is one.',
  },
  S13: {
    severity: 'stop',
    rule: 'A diet that leaves foods out goes out only with its gaps and with who must not try it; a fast has no schedule.',
    about:
      'Hours and days of fasting are a plan that hurts people on insulin, in pregnancy or with an eating disorder. Show what such a diet leaves out.',
  },
  S14: {
    severity: 'stop',
    rule: 'No dose of a supplement, and nothing vegan without vitamin B12.',
    about:
      'A dose on a sheet is a prescription to everybody who reads it. Name the nutrient and the foods that hold it.',
  },
  S15: {
    severity: 'stop',
    rule: 'Cooking and chilling numbers come from the one table, and methods that can poison are not taught.',
    about: 'A number typed once is copied wrong once. Let safe-food print it.',
  },
  S16: {
    severity: 'stop',
    rule: 'More to drink, more fiber and more protein never go out without their lines.',
    about:
      'Weak hearts, kidneys and narrow bowels cannot take more. Keep the caution, or take the content out.',
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
  S19: {
    severity: 'ask',
    rule: 'A lesson about weight has a sheet without weight that says something, and the line that lets people skip.',
    about:
      'People with a history must be able to leave weight content without explaining, and find a sheet on the same topic on the table. Write it inside `::::only{out=weightfree}`.',
  },
  'weight-free/word': {
    severity: 'stop',
    rule: 'The sheet without weight holds no number, unit or word of weight, and no energy.',
    about:
      'People take this sheet to be safe from weight. Put what is about weight inside `::::only{out=handout}`; food is measured in cups and spoons here, or as `2 pounds of carrots`.',
  },
  P10: {
    severity: 'ask',
    rule: 'A tally that a person made of the text reaches what its measure asks for.',
    about:
      'Only people can score whether a text can be understood and acted on. Write what they counted into `tallies` of the front matter: measure, points, of, role, date. Below the mark, mend what lost the points and tally again.',
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
