import { z } from 'zod';
import { LANGUAGES } from '../languages/index.js';
import { isDay } from './read-attributes.js';

/** Editions of guidance that a lesson may follow; there is no default. */
export const EDITIONS = ['us-2020', 'us-2025', 'none'] as const;

/** Measures by which people score a text by hand. */
export const TALLY_NAMES = [
  'understandability',
  'actionability',
  'clear-communication',
  'suitability',
] as const;

const words = z
  .string('takes words; put them in quotes if they are all digits')
  .trim()
  .min(1, 'is empty')
  .max(200, 'is longer than 200 characters')
  .refine((text) => !/[\p{Cc}\p{Cs}\u2028\u2029]/u.test(text), 'holds a line end or a control character');
const list = (what: z.ZodType<string>) =>
  z.array(what, 'takes a list, such as [one, two]').min(1, 'is empty; name at least one');
const id = z
  .string('takes an id')
  .regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'is no id; write lower-case words joined by hyphens');
const day = z.string('takes a day, such as 2027-03-01').refine(isDay, 'is no day; write it as 2027-03-01');

/** What a lesson's front matter may say; the help lines go into the JSON Schema for editors. */
export const shape = z.strictObject({
  title: words.describe('Printed at the top of every sheet and on the first slide.'),
  minutes: z
    .int('takes a whole number of minutes')
    .min(5, 'is below 5')
    .max(240, 'is above 240')
    .describe('Length of the talk.'),
  audience: words.describe('Whom the talk is for, as on the first slide: adults who shop and cook.'),
  objectives: list(words)
    .max(6, 'names more than six')
    .describe('What people can do by the end; each begins with a verb.'),
  guidance: z
    .enum(EDITIONS, `takes one of ${EDITIONS.join(', ')}`)
    .describe('The edition of the guidance that the lesson follows; there is no default.'),
  topics: z
    .array(words, 'takes a list, such as [fiber up, cans]')
    .describe('What the lesson is about; topics pull their cautions.'),
  sources: z
    .array(id, 'takes a list of ids, such as [usda-sr28]')
    .optional()
    .describe('Ids of sources in assets/sources.yaml.'),
  review: z
    .union(
      [
        z.literal('none'),
        z
          .strictObject({ role: words, date: day, next: day })
          .refine((review) => review.next > review.date, { path: ['next'], error: 'is not after date' }),
      ],
      'takes none, or role, date and next',
    )
    .describe('none, or who reviewed it (role), when (date) and by when to check again (next).'),
  unpull: z
    .array(
      z.strictObject({ caution: id, reason: words, role: words, date: day }),
      'takes a list of entries with caution, reason, role and date',
    )
    .optional()
    .describe('Cautions that topics or words pulled by mistake, each with reason, role and date.'),
  tallies: z
    .array(
      z
        .strictObject({
          measure: z.enum(TALLY_NAMES, `takes one of ${TALLY_NAMES.join(', ')}`),
          points: z.number('takes a number').min(0, 'is below 0'),
          of: z.number('takes a number').positive('is not above 0'),
          role: words,
          date: day,
        })
        .refine((tally) => tally.points <= tally.of, { path: ['points'], error: 'is above of' }),
      'takes a list of tallies with measure, points, of, role and date',
    )
    .optional()
    .describe(
      'What people counted of the text by hand: measure, points, of (points that could be had), role, date.',
    ),
  author: words.optional().describe('Role of who wrote it.'),
  month: z
    .int('takes a whole number')
    .min(1, 'is below 1')
    .max(12, 'is above 12')
    .optional()
    .describe('Month of the talk, 1 to 12.'),
  emblem: id.optional().describe('Name of the picture at the top of the sheets.'),
  code: z
    .string('takes letters and digits')
    .regex(/^[A-Z][A-Z0-9]{1,9}$/, 'takes two to ten capital letters and digits')
    .optional()
    .describe('Short code that pages print.'),
  language: z
    .enum(LANGUAGES, `takes one of ${LANGUAGES.join(', ')}`)
    .optional()
    .describe('Language of the lesson; en when left out.'),
  site: id.optional().describe('Folder name of the local pack.'),
});
export type Shape = z.infer<typeof shape>;

/** The same as JSON Schema, for editors. */
export function frontMatterJsonSchema(): unknown {
  return {
    ...z.toJSONSchema(shape, { io: 'input', unrepresentable: 'any' }),
    title: 'Front matter of a lesson',
  };
}

/** The help line of a key; the first part of a path such as `review.date` counts. */
export function helpOf(name: string): string {
  const key = name.split('.')[0] ?? '';
  return (shape.shape as Record<string, { description?: string }>)[key]?.description ?? '';
}

/** What stands in a proof for a key that is missing or cannot be used. */
export const STAND_INS: Shape = {
  title: 'No title',
  minutes: 40,
  audience: 'not said',
  objectives: ['not said'],
  guidance: 'none',
  topics: [],
  review: 'none',
};
