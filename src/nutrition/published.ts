/**
 * How well a row of a published table or rule was checked: in the publication itself, in independent public
 * copies of it that agree, or not at all (`memory`). `unsettled` is a row that must be read again in the rule
 * before anybody leans on it; functions that judge by a rule refuse such rows.
 */
export type Checked = 'publication' | 'copies' | 'memory' | 'unsettled';

/** Where a row of a table comes from. */
export interface Published {
  /** The rule, report or page, short enough to print beside a number. */
  readonly source: string;
  readonly checked: Checked;
  readonly note?: string;
}
