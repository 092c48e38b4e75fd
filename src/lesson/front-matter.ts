import type { Place } from '../diagnostics/index.js';

/** Who looked at a lesson, by role, on which day, and by which day to look again. */
export interface Review {
  readonly role: string;
  readonly date: string;
  readonly next: string;
}

/** What stands between the two `---` at the top of a lesson. */
export interface FrontMatter {
  readonly title: string;
  readonly minutes: number;
  readonly audience: string;
  readonly objectives: readonly string[];
  /** Edition of the guidance, such as `us-2025`. */
  readonly guidance: string;
  readonly topics: readonly string[];
  /** Ids of sources. */
  readonly sources: readonly string[];
  readonly review: 'none' | Review;
  /** Cautions that topics or words pulled by mistake. */
  readonly unpull?: readonly {
    readonly caution: string;
    readonly reason: string;
    readonly role: string;
    readonly date: string;
  }[];
  /** What people counted of the text by hand. */
  readonly tallies?: readonly {
    readonly measure: 'understandability' | 'actionability' | 'clear-communication' | 'suitability';
    readonly points: number;
    readonly of: number;
    readonly role: string;
    readonly date: string;
  }[];
  /** Role of who wrote it. */
  readonly author?: string;
  /** 1 to 12. */
  readonly month?: number;
  /** Picture name. */
  readonly emblem?: string;
  /** Short code that pages print, such as `BEANS3`; derived from the slug when left out. */
  readonly code: string;
  /** Language tag, `en` when left out. */
  readonly language: string;
  /** Folder name of a local pack. */
  readonly site?: string;
  /** Where values stand: `title`, `topics`, `topics.1`, `review.date`. */
  readonly places: ReadonlyMap<string, Place>;
}
