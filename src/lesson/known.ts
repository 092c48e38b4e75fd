// Contract

/** What an attribute's value may be. A value is always a string; its kind is checked when read. */
export type AttributeKind =
  /** Any words. */
  | { readonly is: 'text' }
  /** A whole number between two ends, both allowed. */
  | { readonly is: 'whole'; readonly from: number; readonly to: number }
  /** One of a few words. */
  | { readonly is: 'choice'; readonly of: readonly string[] }
  /** Several words parted by `;`, or by commas too where no food is named. */
  | { readonly is: 'list'; readonly of?: readonly string[]; readonly commas?: boolean }
  /** The id of a directive of this lesson. */
  | { readonly is: 'reference'; readonly to?: readonly string[] }
  /** A calendar day, `2027-03-01`. */
  | { readonly is: 'date' };

export interface KnownAttribute {
  readonly kind: AttributeKind;
  readonly required?: boolean;
  /** One line that says what to write there. */
  readonly help: string;
}

/** What an author may write for one directive; directives hand this in, since lesson/ knows none of them. */
export interface KnownDirective {
  readonly name: string;
  readonly forms: readonly ('container' | 'leaf')[];
  /**
   * `required` wherever a number is shown; `none` where an id means nothing; `register` where the id
   * names an entry of a register, so that it may stand several times and nothing can refer to it.
   */
  readonly id: 'required' | 'optional' | 'none' | 'register';
  /** All attributes but `id`. */
  readonly attributes: Readonly<Record<string, KnownAttribute>>;
  /** What a container's body may hold: a list, paragraphs, or both; nothing when left out. */
  readonly body?: readonly ('rows' | 'text')[];
  /** Names of the containers that may stand inside it. */
  readonly holds?: readonly string[];
  /** Stands only inside the containers of these names. */
  readonly inside?: readonly string[];
  /** Whether `[words]` may follow the name. */
  readonly label?: boolean;
}

export type KnownDirectives = readonly KnownDirective[];
