import { LEVELS } from '../reading/index.js';
import type { KnownAttribute, KnownDirective, KnownDirectives } from './known.js';
import { HOLDERS, type HolderName } from './lesson.js';

/** Outputs that `only{out=…}` may name. `weightfree` is the sheet without weight numbers. */
export const OUTPUTS = ['handout', 'worksheet', 'slides', 'staff', 'weightfree'] as const;
export type Output = (typeof OUTPUTS)[number];

/** The talk lengths for which a slide may be dropped, in minutes. */
const CUTS = { is: 'whole', from: 5, to: 240 } as const;

const holder = (
  name: HolderName,
  attributes: Readonly<Record<string, KnownAttribute>> = {},
): KnownDirective => ({ name, forms: ['container'], id: 'none', attributes });

/** Containers that hold ordinary parts of a lesson and say where or for whom they are. */
export const HOLDING: readonly KnownDirective[] = [
  holder('slide', {
    minutes: { kind: { is: 'whole', from: 1, to: 60 }, help: 'Minutes that this slide takes.' },
    cut: { kind: CUTS, help: 'Talk length in minutes that drops this slide.' },
    pictures: {
      kind: { is: 'list' },
      help: 'Vessels or foods to draw on a slide without a figure, parted by semicolons: jar; can; bag.',
    },
  }),
  holder('worksheet'),
  holder('staff'),
  holder('only', {
    out: { kind: { is: 'choice', of: OUTPUTS }, required: true, help: 'The one output that this is for.' },
  }),
  holder('level', {
    is: { kind: { is: 'choice', of: LEVELS }, required: true, help: 'The reading level of these words.' },
  }),
  holder('say'),
  holder('do'),
];

/** What may stand in running text. */
export const INLINE = ['n', 't', 'cite'] as const;
export type InlineName = (typeof INLINE)[number];

export const INLINE_ATTRIBUTES: Readonly<Record<InlineName, Readonly<Record<string, KnownAttribute>>>> = {
  n: {
    of: { kind: { is: 'reference' }, required: true, help: 'The id of the directive that computed it.' },
    row: { kind: { is: 'text' }, help: 'The row, where the directive has several.' },
    per: { kind: { is: 'text' }, help: 'What the number is for, such as package.' },
  },
  t: {},
  cite: {},
};

/** Containers that hold others and therefore take four colons at least. */
const FOUR_COLONS: ReadonlySet<string> = new Set(['slide', 'worksheet', 'staff']);

/** Every name that may follow colons, found by name. */
export interface Names {
  get(name: string): KnownDirective | undefined;
  readonly all: readonly string[];
}

export function namesOf(known: KnownDirectives): Names {
  const byName = new Map([...known, ...HOLDING].map((k) => [k.name, k]));
  return { get: (name) => byName.get(name), all: [...byName.keys()] };
}

export function isHolder(name: string): name is HolderName {
  return (HOLDERS as readonly string[]).includes(name);
}

/** The fewest colons that a container of this name takes. */
export function fewestColons(known: KnownDirective): number {
  return FOUR_COLONS.has(known.name) || (known.holds ?? []).length > 0 ? 4 : 3;
}

/**
 * Why `child` cannot stand directly inside `parents` (outermost first), or nothing when it can.
 * Parents that are themselves unknown allow everything, since one slip is enough.
 */
export function misplaced(
  child: KnownDirective,
  parents: readonly (KnownDirective | undefined)[],
): string | undefined {
  const parent = parents.at(-1);
  if (parents.length > 0 && parent === undefined) return undefined;
  if (parent && !isHolder(parent.name))
    return parent.holds?.includes(child.name) ? undefined : `${parent.name} cannot hold ${child.name}.`;
  if (child.inside && !(parent && child.inside.includes(parent.name)))
    return `${child.name} stands only inside ${child.inside.join(' or ')}.`;
  if (!isHolder(child.name)) return undefined;
  const around = parent ? `, not inside ${parent.name}` : '';
  switch (child.name) {
    case 'slide':
    case 'worksheet':
    case 'staff':
    case 'only':
      return parent ? `${child.name} stands at top level${around}.` : undefined;
    case 'level':
      return !parent || fewestColons(parent) === 4 || parent.name === 'only'
        ? undefined
        : `level stands at top level or inside slide, worksheet, staff or only${around}.`;
    case 'say':
    case 'do':
      return parents.some((p) => p?.name === 'slide') &&
        (parent?.name === 'slide' || parent?.name === 'level')
        ? undefined
        : `${child.name} stands inside slide${around || ', not at top level'}.`;
  }
}
