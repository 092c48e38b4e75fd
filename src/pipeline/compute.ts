import type { Register } from '../cautions/index.js';
import { nearest, type Place, type Problem, problemsOf, type Report } from '../diagnostics/index.js';
import type { Computed, Directive, ReadContext, Reference } from '../directives/contract.js';
import { DIRECTIVES } from '../directives/list.js';
import type { Published } from '../directives/published.js';
import { kebab, type Numbers, numbersOf, type ShownNumber } from '../document/index.js';
import { formatQuantity } from '../languages/index.js';
import type { DirectivePart, HolderPart, InlineNode, Lesson, Part } from '../lesson/index.js';
import { isLevel, type Level } from '../reading/index.js';
import { isSource, isTerm, type Sources, type TermList } from '../records/index.js';
import { refusing } from './refusing.js';

/** One directive of a lesson with what was read and computed; nothing after a problem. */
export interface Entry {
  readonly part: DirectivePart;
  readonly kind: Directive;
  readonly values?: unknown;
  readonly computed?: Computed;
  /** Why its content is not made; these words stand in its place. */
  readonly refused?: readonly string[];
}

/** A lesson with all its numbers. */
export interface ComputedLesson {
  readonly lesson: Lesson;
  readonly entries: readonly Entry[];
  readonly entryOf: (part: DirectivePart) => Entry | undefined;
  readonly byId: (id: string) => Entry | undefined;
  readonly numbers: Numbers;
}

export const computeCodes = {
  'pipeline/no-such-number': {
    severity: 'stop',
    rule: 'A number in running text must be one that a figure of the lesson computes.',
    about:
      'Write :n[name]{of=id} with a name that the directive computes, and row="…" where it has rows. ' +
      '`platework explain LESSON` lists every number of a lesson.',
  },
  'pipeline/no-such-term': {
    severity: 'ask',
    rule: 'A word that a lesson marks as a term stands in the term list.',
    about:
      'A marked word is explained at its first use and translated in the one approved way. Outside the list it gets neither. Write a form that the list has, or add the word with its meaning.',
  },
  'pipeline/reference': {
    severity: 'stop',
    rule: 'A directive refers to another of its lesson that computes what it needs, and never in a circle.',
    about:
      'Write the id of a directive that computes a dish, a food or what is taken away, as @id in a row or in the attribute that asks for it.',
  },
  'pipeline/no-such-source': {
    severity: 'stop',
    rule: 'A source in running text must stand in assets/sources.yaml.',
    about:
      'A pointer to a source that cannot be printed leads nowhere. Write the id of a source as the list has it, or add the source.',
  },
} as const;
const problem = problemsOf(computeCodes);

/** What reading may ask that does not depend on the lesson. */
export type ReadTables = Omit<ReadContext, 'report' | 'language' | 'level' | 'front' | 'refuse'>;

/** Reads every directive of a lesson, then computes them, those that others refer to first. */
export function computeLesson(lesson: Lesson, tables: ReadTables, report: Report): ComputedLesson {
  const entries = inOrder(readAll(lesson, tables, report), tables.register, report);
  const numbers = numbersOf(
    entries.flatMap((entry) =>
      (entry.computed?.numbers ?? []).map(
        (n): ShownNumber => ({ ...n, text: formatQuantity(n, lesson.front.language) }),
      ),
    ),
  );
  const byPart = new Map(entries.map((entry) => [entry.part, entry]));
  const ids = new Map(entries.flatMap((entry) => (entry.part.id ? [[entry.part.id, entry] as const] : [])));
  const computed: ComputedLesson = {
    lesson,
    entries,
    entryOf: (part) => byPart.get(part),
    byId: (id) => ids.get(id),
    numbers,
  };
  checkText(computed, tables, report);
  return computed;
}

/** A directive that was read and waits for computing. */
type Waiting = Omit<Entry, 'computed'> & { readonly refused: string[] };

function readAll(lesson: Lesson, tables: ReadTables, report: Report): Waiting[] {
  const kinds = new Map(DIRECTIVES.map((kind) => [kind.schema.name, kind]));
  const { front } = lesson;
  return directivesIn(lesson.parts).flatMap(({ part, level }) => {
    const kind = kinds.get(part.name);
    if (!kind) return [];
    const refused: string[] = [];
    const refuse = refusing(tables.register, refused, report);
    const context = { ...tables, front, refuse, report, language: front.language };
    const values = kind.read(part, level ? { ...context, level } : context);
    return [{ part, kind, refused, ...(values === undefined ? {} : { values }) }];
  });
}

/** Computes each directive after those that it refers to; a circle is reported where it closes. */
function inOrder(waiting: readonly Waiting[], register: Register, report: Report): Entry[] {
  const done = new Map<Waiting, Computed | undefined>();
  const open: Waiting[] = [];
  const byId = new Map(waiting.flatMap((one) => (one.part.id ? [[one.part.id, one] as const] : [])));
  const computeOne = (one: Waiting): void => {
    if (done.has(one)) return;
    open.push(one);
    const references = one.values === undefined ? [] : (one.kind.refersTo?.(one.values) ?? []);
    const found = references.map((reference) => follow(reference, one));
    open.pop();
    const { values, kind, refused } = one;
    done.set(
      one,
      values === undefined || found.includes(false)
        ? undefined
        : kind.compute(values, {
            report,
            refuse: refusing(register, refused, report),
            published: (id) => {
              const other = byId.get(id);
              return other && done.get(other)?.publishes;
            },
          }),
    );
  };
  /** False when the other has nothing to give; the reason was reported. */
  const follow = (reference: Reference, from: Waiting): boolean => {
    const other = byId.get(reference.id);
    if (!other || open.includes(other)) {
      report.add(referenceProblem(reference, other ? 'circle' : 'missing', [...byId.keys()]));
      return false;
    }
    computeOne(other);
    const computed = done.get(other);
    if (computed?.publishes?.kind === reference.wants) return true;
    if (computed) report.add(referenceProblem(reference, 'other', publishersOf(reference, from)));
    return false;
  };
  const publishersOf = ({ wants }: Reference, from: Waiting): string[] => {
    for (const one of waiting) if (one !== from && !open.includes(one)) computeOne(one);
    return waiting.flatMap((one) =>
      done.get(one)?.publishes?.kind === wants && one.part.id ? [one.part.id] : [],
    );
  };
  for (const one of waiting) computeOne(one);
  return waiting.map((one) => {
    const { refused, ...entry } = one;
    const computed = done.get(one);
    return { ...entry, ...(computed ? { computed } : {}), ...(refused.length > 0 ? { refused } : {}) };
  });
}

const WHAT: Readonly<Record<Published['kind'], string>> = {
  dish: 'a dish',
  food: 'a food',
  less: 'what is taken away',
};

function referenceProblem(
  { id, place, wants }: Reference,
  why: 'missing' | 'circle' | 'other',
  ids: readonly string[],
): Problem {
  const near = nearest(id, ids);
  const others = near.length > 0 ? near : ids.slice(0, 5);
  const message = {
    missing: `No directive of this lesson has the id "${id}".`,
    circle: `"${id}" refers back to this directive, so that neither can be computed.`,
    other: `"${id}" does not compute ${WHAT[wants]}.`,
  }[why];
  const offer =
    others.length > 0 ? `Such ids here: ${others.join(', ')}.` : `The lesson needs ${WHAT[wants]} first.`;
  return problem('pipeline/reference', message, {
    place,
    hint: why === 'circle' ? 'Let one of the two stand on its own.' : offer,
    actual: id,
    expected: others,
  });
}

interface Standing {
  readonly part: DirectivePart;
  /** The level of the block that it stands in. */
  readonly level?: Level;
}

/** Every directive in the lesson, in the order of the text, those inside others too. */
function directivesIn(parts: readonly Part[], level?: Level): Standing[] {
  return parts.flatMap((part): Standing[] => {
    switch (part.kind) {
      case 'directive':
        return [{ part, ...(level ? { level } : {}) }, ...directivesIn(part.parts, level)];
      case 'holder':
        return directivesIn(part.parts, levelOf(part) ?? level);
      case 'quote':
        return directivesIn(part.parts, level);
      case 'list':
        return part.items.flatMap((item) => directivesIn(item.parts, level));
      default:
        return [];
    }
  });
}

function levelOf(holder: HolderPart): Level | undefined {
  const is = holder.attributes.get('is')?.value ?? '';
  return holder.name === 'level' && isLevel(is) ? is : undefined;
}

/** Every stretch of running text in parts, with what kind of text it is. */
export function textsIn(
  parts: readonly Part[],
): { readonly nodes: readonly InlineNode[]; readonly place: Place }[] {
  return parts.flatMap((part): { nodes: readonly InlineNode[]; place: Place }[] => {
    switch (part.kind) {
      case 'heading':
      case 'paragraph':
        return [{ nodes: part.children, place: part.place }];
      case 'list':
        return part.items.flatMap((item) => textsIn(item.parts));
      case 'table':
        return [part.head, ...part.rows].flat().map((cell) => ({ nodes: cell.children, place: cell.place }));
      case 'quote':
      case 'holder':
        return textsIn(part.parts);
      case 'directive':
        return [
          ...(part.label ? [{ nodes: part.label, place: part.place }] : []),
          ...part.text.map((line) => ({ nodes: line.inlines, place: line.place })),
          ...rowTexts(part.rows),
          ...textsIn(part.parts),
        ];
      case 'code':
        return [];
    }
  });
}

function rowTexts(
  rows: DirectivePart['rows'],
): { readonly nodes: readonly InlineNode[]; readonly place: Place }[] {
  return rows.flatMap((row) => [{ nodes: row.inlines, place: row.place }, ...rowTexts(row.rows)]);
}

/** The id of the number that `:n[…]` means. */
export function numberId(node: InlineNode & { readonly kind: 'number' }): string {
  return [node.of, ...(node.row === undefined ? [] : [kebab(node.row)]), kebab(node.name)].join('.');
}

/** Every number, source and term that running text names must be there. */
function checkText(
  computed: ComputedLesson,
  { sources, terms }: Pick<ReadTables, 'sources' | 'terms'>,
  report: Report,
): void {
  const visit = (nodes: readonly InlineNode[]): void => {
    for (const node of nodes) {
      if (node.kind === 'number') checkNumber(computed, node, report);
      if (node.kind === 'cite') checkSource(node, sources, report);
      if (node.kind === 'term') checkTerm(node, terms, computed.lesson.front.language, report);
      if ('children' in node) visit(node.children);
    }
  };
  for (const text of textsIn(computed.lesson.parts)) visit(text.nodes);
}

function checkTerm(
  { text, place }: InlineNode & { readonly kind: 'term' },
  terms: TermList,
  language: string,
  report: Report,
): void {
  const found = terms.find(text, language);
  if (isTerm(found)) return;
  report.add(
    problem('pipeline/no-such-term', `"${text}" is not in the term list.`, {
      place,
      hint: found.near.length
        ? `Did you mean ${found.near.slice(0, 3).join(' or ')}?`
        : 'Add it to assets/terms.yaml with its meaning, or write it without :t[…].',
      actual: text,
      expected: found.near,
    }),
  );
}

function checkSource(node: InlineNode & { readonly kind: 'cite' }, sources: Sources, report: Report): void {
  const found = sources.find(node.source);
  if (isSource(found)) return;
  report.add(
    problem('pipeline/no-such-source', `There is no source "${node.source}".`, {
      place: node.place,
      hint: found.near.length
        ? `Did you mean ${found.near.join(' or ')}?`
        : 'Add it to assets/sources.yaml, or write the id of one that stands there.',
      actual: node.source,
      expected: found.near,
    }),
  );
}

function checkNumber(
  computed: ComputedLesson,
  node: InlineNode & { readonly kind: 'number' },
  report: Report,
): void {
  const entry = computed.byId(node.of);
  // An id that does not exist was reported when the text was read; a figure that failed has said why.
  if (!entry?.computed) return;
  const id = numberId(node);
  if (node.per !== undefined) {
    report.add(
      problem('pipeline/no-such-number', `"${node.of}" computes no number per ${node.per}.`, {
        place: node.place,
        hint: 'Leave per out, or compute the number on that basis.',
        actual: node.per,
      }),
    );
    return;
  }
  if (computed.numbers.get(id)) return;
  const names = entry.computed.numbers.map((n) => n.id.slice(node.of.length + 1));
  const shown = names.slice(0, 8).join(', ');
  report.add(
    problem('pipeline/no-such-number', `"${node.of}" computes no number "${id.slice(node.of.length + 1)}".`, {
      place: node.place,
      hint: names.length
        ? `It computes: ${shown}${names.length > 8 ? ', …' : ''}. Rows go into row="…".`
        : 'It computes no numbers.',
      actual: id,
      expected: names,
    }),
  );
}
