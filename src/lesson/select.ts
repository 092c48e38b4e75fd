import { LEVELS, type Level } from '../reading/index.js';
import type { HolderPart, Lesson, Part } from './lesson.js';
import type { Output } from './service.js';

/** For whom and for what parts are chosen. */
export interface Choice {
  readonly level: Level;
  readonly output: Output;
}

/**
 * The parts of a lesson for one output at one level. A handout takes what stands at top level; a
 * worksheet, a leader's page or the slides take what their containers hold (slides are left whole, each
 * with the words of its level). `only{out=…}` adds its parts to the one output. Of neighboring level
 * blocks the one of the level is taken, or else that of the next fuller level of readers, or none.
 */
export function select(lesson: Lesson, choice: Choice): readonly Part[] {
  const { output } = choice;
  const own = output === 'weightfree' ? 'handout' : output;
  const wanted = (part: Part): boolean => {
    const holder = part.kind === 'holder' ? part.name : undefined;
    if (holder === 'only') return only(part as HolderPart, output);
    if (holder === 'slide') return own === 'slides';
    if (holder === 'worksheet' || holder === 'staff') return own === holder;
    return own === 'handout';
  };
  const out: Part[] = [];
  let run: Part[] = [];
  const close = () => {
    out.push(...atLevel(run, choice.level));
    run = [];
  };
  // Level blocks are neighbors only as they stand in the lesson: what stands between them parts them, chosen or not.
  for (const part of lesson.parts) {
    const opened = part.kind === 'holder' && part.name !== 'slide' && part.name !== 'level';
    if (!opened && wanted(part)) {
      run.push(part);
      continue;
    }
    close();
    if (opened && wanted(part)) out.push(...atLevel(part.parts, choice.level));
  }
  close();
  return out;
}

function only(part: HolderPart, output: Output): boolean {
  return part.attributes.get('out')?.value === output;
}

/** Picks one of each group of neighboring level blocks, inside other containers too. */
function atLevel(parts: readonly Part[], level: Level): readonly Part[] {
  const out: Part[] = [];
  for (let index = 0; index < parts.length; index++) {
    const part = parts[index];
    if (!part) continue;
    if (part.kind !== 'holder') {
      out.push(part);
      continue;
    }
    if (part.name !== 'level') {
      out.push({ ...part, parts: atLevel(part.parts, level) });
      continue;
    }
    const group: HolderPart[] = [];
    for (let next = parts[index]; next?.kind === 'holder' && next.name === 'level'; next = parts[++index])
      group.push(next);
    index--;
    out.push(...atLevel(pick(group, level)?.parts ?? [], level));
  }
  return out;
}

function pick(group: readonly HolderPart[], level: Level): HolderPart | undefined {
  const from = LEVELS.indexOf(level);
  for (const fuller of LEVELS.slice(from)) {
    // The leader's words are never handed out, so they stand in for no other level.
    if (fuller === 'staff' && level !== 'staff') continue;
    const found = group.find((part) => part.attributes.get('is')?.value === fuller);
    if (found) return found;
  }
  // No fuller words were written: then the fullest there are, for nothing is dropped in silence.
  for (const barer of LEVELS.slice(0, from).reverse()) {
    const found = group.find((part) => part.attributes.get('is')?.value === barer);
    if (found) return found;
  }
  return undefined;
}
