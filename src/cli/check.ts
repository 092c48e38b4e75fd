import { nearest, type Problem } from '../diagnostics/index.js';
import { frontMatterJsonSchema } from '../lesson/index.js';
import { buildLesson, openWorkshop } from '../pipeline/build.js';
import { allCodes } from '../pipeline/codes.js';
import { PACK_FILES, packJsonSchema } from '../records/local/index.js';
import { dayOf, type Option, optionLines, readCall, UsageError } from './arguments.js';
import { openWorkspace } from './open.js';
import { hasStop, printJson, printProblems } from './print.js';
import { type Pull, pullLines, pullOf } from './pulls.js';

const OPTIONS: Readonly<Record<string, Option>> = {
  schema: {
    type: 'boolean',
    help: `print the JSON Schema of a front matter, for editors; or of a file of a pack: --schema ${PACK_FILES.join(', ')}`,
  },
  cautions: { type: 'boolean', help: 'list every caution with the topic, row or sentence that pulled it' },
  explain: { type: 'string', value: 'CODE', help: 'say more about one code; "all" lists every code' },
};

const HELP = `platework check [lesson…]

Prints every problem of the lessons, or of the ones named: its place, its code, what is wrong and what
to do. Everything is laid out and looked at as for a build; nothing is written. Exit code 1 when there
is a Stop.

  Stop  withholds the pages that it spoils; a build makes a proof of them
  Ask   needs a person's reason
  Hint  is advice

${optionLines(OPTIONS)}
`;

export async function run(args: readonly string[]): Promise<number> {
  const call = readCall(args, OPTIONS);
  if (call.flag('help')) {
    process.stdout.write(HELP);
    return 0;
  }
  if (call.flag('schema')) {
    printJson(schemaOf(call.words));
    return 0;
  }
  const code = call.text('explain');
  if (code !== undefined) return explain(code, call.flag('json'));
  const on = dayOf(call);
  const { workspace, lessons } = openWorkspace(call);
  const shop = openWorkshop(workspace);
  const all: { lesson: string; problems: readonly Problem[]; cautions: readonly Pull[] }[] = [];
  for (const lesson of lessons) {
    const { problems, pulled } = await buildLesson(shop, lesson, { on });
    all.push({ lesson, problems, cautions: pulled.map(pullOf) });
    if (call.flag('json')) continue;
    process.stdout.write(`${lesson}\n`);
    if (call.flag('cautions')) for (const line of pullLines(pulled)) process.stdout.write(`${line}\n`);
    printProblems(problems, workspace, process.stdout);
  }
  if (call.flag('json')) printJson(all);
  return all.some(({ problems }) => hasStop(problems)) ? 1 : 0;
}

/** The front matter, or the file of a site's pack that is named. */
function schemaOf([name, more]: readonly string[]): unknown {
  if (name === undefined) return frontMatterJsonSchema();
  const file = PACK_FILES.find((one) => one === name.replace(/\.yaml$/, ''));
  if (file && more === undefined) return packJsonSchema(file);
  const near = nearest(name, PACK_FILES)[0];
  throw new UsageError(
    `--schema takes no word, or one of ${PACK_FILES.join(', ')}.${near && !file ? ` Did you mean ${near}?` : ''}`,
  );
}

function explain(code: string, json: boolean): number {
  const codes = allCodes();
  if (code === 'all') {
    if (json) printJson(Object.fromEntries(codes));
    else
      for (const [name, info] of codes)
        process.stdout.write(`${name.padEnd(28)} ${info.severity.padEnd(5)} ${info.rule}\n`);
    return 0;
  }
  const info = codes.get(code) ?? codes.get(code.toUpperCase());
  if (!info) {
    const near = nearest(code, codes.keys(), 3);
    throw new UsageError(
      `There is no code "${code}".${near.length ? ` Did you mean ${near.join(' or ')}?` : ''} "--explain all" lists them.`,
    );
  }
  if (json) printJson({ code, ...info });
  else process.stdout.write(`${code}  (${info.severity})\n\n${info.rule}\n\n${info.about}\n`);
  return 0;
}
