import type { Place, Report } from '../diagnostics/index.js';
import { type HolderPart, type Lesson, type Part, plainText } from '../lesson/index.js';
import { fullerThan, isLevel, type Level } from '../reading/index.js';
import { checkProblem } from './codes.js';
import { contradictions } from './contradictions.js';

/** One text in several levels: a caution's wordings, for example. */
export interface Leveled {
  readonly what: string;
  readonly texts: readonly { readonly level: Level; readonly text: string; readonly place?: Place }[];
}

export interface LevelsAgreeInput {
  readonly lesson: Lesson;
  /** Wordings of the lesson's own cautions and its rewordings. */
  readonly cautions: readonly Leveled[];
}

/**
 * P12: neighboring level blocks are alternatives of one passage; none may say another number, the
 * opposite verb or a "not" that the next one does not have. Saying less is fine. English only.
 */
export function checkLevelsAgree({ lesson, cautions }: LevelsAgreeInput, report: Report): void {
  if (lesson.front.language !== 'en') return;
  for (const group of groupsIn(lesson.parts)) compare({ what: 'this passage', texts: group }, report);
  for (const caution of cautions) compare(caution, report);
}

function compare({ what, texts }: Leveled, report: Report): void {
  const sorted = [...texts].sort((a, b) =>
    fullerThan(a.level, b.level) ? 1 : fullerThan(b.level, a.level) ? -1 : 0,
  );
  sorted.forEach((shorter, i) => {
    const fuller = sorted[i + 1];
    if (!fuller) return;
    for (const found of contradictions(shorter.text, fuller.text))
      report.add(
        checkProblem(
          'P12',
          `The levels ${shorter.level} and ${fuller.level} of ${what} disagree in ${found.kind === 'yes and no' ? found.kind : `a ${found.kind}`}: ${found.why}.`,
          {
            ...(shorter.place ? { place: shorter.place } : {}),
            hint: `"${found.first}" and "${found.second}" must say the same.`,
            actual: found.first,
            expected: [found.second],
          },
        ),
      );
  });
}

type Group = Leveled['texts'];

/** Runs of level blocks that stand next to each other, at any depth. */
function groupsIn(parts: readonly Part[]): Group[] {
  const groups: Group[] = [];
  let run: HolderPart[] = [];
  const close = () => {
    if (run.length > 1) groups.push(run.flatMap(leveled));
    run = [];
  };
  for (const part of parts) {
    const repeats = part.kind === 'holder' && run.some((h) => levelOf(h) === levelOf(part));
    if (part.kind !== 'holder' || part.name !== 'level' || repeats) close();
    if (part.kind !== 'holder') continue;
    if (part.name === 'level') run.push(part);
    else groups.push(...groupsIn(part.parts));
  }
  close();
  return groups;
}

function levelOf(holder: HolderPart): string | undefined {
  return holder.attributes.get('is')?.value;
}

function leveled(holder: HolderPart): Group {
  const level = levelOf(holder);
  if (level === undefined || !isLevel(level)) return [];
  return [{ level, text: wordsIn(holder.parts), place: holder.place }];
}

/** Words of paragraphs, lists, tables and quotes; each ends as a sentence, so that clauses never join. */
function wordsIn(parts: readonly Part[]): string {
  return parts
    .flatMap((part): string[] => {
      switch (part.kind) {
        case 'heading':
        case 'paragraph':
          return [plainText(part.children)];
        case 'list':
          return part.items.map((item) => wordsIn(item.parts));
        case 'table':
          return [part.head, ...part.rows].map((row) =>
            row.map((cell) => plainText(cell.children)).join(', '),
          );
        case 'quote':
          return [wordsIn(part.parts)];
        case 'holder':
          return part.name === 'say' || part.name === 'do' ? [] : [wordsIn(part.parts)];
        case 'code':
        case 'directive':
          return [];
      }
    })
    .map((text) => text.trim())
    .filter((text) => text !== '')
    .map((text) => (/[.?!]$/.test(text) ? text : `${text}.`))
    .join(' ');
}
