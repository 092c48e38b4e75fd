import type { Month, Often } from './schema.js';
import type { Key } from './terms.js';

/** A month's whole name, where there is room for it. */
export const LONG: Readonly<Record<Month, Key>> = {
  jan: 'jan-long',
  feb: 'feb-long',
  mar: 'mar-long',
  apr: 'apr-long',
  may: 'may-long',
  jun: 'jun-long',
  jul: 'jul-long',
  aug: 'aug-long',
  sep: 'sep-long',
  oct: 'oct-long',
  nov: 'nov-long',
  dec: 'dec-long',
};

/** What was counted, by how often. */
export const PORTION: Readonly<Record<Often['per'], Key>> = {
  day: 'portion-day',
  week: 'portion-week',
};
