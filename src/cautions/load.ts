import type { Place, Report } from '../diagnostics/index.js';
import { readYaml, shaped, type YamlText } from '../records/index.js';
import { agreeing } from './agree.js';
import { cautionProblem } from './codes.js';
import { type Condition, parseCondition } from './condition.js';
import { parsePhrase } from './phrases.js';
import type {
  Caution,
  DirectiveRule,
  Fact,
  Flag,
  Refusal,
  Register,
  RegisterSource,
  SlotValue,
} from './register.js';
import { type BoxData, type FactData, type LineData, type NoteData, registerFile } from './schema.js';

/** One file of the register: its name and its text. */
export interface RegisterText {
  readonly file: string;
  readonly text: string;
}

interface Parts {
  readonly cautions: Caution[];
  readonly directives: DirectiveRule[];
  readonly flags: Flag[];
  readonly values: Record<string, Record<string, SlotValue>>;
  readonly refusals: Refusal[];
  readonly sources: RegisterSource[];
  readonly quietTopics: string[];
}

/**
 * Reads the whole register. The files are taken in the order of their names, which is also the order
 * in which boxes of one heading print. Every entry that cannot be read, and everything in which two
 * entries disagree, is reported at its place; what can be read is returned all the same.
 */
export function loadRegister(files: readonly RegisterText[], report: Report): Register {
  const parts: Parts = {
    cautions: [],
    directives: [],
    flags: [],
    values: {},
    refusals: [],
    sources: [],
    quietTopics: [],
  };
  for (const { file, text } of [...files].sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0))) {
    const yaml = readYaml(text, file, fault, report);
    const data = yaml && shaped(registerFile, yaml, fault, report);
    if (!data) continue;
    data.cautions?.forEach((box, i) => {
      parts.cautions.push(boxOf(box, yaml, ['cautions', i], report));
    });
    data.lines?.forEach((line, i) => {
      parts.cautions.push(lineOf(line, yaml, ['lines', i], report));
    });
    data.notes?.forEach((note, i) => {
      parts.cautions.push(noteOf(note, yaml.place(['notes', i, 'id'])));
    });
    for (const [directive, rule] of Object.entries(data.directives ?? {}))
      parts.directives.push({
        directive,
        always: rule.always,
        when: rule.when.map((row, i) => ({
          ids: row.ids,
          says: row.says,
          ...whenOf(row, yaml, ['directives', directive, 'when', i], report),
          ...(row.waits === undefined ? {} : { waits: row.waits }),
        })),
      });
    for (const flag of data.flags ?? [])
      parts.flags.push({
        flag: flag.flag,
        foods: flag.foods,
        pulls: flag.pulls,
        ...(flag.waits === undefined ? {} : { waits: flag.waits }),
      });
    for (const [country, slots] of Object.entries(data.values ?? {}))
      parts.values[country] = { ...parts.values[country], ...(slots as Record<string, SlotValue>) };
    parts.refusals.push(...(data.refusals ?? []));
    parts.sources.push(...(data.sources ?? []));
    parts.quietTopics.push(...(data.quiet_topics ?? []));
  }
  const byId = new Map<string, Caution>();
  for (const caution of parts.cautions) {
    if (byId.has(caution.id))
      report.add(fault(`\`${caution.id}\` stands twice in the register.`, { place: caution.at }));
    else byId.set(caution.id, caution);
  }
  const register: Register = { ...parts, cautions: [...byId.values()], get: (id) => byId.get(id) };
  agreeing(register, files[0]?.file ?? 'cautions', report);
  return register;
}

const fault = (message: string, more: { readonly place: Place; readonly hint?: string }) =>
  cautionProblem('cautions/shape', message, more);

function boxOf(box: BoxData, yaml: YamlText, path: readonly PropertyKey[], report: Report): Caution {
  return {
    id: box.id,
    kind: box.severity === 'note' ? 'note' : 'box',
    title: box.title,
    severity: box.severity,
    ...(box.heading === undefined ? {} : { heading: box.heading }),
    checks: box.checks,
    who: box.who,
    why: box.why,
    tags: box.tags,
    facts: box.facts.map((f, i) => factOf(f, i + 1, yaml, [...path, 'facts', i], report)),
    place: box.place,
    apart: box.apart,
    ...(box.guards === undefined ? {} : { guards: box.guards }),
    wordings: { en: { short: box.short, plain: box.plain, fuller: box.fuller } },
    basis: box.basis.map((b) => ({
      fact: b.fact,
      mark: b.mark,
      ...(b.source === undefined ? {} : { source: b.source }),
    })),
    confirm: box.confirm,
    ...(box.confirmed ? { confirmed: box.confirmed } : {}),
    reviewMonths: box.review_months,
    at: yaml.place([...path, 'id']),
  };
}

function factOf(
  fact: FactData,
  number: number,
  yaml: YamlText,
  path: readonly PropertyKey[],
  report: Report,
): Fact {
  return {
    number,
    says: fact.says,
    ...whenOf(fact, yaml, path, report),
    look: (fact.look ?? []).map(parsePhrase),
    but: (fact.but ?? []).map(parsePhrase),
    ...(fact.waits === undefined ? {} : { waits: fact.waits }),
  };
}

/** A trigger without `when` must say what it waits for, so that none is forgotten. */
function whenOf(
  entry: { readonly when?: string | undefined; readonly waits?: string | undefined },
  yaml: YamlText,
  path: readonly PropertyKey[],
  report: Report,
): { readonly when?: Condition } {
  if (entry.when === undefined) {
    if (entry.waits === undefined)
      report.add(
        fault('This trigger has neither `when` nor `waits`.', {
          place: yaml.place(path),
          hint: 'Write the condition, or what must exist before it can be evaluated.',
        }),
      );
    return {};
  }
  const condition = parseCondition(entry.when);
  if (!('wrong' in condition)) return { when: condition };
  report.add(
    fault(`The condition cannot be read: ${condition.wrong}.`, { place: yaml.place([...path, 'when']) }),
  );
  return {};
}

function lineOf(line: LineData, yaml: YamlText, path: readonly PropertyKey[], report: Report): Caution {
  return {
    id: line.id,
    kind: 'line',
    title: line.says,
    severity: 'note',
    checks: line.checks,
    who: 'everyone',
    why: line.says,
    tags: [],
    facts: [factOf({ says: line.says, when: line.when }, 1, yaml, path, report)],
    place: line.place,
    apart: [],
    wordings: { en: { short: line.short, plain: line.plain, fuller: line.fuller } },
    basis: [],
    confirm: line.confirm,
    ...(line.confirmed ? { confirmed: line.confirmed } : {}),
    reviewMonths: line.review_months,
    at: yaml.place([...path, 'id']),
  };
}

function noteOf(note: NoteData, at: Place): Caution {
  return {
    id: note.id,
    kind: 'note',
    title: note.says,
    severity: 'note',
    checks: [],
    who: 'everyone',
    why: note.says,
    tags: [],
    facts: [],
    place: note.place,
    apart: [],
    wordings: { en: { short: note.short, plain: note.plain, fuller: note.fuller } },
    basis: [],
    confirm: note.confirm,
    ...(note.confirmed ? { confirmed: note.confirmed } : {}),
    reviewMonths: note.review_months,
    at,
  };
}
