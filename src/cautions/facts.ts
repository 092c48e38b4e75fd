import type { Place } from '../diagnostics/index.js';
import type { Contains, FoodState } from '../nutrition/index.js';
import type { Level } from '../reading/index.js';
import type { Caution } from './register.js';

/** A food as far as cautions look at it. */
export interface FactFood {
  readonly food: {
    readonly name: string;
    readonly flags: readonly string[];
    readonly contains?: Readonly<Record<string, Contains>>;
    readonly state?: FoodState;
  };
  readonly place?: Place;
  /** In a swap, the side that is put in. */
  readonly side?: 'old' | 'new';
}

/** What one directive of the lesson holds. */
export interface DirectiveFacts {
  readonly name: string;
  /** Its id in the lesson; its figure carries the same. */
  readonly id: string;
  readonly place?: Place;
  readonly foods: readonly FactFood[];
  /** Nutrients compared, ranked or set as a goal. */
  readonly nutrients: readonly string[];
  /** What it is set to, such as `diet` → `vegan`. */
  readonly settings?: Readonly<Record<string, readonly string[]>>;
  /**
   * What it fills into the slots of its notes, in the reader's language: `edition`, `date`, `shop` …
   * `state` is worked out from the foods when it is not given.
   */
  readonly slots?: Readonly<Record<string, string>>;
}

/** Words that someone reads or hears. */
export interface Passage {
  readonly text: string;
  readonly place?: Place;
  readonly where: 'text' | 'notes' | 'caption' | 'alternative text' | 'quiz option' | 'file name';
  /** Id of the directive that it belongs to. */
  readonly directive?: string;
}

/** A lesson's words for a caution at one level. */
export interface Rewording {
  readonly id: string;
  readonly level: Level;
  readonly text: string;
  readonly place: Place;
}

/** All that a lesson holds that can pull a caution. */
export interface Facts {
  /** Language of the texts. */
  readonly language: string;
  readonly topics: readonly { readonly name: string; readonly place?: Place }[];
  readonly directives: readonly DirectiveFacts[];
  readonly texts: readonly Passage[];
  readonly guidance?: string;
  /**
   * Who is in the room, in the register's words. When it is not said, a mixed room of adults with
   * children at home is assumed, so that every adult caution applies.
   */
  readonly audiences?: readonly string[];
  /** Ids called with `::caution{id=…}`. */
  readonly called: readonly { readonly id: string; readonly place?: Place }[];
  /** The lesson's own cautions, whole. */
  readonly own: readonly Caution[];
  readonly rewordings: readonly Rewording[];
  readonly unpulled?: readonly Unpulled[];
  /** What the lesson as a whole fills into the slots of its boxes, such as `nutrients`. */
  readonly slots?: Readonly<Record<string, string>>;
}

/** Assumed when a lesson does not say who is in the room. */
export const MIXED_ROOM: readonly string[] = [
  'adults',
  'families',
  'infants',
  'children',
  'pregnancy',
  'breastfeeding',
  'older adults',
  'kidney',
  'diabetes',
  'low immunity',
];

/** A caution that a lesson takes off, with who decided it, when and why. */
export interface Unpulled {
  readonly caution: string;
  readonly reason: string;
  readonly role: string;
  readonly date: string;
  readonly place?: Place;
}

/** Facts of a lesson that holds nothing. */
export const NO_FACTS: Facts = {
  language: 'en',
  topics: [],
  directives: [],
  texts: [],
  called: [],
  own: [],
  rewordings: [],
};

/** Why a caution was pulled. */
export interface Reason {
  /** `topic`, `fact`, `directive`, `flag`, `lesson`, `page`. */
  readonly by: 'topic' | 'fact' | 'directive' | 'flag' | 'lesson' | 'page';
  /** The trigger: `cans`, `damaged-cans#1`, `form-compare`, `canned`, the caution's own id. */
  readonly trigger: string;
  /** The same in words. */
  readonly says: string;
  readonly place?: Place;
  /** Id of the directive whose figure it guards. */
  readonly directive?: string;
  /** The sentence in which a word was found. */
  readonly sentence?: string;
}

/** A caution and everything that pulled it. */
export interface Pulled {
  readonly caution: Caution;
  readonly reasons: readonly Reason[];
  /** The lesson's own words by level, where it rewords an entry of the register. */
  readonly reworded: Readonly<Partial<Record<Level, string>>>;
  /** By id of a directive, what fills the slots beside its figure. */
  readonly slots: Readonly<Record<string, Readonly<Record<string, string>>>>;
}
