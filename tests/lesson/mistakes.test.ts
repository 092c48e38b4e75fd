import { describe, expect, it } from 'vitest';
import { parseBody } from './known.js';

/**
 * One mistake each: a name, the lines of a lesson's body, and what must be found, as `line:column code`
 * and a piece of the message or the hint. Nothing else may be found: one slip is one problem.
 */
type Case = readonly [name: string, body: string, ...expected: (readonly [found: string, words: RegExp])[]];

const PINTO = `
:::form-compare{id=pinto food="pinto beans" basis="1 cup, ready to eat" show=sodium}
- canned, drained
- canned, drained and rinsed
:::`;

const OPENINGS: readonly Case[] = [
  [
    'a blank before the name',
    '::: level{is=short}\nA\n:::',
    ['1:1 lesson/opening', /between the colons and the name/],
  ],
  [
    'a blank before the brace',
    ':::level {is=short}\nA\n:::',
    ['1:9 lesson/opening', /between level and its “{”/],
  ],
  ['no name', '::::staff\nA\n::::\n\n:::{is=short}\nA\n:::', ['5:1 lesson/opening', /name is missing/]],
  ['words after it', '::::staff Hello\nA\n::::', ['1:11 lesson/opening', /Words stand after/]],
  ['a deep indentation', '::::staff\n    ::write{label="A"}\n::::', ['2:5 lesson/opening', /column 5/]],
  ['a misspelt name', ':::levle{is=short}\nA\n:::', ['1:4 lesson/unknown-directive', /Did you mean level\?/]],
  ['a name of nothing', '::zebra', ['1:3 lesson/unknown-directive', /no directive named zebra/]],
  ['two colons for a body', '::level{is=short}\nA\n:::', ['1:1 lesson/form', /level has a body/]],
  ['three colons for one line', ':::write{label="A"}\n:::', ['1:1 lesson/form', /takes two colons/]],
  ['a label where none is taken', '::::staff[us]\nA\n::::', ['1:10 lesson/label', /Delete them/]],
];

const ATTRIBUTES: readonly Case[] = [
  ['no braces', ':::level is=short\nA\n:::', ['1:10 lesson/attribute-writing', /no brace before/]],
  ['no closing brace', ':::level{is=short\nA\n:::', ['1:9 lesson/attribute-writing', /not closed/]],
  ['a comma between', '::write{lines=2, label="A"}', ['1:16 lesson/attribute-writing', /“,” parts/]],
  ['a comma and no blank', '::write{lines=2,label="A"}', ['1:16 lesson/attribute-writing', /“,” parts/]],
  ['curly quotes', '::write{label=“My plan”}', ['1:15 lesson/attribute-writing', /straight quotes/]],
  [
    'blanks and no quotes',
    '::write{label=dried, cooked at home lines=2}',
    ['1:15 lesson/attribute-writing', /label="dried, cooked at home"/],
  ],
  ['an open quote', '::write{label="My plan}', ['1:15 lesson/attribute-writing', /is not closed/]],
  [
    'no blank after a quote',
    '::write{label="A"lines=2}',
    ['1:18 lesson/attribute-writing', /blank is missing/],
  ],
  ['an equals sign in a value', '::write{label=a=b}', ['1:16 lesson/attribute-writing', /holds “=”/]],
  ['a name and no value', '::write{label}', ['1:9 lesson/attribute-writing', /has no value/]],
  ['nothing between the quotes', '::write{label=""}', ['1:16 lesson/attribute-value', /is empty/]],
  ['the same twice', '::write{label="A" label="B"}', ['1:19 lesson/attribute-name', /stands twice/]],
  ['a misspelt one', '::write{label="A" line=2}', ['1:19 lesson/attribute-name', /Did you mean lines\?/]],
  ['a short form', '::write{label="A" .big}', ['1:19 lesson/attribute-writing', /short form/]],
  ['one that is missing', '::write{lines=2}', ['1:1 lesson/attribute-missing', /What to write|Add label/i]],
  ['a number out of bounds', '::write{label="A" lines=200}', ['1:25 lesson/attribute-value', /whole number/]],
  [
    'a word that is none of them',
    '::::only{out=handouts}\nA\n::::',
    ['1:14 lesson/attribute-value', /handout\?/],
  ],
  ['an event', '::write{label="A" onclick="x"}', ['1:19 lesson/refused-name', /cannot be an attribute/]],
];

const IDS: readonly Case[] = [
  ['an id with capitals', PINTO.replace('id=pinto', 'id=Pinto'), ['2:20 lesson/id', /cannot be an id/]],
  ['an id that starts with a digit', PINTO.replace('id=pinto', 'id=3beans'), ['2:20 lesson/id', /cannot be/]],
  ['no id', PINTO.replace('id=pinto ', ''), ['2:1 lesson/attribute-missing', /needs the attribute id/]],
  [
    'an id by its short form',
    PINTO.replace('id=pinto', '#pinto'),
    ['2:17 lesson/attribute-writing', /id=pinto/],
  ],
  ['an id of two', PINTO + PINTO, ['6:20 lesson/id', /Two directives have the id “pinto”/]],
  [
    'an id twice in one',
    PINTO.replace('id=pinto', 'id=pinto id=peas'),
    ['2:26 lesson/attribute-name', /twice/],
  ],
  [
    'a figure that is not there',
    `::show{figure=pnito}${PINTO}`,
    ['1:15 lesson/reference', /Did you mean pinto\?/],
  ],
  [
    'a number of nothing',
    `A :n[sodium]{of=pinot} b${PINTO}`,
    ['1:17 lesson/reference', /Did you mean pinto\?/],
  ],
  [
    'a number of a caution',
    `A :n[sodium]{of=potassium-salt} b\n\n::caution{id=potassium-salt}${PINTO}`,
    ['1:17 lesson/reference', /No directive of this lesson/],
  ],
];

const CONTAINERS: readonly Case[] = [
  ['a stray close', 'A\n\n:::', ['3:1 lesson/stray-close', /closes nothing/]],
  ['a close too many', '::::staff\nA\n::::\n::::', ['4:1 lesson/stray-close', /closes nothing/]],
  ['one left open at the end', '::::staff\nA', ['1:1 lesson/unclosed', /four colons/]],
  [
    'one left open before the next',
    '::::slide{minutes=3}\n:::say\nA\n:::do\nB\n:::\n::::',
    ['2:1 lesson/unclosed', /container say/],
  ],
  [
    'one left open inside another',
    '::::slide{minutes=3}\n:::say\nA\n::::\n\n::::staff\nB\n::::',
    ['2:1 lesson/unclosed', /container say/],
  ],
  [
    'a close with a colon too few',
    '::::slide{minutes=3}\nA\n:::\n\n::::staff\nB\n::::',
    ['3:1 lesson/colons', /three colons, but slide on line \d+ opened with four/],
  ],
  [
    'a close with a colon too many',
    '::::slide{minutes=3}\n:::say\nA\n::::\n::::',
    ['4:1 lesson/colons', /four colons, but say on line \d+ opened with three/],
  ],
  [
    'the closing line of the inner one closes the outer one',
    ':::slide{minutes=3}\n:::say\nA\n:::\n:::',
    ['1:1 lesson/colons', /takes four colons/],
  ],
  [
    'as many colons as what it holds',
    `:::level{is=short}${PINTO}\n:::`,
    ['1:1 lesson/colons', /level holds form-compare .* no more colons/],
  ],
  ['say outside a slide', ':::say\nA\n:::', ['1:1 lesson/placement', /inside slide/]],
  ['do on the worksheet', '::::worksheet\n:::do\nA\n:::\n::::', ['2:1 lesson/placement', /inside slide/]],
  [
    'only inside a slide',
    ':::::slide{minutes=2}\n::::only{out=slides}\nA\n::::\n:::::',
    ['2:1 lesson/placement', /top level/],
  ],
  [
    'a level in a level',
    '::::level{is=short}\n:::level{is=plain}\nA\n:::\n::::',
    ['2:1 lesson/placement', /not inside level/],
  ],
  [
    'a directive in a directive',
    PINTO.replace(/:::$/, '::write{label="A"}\n:::').replace(':::form', '::::form').replace(/:::$/, '::::'),
    ['5:1 lesson/placement', /form-compare cannot hold write/],
  ],
  [
    'the same level side by side',
    ':::level{is=short}\nA\n:::\n\n:::level{is=plain}\nB\n:::\n\n:::level{is=short}\nC\n:::',
    ['9:13 lesson/level-twice', /short/],
  ],
  [
    'paragraphs for rows',
    PINTO.replace('- canned, drained\n', 'Words.\n\n- canned, drained\n'),
    ['3:1 lesson/body', /a list/],
  ],
  ['hyphens under text', '::::staff\nText\n---\n\nMore\n::::', ['3:1 lesson/underline', /into a heading/]],
  ['HTML around it', '<div class="x">\n:::level{is=short}\nA\n:::', ['1:1 lesson/html', /Raw HTML is off/]],
];

const TEXT: readonly Case[] = [
  [
    'a directive in a line',
    'Now ::write{label="x"} here.',
    ['1:5 lesson/middle-of-line', /middle of a line/],
  ],
  ['a container in a line', 'Now :::say Hi', ['1:5 lesson/middle-of-line', /say stands in the middle/]],
  ['a directive in a list', '- a\n- ::write{label="x"}', ['2:3 lesson/middle-of-line', /a list or a quote/]],
  ['a container in a quote', '> :::say\n> Hi', ['1:3 lesson/middle-of-line', /a list or a quote/]],
  ['a directive with one colon', ':show{figure=a}', ['1:1 lesson/middle-of-line', /one colon/]],
  ['a number against a word', 'It has:n[sodium]{of=pinto}', ['1:7 lesson/inline', /right after “s”/]],
  ['a number with a blank', `It has :n [sodium]{of=pinto}${PINTO}`, ['1:8 lesson/inline', /blanks stand/]],
  [
    'a number with a blank before its brace',
    `It has :n[sodium] {of=pinto}.${PINTO}`,
    ['1:18 lesson/inline', /and its brace/],
  ],
  ['a number without words', 'It has :n{of=pinto}', ['1:8 lesson/inline', /no words in brackets/]],
  ['a number with a capital', 'It has :N[sodium]{of=pinto}', ['1:8 lesson/inline', /lower case/]],
  ['a number left open', 'It has :n[sodium of beans.', ['1:8 lesson/inline', /bracket is not closed/]],
  [
    'a number with an open brace',
    `It has :n[sodium]{of=pinto${PINTO}`,
    ['1:18 lesson/attribute-writing', /not closed/],
  ],
  ['a number of no directive', 'It has :n[sodium].', ['1:8 lesson/attribute-missing', /attribute of/]],
  [
    'a number with an unknown attribute',
    `:n[sodium]{of=pinto rows=a}${PINTO}`,
    ['1:21 lesson/attribute-name', /row\?/],
  ],
  ['an unknown piece', 'See :cit[duyff-2011]{page=2}.', ['1:5 lesson/inline', /Did you mean :cite/]],
  ['an empty piece', 'See :cite[].', ['1:5 lesson/inline', /names nothing/]],
  ['a line break in HTML', 'a<br>b', ['1:2 lesson/html', /Raw HTML is off/]],
  ['a comment over a blank line', '<!-- a\n\nb -->', ['1:1 lesson/html', /comments are off/]],
  ['a link inside the folder', 'See [more](more.md).', ['1:5 lesson/link', /https/]],
  ['a link that runs', 'See [more](javascript:x).', ['1:5 lesson/link', /https/]],
  ['a picture from elsewhere', '![A can](https://x.org/a.png)', ['1:1 lesson/picture', /pictures\//]],
  ['a picture outside', '![A can](pictures/../a.png)', ['1:1 lesson/picture', /pictures\//]],
  ['a picture without words', '![](pictures/a.png)', ['1:1 lesson/picture-words', /what it shows/]],
  ['a footnote that is not there', 'Beans[^1] are cheap.', ['1:6 lesson/footnote', /not used/]],
  [
    'a row with a cell too many',
    '| a |\n| --- |\n| 1 | 2 |',
    ['3:1 lesson/table', /2 cells and the head has 1/],
  ],
  ['code left open', '```\ncode', ['1:1 lesson/code-unclosed', /not closed/]],
  ['a rule', 'A\n\n***\n\nB', ['3:1 lesson/rule-line', /does nothing/]],
  ['a control character', 'A \u0007 b', ['1:3 lesson/control-character', /U\+0007/]],
  ['half a character', 'A \ud83e b', ['1:3 lesson/control-character', /half of a character/]],
];

const GROUPS: readonly { readonly what: string; readonly cases: readonly Case[] }[] = [
  { what: 'an opening line', cases: OPENINGS },
  { what: 'attributes', cases: ATTRIBUTES },
  { what: 'ids and references', cases: IDS },
  { what: 'containers', cases: CONTAINERS },
  { what: 'text', cases: TEXT },
];

describe.each(GROUPS)('a mistake in $what', ({ cases }) => {
  const named = cases.map(([name, body, ...expected]) => [name, { body, expected }] as const);
  it.each(named)('%s', (_name, { body, expected }) => {
    const { problems, found } = parseBody(body);
    expect(found).toEqual(expected.map(([place]) => place));
    for (const [index, [, words]] of expected.entries())
      expect(`${problems[index]?.message} ${problems[index]?.hint}`).toMatch(words);
  });
});

describe('no mistake', () => {
  it.each([
    ['escaped pieces', '\\:n[sodium]{of=x} and \\::show{figure=x}'],
    ['colons in code', '`:n[x]{of=y}` and `::show{figure=a}`'],
    ['fences in code', '~~~\n:::say\n::::slide\n~~~'],
    ['a fence in code inside a container', '::::slide{minutes=1}\n:::say\n~~~\n:::\n~~~\n:::\n::::'],
    ['one tilde', 'Cook 3~4 minutes, or ~5.'],
    ['a heading by underline at top level', 'Text\n---'],
    ['indented closing lines', '::::slide{minutes=1}\n  :::say\n  Hi\n  :::\n::::'],
    ['a number in stars', `**:n[sodium]{of=pinto}**${PINTO}`],
    ['a number over two lines', `It has :n[sodium]{of=pinto\nrow="canned, drained"}.${PINTO}`],
    ['a register’s caution twice', '::caution{id=potassium-salt}\n\n::caution{id=potassium-salt}'],
    ['links', '[a](https://x.org), <mailto:a@b.org>, www.x.org and http://x.org:80/a'],
    ['less than', 'Under 5 < 6 and <5 g.'],
  ])('%s', (_, body) => {
    expect(parseBody(body).found).toEqual([]);
  });
});

describe('a caution where it cannot stand', () => {
  it('is reported and kept', () => {
    const { lesson, found } = parseBody(PINTO.replace(/:::$/, '::caution{id=potassium-salt}\n:::'));
    expect(found).toEqual(['5:1 lesson/placement']);
    expect(lesson?.parts.map((part) => (part.kind === 'directive' ? part.name : part.kind))).toEqual([
      'form-compare',
      'caution',
    ]);
  });
});
