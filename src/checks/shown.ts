import type { Place } from '../diagnostics/index.js';
import type { Block } from '../document/index.js';
import { POLICIES } from '../languages/index.js';
import { type Built, blocksOf, inlinesOf, plain } from './built.js';

/** A number as an output shows it. */
export interface ShownAt {
  readonly id: string;
  readonly text: string;
  /** The value at which a figure draws it; missing in running text. */
  readonly drawn?: number | null;
  readonly place?: Place;
}

/** Every number that an output shows with its id: in running text, at dots and on the message. */
export function shownIn(built: Built): readonly ShownAt[] {
  const message: readonly Block[] =
    built.kind === 'sheet' ? [{ kind: 'paragraph', inlines: built.sheet.message }] : [];
  return [...message, ...blocksOf(built)].flatMap((block) => {
    const at = block.place ? { place: block.place } : {};
    const text = inlinesOf(block).flatMap((i) =>
      i.number === undefined ? [] : [{ id: i.number, text: plain(i.text), ...at }],
    );
    return [...text, ...dots(block).map((d) => ({ ...d, ...at }))];
  });
}

/** Dots of a figure that shows its values; a blank one leaves them to the learner. */
function dots(block: Block): readonly ShownAt[] {
  if (block.kind !== 'figure' || block.figure.kind !== 'dot-lanes') return [];
  return block.figure.lanes.flatMap((lane) =>
    lane.dots.map((d) => ({ id: d.number, text: plain(d.text), drawn: d.value })),
  );
}

/**
 * The numbers that a text names, as plain digits with a point: `1,170 mg` → `1170`, `from 270 to 370` →
 * `270`, `370`. Nothing for a language whose marks are not known.
 */
export function digitsIn(text: string, language: string): readonly string[] {
  const policy = Object.hasOwn(POLICIES, language) ? POLICIES[language as keyof typeof POLICIES] : undefined;
  if (!policy) return [];
  const group = escaped(policy.group);
  const decimal = escaped(policy.decimal);
  const pattern = new RegExp(`\\d{1,3}(?:${group}\\d{3})+(?:${decimal}\\d+)?|\\d+(?:${decimal}\\d+)?`, 'gu');
  return [...text.matchAll(pattern)].map((m) =>
    m[0].replaceAll(policy.group, '').replace(policy.decimal, '.'),
  );
}

/** A mark of one character as a class; a blank stands for every kind of blank. */
function escaped(mark: string): string {
  return /^\s$/u.test(mark) ? '[\\s]' : `[${mark}]`;
}
