// Contract

/** Reading levels from the barest to the fullest. `staff` is for leaders and is never handed out. */
export const LEVELS = ['short', 'plain', 'fuller', 'staff'] as const;
export type Level = (typeof LEVELS)[number];

export function isLevel(text: string): text is Level {
  return (LEVELS as readonly string[]).includes(text);
}

/** True when `a` says more than `b`; false for a level and itself. */
export function fullerThan(a: Level, b: Level): boolean {
  return LEVELS.indexOf(a) > LEVELS.indexOf(b);
}
