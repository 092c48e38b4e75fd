import type { Report } from '../diagnostics/index.js';
import type { Measures, View, ViewContext, Where } from '../directives/contract.js';
import type { Block, Inline, Picture } from '../document/index.js';
import {
  formatDate,
  formatDigits,
  formatList,
  formatQuantity,
  outward,
  sayFrom,
} from '../languages/index.js';
import type { DirectivePart, InlineNode, Part } from '../lesson/index.js';
import { toBlocks, toInlines } from '../lesson/index.js';
import type { Level } from '../reading/index.js';
import { isTerm, type TermList } from '../records/index.js';
import { type ComputedLesson, numberId } from './compute.js';
import { pageTerms } from './terms.js';

/** For whom parts are turned into blocks. */
export interface Audience {
  readonly where: Where;
  readonly level: Level;
  readonly language: string;
  readonly measures: Measures;
  readonly weightFree?: true;
}

/** Reads the lesson's own pictures; reports what is wrong and then returns nothing. */
export type ReadPicture = (
  node: InlineNode & { readonly kind: 'picture' },
  report: Report,
) => Picture | undefined;

/** Caution lines and pointers that stand beside a figure, by the directive that the view shows. */
export type FigureNotes = (view: View) => readonly Block[];

/** Turns a lesson's parts and directives into what stands on pages, for one audience. */
export interface Viewer {
  readonly audience: Audience;
  readonly blocks: (parts: readonly Part[]) => readonly Block[];
  readonly inlines: (nodes: readonly InlineNode[]) => readonly Inline[];
  readonly view: (part: DirectivePart) => View | undefined;
}

export function createViewer(
  lesson: ComputedLesson,
  audience: Audience,
  readPicture: ReadPicture,
  notes: FigureNotes,
  terms: TermList,
  report: Report,
): Viewer {
  const { language } = audience;
  const text = (id: string): string => {
    const number = lesson.numbers.get(id);
    if (!number) throw new Error(`The number ${id} was shown and never computed.`);
    return formatQuantity(number, language);
  };
  const number = (id: string): Inline => ({ text: text(id), number: id });
  const ends = (id: string) => {
    const found = lesson.numbers.get(id);
    if (found?.low === undefined || found.high === undefined)
      throw new Error(`The number ${id} is no range.`);
    const [low, high] = outward(found.low, found.high, found.decimals);
    return { low: formatDigits(low, language), high: formatDigits(high, language) };
  };
  const told = new Set<string>();
  /** Handouts and worksheets for short and plain explain a term where it stands first. */
  const explained = (words: string): string => {
    const term = terms.find(words, language);
    const means = isTerm(term) ? term.forms[language]?.means : undefined;
    if (!isTerm(term) || !means || told.has(term.id) || !explains(audience)) return words;
    told.add(term.id);
    return pageTerms(language)('explained', { term: words, means });
  };
  const inlineContext = {
    number: (node: InlineNode & { readonly kind: 'number' }): Inline => {
      const id = numberId(node);
      // A number that could not be computed was reported; its name stands in the draft in its place.
      return lesson.numbers.get(id) ? number(id) : { text: `[${node.name}]` };
    },
    term: (words: string) => explained(words),
  };
  const inlines = (nodes: readonly InlineNode[]) => toInlines(nodes, inlineContext);

  const open: DirectivePart[] = [];
  const view = (part: DirectivePart): View | undefined => {
    const entry = lesson.entryOf(part);
    if (entry?.refused) return refusedView(entry.refused, audience.where);
    if (!entry?.computed || open.includes(part)) return undefined;
    open.push(part);
    const context: ViewContext = {
      ...audience,
      say: sayFrom(entry.kind.terms, language),
      number,
      text,
      ends,
      cite: (source) => ({ text: '', cite: source }),
      inlines,
      list: (items) => formatList(items, language),
      date: (iso) => formatDate(iso, language),
      other: (id) => {
        const other = lesson.byId(id);
        return other ? view(other.part) : undefined;
      },
    };
    const made = entry.kind.view(entry.values, entry.computed, context);
    open.pop();
    return { ...(part.id ? { shows: part.id } : {}), ...made };
  };

  // Without weight several directives may come to say the same; it is said once.
  const said = new Set<string>();
  const isNew = (made: View) => {
    const words = JSON.stringify(made.blocks);
    return !audience.weightFree || (!said.has(words) && said.add(words));
  };
  const blocks = (parts: readonly Part[]) =>
    toBlocks(parts, {
      ...inlineContext,
      directive: (part) => {
        const made = view(part);
        return made && isNew(made) ? [...made.blocks, ...notes(made)] : [];
      },
      picture: (node) => {
        const picture = readPicture(node, report);
        return picture ? [{ kind: 'picture', picture, alt: node.alt, place: node.place }] : [];
      },
      emptyCellsAreFields: audience.where === 'worksheet' || audience.where === 'key',
    });
  return { audience, blocks, inlines, view };
}

/** Where a marked word is explained at its first use: on paper that is handed out, at the plainer levels. */
function explains({ where, level }: Audience): boolean {
  return (
    (where === 'handout' || where === 'worksheet' || where === 'key') &&
    (level === 'short' || level === 'plain')
  );
}

/** On the draft, why the content is not made. */
function refusedView(reasons: readonly string[], where: Where): View {
  const blocks: Block[] = reasons.map((text) => ({
    kind: 'paragraph',
    inlines: [{ text, strong: true }],
  }));
  return where === 'slide' ? { blocks: [], stages: [{ kind: 'words', blocks }] } : { blocks };
}
