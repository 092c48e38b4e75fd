import { nearest, type Place, type Report } from '../diagnostics/index.js';
import { cautionProblem } from './codes.js';
import type { Condition, Test } from './condition.js';
import { type Caution, type Register, SIZES } from './register.js';
import { slotsOf } from './slots.js';

/**
 * Holds the parts of a register against each other: ids, flags and directives that are named exist,
 * severity and heading fit, `apart` holds both ways, words that are looked for are listed, and no
 * wording has a stray brace.
 */
export function agreeing(register: Register, file: string, report: Report): void {
  const ids = new Set(register.cautions.map((c) => c.id));
  const flags = new Set(register.flags.map((f) => f.flag));
  const directives = new Set(register.directives.map((d) => d.directive));
  const start: Place = { file, line: 1, column: 1 };
  const wrong = (place: Place, message: string, name?: string, names?: Iterable<string>) => {
    const near = name !== undefined && names ? nearest(name, names)[0] : undefined;
    report.add(
      cautionProblem('cautions/shape', message, {
        place,
        ...(near ? { hint: `Did you mean \`${near}\`?` } : {}),
      }),
    );
  };
  const named = (
    place: Place,
    who: string,
    list: readonly string[],
    names: ReadonlySet<string>,
    what: string,
  ) => {
    for (const name of list)
      if (!names.has(name))
        wrong(place, `${who} names the ${what} \`${name}\`, which the register does not have.`, name, names);
  };
  const test = (place: Place, who: string, t: Test) => {
    named(place, who, t.within, directives, 'directive');
    if (t.name === 'food' || t.name === 'new') named(place, who, t.values, flags, 'flag');
    if (t.name === 'directive') named(place, who, t.values, directives, 'directive');
    if (t.name === 'pulled') named(place, who, t.values, ids, 'caution');
  };
  const condition = (place: Place, who: string, c: Condition | undefined) => {
    for (const t of c?.flat() ?? []) test(place, who, t);
  };

  for (const caution of register.cautions) {
    const at = caution.at;
    named(at, `\`${caution.id}\``, caution.apart, ids, 'caution');
    headings(caution, wrong);
    for (const fact of caution.facts) {
      const who = `\`${caution.id}#${fact.number}\``;
      condition(at, who, fact.when);
      const looks = fact.when?.flat().some((t) => t.name === 'word') === true;
      if (looks && fact.look.length === 0) wrong(at, `${who} looks for words and lists none.`);
      if (!looks && fact.look.length > 0) wrong(at, `${who} lists words that nothing looks for.`);
    }
    for (const other of caution.apart) {
      const theirs = register.get(other);
      if (theirs?.kind === 'box' && caution.kind === 'box' && !theirs.apart.includes(caution.id))
        wrong(
          theirs.at,
          `\`${caution.id}\` must stand apart from \`${other}\`, but \`${other}\` does not say so.`,
        );
    }
    braces(caution, wrong);
  }
  for (const rule of register.directives) {
    const who = `The directive \`${rule.directive}\``;
    named(start, who, rule.always, ids, 'caution');
    for (const row of rule.when) {
      named(start, who, row.ids, ids, 'caution');
      condition(start, who, row.when);
    }
  }
  for (const flag of register.flags) {
    named(start, `The flag \`${flag.flag}\``, flag.pulls, ids, 'caution');
    if (flag.pulls.length === 0 && flag.waits === undefined)
      wrong(start, `The flag \`${flag.flag}\` pulls nothing and does not say what it waits for.`);
  }
}

type Wrong = (place: Place, message: string) => void;

function headings(caution: Caution, wrong: Wrong): void {
  const { id, at, severity, heading, kind } = caution;
  if (kind !== 'box') {
    if (heading !== undefined) wrong(at, `\`${id}\` is a note, so it has no heading.`);
    return;
  }
  const fits = severity === 'stop' ? heading === 'Stop' || heading === 'Every time' : heading === 'Ask first';
  if (!fits)
    wrong(
      at,
      `\`${id}\` has the severity ${severity}, which does not go with the heading ${heading ?? 'none'}.`,
    );
  if (!caution.place.includes('block')) wrong(at, `\`${id}\` is a box, so it must stand in the block.`);
}

/** A brace that is no slot would print as it is. */
function braces(caution: Caution, wrong: Wrong): void {
  for (const [language, w] of Object.entries(caution.wordings))
    for (const size of SIZES)
      for (const brace of w[size].matchAll(/[{}]/g))
        if (!slotsOf(w[size]).some((s) => s.at <= brace.index && s.end > brace.index))
          wrong(caution.at, `\`${caution.id}\` has a stray brace in its ${size} wording (${language}).`);
}
