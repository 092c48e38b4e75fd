import type { DirectiveFacts, Facts, Passage } from '../cautions/index.js';
import type { Computed } from '../directives/contract.js';
import { formatDate } from '../languages/index.js';
import { type InlineNode, type Lesson, type Part, plainText, type Row } from '../lesson/index.js';
import type { ComputedLesson, Entry } from './compute.js';
import { nutrientsSlot } from './nutrients-slot.js';

/** All that a lesson holds that can pull a caution, at every level and output alike. */
export function factsOf(computed: ComputedLesson): Facts {
  const { lesson, entries } = computed;
  const { front } = lesson;
  const written = entries.flatMap((entry) => entry.computed?.facts.caution ?? []);
  const topics = front.topics.map((name, index) => withPlace({ name }, front.places.get(`topics.${index}`)));
  const directives = entries.flatMap((entry) => directiveFacts(entry, front.language) ?? []);
  const nutrients = nutrientsSlot(topics, directives, front.language);
  return {
    language: front.language,
    topics,
    directives,
    ...(nutrients === undefined ? {} : { slots: { nutrients } }),
    texts: [...passagesIn(lesson.parts, 'text'), ...frontPassages(lesson)],
    guidance: front.guidance,
    called: written.flatMap((c) => (c.kind === 'called' ? [{ id: c.id, place: c.place }] : [])),
    own: written.flatMap((c) => (c.kind === 'own' ? [c.caution] : [])),
    unpulled: (front.unpull ?? []).map((entry, index) =>
      withPlace({ ...entry }, front.places.get(`unpull.${index}.caution`)),
    ),
    rewordings: written.flatMap((c) => (c.kind === 'reworded' ? c.rewordings : [])),
  };
}

function withPlace<T extends object, P>(value: T, place: P | undefined): T & { readonly place?: P } {
  return place === undefined ? value : { ...value, place };
}

/** A directive that failed still tells its name, so that what it always pulls is not lost with it. */
function directiveFacts({ part, computed }: Entry, language: string): DirectiveFacts | undefined {
  if (computed?.facts.caution) return undefined;
  const facts = computed?.facts;
  return {
    name: part.name,
    id: part.id ?? '',
    place: part.place,
    foods: facts?.foods ?? [],
    nutrients: facts?.nutrients ?? [],
    ...(facts?.settings ? { settings: facts.settings } : {}),
    ...(facts?.slots ? { slots: slotsInWords(facts.slots, language) } : {}),
  };
}

function slotsInWords(
  slots: NonNullable<Computed['facts']['slots']>,
  language: string,
): Record<string, string> {
  return Object.fromEntries(
    Object.entries(slots).map(([name, value]) => [
      name,
      typeof value === 'string' ? value : formatDate(value.day, language),
    ]),
  );
}

function frontPassages({ front }: Lesson): Passage[] {
  const of = (key: string, text: string): Passage =>
    withPlace({ text, where: 'text' as const }, front.places.get(key));
  return [
    of('title', front.title),
    ...front.objectives.map((text, index) => of(`objectives.${index}`, text)),
  ];
}

/** Every sentence that someone reads or hears, with where it stands. */
export function passagesIn(parts: readonly Part[], where: Passage['where'], directive?: string): Passage[] {
  const passage = (
    nodes: readonly InlineNode[],
    at: Passage['where'],
    place: Passage['place'],
  ): Passage[] => [
    withPlace({ text: plainText(nodes), where: at, ...(directive ? { directive } : {}) }, place),
    ...alternatives(nodes),
  ];
  return parts.flatMap((part): Passage[] => {
    switch (part.kind) {
      case 'heading':
      case 'paragraph':
        return passage(part.children, where, part.place);
      case 'list':
        return part.items.flatMap((item) => passagesIn(item.parts, where, directive));
      case 'table':
        return [part.head, ...part.rows].flat().flatMap((cell) => passage(cell.children, where, cell.place));
      case 'quote':
        return passagesIn(part.parts, where, directive);
      case 'holder':
        return passagesIn(
          part.parts,
          part.name === 'say' || part.name === 'do' || part.name === 'staff' ? 'notes' : where,
          directive,
        );
      case 'directive':
        return [
          ...(part.label ? passage(part.label, 'caption', part.place) : []),
          ...part.text.flatMap((line) => passage(line.inlines, where, line.place)),
          ...rowPassages(part.rows, part.id),
          ...passagesIn(part.parts, where, part.id),
        ];
      case 'code':
        return [{ text: part.text, where, place: part.place }];
    }
  });
}

function rowPassages(rows: readonly Row[], directive: string | undefined): Passage[] {
  return rows.flatMap((row) => [
    withPlace(
      { text: row.text, where: 'quiz option' as const, ...(directive ? { directive } : {}) },
      row.place,
    ),
    ...rowPassages(row.rows, directive),
  ]);
}

function alternatives(nodes: readonly InlineNode[]): Passage[] {
  return nodes.flatMap((node): Passage[] => {
    if (node.kind === 'picture')
      return [
        { text: node.alt, where: 'alternative text', place: node.place },
        { text: node.src, where: 'file name', place: node.place },
      ];
    return 'children' in node ? alternatives(node.children) : [];
  });
}
