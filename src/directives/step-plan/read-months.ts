import type { DirectivePart } from '../../lesson/index.js';
import type { ReadContext } from '../contract.js';
import { quoted, readProblem } from '../problems.js';
import { written } from '../written.js';
import { MONTHS, type Month } from './schema.js';

const MOST_MONTHS = 12;

/** The months of the plan in their order, and which of them it is on the day of the build. */
export function readMonths(
  part: DirectivePart,
  { report, on }: ReadContext,
): { readonly names: readonly Month[]; readonly now: number } | undefined {
  const start = written(part, 'start');
  const many = written(part, 'months');
  if (!start || !many) return undefined;
  const [, year = '', first = ''] = /^(\d{4})-(0[1-9]|1[0-2])$/.exec(start.value.trim()) ?? [];
  const count = /^\d{1,2}$/.test(many.value.trim()) ? Number(many.value) : 0;
  if (first === '')
    report.add(
      readProblem(
        'step-plan/month',
        { reason: `${quoted(start.value)} is no month of a year.`, hint: 'Write start=2027-01.' },
        start.place,
      ),
    );
  if (count < 1 || count > MOST_MONTHS)
    report.add(
      readProblem(
        'step-plan/month',
        {
          reason: `A plan of ${quoted(many.value)} months cannot be shown.`,
          hint: `Write from 1 to ${MOST_MONTHS}.`,
        },
        many.place,
      ),
    );
  if (first === '' || count < 1 || count > MOST_MONTHS) return undefined;
  const from = Number(year) * MONTHS.length + Number(first) - 1;
  const today = Number(on.slice(0, 4)) * MONTHS.length + Number(on.slice(5, 7)) - 1;
  const names = Array.from({ length: count }, (_, i) => MONTHS[(from + i) % MONTHS.length] ?? MONTHS[0]);
  return { names, now: today >= from && today < from + count ? today - from : 0 };
}

/** `Jan`, `january`, `Sept.`: three letters or more of an English month; pages print it in their own language. */
export function monthOf(words: string): Month | undefined {
  const word = words.trim().toLowerCase().replace(/\.$/, '');
  return MONTHS.find((_, i) => word.length >= 3 && (LONG_NAMES[i] ?? '').startsWith(word));
}
const LONG_NAMES = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];
