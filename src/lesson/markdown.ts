import type { Root } from 'mdast';
import remarkDirective from 'remark-directive';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';
import { INLINE } from './service.js';

/*
 * What of Markdown a lesson has. remark-directive would read `9:30`, `1:3` and `x.org:80` as directives
 * and lose their text, so its text directive is let in only where it is certain; its container is left
 * out, since fences are matched before (see fences.ts).
 */

type Construct = {
  readonly name?: string;
  readonly tokenize: (this: Context, effects: Effects, ok: State, nok: State) => State;
  readonly previous?: (this: Context, code: number | null) => boolean;
};
