import type { Root } from 'mdast';
import remarkDirective from 'remark-directive';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { type Data, type Processor, unified } from 'unified';
import { INLINE } from './service.js';

/*
 * What a lesson takes from Markdown. Left alone, remark-directive reads `9:30`, `1:3` and `x.org:80` as
 * directives and loses their text, so its text directive is let in only where it is certain that one is
 * meant: everything else never stops being text. Its container is left out, since fences are matched
 * before the parser runs (see fences.ts).
 */

type Extension = NonNullable<Data['micromarkExtensions']>[number];
type Construct = Exclude<NonNullable<NonNullable<Extension['text']>[string]>, readonly unknown[]>;
type Tokenize = Construct['tokenize'];
type State = ReturnType<Tokenize>;
type Code = Parameters<State>[0];

const COLON = 58;
const BACKSLASH = 92;
const OPEN = 91;
const CLOSE = 93;

/** Marks that may stand right before `:n[…]`: opening punctuation, straight quotes, and stars around bold numbers. */
const BEFORE = /[\p{Ps}\p{Pi}"'¿¡*_~|]/u;

/** Whether a text directive may begin after this character: white space, an opening mark or nothing. */
export function mayPrecede(char: string | undefined): boolean {
  return char === undefined || char === '' || /\s/.test(char) || BEFORE.test(char);
}

/** Negative codes stand for line ends and tabs. */
function mayFollow(code: Code): boolean {
  return code === null || code < 0 || mayPrecede(String.fromCodePoint(code));
}

/** Succeeds at `:`, one of the names, and a label whose brackets are balanced. */
const certain: Construct = {
  partial: true,
  tokenize(effects, ok, nok) {
    let name = '';
    let depth = 0;
    const inName: State = (code) => {
      if (code === OPEN && (INLINE as readonly string[]).includes(name)) return inLabel(code);
      if (code === null || code < 0 || name.length > 4) return leave(nok)(code);
      name += String.fromCodePoint(code);
      effects.consume(code);
      return inName;
    };
    const inLabel: State = (code) => {
      if (code === null) return leave(nok)(code);
      if (code === OPEN) depth++;
      if (code === CLOSE) depth--;
      effects.consume(code);
      if (depth === 0) return leave(ok);
      return code === BACKSLASH ? escaped : inLabel;
    };
    const escaped: State = (code) => {
      if (code !== OPEN && code !== CLOSE && code !== BACKSLASH) return inLabel(code);
      effects.consume(code);
      return inLabel;
    };
    const leave =
      (next: State): State =>
      (code) => {
        effects.exit('data');
        return next(code);
      };
    return (code) => {
      effects.enter('data');
      effects.consume(code);
      return inName;
    };
  },
};

function onlyWhereCertain(directive: Construct): Construct {
  return {
    ...directive,
    previous(code) {
      return mayFollow(code) && (directive.previous?.call(this, code) ?? true);
    },
    tokenize(effects, ok, nok) {
      return effects.check(certain, directive.tokenize.call(this, effects, ok, nok), nok);
    },
  };
}

function one(constructs: Construct | readonly Construct[] | undefined, at = 0): Construct {
  const found = Array.isArray(constructs) ? constructs[at] : constructs;
  if (!found) throw new Error('remark-directive no longer has the construct that lessons use.');
  return found as Construct;
}

/** Runs after the plugins and narrows what they added. */
function narrow(this: Processor): void {
  const data = this.data();
  const extensions = data.micromarkExtensions ?? [];
  const directive = extensions.at(-1);
  data.micromarkExtensions = [
    ...extensions.slice(0, -1),
    {
      text: { [COLON]: onlyWhereCertain(one(directive?.text?.[COLON])) },
      flow: { [COLON]: one(directive?.flow?.[COLON], 1) },
      // HTML blocks would swallow what follows them, and text that is only indented is never code here.
      disable: { null: ['htmlFlow', 'codeIndented'] },
    },
  ];
  // The transforms put texts in place of texts and forget where they stood.
  data.fromMarkdownExtensions = (data.fromMarkdownExtensions ?? [])
    .flat(2)
    .map((extension) => ({ ...extension, transforms: [] }));
}

const processor = unified()
  .use(remarkParse)
  .use(remarkGfm, { singleTilde: false })
  .use(remarkDirective)
  .use(narrow)
  .freeze();

/** Markdown text as a tree with places. */
export function parseMarkdown(text: string): Root {
  return processor.parse(text);
}
