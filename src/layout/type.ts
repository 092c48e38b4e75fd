import type { Sheet } from '../document/index.js';
import type { Weight } from '../text/index.js';

/** Size and leading in points. */
export interface TypeRole {
  readonly size: number;
  readonly leading: number;
  readonly weight: Weight;
  /** Letter spacing in em. */
  readonly tracking?: number;
}

/** What a line of type is for. Each level has its own size for some. */
export interface TypeRoles {
  readonly title: TypeRole;
  /** Title of a worksheet and of sheets for leaders. */
  readonly smallTitle: TypeRole;
  readonly message: TypeRole;
  readonly head: TypeRole;
  readonly subhead: TypeRole;
  readonly minorHead: TypeRole;
  readonly body: TypeRole;
  readonly caution: TypeRole;
  readonly cautionWord: TypeRole;
  readonly whoToAsk: TypeRole;
  readonly choose: TypeRole;
  readonly table: TypeRole;
  readonly basis: TypeRole;
  readonly figureCaution: TypeRole;
  readonly answer: TypeRole;
  readonly why: TypeRole;
  readonly sources: TypeRole;
  readonly sourcesHead: TypeRole;
  readonly strip: TypeRole;
  readonly interpreter: TypeRole;
  readonly stamp: TypeRole;
  readonly badge: TypeRole;
}

function role(size: number, leading: number, weight: Weight = 400): TypeRole {
  return { size, leading, weight };
}

/** What all levels share. */
const COMMON = {
  title: { ...role(28.5, 32, 800), tracking: -0.004 },
  smallTitle: { ...role(22, 25, 800), tracking: -0.004 },
  cautionWord: role(14, 17, 800),
  whoToAsk: role(10.5, 13.6),
  sourcesHead: role(11.5, 14, 800),
  strip: role(10.5, 14),
  interpreter: role(10.5, 13.4),
  stamp: role(9, 12.4),
  badge: role(12, 14, 800),
} as const;

const PLAIN: TypeRoles = {
  ...COMMON,
  message: role(16.5, 21.5, 600),
  head: role(14, 17, 800),
  subhead: role(12.5, 17, 800),
  minorHead: role(12.5, 17, 700),
  body: role(12.5, 17),
  caution: role(12.5, 16.2),
  choose: role(11, 14.5),
  table: role(11, 14.5),
  basis: role(9.5, 13),
  figureCaution: role(12.5, 16.2, 600),
  answer: role(12.5, 17, 600),
  why: role(11, 14.5),
  sources: role(9.5, 13),
};

const SHORT: TypeRoles = {
  ...PLAIN,
  message: role(24, 30, 800),
  head: role(16, 19, 800),
  subhead: role(16, 22, 800),
  minorHead: role(16, 22, 700),
  body: role(16, 22),
  caution: role(16, 20.5),
  choose: role(14, 18),
  table: role(14, 18),
  basis: role(11, 14),
  figureCaution: role(16, 20.5, 600),
  answer: role(16, 22, 600),
  why: role(14, 18),
  sources: role(11, 14),
};

const FULLER: TypeRoles = {
  ...PLAIN,
  message: role(15.5, 20, 600),
  subhead: role(12, 16, 800),
  minorHead: role(12, 16, 700),
  body: role(12, 16),
  caution: role(12, 15.6),
  figureCaution: role(12, 15.6, 600),
  answer: role(12, 16, 600),
};

/** The review sheet is a reference for professionals: long tables in small type. */
const REVIEW: TypeRoles = { ...FULLER, table: role(9.5, 12.6), why: role(9.5, 12.6) };

/**
 * Type of a sheet by its level. Arabic letters stand taller than Latin ones, so their lines get more
 * leading and notes one more half point: their dots vanish first on a copy.
 */
export function typeFor(sheet: Pick<Sheet, 'kind' | 'level' | 'language'>): TypeRoles {
  const roles = byLevel(sheet);
  if (!/^(ar|fa|ps|ur)\b/.test(sheet.language)) return roles;
  return {
    ...roles,
    body: { ...roles.body, leading: roles.body.leading * 1.035 },
    answer: { ...roles.answer, leading: roles.answer.leading * 1.035 },
    caution: { ...roles.caution, leading: roles.caution.leading * 1.05 },
    basis: role(roles.basis.size + 0.5, roles.basis.leading + 0.4),
    sources: role(roles.sources.size + 0.5, roles.sources.leading + 0.4),
    stamp: role(9, 13.4),
    title: role(28.5, 34, 800),
    smallTitle: role(22, 27, 800),
  };
}

function byLevel(sheet: Pick<Sheet, 'kind' | 'level'>): TypeRoles {
  if (sheet.kind === 'review') return REVIEW;
  if (sheet.level === 'short') return SHORT;
  return sheet.level === 'plain' ? PLAIN : FULLER;
}
