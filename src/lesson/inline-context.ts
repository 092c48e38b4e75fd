import type { Report } from '../diagnostics/index.js';
import type { Names } from './service.js';
import type { Source } from './source.js';

/** What turning running text into nodes needs: the text as written, and the link targets of the lesson. */
export interface InlineContext {
  readonly source: Source;
  readonly report: Report;
  /** Targets of `[words][name]`, by name. */
  readonly targets: ReadonlyMap<string, { readonly url: string; readonly title?: string | null | undefined }>;
  /** What may follow colons, for what was meant and not read. */
  readonly names: Names;
  /** Lines whose colons have been reported. */
  readonly reported: ReadonlySet<number>;
}

type Positioned = {
  readonly position?:
    | {
        readonly start: { readonly offset?: number | undefined };
        readonly end: { readonly offset?: number | undefined };
      }
    | undefined;
};

/** Offsets of a node; the parser always sets them. */
export function spanOf(node: Positioned): readonly [number, number] {
  return [node.position?.start.offset ?? 0, node.position?.end.offset ?? 0];
}
