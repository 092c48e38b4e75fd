import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Workspace } from '../pipeline/workspace.js';

/** The program's own folder: the compiled program lies in `out/.program/cli` below it. */
export const PROGRAM = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');

/** The nearest folder, from `start` upward, that holds `lessons/`. */
export function findWorkspace(start: string): string | undefined {
  for (let folder = resolve(start); ; folder = dirname(folder)) {
    if (isFolder(join(folder, 'lessons'))) return folder;
    if (dirname(folder) === folder) return undefined;
  }
}

export function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

export function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}

function readFile(path: string): Uint8Array | undefined {
  return isFile(path) ? readFileSync(path) : undefined;
}

/** The program's own files on disk. */
export const programFiles: Pick<Workspace, 'asset' | 'module'> = {
  asset: (path) => readFile(join(PROGRAM, 'assets', path)),
  module: (specifier) => readFileSync(createRequire(import.meta.url).resolve(specifier)),
};

/** The workspace on disk. Paths that climb out of it are never read. */
export function diskWorkspace(root: string): Workspace {
  const inside = (path: string) => {
    const full = resolve(root, path);
    return full === root || full.startsWith(join(root, '/')) || full.startsWith(`${root}\\`)
      ? full
      : undefined;
  };
  return {
    read: (path) => {
      const full = inside(path);
      return full === undefined ? undefined : readFile(full);
    },
    folders: (path) => {
      const full = inside(path);
      if (full === undefined || !isFolder(full)) return [];
      return readdirSync(full, { withFileTypes: true })
        .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
        .map((entry) => entry.name)
        .sort();
    },
    ...programFiles,
  };
}

/**
 * Puts a lesson's files in place of the ones built before, all or none: they are written beside it
 * first, and only a whole set takes the old one's place.
 */
export function replaceFolder(
  target: string,
  files: readonly { readonly path: string; readonly bytes: Uint8Array }[],
): void {
  const fresh = `${target}.new`;
  const old = `${target}.old`;
  rmSync(fresh, { recursive: true, force: true });
  rmSync(old, { recursive: true, force: true });
  try {
    for (const file of files) {
      const path = join(fresh, file.path);
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, file.bytes);
    }
    if (existsSync(target)) renameSync(target, old);
    renameSync(fresh, target);
  } catch (error) {
    if (!existsSync(target) && existsSync(old)) renameSync(old, target);
    rmSync(fresh, { recursive: true, force: true });
    throw error;
  }
  rmSync(old, { recursive: true, force: true });
}
