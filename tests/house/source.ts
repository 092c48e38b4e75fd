import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

export interface SourceFile {
  /** Path below the top, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

/** Every file below a folder, with forward slashes, in a stable order. */
export function filesBelow(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

export function sourceFiles(folder = 'src'): SourceFile[] {
  return filesBelow(folder)
    .filter((path) => path.endsWith('.ts'))
    .map((path) => ({ path, text: readFileSync(join(ROOT, path), 'utf8') }));
}

export interface Import {
  readonly from: string;
  /** A path below the top for our own files, otherwise the package's name. */
  readonly to: string;
  readonly own: boolean;
  readonly typeOnly: boolean;
  readonly names: string;
}

/** Imports and re-exports of a file, static and dynamic. */
export function importsOf(file: SourceFile): Import[] {
  const found: Import[] = [];
  const add = (target: string, names: string, typeOnly: boolean) => {
    const own = target.startsWith('.');
    const to = own
      ? posix.join(posix.dirname(file.path), target).replace(/\.js$/, '.ts')
      : packageName(target);
    found.push({ from: file.path, to, own, typeOnly, names });
  };
  const text = file.text.replace(/\/\*[\s\S]*?\*\//g, '');
  for (const m of text.matchAll(/^\s*(?:import|export)\s+(type\s+)?([^'";]*?)\s*from\s+'([^']+)'/gm)) {
    const names = m[2] ?? '';
    const listed = names.match(/\{([\s\S]*)\}/)?.[1];
    const eachIsType =
      listed !== undefined &&
      !/^[^{]*\w/.test(names.replace(/\{[\s\S]*\}/, '')) &&
      listed
        .split(',')
        .map((n) => n.trim())
        .filter(Boolean)
        .every((n) => n.startsWith('type '));
    add(m[3] ?? '', names, m[1] !== undefined || eachIsType);
  }
  for (const m of text.matchAll(/^\s*import\s+'([^']+)'/gm)) add(m[1] ?? '', '', false);
  for (const m of text.matchAll(/\bimport\(\s*'([^']+)'\s*\)/g)) add(m[1] ?? '', '', false);
  return found;
}

function packageName(target: string): string {
  if (target.startsWith('node:')) return target;
  const parts = target.split('/');
  return target.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] ?? '');
}

/** The folder of `src/` that a path belongs to; each writer and the pipeline count as one. */
export function folderOf(path: string): string {
  return path.split('/')[1] ?? '';
}
