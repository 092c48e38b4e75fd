import { nearest, type Place, type Report } from '../diagnostics/index.js';
import type { Level } from '../reading/index.js';
import { cautionProblem } from './codes.js';
import { type Evidence, evidence } from './evaluate.js';
import type { Facts, Pulled, Reason } from './facts.js';
import type { Caution, Register } from './register.js';
import { figureSlots } from './slots.js';
import { withoutUnpulled } from './unpull.js';

/**
 * Every caution that a lesson pulls, in the order of the register with the lesson's own last, each
 * with everything that pulled it. Standard lines that a page pulls are added by `standingLines`.
 *
 * Reported: topics, flags and ids that are not known, rewordings, and that words were not looked for
 * when the texts are not English.
 */
export function pull(register: Register, facts: Facts, report: Report): readonly Pulled[] {
  checkNames(register, facts, report);
  const reasons = new Map<string, Reason[]>();
  const add = (id: string, reason: Reason) => {
    const list = reasons.get(id) ?? [];
    reasons.set(id, list);
    if (!list.some((r) => same(r, reason))) list.push(reason);
  };
  byTopic(register, facts, add);
  byFlag(register, facts, add);
  byDirective(register, facts, add);
  for (const { id, place } of lessonCalls(facts))
    add(id, { by: 'lesson', trigger: id, says: 'called in the lesson', ...at(place) });
  for (const own of facts.own)
    add(own.id, { by: 'lesson', trigger: own.id, says: 'the lesson’s own', place: own.at });
  // Last, since facts may ask what else is pulled.
  byFact(register, facts, reasons, add);

  const slots = Object.fromEntries([
    // No directive can have this id.
    ...(facts.slots ? [['(lesson)', facts.slots] as const] : []),
    ...facts.directives.map((d) => [d.id, figureSlots(d, facts.language)] as const),
  ]);
  const inOrder = [...register.cautions, ...facts.own];
  const pulled = inOrder.flatMap((caution): Pulled[] => {
    const why = reasons.get(caution.id);
    return why ? [{ caution, reasons: why, reworded: rewordings(caution, facts, report), slots }] : [];
  });
  return withoutUnpulled(pulled, facts, report);
}

/** A caution that a level words anew is called by that too: a level never removes one. */
function lessonCalls(facts: Facts): readonly { readonly id: string; readonly place?: Place }[] {
  return [...facts.called, ...facts.rewordings];
}

type Add = (id: string, reason: Reason) => void;

const at = (place: Place | undefined) => (place ? { place } : {});

function same(a: Reason, b: Reason): boolean {
  return (
    a.by === b.by &&
    a.trigger === b.trigger &&
    a.directive === b.directive &&
    a.sentence === b.sentence &&
    a.place?.line === b.place?.line &&
    a.place?.column === b.place?.column
  );
}

function reasonOf(by: Reason['by'], trigger: string, says: string, e: Evidence): Reason {
  return {
    by,
    trigger,
    says: e.says === undefined ? says : e.says,
    ...at(e.place),
    ...(e.directive === undefined ? {} : { directive: e.directive }),
    ...(e.sentence === undefined ? {} : { sentence: e.sentence }),
  };
}

function byTopic(register: Register, facts: Facts, add: Add): void {
  for (const caution of register.cautions)
    for (const topic of facts.topics)
      if (caution.tags.includes(topic.name))
        add(caution.id, {
          by: 'topic',
          trigger: topic.name,
          says: `topic ${topic.name}`,
          ...at(topic.place),
        });
}

function byFlag(register: Register, facts: Facts, add: Add): void {
  const pulls = new Map(register.flags.map((f) => [f.flag, f.pulls]));
  for (const d of facts.directives)
    for (const { food, place } of d.foods)
      for (const flag of food.flags)
        for (const id of pulls.get(flag) ?? [])
          add(id, {
            by: 'flag',
            trigger: flag,
            says: `${food.name} in ${d.name}`,
            directive: d.id,
            ...at(place ?? d.place),
          });
}

function byDirective(register: Register, facts: Facts, add: Add): void {
  const pulled: ReadonlySet<string> = new Set();
  for (const d of facts.directives) {
    const rule = register.directives.find((r) => r.directive === d.name);
    if (!rule) continue;
    for (const id of rule.always)
      add(id, {
        by: 'directive',
        trigger: d.name,
        says: `${d.name}, always`,
        directive: d.id,
        ...at(d.place),
      });
    for (const row of rule.when) {
      const found = row.when && evidence(row.when, { facts, only: d, pulled });
      if (!found) continue;
      for (const id of row.ids)
        for (const e of found)
          add(id, { ...reasonOf('directive', d.name, `${d.name}: ${row.says}`, e), directive: d.id });
    }
  }
}

/** Facts may wait for other cautions (`pulled`), so they are gone through until nothing new comes. */
function byFact(register: Register, facts: Facts, reasons: ReadonlyMap<string, Reason[]>, add: Add): void {
  for (let before = -1; before !== reasons.size; ) {
    before = reasons.size;
    for (const caution of register.cautions) {
      if (caution.kind === 'line') continue;
      for (const fact of caution.facts) {
        const found = fact.when && evidence(fact.when, { facts, pulled: new Set(reasons.keys()) }, fact);
        for (const e of found ?? [])
          add(caution.id, reasonOf('fact', `${caution.id}#${fact.number}`, fact.says, e));
      }
    }
  }
}

function checkNames(register: Register, facts: Facts, report: Report): void {
  const tags = new Set([...register.cautions.flatMap((c) => c.tags), ...register.quietTopics]);
  for (const { name, place } of facts.topics) {
    if (tags.has(name)) continue;
    const near = nearest(name, tags)[0];
    report.add(
      cautionProblem('cautions/unknown-topic', `No caution and no other entry knows the topic \`${name}\`.`, {
        ...at(place),
        hint: near
          ? `Did you mean \`${near}\`?`
          : 'Take a topic from the register, or add it to the quiet topics.',
        actual: name,
      }),
    );
  }
  const flags = new Set(register.flags.map((f) => f.flag));
  for (const { food, place } of facts.directives.flatMap((d) => d.foods))
    for (const flag of food.flags)
      if (!flags.has(flag))
        report.add(
          cautionProblem(
            'cautions/unknown-flag',
            `The food "${food.name}" carries the flag \`${flag}\`, which the register does not know.`,
            {
              ...at(place),
              hint: 'Write a flag of the register in the food table.',
              actual: flag,
            },
          ),
        );
  const own = new Set(facts.own.map((c) => c.id));
  facts.own.forEach((caution, i) => {
    if (facts.own.findIndex((c) => c.id === caution.id) < i)
      report.add(
        cautionProblem('cautions/own', `The lesson has two cautions \`${caution.id}\`.`, {
          place: caution.at,
          hint: 'Give one of them another id, or merge them by hand.',
        }),
      );
  });
  const boxes = register.cautions.map((c) => c.id);
  for (const { id, place } of lessonCalls(facts)) {
    if (own.has(id) || boxes.includes(id)) continue;
    const near = nearest(id, boxes)[0];
    report.add(
      cautionProblem('cautions/unknown-id', `The register has no caution \`${id}\`.`, {
        ...at(place),
        hint: near
          ? `Did you mean \`${near}\`?`
          : 'Write an id of the register, or the caution itself with its three wordings.',
        actual: id,
      }),
    );
  }
  if (facts.language !== 'en' && facts.texts.length > 0)
    report.add(
      cautionProblem(
        'cautions/words-not-checked',
        `Words not checked: the texts are in \`${facts.language}\`.`,
        {
          hint: 'Read them for foods, medicine and advice that need a caution.',
          spoils: { languages: [facts.language] },
        },
      ),
    );
}

function rewordings(caution: Caution, facts: Facts, report: Report): Partial<Record<Level, string>> {
  const words: Partial<Record<Level, string>> = {};
  for (const r of facts.rewordings) {
    if (r.id !== caution.id) continue;
    words[r.level] = r.text;
    if (!caution.own)
      report.add(
        cautionProblem('cautions/reworded', `The lesson words \`${r.id}\` anew at \`${r.level}\`.`, {
          place: r.place,
          hint: 'Have a professional read the new words, or take them out.',
          spoils: { levels: [r.level] },
        }),
      );
  }
  return words;
}
