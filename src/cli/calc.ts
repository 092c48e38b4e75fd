import { FOR_THE_TOOL, type Refusal, type Result } from '../nutrition/index.js';
import { type Option, optionLines, readCall, UsageError } from './arguments.js';
import { calculationNamed, type Given, readGiven } from './calc/call.js';
import type { Answer, Calculation } from './calc/contract.js';
import { finite } from './calc/finite.js';
import { CALCULATIONS } from './calc/list.js';
import { forMachines, helpOf, listText, namesText } from './calc/listing.js';
import { openShelf, sourcesInWords } from './calc/shelf.js';
import { sourceIn, tellAnswer, tellRefusal } from './calc/tell.js';
import { printJson } from './print.js';

const OPTIONS: Readonly<Record<string, Option>> = {
  list: { type: 'boolean', help: 'print every calculation with its inputs' },
};

const help = () => `platework calc <what> name=value …

Works out a formula of the program, and prints the result with its working: the formula, its inputs with
unit and source, whom it holds for, what to mind, and the source. So the program can be checked against a
textbook. Numbers are written with their unit: weight=80kg, height="5 ft 9 in", amount="1 1/2 cups"; a
number alone is taken where one unit fits. What cannot be worked out is refused with its reason, exit code 1.

${namesText()}

  platework calc <what> --help shows the inputs of one.

${optionLines(OPTIONS)}
`;

export async function run(args: readonly string[]): Promise<number> {
  const call = readCall(args, OPTIONS);
  const [name, ...words] = call.words;
  const json = call.flag('json');
  if (call.flag('list')) {
    if (json) printJson(CALCULATIONS.map(forMachines));
    else process.stdout.write(listText());
    return 0;
  }
  if (name === undefined) {
    if (!call.flag('help'))
      throw new UsageError('Say what: platework calc <what> name=value …, or platework calc --list.');
    process.stdout.write(help());
    return 0;
  }
  const named = calculationNamed(name);
  if (!named.ok) {
    if (json) printJson({ calculation: name, refused: refused(named) });
    else process.stdout.write(tellRefusal(named));
    return 1;
  }
  const calculation = named.value;
  if (call.flag('help')) {
    if (json) printJson(forMachines(calculation));
    else process.stdout.write(helpOf(calculation));
    return 0;
  }
  const given = readGiven(calculation, words);
  const result = workOut(calculation, given);
  if (!result.ok) {
    if (json) printJson({ ...heading(calculation, given), refused: refused(result) });
    else process.stdout.write(tellRefusal(result, calculation.ofPeople));
    return 1;
  }
  const sources = sourcesInWords(sourcesOf(calculation, result.value));
  if (json) printJson(toJson(calculation, given, result.value, sources));
  else process.stdout.write(tellAnswer(calculation, result.value, sources));
  return 0;
}

/** The answer; refused, too, when a number of it is too large for the machine. */
function workOut({ compute }: Calculation, { values }: Given): Result<Answer> {
  if (!values.ok) return values;
  const answer = compute(values.value, openShelf());
  return answer.ok ? finite(answer.value) : answer;
}

/** Sources of the calculation, of its answer and of the inputs of its workings; not what the call or arithmetic gave. */
function sourcesOf(calculation: Calculation, { sources = [], results }: Answer): string[] {
  const ofInputs = results.flatMap(({ working }) => working?.inputs.map(sourceIn) ?? []);
  const all = [...calculation.sources, ...sources, ...ofInputs];
  return [...new Set(all)].filter(
    (source) => !/^(?:|given|house|definition of .*|natural logarithm.*)$/.test(source),
  );
}

function heading(calculation: Calculation, { written }: Given) {
  return {
    calculation: calculation.name,
    what: calculation.what,
    given: written,
    ...(calculation.ofPeople ? { use: FOR_THE_TOOL } : {}),
  };
}

function refused({ reason, hint, near }: Refusal) {
  return { reason, hint: hint ?? null, near: near ?? [] };
}

/** An answer for machines: every number as it was computed. */
function toJson(calculation: Calculation, given: Given, answer: Answer, sources: readonly string[]) {
  return {
    ...heading(calculation, given),
    results: answer.results.map(({ name, value, unit, atLeast, says, working }) => ({
      name,
      ...(typeof value === 'object' && value !== null ? value : { value }),
      unit,
      ...(atLeast ? { atLeast } : {}),
      ...(says === undefined ? {} : { says }),
      ...(working === undefined
        ? {}
        : {
            formula: working.formula,
            inputs: working.inputs.map((one) => ({ ...one, source: sourceIn(one) })),
          }),
    })),
    holdsFor: calculation.holdsFor,
    cautions: answer.cautions ?? [],
    checked: answer.checked ?? null,
    sources,
  };
}
