// Contract
import type { ReadCaution, Register } from '../cautions/index.js';
import type { Place, Report } from '../diagnostics/index.js';
import type { Block, Inline, ShownNumber, Stage } from '../document/index.js';
import type { Say, Slots, TermTable } from '../languages/index.js';
import type { DirectivePart, FrontMatter, InlineNode, KnownDirective } from '../lesson/index.js';
import type { Food } from '../nutrition/index.js';
import type { Level } from '../reading/index.js';
import type { Foods, LocalPrices, Sources, TermList } from '../records/index.js';
import type { Published } from './published.js';

/**
 * Refuses what is unsafe: a Stop with the words of the register's refusal (`R06`) and what to do instead. On the
 * draft its words stand in the directive's place. `slots` fill the braces of its words.
 */
export type Refuse = (id: string, place: Place, slots?: Readonly<Record<string, string>>) => void;

/** What reading a directive's words may ask. Problems go to the report; reading never throws. */
export interface ReadContext {
  /** The lesson's front matter: its audience, topics, objectives and guidance. */
  readonly front: FrontMatter;
  readonly refuse: Refuse;
  readonly foods: Foods;
  readonly sources: Sources;
  readonly terms: TermList;
  readonly register: Register;
  /** What the site's shops ask; none where the lesson has no site. */
  readonly prices: LocalPrices;
  /** Language of the lesson. */
  readonly language: string;
  /** The day of the build. */
  readonly on: string;
  /** The level whose block the directive stands in, if any. */
  readonly level?: Level;
  readonly report: Report;
}

/** A number before it is put in words. */
export type ComputedNumber = Omit<ShownNumber, 'text'>;

/** What a directive knows about its own content, for the cautions: no words, only facts. */
export interface Facts {
  /** Foods that stand in it, each with the place where it is named. */
  readonly foods: readonly {
    readonly food: Food;
    readonly place: Place;
    /** In a swap, whether the food goes or comes. */
    readonly side?: 'old' | 'new';
  }[];
  /** Nutrients compared, ranked or set as a goal. */
  readonly nutrients: readonly string[];
  /** The basis on which the foods stand side by side, as written. */
  readonly basis?: string;
  /** What it is set to or found to be, for conditions such as `set(need=vegan)`: names of our own, no words for readers. */
  readonly settings?: Readonly<Record<string, readonly string[]>>;
  /** What it fills into the slots of its notes: `shop`, `edition` …; a day is printed in the reader's language. */
  readonly slots?: Readonly<Record<string, string | { readonly day: string }>>;
  /** A caution that the author calls, writes or words anew. */
  readonly caution?: ReadCaution;
  /** Prices that it stands on, for the form on which they are written down. */
  readonly prices?: readonly PriceNeed[];
}

/** A price to look for in the shops. */
export interface PriceNeed {
  /** The food as it is bought. */
  readonly food: Food;
  /** The package of the last price, such as `2 lb`. */
  readonly packageWords?: string;
  /** The day of the last price. */
  readonly last?: string;
  /** Whether that price may still be printed. */
  readonly fresh: boolean;
}

/** What every directive computes. Its own type adds what its view needs. */
export interface Computed {
  readonly numbers: readonly ComputedNumber[];
  readonly facts: Facts;
  /** What other directives of the lesson may work with, by this one's id. */
  readonly publishes?: Published;
}

/** Computing sees values and tables only, never words, level or language. */
export interface ComputeContext {
  readonly report: Report;
  readonly refuse: Refuse;
  /**
   * What another directive publishes, which was computed before since `refersTo` names it; nothing when it failed
   * or publishes nothing, and then that was reported.
   */
  readonly published: (id: string) => Published | undefined;
}

/** Another directive that this one works with, as `of=supper` or `@supper` names it. */
export interface Reference {
  readonly id: string;
  readonly place: Place;
  /** What it has to publish. */
  readonly wants: Published['kind'];
}

/** Where a view stands: its form differs on paper, on the worksheet and its key, and on a slide. */
export type Where = 'handout' | 'worksheet' | 'key' | 'slide' | 'staff';

/** The two families of measures that sites use. */
export type Measures = 'us' | 'metric';

/** What a view may use to turn numbers into words. It does no arithmetic. */
export interface ViewContext {
  readonly where: Where;
  readonly level: Level;
  readonly language: string;
  /** Whether readers of this site weigh in pounds and pour in US cups, or in kilograms and metric cups. */
  readonly measures: Measures;
  /** On the sheet without weight: nothing may tell a weight, a change of it or energy. */
  readonly weightFree?: true;
  /** The directive's own terms in this language. */
  readonly say: Say;
  /** A number of this lesson as it is printed, carrying its id. Throws for an id that was not computed. */
  readonly number: (id: string) => Inline;
  /** The same, words only, for alternatives and figure labels. */
  readonly text: (id: string) => string;
  /** Both ends of a range as printed, without the unit. */
  readonly ends: (id: string) => { readonly low: string; readonly high: string };
  /** Points to a source; it gets its number when the sheet is put together. */
  readonly cite: (source: string) => Inline;
  /** The author's own words, with numbers, terms and sources resolved. */
  readonly inlines: (nodes: readonly InlineNode[]) => readonly Inline[];
  readonly list: (items: readonly string[]) => string;
  readonly date: (iso: string) => string;
  /** The view of another directive of the lesson at this place; nothing when it has none. */
  readonly other: (id: string) => View | undefined;
}

/** What stands at the directive's place. A slide takes `stages` and `shelf`, everything else `blocks`. */
export interface View {
  readonly blocks: readonly Block[];
  readonly stages?: readonly Stage[];
  readonly shelf?: readonly Inline[];
  /** Id of the directive whose content this is; set by the pipeline, and kept by a view that shows another's. */
  readonly shows?: string;
}

/** One kind of directive: ten lines that name its schema, its computing and its view. */
export interface Directive<V = unknown, C extends Computed = Computed> {
  readonly schema: KnownDirective;
  readonly terms: TermTable;
  /** Its content is about body weight: a lesson that holds it also gets sheets without weight, and some rooms get only those. */
  readonly aboutWeight?: true;
  /** Attributes and rows → values, or nothing after a problem. */
  readonly read: (part: DirectivePart, context: ReadContext) => V | undefined;
  /** Values → numbers and facts, or nothing after a problem. */
  readonly compute: (values: V, context: ComputeContext) => C | undefined;
  /** Directives whose results its computing needs; they are computed first. */
  readonly refersTo?: (values: V) => readonly Reference[];
  /** Has words for the leader alone: they stand on the leader's page, also where the lesson does not put them there. */
  readonly forLeaders?: boolean;
  /** Numbers and terms → what stands on the page. */
  readonly view: (values: V, computed: C, context: ViewContext) => View;
}

/** Keeps the types of one directive together while the list holds all kinds. */
export function directive<V, C extends Computed>(kind: Directive<V, C>): Directive {
  return kind as unknown as Directive;
}

export type { Slots };
