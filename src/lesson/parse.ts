import type { Report } from '../diagnostics/index.js';
import { assemble } from './assemble.js';
import { matchContainers } from './containers.js';
import { findFences } from './fences.js';
import type { InlineContext } from './inline-context.js';
import type { KnownDirectives } from './known.js';
import type { Lesson, Part } from './lesson.js';
import { withinLimits } from './limits.js';
import { parseMarkdown } from './markdown.js';
import { readFront } from './read-front.js';
import { checkReferences } from './references.js';
import { namesOf } from './service.js';
import { readSource } from './source.js';

/**
 * Reads a lesson. Every mistake is reported at its line and column, with the nearest right name; what
 * could be read is returned, so that a proof can be built. Nothing is returned when the file is no text,
 * goes past the limits, or has no front matter that can be read.
 */
export function parseLesson(
  input: string | Uint8Array,
  file: string,
  known: KnownDirectives,
  report: Report,
): Lesson | undefined {
  const source = readSource(input, file, report);
  if (!source || !withinLimits(source, report)) return undefined;
  const slug = /(?:^|\/)([^/]+)\/[^/]+$/.exec(file)?.[1];
  const { front, bodyLine, titlePlace } = readFront(source, slug, report);
  const names = namesOf(known);
  const { fences, masked, reported } = findFences(source, bodyLine, names, report);
  const steps = matchContainers(fences, source, report);
  if (!steps) return undefined;
  const tree = parseMarkdown(masked);
  const targets = new Map(
    tree.children.flatMap((node) =>
      node.type === 'definition' ? [[node.identifier, { url: node.url, title: node.title }] as const] : [],
    ),
  );
  const context: InlineContext = { source, report, targets, names, reported };
  const parts = assemble(tree, steps, context);
  checkReferences(parts, names, report);
  if (!front) return undefined;
  return {
    file,
    ...(slug === undefined ? {} : { slug }),
    front,
    parts,
    text: source.text,
    titlePlace: titleOf(parts) ?? titlePlace,
  };
}

function titleOf(parts: readonly Part[]) {
  return parts.find((part) => part.kind === 'heading' && part.level === 1)?.place;
}
