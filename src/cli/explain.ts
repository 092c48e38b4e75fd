import { createReport, nearest } from '../diagnostics/index.js';
import { openWorkshop } from '../pipeline/build.js';
import { type NumberStory, numberStory } from '../pipeline/explain.js';
import { readLesson } from '../pipeline/read.js';
import { dayOf, optionLines, readCall, UsageError } from './arguments.js';
import { openWorkspace } from './open.js';
import { hasStop, printJson, printProblems } from './print.js';

const HELP = `platework explain <lesson> [number]

Prints one number's whole story: what it is, what pages print, the food-table row, the formula with its
inputs, the sources, and where it stands. Without a number it lists every number of the lesson.

${optionLines({})}
`;

export async function run(args: readonly string[]): Promise<number> {
  const call = readCall(args, {});
  if (call.flag('help')) {
    process.stdout.write(HELP);
    return 0;
  }
  const [name, id] = call.words;
  if (name === undefined) throw new UsageError('Say which lesson: platework explain <lesson> [number].');
  const { workspace, lessons } = openWorkspace(call, [name]);
  const shop = openWorkshop(workspace);
  const report = createReport();
  const desk = readLesson(workspace, lessons[0] ?? name, shop.tables, shop.settings, dayOf(call), report);
  if (!desk) {
    printProblems(report.problems, workspace, process.stderr);
    return 1;
  }
  const { numbers } = desk.computed;
  if (id === undefined) {
    if (call.flag('json')) printJson(numbers.all);
    else
      for (const n of numbers.all)
        process.stdout.write(`${n.id.padEnd(48)} ${n.text.replaceAll('\u00a0', ' ').padEnd(16)} ${n.what}\n`);
    return 0;
  }
  const story = await numberStory(desk, shop.drawers, id);
  if (!story) {
    if (hasStop(report.problems)) printProblems(report.problems, workspace, process.stderr);
    const near = nearest(
      id,
      numbers.all.map((n) => n.id),
      5,
    );
    throw new UsageError(
      `${name} has no number "${id}".${near.length ? ` Near it: ${near.join(', ')}.` : ''} "platework explain ${name}" lists them.`,
    );
  }
  if (call.flag('json')) printJson(story);
  else process.stdout.write(tell(story));
  return 0;
}

function tell({ number, sources, places, worked }: NumberStory): string {
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  const rows: [string, string][] = [
    ['Number', number.id],
    ['What it is', number.what],
    ['Pages print', plain(number.text)],
    ['Not rounded', worked],
    ...(number.food
      ? [
          [
            'Food',
            `${number.food.id}: ${number.food.source} ${number.food.number}, ${number.food.description} (${number.food.date})`,
          ] as [string, string],
        ]
      : []),
    ['Formula', number.formula],
    ...number.inputs.map((input): [string, string] => [
      `  ${input.name}`,
      `${input.value ?? 'not known'} ${input.unit}  from ${input.source}${input.note ? `: ${input.note}` : ''}`,
    ]),
    ...sources.map((words, index): [string, string] => [index === 0 ? 'Sources' : '', words]),
    ...places.map((place, index): [string, string] => [index === 0 ? 'Stands on' : '', place]),
  ];
  const width = Math.max(...rows.map(([key]) => key.length));
  return `${rows.map(([key, value]) => `${key.padEnd(width)}  ${value}`).join('\n')}\n`;
}
