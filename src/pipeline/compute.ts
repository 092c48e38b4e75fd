import type { Place, Report } from '../diagnostics/index.js';
import { problemsOf } from '../diagnostics/index.js';
import type { Computed, Directive, ReadContext } from '../directives/contract.js';
import { DIRECTIVES } from '../directives/list.js';
import { kebab, type Numbers, numbersOf, type ShownNumber } from '../document/index.js';
import { formatQuantity } from '../languages/index.js';
import type { DirectivePart, HolderPart, InlineNode, Lesson, Part } from '../lesson/index.js';
import { isLevel, type Level } from '../reading/index.js';
import { isSource, type Sources } from '../records/index.js';

/** One directive of a lesson with what was read and computed; nothing after a problem. */
export interface Entry {
  readonly part: DirectivePart;
  readonly kind: Directive;
  readonly values?: unknown;
  readonly computed?: Computed;
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
  'pipeline/no-such-source': {
    severity: 'stop',
    rule: 'A source in running text must stand in assets/sources.yaml.',
    about:
      'A pointer to a source that cannot be printed leads nowhere. Write the id of a source as the list has it, or add the source.',
  },
} as const;
const problem = problemsOf(computeCodes);

/** Reads and computes every directive of a lesson, in the order of the text. */
export function computeLesson(
  lesson: Lesson,
  tables: Omit<ReadContext, 'report' | 'language' | 'level'>,
  report: Report,
): ComputedLesson {
  const kinds = new Map(DIRECTIVES.map((kind) => [kind.schema.name, kind]));
  const entries: Entry[] = [];
  for (const { part, level } of directivesIn(lesson.parts)) {
    const kind = kinds.get(part.name);
    if (!kind) continue;
    const values = kind.read(part, {
      ...tables,
      report,
      language: lesson.front.language,
      ...(level ? { level } : {}),
    });
    const computed = values === undefined ? undefined : kind.compute(values, { report });
    entries.push({
      part,
      kind,
      ...(values === undefined ? {} : { values }),
      ...(computed ? { computed } : {}),
    });
  }
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
  checkText(computed, tables.sources, report);
  return computed;
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

/** Every number and source that running text names must be there. */
function checkText(computed: ComputedLesson, sources: Sources, report: Report): void {
  const visit = (nodes: readonly InlineNode[]): void => {
    for (const node of nodes) {
      if (node.kind === 'number') checkNumber(computed, node, report);
      if (node.kind === 'cite') checkSource(node, sources, report);
      if ('children' in node) visit(node.children);
    }
  };
  for (const text of textsIn(computed.lesson.parts)) visit(text.nodes);
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
