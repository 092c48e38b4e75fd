import { join, resolve } from 'node:path';
import { lessonNames } from '../pipeline/read.js';
import type { Workspace } from '../pipeline/workspace.js';
import { type Call, UsageError } from './arguments.js';
import { diskWorkspace, findWorkspace, isFolder } from './disk.js';

/** The workspace that a command was called for, and its lessons. */
export interface Opened {
  readonly root: string;
  readonly workspace: Workspace;
  /** The lessons named in the call, or all of them. */
  readonly lessons: readonly string[];
}

/** Opens the workspace of `--workspace`, or the nearest one from here upward. */
export function openWorkspace(call: Call, words: readonly string[] = call.words): Opened {
  const given = call.text('workspace');
  const root = given === undefined ? findWorkspace(process.cwd()) : resolve(given);
  if (root === undefined || !isFolder(root)) {
    throw new UsageError(
      given
        ? `There is no folder ${given}.`
        : 'There is no lessons/ here or above. Go to your workspace, or name it with --workspace DIR.',
    );
  }
  if (!isFolder(join(root, 'lessons'))) throw new UsageError(`${root} holds no lessons/ folder.`);
  const workspace = diskWorkspace(root);
  const all = lessonNames(workspace);
  // A path such as lessons/beans-three-ways/ or …/lesson.md names its lesson too.
  const named = words.map(
    (word) =>
      word
        .replaceAll('\\', '/')
        .replace(/\/lesson\.md$/, '')
        .replace(/\/+$/, '')
        .split('/')
        .at(-1) ?? word,
  );
  if (named.length === 0 && all.length === 0)
    throw new UsageError(
      `${join(root, 'lessons')} holds no lesson: a lesson is a folder with a file lesson.md.`,
    );
  return { root, workspace, lessons: named.length > 0 ? [...new Set(named)] : all };
}
