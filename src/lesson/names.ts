/** Names that mean something to programs; `__proto__` would even be dropped in silence by others. */
const REFUSED: ReadonlySet<string> = new Set([
  '__proto__',
  'constructor',
  'prototype',
  'tostring',
  'valueof',
  'hasownproperty',
]);

/** Whether a name may be no key and no attribute: names of objects' insides and of events (`onclick`). */
export function isRefusedName(name: string): boolean {
  const lower = name.toLowerCase();
  return REFUSED.has(lower) || /^__/.test(name) || /^on[a-z]{3,}$/.test(lower);
}

/** Lower-case words of letters and digits joined by hyphens, starting with a letter. */
export const ID = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/;
