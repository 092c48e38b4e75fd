import { cautionProblem, type Register } from '../cautions/index.js';
import type { Report } from '../diagnostics/index.js';
import type { Refuse } from '../directives/contract.js';

/**
 * A way to refuse by the register. The Stop says why and what to do instead; the words of a refusal that keeps
 * content from being made are also put into `said`, to stand in its place on the draft.
 */
export function refusing(register: Register, said: string[], report: Report): Refuse {
  return (id, place, slots = {}) => {
    const refusal = register.refusals.find((one) => one.id === id);
    if (!refusal) throw new Error(`The register holds no refusal ${id}.`);
    const fill = (words: string) =>
      words.replace(/\{([a-z-]+)\}/g, (_, name: string) => {
        const value = slots[name] ?? atHome(register, name);
        if (value === undefined) throw new Error(`Nothing fills {${name}} of the refusal ${id}.`);
        return value;
      });
    const words = fill(refusal.say);
    if (refusal.kind === 'refuse') said.push(words);
    report.add(
      cautionProblem(
        refusal.kind === 'refuse' ? 'cautions/refused' : 'cautions/withheld',
        `${words} (${[id, ...refusal.checks].join(', ')})`,
        {
          place,
          hint: fill(refusal.instead),
          actual: id,
        },
      ),
    );
  };
}

/** Temperatures and ages of the register, as the home country prints them. */
function atHome(register: Register, name: string): string | undefined {
  return register.values.us?.[name]?.print;
}
