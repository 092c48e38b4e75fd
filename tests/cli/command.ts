import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ROOT } from '../house/source.js';

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the compiled program as a user does. */
export function platework(args: readonly string[], cwd: string = ROOT): Ran {
  const done = spawnSync(process.execPath, [join(ROOT, 'out/.program/cli/main.js'), ...args], {
    cwd,
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
}
