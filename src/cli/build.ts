import { join } from 'node:path';
import type { Problem } from '../diagnostics/index.js';
import { type Built, buildLesson, openWorkshop, type Progress } from '../pipeline/build.js';
import { dayOf, type Option, optionLines, readCall } from './arguments.js';
import { replaceFolder } from './disk.js';
import { openWorkspace } from './open.js';
import { hasStop, printJson, printProblems } from './print.js';

const OPTIONS: Readonly<Record<string, Option>> = {
  out: { type: 'string', value: 'DIR', help: 'where files go (out/ in the workspace when left out)' },
};

const HELP = `platework build [lesson…]

Builds every lesson, or the ones named, into out/<lesson>/: handouts at each level on each paper, in
color and in one ink; worksheet and key; slides; notes; staff and review sheets; figures; numbers.json
and manifest.json. What a Stop withholds is still built as a proof that says so on every page.

${optionLines(OPTIONS)}
`;

export async function run(args: readonly string[]): Promise<number> {
  const call = readCall(args, OPTIONS);
  if (call.flag('help')) {
    process.stdout.write(HELP);
    return 0;
  }
  const on = dayOf(call);
  const { root, workspace, lessons } = openWorkspace(call);
  const out = call.text('out') ?? join(root, 'out');
  const shop = openWorkshop(workspace);
  const progress = progressLine(process.stderr);
  const results: Built[] = [];
  for (const lesson of lessons) {
    const built = await buildLesson(shop, lesson, { on, progress: progress.show });
    progress.clear();
    if (built.files.length > 0) replaceFolder(join(out, lesson), built.files);
    results.push(built);
    if (!call.flag('json')) report(built, out, workspace);
  }
  if (call.flag('json')) printJson(results.map(summary));
  const failed = results.some((built) => built.files.length === 0 || hasStop(built.problems));
  return failed ? 1 : 0;
}

function report(built: Built, out: string, workspace: Parameters<typeof printProblems>[1]): void {
  if (built.problems.length > 0) printProblems(built.problems, workspace, process.stderr);
  const drafts = built.files.filter((file) => file.draft?.length).length;
  const what =
    built.files.length === 0
      ? 'nothing was built; what was there before is untouched'
      : `${built.files.length} files in ${join(out, built.lesson)}${drafts > 0 ? `, ${drafts} of them drafts` : ''}`;
  process.stdout.write(`${built.lesson}: ${what}\n`);
}

function summary({ lesson, files, problems }: Built): {
  lesson: string;
  files: unknown;
  problems: readonly Problem[];
} {
  return {
    lesson,
    files: files.map(({ path, bytes, draft }) => ({
      path,
      bytes: bytes.length,
      ...(draft?.length ? { draft } : {}),
    })),
    problems,
  };
}

/** One line that is written over, on a terminal only. */
function progressLine(to: NodeJS.WriteStream): {
  readonly show: (step: Progress) => void;
  readonly clear: () => void;
} {
  if (!to.isTTY) return { show: () => {}, clear: () => {} };
  return {
    show: ({ lesson, file, done, of }) => to.write(`\r\u001b[K${lesson}: ${done + 1} of ${of}, ${file}`),
    clear: () => to.write('\r\u001b[K'),
  };
}
