import { z } from 'zod';
import { HEADINGS, SPOTS } from './register.js';

const words = z.string().trim().min(1, 'holds no words');
const id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'should be lower-case words joined by hyphens');
const months = z.number().int().min(1).max(60);
const confirmed = z.strictObject({ role: words, date: z.string().regex(/^\d{4}-\d{2}-\d{2}$/) }).optional();
const wordings = { short: words, plain: words, fuller: words };

const fact = z.strictObject({
  says: words,
  when: words.optional(),
  look: z.array(words).min(1).optional(),
  but: z.array(words).min(1).optional(),
  waits: words.optional(),
});

const box = z.strictObject({
  id,
  title: words,
  severity: z.enum(['stop', 'ask first', 'note']),
  heading: z.enum(HEADINGS).optional(),
  checks: z.array(words),
  who: words,
  why: words,
  tags: z.array(words),
  facts: z.array(fact).min(1),
  place: z.array(z.enum(SPOTS)).min(1),
  apart: z.array(id),
  guards: z.literal('weight').optional(),
  ...wordings,
  basis: z.array(z.strictObject({ fact: words, mark: words, source: words.optional() })).min(1),
  confirm: words,
  confirmed,
  review_months: months,
});

const line = z.strictObject({
  id,
  says: words,
  when: words,
  checks: z.array(words),
  place: z.array(z.enum(SPOTS)).min(1),
  ...wordings,
  confirm: words,
  confirmed,
  review_months: months,
});

const note = z.strictObject({
  id,
  says: words,
  place: z.array(z.enum(['figure', 'staff'])).min(1),
  ...wordings,
  confirm: words,
  confirmed,
  review_months: months,
});

const rule = z.strictObject({
  always: z.array(id).default([]),
  when: z
    .array(
      z.strictObject({
        ids: z.array(id).min(1),
        says: words,
        when: words.optional(),
        waits: words.optional(),
      }),
    )
    .default([]),
});

const value = z.strictObject({
  value: z.number(),
  unit: words,
  kind: z.enum(['heat', 'cold']).optional(),
  print: words,
  for: words,
  basis: words,
  source: id.optional(),
});

/** One file of the register. A file may hold any of these, and the files together hold all. */
export const registerFile = z.strictObject({
  cautions: z.array(box).optional(),
  lines: z.array(line).optional(),
  notes: z.array(note).optional(),
  directives: z.record(id, rule).optional(),
  flags: z
    .array(z.strictObject({ flag: words, foods: words, pulls: z.array(id), waits: words.optional() }))
    .optional(),
  values: z.record(z.enum(['us', 'uk']), z.record(id, value)).optional(),
  refusals: z
    .array(
      z.strictObject({
        id: z.string().regex(/^R\d\d$/, 'should be R and two digits'),
        kind: z.enum(['refuse', 'error']),
        checks: z.array(words).min(1),
        when: words,
        say: words,
        instead: words,
      }),
    )
    .optional(),
  sources: z.array(z.strictObject({ key: words, what: words, seen: words })).optional(),
  quiet_topics: z.array(words).optional(),
});

export type RegisterFile = z.infer<typeof registerFile>;
export type BoxData = z.infer<typeof box>;
export type LineData = z.infer<typeof line>;
export type NoteData = z.infer<typeof note>;
export type FactData = z.infer<typeof fact>;
