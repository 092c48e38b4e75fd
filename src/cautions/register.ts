import type { Place } from '../diagnostics/index.js';
import type { Condition } from './condition.js';
import type { Phrase } from './phrases.js';

export type Severity = 'stop' | 'ask first' | 'note';
/** The word on a box: do not do this; a routine that is always done; ask before you do this. */
export const HEADINGS = ['Stop', 'Every time', 'Ask first'] as const;
export type Heading = (typeof HEADINGS)[number];
export const SPOTS = ['block', 'figure', 'card', 'worksheet', 'slide', 'staff'] as const;
/** Where a caution stands beside the places that every box has. */
export type Spot = (typeof SPOTS)[number];

/** The three wordings. Which of them a sheet prints is decided in `wording.ts`. */
export interface Wording {
  readonly short: string;
  readonly plain: string;
  readonly fuller: string;
}
export const SIZES = ['short', 'plain', 'fuller'] as const;
export type Size = (typeof SIZES)[number];

/** What a caution rests on, with how its source was seen. */
export interface Basis {
  readonly fact: string;
  readonly mark: string;
  /** Keys of the register's sources, or a regulation. */
  readonly source?: string;
}

/** One trigger of a caution, reported as `id#n`. */
export interface Fact {
  /** From 1, in the order of the register; numbers never change. */
  readonly number: number;
  /** The trigger in words. */
  readonly says: string;
  /** The same for the program; missing while what it needs does not exist. */
  readonly when?: Condition;
  /** Words that it looks for (English). */
  readonly look: readonly Phrase[];
  /** Everyday phrases that hold such a word and mean something else. */
  readonly but: readonly Phrase[];
  /** What must exist before the rest of it can be evaluated. */
  readonly waits?: string;
}

/** `box` stands in the block, `line` is pulled by the page, `note` stands beside a figure. */
export type CautionKind = 'box' | 'line' | 'note';

/** One entry of the register, or a lesson's own. */
export interface Caution {
  readonly id: string;
  readonly kind: CautionKind;
  readonly title: string;
  readonly severity: Severity;
  /** Boxes have one; notes and lines have none. */
  readonly heading?: Heading;
  /** Rules of the editor that it serves, such as `S03`. */
  readonly checks: readonly string[];
  readonly who: string;
  readonly why: string;
  readonly tags: readonly string[];
  readonly facts: readonly Fact[];
  readonly place: readonly Spot[];
  /** Ids whose people may not be pooled with this one's. */
  readonly apart: readonly string[];
  /** What alone it guards: it speaks of a page with weight on it, so it has no place on the sheet without weight. */
  readonly guards?: 'weight';
  /** By language tag; a language without an entry blocks its outputs. */
  readonly wordings: Readonly<Record<string, Wording>>;
  readonly basis: readonly Basis[];
  /** What which professional must still agree to. */
  readonly confirm: string;
  /** Role and day of whoever confirmed the wording; missing until someone has. */
  readonly confirmed?: { readonly role: string; readonly date: string };
  readonly reviewMonths: number;
  readonly at: Place;
  /** Only on a lesson's own cautions. */
  readonly own?: { readonly source: string; readonly reviewBy: string };
}

/** What a directive pulls by being used. */
export interface DirectiveRule {
  readonly directive: string;
  readonly always: readonly string[];
  readonly when: readonly {
    readonly ids: readonly string[];
    readonly says: string;
    readonly when?: Condition;
    readonly waits?: string;
  }[];
}

export interface Flag {
  readonly flag: string;
  readonly foods: string;
  readonly pulls: readonly string[];
  readonly waits?: string;
}

/** A slot's value in one country, with its safe rounding. */
export interface SlotValue {
  readonly value: number;
  readonly unit: string;
  readonly kind?: 'heat' | 'cold';
  readonly print: string;
  readonly for: string;
  readonly basis: string;
  /** Its id in assets/sources.yaml, for a value that figures show. */
  readonly source?: string;
}

/** What is not made at all, or withheld, and what to do instead. */
export interface Refusal {
  readonly id: string;
  readonly kind: 'refuse' | 'error';
  readonly checks: readonly string[];
  readonly when: string;
  readonly say: string;
  readonly instead: string;
}

export interface RegisterSource {
  readonly key: string;
  readonly what: string;
  readonly seen: string;
}

/** The whole register, checked against itself. */
export interface Register {
  /** Boxes, standard lines and notes in the order of the register. */
  readonly cautions: readonly Caution[];
  readonly directives: readonly DirectiveRule[];
  readonly flags: readonly Flag[];
  readonly values: Readonly<Record<string, Readonly<Record<string, SlotValue>>>>;
  readonly refusals: readonly Refusal[];
  readonly sources: readonly RegisterSource[];
  /** Topics that pull nothing. */
  readonly quietTopics: readonly string[];
  get(id: string): Caution | undefined;
}
