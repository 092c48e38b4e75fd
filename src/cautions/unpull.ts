import { nearest, type Problem, type Report } from '../diagnostics/index.js';
import { cautionProblem } from './codes.js';
import type { Facts, Pulled, Reason, Unpulled } from './facts.js';

/** Topics and words may be wrong about a lesson: the scale of a map is no body scale. Foods and figures are what they are. */
function maybeMistaken(reason: Reason): boolean {
  return reason.by === 'topic' || (reason.by === 'fact' && reason.sentence !== undefined);
}

/**
 * The cautions without those that the lesson takes off with a reason, a role and a day. Only what topics and words
 * pulled can be taken off; what a food, a figure or a call pulls stays, with the problem that says so. Everything
 * taken off is asked about, so that a reviewer sees it.
 */
export function withoutUnpulled(pulled: readonly Pulled[], facts: Facts, report: Report): readonly Pulled[] {
  const off = new Map((facts.unpulled ?? []).map((one) => [one.caution, one]));
  const kept = pulled.flatMap((one): Pulled[] => {
    const entry = off.get(one.caution.id);
    if (!entry) return [one];
    const reasons = one.reasons.filter((reason) => !maybeMistaken(reason));
    if (reasons.length === 0) return [];
    const [first] = reasons;
    report.add(
      cautionProblem('cautions/unpull-in-vain', `\`${entry.caution}\` stays: ${first?.says} pulls it.`, {
        ...placed(entry),
        hint: 'Take the entry out of `unpull`, or take out what pulls the caution.',
      }),
    );
    return [one];
  });
  for (const entry of off.values()) {
    if (kept.some(({ caution }) => caution.id === entry.caution)) continue;
    report.add(
      pulled.some(({ caution }) => caution.id === entry.caution) ? taken(entry) : idle(entry, pulled),
    );
  }
  return kept;
}

function taken(entry: Unpulled): Problem {
  return cautionProblem(
    'cautions/unpulled',
    `\`${entry.caution}\` was taken off by a ${entry.role} on ${entry.date}: ${entry.reason}`,
    { ...placed(entry), hint: 'A reviewer has to agree. Nothing else in the lesson calls for it.' },
  );
}

function idle(entry: Unpulled, pulled: readonly Pulled[]): Problem {
  const ids = pulled.map(({ caution }) => caution.id);
  const near = nearest(entry.caution, ids)[0];
  return cautionProblem('cautions/unpull-in-vain', `Nothing in the lesson pulls \`${entry.caution}\`.`, {
    ...placed(entry),
    hint: near ? `Did you mean \`${near}\`?` : 'Take the entry out of `unpull`.',
  });
}

function placed({ place }: Unpulled) {
  return place ? { place } : {};
}
