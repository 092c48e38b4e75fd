import { pull } from '../cautions/index.js';
import { type CodeTable, problemsOf, type Report } from '../diagnostics/index.js';
import { DIRECTIVES } from '../directives/list.js';
import { isSpoken } from '../languages/index.js';
import { parseLesson } from '../lesson/index.js';
import { isSource } from '../records/index.js';
import { computeLesson, textsIn } from './compute.js';
import { factsOf } from './facts.js';
import { noticePassages } from './notices.js';
import { pictureReader, picturesIn } from './pictures.js';
import type { Settings } from './settings.js';
import type { Desk } from './sheets.js';
import { loadLocal, type Tables, withLocalFoods, withNotices } from './tables.js';
import { fillProblem } from './to-fill.js';
import type { Workspace } from './workspace.js';

export const readCodes = {
  'pipeline/no-lesson': {
    severity: 'stop',
    rule: 'A lesson is a folder in lessons/ that holds lesson.md.',
    about: 'Call the lesson by its folder name. `platework build` without a name builds all of them.',
  },
  'pipeline/language': {
    severity: 'stop',
    rule: 'A lesson is built only in languages that the program speaks.',
    about:
      'Each language needs its own policy for numbers and dates and all printed terms. Nothing falls back to English in silence.',
  },
  'pipeline/no-source': {
    severity: 'stop',
    rule: 'Every source that a lesson names must stand in assets/sources.yaml.',
    about: 'A number or claim whose source cannot be printed cannot be traced.',
  },
} as const satisfies CodeTable;
const problem = problemsOf(readCodes);

export const LESSON_FILE = 'lesson.md';

/** Names of all lessons of a workspace, sorted. */
export function lessonNames(workspace: Workspace): readonly string[] {
  return workspace
    .folders('lessons')
    .filter((name) => workspace.read(`lessons/${name}/${LESSON_FILE}`) !== undefined);
}

/** Reads, computes and pulls: everything that the outputs of one lesson are made from. */
export function readLesson(
  workspace: Workspace,
  slug: string,
  shared: Tables,
  settings: Settings,
  on: string,
  report: Report,
): Desk | undefined {
  const file = `lessons/${slug}/${LESSON_FILE}`;
  const bytes = workspace.read(file);
  if (!bytes) {
    report.add(
      problem('pipeline/no-lesson', `There is no lesson "${slug}": ${file} is not there.`, {
        hint: `Lessons here: ${lessonNames(workspace).join(', ') || 'none'}.`,
      }),
    );
    return undefined;
  }
  const lesson = parseLesson(
    bytes,
    file,
    DIRECTIVES.map((directive) => directive.schema),
    report,
  );
  if (!lesson) return undefined;
  const { language } = lesson.front;
  if (!isSpoken(language)) {
    const place = lesson.front.places.get('language');
    report.add(
      problem('pipeline/language', `The program does not speak "${language}" yet.`, {
        ...(place ? { place } : {}),
        hint: 'Write the lesson in English.',
      }),
    );
    return undefined;
  }
  const site = lesson.front.site ?? settings.site;
  const withFoods = withLocalFoods(shared, workspace, site, on, report);
  const local = loadLocal(workspace, site, withFoods, on, report);
  const tables = withNotices(withFoods, local);
  for (const [index, id] of lesson.front.sources.entries()) {
    const found = tables.sources.find(id);
    const place = lesson.front.places.get(`sources.${index}`);
    if (!isSource(found))
      report.add(
        problem('pipeline/no-source', `There is no source "${id}".`, {
          ...(place ? { place } : {}),
          hint: found.near.length
            ? `Did you mean ${found.near.join(', ')}?`
            : 'Add it to assets/sources.yaml.',
        }),
      );
  }
  const computed = computeLesson(lesson, { ...tables, prices: local.prices, on }, report);
  const own = factsOf(computed);
  const facts = { ...own, texts: [...own.texts, ...noticePassages(local.notices, on)] };
  const pulled = pull(tables.register, facts, report);
  const readPicture = pictureReader(workspace, `lessons/${slug}`);
  for (const { nodes } of textsIn(lesson.parts))
    for (const node of picturesIn(nodes)) readPicture(node, report);
  const desk: Desk = { computed, facts, pulled, tables, local, language, on, readPicture };
  const fill = fillProblem(desk);
  if (fill) report.add(fill);
  return desk;
}
