import { nearest, type Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import type { Attribute, DirectivePart, HolderPart, InlineNode, Part } from './lesson.js';
import type { Names } from './service.js';

/** Checks what only the whole lesson shows: ids that stand twice, references, levels side by side. */
export function checkReferences(parts: readonly Part[], names: Names, report: Report): void {
  const directives = directivesIn(parts);
  const ids = new Map<string, string>();
  for (const part of directives) {
    if (part.id === undefined || names.get(part.name)?.id === 'register') continue;
    const place = part.attributes.get('id')?.place ?? part.place;
    if (ids.has(part.id))
      report.add(
        problem('lesson/id', `Two directives have the id “${part.id}”.`, {
          place,
          hint: 'Give this one another id.',
          actual: part.id,
        }),
      );
    else ids.set(part.id, part.name);
  }
  const check = (attribute: Attribute, to: readonly string[] | undefined) => {
    const name = ids.get(attribute.value);
    if (name !== undefined && (to === undefined || to.includes(name))) return;
    const near = nearest(attribute.value, ids.keys());
    const message =
      name === undefined
        ? `No directive of this lesson has the id “${attribute.value}”.`
        : `“${attribute.value}” is a ${name}, which cannot stand here.`;
    report.add(
      problem('lesson/reference', message, {
        place: attribute.place,
        hint: near[0]
          ? `Did you mean ${near[0]}?`
          : ids.size > 0
            ? `Ids here: ${[...ids.keys()].join(', ')}.`
            : 'Give a directive an id first.',
        actual: attribute.value,
        expected: [...ids.keys()],
      }),
    );
  };
  for (const part of directives) {
    for (const [name, attribute] of part.attributes) {
      const kind = names.get(part.name)?.attributes[name]?.kind;
      if (kind?.is === 'reference') check(attribute, kind.to);
    }
  }
  for (const node of inlinesIn(parts)) {
    const of = node.kind === 'number' ? node.attributes.get('of') : undefined;
    if (of) check(of, undefined);
  }
  checkLevels(parts, report);
}

/** Neighboring level blocks are alternatives: each level once. */
function checkLevels(parts: readonly Part[], report: Report): void {
  let seen = new Set<string>();
  for (const part of parts) {
    if (part.kind !== 'holder') {
      seen = new Set();
      continue;
    }
    checkLevels(part.parts, report);
    const is = part.name === 'level' ? part.attributes.get('is') : undefined;
    if (part.name !== 'level') seen = new Set();
    if (!is) continue;
    if (seen.has(is.value))
      report.add(
        problem('lesson/level-twice', `The level ${is.value} stands twice side by side.`, {
          place: is.place,
          hint: 'Put the words into one block.',
        }),
      );
    seen.add(is.value);
  }
}

function directivesIn(parts: readonly Part[]): DirectivePart[] {
  return parts.flatMap((part): DirectivePart[] => {
    if (part.kind === 'directive') return [part, ...directivesIn(part.parts)];
    return part.kind === 'holder' ? directivesIn((part as HolderPart).parts) : [];
  });
}

/** Every inline node of a lesson, those inside others too. */
function inlinesIn(parts: readonly Part[]): InlineNode[] {
  const deep = (nodes: readonly InlineNode[]): InlineNode[] =>
    nodes.flatMap((node) => ('children' in node ? [node, ...deep(node.children)] : [node]));
  const rows = (list: DirectivePart['rows']): InlineNode[] =>
    list.flatMap((row) => [...deep(row.inlines), ...rows(row.rows)]);
  return parts.flatMap((part): InlineNode[] => {
    switch (part.kind) {
      case 'heading':
      case 'paragraph':
        return deep(part.children);
      case 'list':
        return part.items.flatMap((item) => inlinesIn(item.parts));
      case 'table':
        return [part.head, ...part.rows].flat().flatMap((cell) => deep(cell.children));
      case 'quote':
      case 'holder':
        return inlinesIn(part.parts);
      case 'directive':
        return [
          ...deep(part.label ?? []),
          ...part.text.flatMap((line) => deep(line.inlines)),
          ...rows(part.rows),
          ...inlinesIn(part.parts),
        ];
      case 'code':
        return [];
    }
  });
}
