import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type Built, buildLesson, openWorkshop } from '../../src/pipeline/build.js';
import { memoryWorkspace, type Workspace } from '../../src/pipeline/workspace.js';
import { ROOT } from '../house/source.js';

/** The program's own files, read from the tree. */
export const program: Pick<Workspace, 'asset' | 'module'> = {
  asset(path) {
    try {
      return readFileSync(join(ROOT, 'assets', path));
    } catch {
      return undefined;
    }
  },
  module: (specifier) => readFileSync(createRequire(import.meta.url).resolve(specifier)),
};

/** The day on which all tests build, so that nothing depends on today. */
export const ON = '2026-11-25';

export const BEANS = 'lessons/beans-three-ways/lesson.md';

export function lessonText(path: string = BEANS): string {
  return readFileSync(join(ROOT, path), 'utf8').replaceAll('\r\n', '\n');
}

/** Builds one lesson from files in memory over the program's own. */
export async function buildFrom(
  files: Readonly<Record<string, string | Uint8Array>>,
  lesson = 'beans-three-ways',
  on = ON,
): Promise<Built> {
  return buildLesson(openWorkshop(memoryWorkspace(files, program)), lesson, { on });
}

export function fileOf(built: Built, path: string): Uint8Array {
  const file = built.files.find((f) => f.path === path);
  if (!file)
    throw new Error(`${path} was not built. There are: ${built.files.map((f) => f.path).join(', ')}`);
  return file.bytes;
}

export function textOf(built: Built, path: string): string {
  return new TextDecoder().decode(fileOf(built, path));
}
