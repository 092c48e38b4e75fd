import type { YAMLError } from 'yaml';

export interface YamlTrouble {
  readonly message: string;
  readonly hint: string;
  /** Where it stands in the text. */
  readonly offset: number;
}

/** What is wrong with a front matter in the words of someone who does not know YAML. */
export function yamlTrouble(error: Pick<YAMLError, 'code' | 'pos' | 'message'>, text: string): YamlTrouble {
  const offset = error.pos[0];
  const line = text.slice(offset).split('\n')[0] ?? '';
  const quotes = 'Put quotes around the whole value: title: "Beans: three ways".';
  switch (error.code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
      return /:(?:\s|$)/.test(line)
        ? { message: 'This value holds a colon and a blank, which begin a key.', hint: quotes, offset }
        : {
            message: 'The line below is indented as if it belonged to this value.',
            hint: 'Let every key begin at the left edge.',
            offset,
          };
    case 'MULTILINE_IMPLICIT_KEY':
      return {
        message: 'A key, a colon and a blank were expected here.',
        hint: 'Write the colon and a blank after each key.',
        offset,
      };
    case 'TAB_AS_INDENT':
      return {
        message: 'A tab stands in the indentation.',
        hint: 'Indent with blanks, never with tabs.',
        offset,
      };
    case 'BAD_SCALAR_START':
      return {
        message: `A value cannot begin with “${text[offset] ?? ''}”.`,
        hint: 'Put quotes around the whole value.',
        offset,
      };
    case 'BAD_DQ_ESCAPE':
      return {
        message: 'A backslash means something else inside double quotes.',
        hint: 'Use single quotes around the value, or delete the backslash.',
        offset,
      };
    case 'MISSING_CHAR': {
      const quote = /closing ['"]/.test(error.message) ? openQuote(text) : undefined;
      return quote === undefined
        ? {
            message: 'This line has no key with a colon.',
            hint: 'Write a key, a colon and a blank before the value.',
            offset,
          }
        : {
            message: 'The quote that opens here is not closed.',
            hint: 'Close it at the end of the value.',
            offset: quote,
          };
    }
    case 'BAD_INDENT': {
      const bracket = openBracket(text.slice(0, offset));
      if (bracket !== undefined)
        return {
          message: `The “${text[bracket]}” that opens here is not closed on its line.`,
          hint: `Put “${text[bracket] === '[' ? ']' : '}'}” at its end.`,
          offset: bracket,
        };
      return { message: 'This line is indented differently.', hint: 'Indent it like its neighbors.', offset };
    }
    default:
      return {
        message: 'The front matter cannot be read from here on.',
        hint: 'Look for a bracket, a quote or a comma too many, and put quotes around values with odd marks.',
        offset,
      };
  }
}

/** Offset of the first value that a quote opens and none closes on its line. */
function openQuote(text: string): number | undefined {
  const found = /^([^\n#]*?[:[,{-][ \t]*)(?:"(?:[^"\\\n]|\\.)*$|'[^'\n]*$)/m.exec(text);
  return found ? found.index + (found[1] ?? '').length : undefined;
}

/** Offset of the last bracket or brace that is still open at the end of a text. */
function openBracket(text: string): number | undefined {
  const open: number[] = [];
  for (let at = 0; at < text.length; at++) {
    const char = text[at];
    if (char === '[' || char === '{') open.push(at);
    else if (char === ']' || char === '}') open.pop();
  }
  return open.at(-1);
}
