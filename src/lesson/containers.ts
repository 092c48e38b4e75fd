import type { Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import type { Fence } from './fences.js';
import type { KnownDirective } from './known.js';
import { fewestColons, misplaced } from './service.js';
import { placeAt, type Source } from './source.js';

export type OpeningFence = Extract<Fence, { readonly opening: unknown }>;

/** What happens at a line: a container is entered or left, or a leaf stands there. */
export type Step =
  | { readonly kind: 'enter' | 'leaf'; readonly line: number; readonly fence: OpeningFence }
  | { readonly kind: 'leave'; readonly line: number };

/** How deep containers may stand in each other; four is the most that means anything. */
const MAX_DEPTH = 12;

interface Frame {
  readonly fence: OpeningFence;
  readonly colons: number;
  closed: boolean;
  told: boolean;
}

/**
 * Matches closing lines with opening ones and reports what does not match: strays, containers left open
 * (at their opening), counts of colons that differ, and containers with no more colons than what they
 * hold. Returns the steps as most likely meant, or nothing when containers stand too deep.
 */
export function matchContainers(
  fences: readonly Fence[],
  source: Source,
  report: Report,
): Step[] | undefined {
  const frames = new Map<Fence, Frame>();
  for (const fence of fences)
    if (fence.kind === 'open')
      frames.set(fence, { fence, colons: Math.max(3, fence.opening.colons), closed: false, told: false });
  const closes = matchCloses(fences, frames, source, report);
  const steps: Step[] = [];
  const stack: Frame[] = [];
  for (const fence of fences) {
    if (fence.kind === 'leaf') steps.push({ kind: 'leaf', line: fence.line, fence });
    if (fence.kind === 'open') {
      const frame = frames.get(fence);
      if (!frame) continue;
      leaveUnclosed(stack, frame, steps);
      checkColons(stack.at(-1), frame, source, report);
      steps.push({ kind: 'enter', line: fence.line, fence });
      stack.push(frame);
      if (stack.length > MAX_DEPTH) return tooDeep(fence, source, report);
    }
    const closing = closes.get(fence);
    while (closing && stack.length > 0) {
      steps.push({ kind: 'leave', line: fence.line });
      if (stack.pop() === closing) break;
    }
  }
  for (const frame of frames.values()) if (!frame.closed) reportUnclosed(frame, source, report);
  return steps;
}

/** Which container each closing line closes. */
function matchCloses(
  fences: readonly Fence[],
  frames: ReadonlyMap<Fence, Frame>,
  source: Source,
  report: Report,
): Map<Fence, Frame> {
  const closes = new Map<Fence, Frame>();
  const stack: Frame[] = [];
  for (const [index, fence] of fences.entries()) {
    const frame = frames.get(fence);
    if (frame) stack.push(frame);
    if (fence.kind !== 'close') continue;
    const top = stack.at(-1);
    const exact = stack.findLast((f) => f.colons === fence.colons);
    let target = exact;
    if (!exact) {
      if (top && !closedLater(fences, index, top.colons)) target = top;
      else if (!emptyLeafBefore(fences, index, source))
        report.add(
          problem('lesson/stray-close', 'This line closes nothing.', {
            hint: 'Delete it, or restore the opening line above it.',
            place: placeAt(source, fence.line, fence.at + 1, fence.at + fence.colons + 1),
          }),
        );
    } else if (exact !== top) {
      // The closing line of the inner one may have a colon too many: then the outer one has its own.
      const only = stack.filter((f) => f.colons === fence.colons).length === 1;
      if (only && closedLater(fences, index, fence.colons)) target = top;
    }
    if (!target) continue;
    if (target.colons !== fence.colons) reportCount(target, fence, source, report);
    target.closed = true;
    closes.set(fence, target);
    while (stack.length > 0 && stack.pop() !== target);
  }
  return closes;
}

/** True when a later line closes a container of so many colons that opened before `index`. */
function closedLater(fences: readonly Fence[], index: number, colons: number): boolean {
  let depth = 0;
  for (const fence of fences.slice(index + 1)) {
    if (fence.kind === 'open') {
      const opened = Math.max(3, fence.opening.colons);
      if (opened === colons) depth++;
      else if (opened > colons) return false;
    } else if (fence.kind === 'close' && fence.colons === colons && depth-- === 0) return true;
  }
  return false;
}

/** `:::show{…}` and `:::` was reported as a leaf with too many colons; its closing line is part of that slip. */
function emptyLeafBefore(fences: readonly Fence[], index: number, source: Source): boolean {
  const before = fences[index - 1];
  const here = fences[index];
  if (before?.kind !== 'leaf' || here?.kind !== 'close' || before.opening.colons !== here.colons)
    return false;
  return source.lines.slice(before.line, here.line - 1).every((line) => line.trim() === '');
}

/** A container left open ends before the next one that cannot stand inside it. */
function leaveUnclosed(stack: Frame[], next: Frame, steps: Step[]): void {
  for (;;) {
    const top = stack.at(-1);
    if (!top || top.closed || top.colons > next.colons) return;
    const parents = stack.map((f) => f.fence.known);
    const known: KnownDirective | undefined = next.fence.known;
    if (known && top.fence.known && misplaced(known, parents) === undefined) return;
    steps.push({ kind: 'leave', line: next.fence.line });
    stack.pop();
  }
}

function checkColons(outer: Frame | undefined, inner: Frame, source: Source, report: Report): void {
  const { known, opening, line } = inner.fence;
  const tell = (frame: Frame, message: string, count: number) => {
    if (frame.told) return;
    frame.told = true;
    const { opening: o, line: at } = frame.fence;
    report.add(
      problem('lesson/colons', message, {
        hint: `Give its opening and its closing line ${inWords(count)} colons.`,
        place: placeAt(source, at, o.at + 1, o.at + o.colons + 1),
      }),
    );
  };
  if (known && opening.colons > 2 && inner.colons < fewestColons(known))
    tell(
      inner,
      `${known.name} holds others and takes ${inWords(fewestColons(known))} colons.`,
      Math.max(fewestColons(known), inner.colons),
    );
  if (outer?.closed && outer.colons <= inner.colons && opening.colons > 2)
    tell(
      outer,
      `${outer.fence.opening.name} holds ${opening.name} (line ${line}) but has no more colons than it.`,
      inner.colons + 1,
    );
}

function reportUnclosed(frame: Frame, source: Source, report: Report): void {
  const { opening, line } = frame.fence;
  report.add(
    problem('lesson/unclosed', `The container ${opening.name} that opens here is not closed.`, {
      hint: `Put a line of ${inWords(frame.colons)} colons after its last line.`,
      place: placeAt(source, line, opening.at + 1, opening.nameAt + opening.name.length + 1),
    }),
  );
}

function reportCount(
  target: Frame,
  fence: Extract<Fence, { kind: 'close' }>,
  source: Source,
  report: Report,
): void {
  const { name } = target.fence.opening;
  report.add(
    problem(
      'lesson/colons',
      `This line has ${inWords(fence.colons)} colons, but ${name} on line ${target.fence.line} opened with ${inWords(target.colons)}.`,
      {
        hint: `Write ${inWords(target.colons)} colons here.`,
        place: placeAt(source, fence.line, fence.at + 1, fence.at + fence.colons + 1),
      },
    ),
  );
}

function tooDeep(fence: Fence, source: Source, report: Report): undefined {
  report.add(
    problem('lesson/too-deep', `More than ${MAX_DEPTH} containers stand inside each other here.`, {
      hint: 'Take out levels. Nothing of this file was read.',
      place: placeAt(source, fence.line, 1),
    }),
  );
}

function inWords(count: number): string {
  return (
    ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'][count] ?? String(count)
  );
}
