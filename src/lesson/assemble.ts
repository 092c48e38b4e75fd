import type { Root, RootContent } from 'mdast';
import type { Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import type { OpeningFence, Step } from './containers.js';
import { toParts } from './flow.js';
import { toInlineNodes } from './inline.js';
import { type InlineContext, spanOf } from './inline-context.js';
import type { KnownDirective } from './known.js';
import type { DirectivePart, HolderPart, InlineNode, Line, Part, Row } from './lesson.js';
import { readAttributes } from './read-attributes.js';
import { lineOf, rowsOf } from './rows.js';
import { isHolder, misplaced } from './service.js';
import { placeAt, placeOf } from './source.js';

/** A container while it is open: Markdown and finished parts in the order of the text. */
interface Open {
  readonly fence: OpeningFence | undefined;
  readonly items: (RootContent | { readonly part: Part })[];
}

/** Puts the Markdown between the fences into the containers that they open. */
export function assemble(tree: Root, steps: readonly Step[], context: InlineContext): Part[] {
  const root: Open = { fence: undefined, items: [] };
  const stack: Open[] = [root];
  const labels = new Map<number, readonly InlineNode[]>();
  const top = () => stack.at(-1) ?? root;
  let next = 0;
  const advance = (line: number) => {
    for (; next < steps.length && (steps[next]?.line ?? 0) <= line; next++) {
      const step = steps[next];
      if (step?.kind === 'enter') {
        checkPlacement(step.fence, stack, context);
        stack.push({ fence: step.fence, items: [] });
      } else if (step?.kind === 'leaf') {
        checkPlacement(step.fence, stack, context);
        const part = leafPart(step.fence, labels.get(step.line), context);
        if (part) top().items.push({ part });
      } else if (stack.length > 1) close(stack, context, labels);
    }
  };
  for (const node of tree.children) {
    const line = node.position?.start.line ?? 1;
    if (node.type === 'leafDirective' && /^f+$/.test(node.name)) {
      if (node.children.length > 0) labels.set(line, toInlineNodes(node.children, context));
      advance(line);
    } else {
      advance(line - 1);
      top().items.push(node);
    }
  }
  advance(Number.MAX_SAFE_INTEGER);
  while (stack.length > 1) close(stack, context, labels);
  return partsOf(root, context, false);
}

function close(
  stack: Open[],
  context: InlineContext,
  labels: ReadonlyMap<number, readonly InlineNode[]>,
): void {
  const open = stack.pop();
  if (!open?.fence) return;
  const part = containerPart(open, open.fence, labels.get(open.fence.line), context);
  if (part) stack.at(-1)?.items.push({ part }, ...notHeld(open, part));
  // A container with a name that is not known was reported; what it holds is kept.
  else for (const inner of partsOf(open, context, true)) stack.at(-1)?.items.push({ part: inner });
}

/** What a directive cannot hold was reported; it stands after the directive, so that no caution is lost. */
function notHeld(open: Open, part: Part): { readonly part: Part }[] {
  if (part.kind !== 'directive') return [];
  const held: ReadonlySet<Part> = new Set(part.parts);
  return open.items.filter((item): item is { readonly part: Part } => 'part' in item && !held.has(item.part));
}

function checkPlacement(
  fence: OpeningFence,
  stack: readonly Open[],
  { source, report }: InlineContext,
): void {
  if (!fence.known) return;
  const parents = stack.slice(1).map((open) => open.fence?.known);
  const why = misplaced(fence.known, parents);
  if (why === undefined) return;
  const { opening, line } = fence;
  report.add(
    problem('lesson/placement', why, {
      place: placeAt(source, line, opening.at + 1, opening.nameAt + opening.name.length + 1),
      hint: 'Move it, or close the container around it first.',
    }),
  );
}

/** Plain Markdown between finished parts, all in order. */
function partsOf(open: Open, context: InlineContext, inContainer: boolean): Part[] {
  return open.items.flatMap((item) => ('part' in item ? [item.part] : toParts([item], context, inContainer)));
}

function attributesOf(fence: OpeningFence, known: KnownDirective, { source, report }: InlineContext) {
  const { opening, line } = fence;
  const end = (source.lines[line - 1] ?? '').trimEnd().length;
  const place = placeAt(source, line, opening.at + 1, end + 1);
  const rules = {
    name: known.name,
    known: known.attributes,
    id: known.id,
    placeOf: (from: number, to: number) => placeAt(source, line, from + 1, to + 1),
    place,
  };
  if (opening.label && !known.label) {
    report.add(
      problem('lesson/label', `${known.name} takes no words in brackets.`, {
        place: placeAt(source, line, opening.label.from + 1, opening.label.to + 1),
        hint: 'Delete them.',
      }),
    );
  }
  const attributes = readAttributes(opening.attributes, rules, report);
  const id = attributes.get('id')?.value;
  return { attributes, place, ...(id === undefined ? {} : { id }) };
}

function leafPart(
  fence: OpeningFence,
  label: readonly InlineNode[] | undefined,
  context: InlineContext,
): DirectivePart | undefined {
  const { known } = fence;
  if (!known || isHolder(known.name)) return undefined;
  const base = attributesOf(fence, known, context);
  return {
    kind: 'directive',
    name: known.name,
    form: 'leaf',
    ...base,
    ...(label ? { label } : {}),
    rows: [],
    text: [],
    parts: [],
    bodyPlace: base.place,
  };
}

function containerPart(
  open: Open,
  fence: OpeningFence,
  label: readonly InlineNode[] | undefined,
  context: InlineContext,
): Part | undefined {
  const { known } = fence;
  if (!known) return undefined;
  const base = attributesOf(fence, known, context);
  if (isHolder(known.name)) {
    const { attributes, place } = base;
    return {
      kind: 'holder',
      name: known.name,
      attributes,
      parts: partsOf(open, context, true),
      place,
    } satisfies HolderPart;
  }
  const body = bodyOf(open, known, context);
  const first = open.items.find((item): item is RootContent => !('part' in item));
  const bodyPlace = first ? placeOf(context.source, ...spanOf(first)) : base.place;
  return {
    kind: 'directive',
    name: known.name,
    form: 'container',
    ...base,
    ...(label ? { label } : {}),
    ...body,
    bodyPlace,
  };
}

/** Rows, paragraphs and directives of a body; whatever the directive cannot read is reported. */
function bodyOf(
  open: Open,
  known: KnownDirective,
  context: InlineContext,
): { rows: Row[]; text: Line[]; parts: DirectivePart[] } {
  const rows: Row[] = [];
  const text: Line[] = [];
  const parts: DirectivePart[] = [];
  const takes = known.body ?? [];
  for (const item of open.items) {
    if ('part' in item) {
      if (item.part.kind === 'directive' && known.holds?.includes(item.part.name)) parts.push(item.part);
    } else if (item.type === 'list' && takes.includes('rows')) rows.push(...rowsOf(item, context));
    else if (item.type === 'paragraph' && takes.includes('text')) text.push(lineOf(item, context));
    else reportBody(item, known, takes, context);
  }
  return { rows, text, parts };
}

function reportBody(
  item: RootContent,
  known: KnownDirective,
  takes: readonly string[],
  context: InlineContext,
): void {
  const { source } = context;
  const report: Report = context.report;
  const place = placeOf(source, ...spanOf(item));
  // Headings by underline and raw HTML have a problem of their own that says more.
  if (item.type === 'html' || item.type === 'heading' || item.type === 'thematicBreak') {
    const before = report.problems.length;
    toParts([item], context, true);
    if (report.problems.length > before) return;
  }
  const wants = takes.includes('rows')
    ? takes.includes('text')
      ? 'a list and paragraphs'
      : 'a list, one row a line with a hyphen'
    : takes.includes('text')
      ? 'paragraphs'
      : 'nothing';
  report.add(
    problem('lesson/body', `${known.name} holds ${wants}; this is something else.`, {
      place,
      hint: takes.includes('rows')
        ? 'Begin each row with a hyphen, or move this out of the container.'
        : 'Move this out of the container.',
    }),
  );
}
