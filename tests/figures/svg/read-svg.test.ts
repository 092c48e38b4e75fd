import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mark } from '../../../src/figures/index.js';
import { isOneInk, readSvg, toOneInk } from '../../../src/figures/index.js';

const svg = (inside: string, attributes = 'viewBox="0 0 10 10"') =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>${inside}</svg>`;
const read = (inside: string, attributes?: string) => readSvg(svg(inside, attributes), 'pictures/a.svg');
const marks = (inside: string, attributes?: string): readonly Mark[] => {
  const { picture, problems } = read(inside, attributes);
  expect(problems).toEqual([]);
  return unclipped(picture?.marks ?? []);
};
/** Lines at the edge stick out of the view box, which then clips; here only what is inside matters. */
const unclipped = (all: readonly Mark[]): readonly Mark[] => {
  const [first] = all;
  const cut = first?.kind === 'group' && first.clip === 'M0 0L10 0L10 10L0 10Z' && !first.at;
  return cut && all.length === 1 ? first.marks : all;
};

describe('what a vector picture may hold', () => {
  it('takes its size from the view box, or from width and height with their units', () => {
    const dot = '<circle cx="1" cy="1" r="1"/>';
    const size = (attributes: string) => {
      const { picture } = read(dot, attributes);
      return [picture?.width, picture?.height];
    };
    expect(size('viewBox="0 0 20 30" width="1in"')).toEqual([20, 30]);
    expect(size('width="1in" height="25.4mm"')).toEqual([96, 96]);
  });

  it('moves a view box that does not start at zero, and cuts off what sticks out', () => {
    expect(marks('<rect width="20" height="2"/>', 'viewBox="5 0 10 10"')).toEqual([
      {
        kind: 'group',
        at: [1, 0, 0, 1, -5, -0],
        clip: 'M5 0L15 0L15 10L5 10Z',
        marks: [{ kind: 'shape', path: 'M0 0L20 0L20 2L0 2Z', fill: '#000000' }],
      },
    ]);
  });

  it.each([
    ['rectangles', '<rect x="1" y="2" width="3" height="4"/>', 'M1 2L4 2L4 6L1 6Z'],
    ['lines need a stroke', '<line x1="1" y1="1" x2="9" y2="1" stroke="#000"/>', 'M1 1L9 1'],
    ['polygons are closed', '<polygon points="0,0 4,0 4,4"/>', 'M0 0L4 0L4 4Z'],
    ['polylines are not', '<polyline points="0 0 4 0 4 4"/>', 'M0 0L4 0L4 4'],
    ['lengths in per cent', '<rect width="50%" height="10%"/>', 'M0 0L5 0L5 1L0 1Z'],
  ])('%s', (_, inside, path) => {
    expect(marks(inside)[0]).toMatchObject({ kind: 'shape', path });
  });

  it('leaves out what has no extent, no paint or is hidden', () => {
    const nothing = [
      '<rect width="0" height="4"/>',
      '<circle r="0"/>',
      '<path d=""/>',
      '<path d="M0 0L1 1" fill="none"/>',
      '<g display="none"><rect width="1" height="1"/></g>',
      '<g visibility="hidden"><rect width="1" height="1"/></g>',
      '<g opacity="0"><rect width="1" height="1"/></g>',
      '<defs><rect width="1" height="1"/></defs>',
    ];
    expect(marks(`${nothing.join('')}<rect width="2" height="2"/>`)).toHaveLength(1);
  });

  it('hands colors down, and lets style win over attributes', () => {
    expect(
      marks(
        '<g fill="red" stroke="currentColor" color="#00f"><rect width="1" height="1" style="fill: rgb(0, 128, 0)"/></g>',
      ),
    ).toMatchObject([{ fill: '#008000', stroke: { color: '#0000ff', width: 1 } }]);
  });

  it('keeps opacity of fill, line and group apart', () => {
    expect(
      marks('<rect width="4" height="4" fill="#0008" stroke="#f00" stroke-opacity=".5" opacity="0.25"/>'),
    ).toMatchObject([
      {
        kind: 'group',
        opacity: 0.25,
        marks: [
          { kind: 'shape', fill: '#000000', fillOpacity: 0x88 / 255 },
          { kind: 'group', opacity: 0.5, marks: [{ stroke: { color: '#ff0000' } }] },
        ],
      },
    ]);
  });

  it('reads transforms in the order of writing', () => {
    expect(marks('<g transform="translate(2,3) scale(2)"><rect width="1" height="1"/></g>')).toMatchObject([
      { kind: 'group', at: [2, 0, 0, 2, 2, 3] },
    ]);
    const [turned] = marks('<rect width="1" height="1" transform="rotate(90 5 5)"/>');
    const at = turned?.kind === 'group' ? turned.at : undefined;
    expect(at?.map((v) => Number(v.toFixed(9)) + 0)).toEqual([0, 1, -1, 0, 10, 0]);
  });

  it('places gradients in the coordinates of their shape', () => {
    const stops =
      '<stop offset="0" stop-color="#fff"/><stop offset="100%" stop-color="#000" stop-opacity="50%"/>';
    expect(
      marks(
        `<linearGradient id="a">${stops}</linearGradient><rect x="2" width="4" height="4" fill="url(#a)"/>`,
      ),
    ).toMatchObject([
      {
        fill: {
          kind: 'linear',
          from: [2, 0],
          to: [6, 0],
          stops: [
            { offset: 0, color: '#ffffff' },
            { offset: 1, color: '#000000', opacity: 0.5 },
          ],
        },
      },
    ]);
    expect(
      marks(
        `<radialGradient id="b" gradientUnits="userSpaceOnUse" cx="5" cy="5" r="3" href="#a"/><linearGradient id="a">${stops}</linearGradient><rect width="4" height="4" fill="url(#b)"/>`,
      ),
    ).toMatchObject([{ fill: { kind: 'radial', center: [5, 5], radius: 3 } }]);
  });

  it('turns a skewed linear gradient into the straight one that looks the same', () => {
    const [mark] = marks(
      '<linearGradient id="a" gradientUnits="userSpaceOnUse" x1="0" y1="0" x2="10" y2="0" gradientTransform="matrix(1 0 1 1 0 0)"><stop stop-color="#fff"/><stop offset="1"/></linearGradient><rect width="9" height="9" fill="url(#a)"/>',
    );
    // Under x' = x + y the share at (x', y') is (x' - y') / 10, so the gradient runs along (5, -5).
    expect(mark).toMatchObject({ fill: { kind: 'linear', from: [0, 0] } });
    const to =
      mark?.kind === 'shape' && typeof mark.fill === 'object' && mark.fill.kind === 'linear'
        ? mark.fill.to
        : [0, 0];
    expect(to[0]).toBeCloseTo(5, 9);
    expect(to[1]).toBeCloseTo(-5, 9);
  });

  it('clips, also by what is used or clipped itself', () => {
    expect(
      marks(
        '<clipPath id="c" clip-path="url(#d)"><rect id="r" width="4" height="4"/></clipPath><clipPath id="d"><use href="#r" x="2"/></clipPath><rect width="9" height="9" clip-path="url(#c)"/>',
      ),
    ).toMatchObject([
      { kind: 'group', clip: 'M0 0L4 0L4 4L0 4Z', marks: [{ kind: 'group', clip: 'M2 0L6 0L6 4L2 4Z' }] },
    ]);
  });

  it('uses what is defined, symbols with their own view box too', () => {
    expect(
      marks('<defs><path id="p" d="M0 0H1V1Z"/></defs><use xlink:href="#p" x="3" fill="#f00"/>'),
    ).toMatchObject([{ kind: 'group', at: [1, 0, 0, 1, 3, 0], marks: [{ fill: '#ff0000' }] }]);
    expect(
      marks(
        '<symbol id="s" viewBox="0 0 2 2"><rect width="2" height="2"/></symbol><use href="#s" width="8" height="8"/>',
      ),
    ).toMatchObject([{ kind: 'group', at: [4, 0, 0, 4, 0, 0], clip: 'M0 0L2 0L2 2L0 2Z' }]);
  });

  it('says what it draws in a simpler way', () => {
    const { picture, problems } = read(
      '<linearGradient id="a"><stop stop-color="#fff"/><stop offset="1"/></linearGradient><path d="M0 0L9 9" stroke="url(#a)"/>',
    );
    expect(problems.map((p) => [p.code, p.severity])).toEqual([['figures/svg-simplified', 'hint']]);
    expect(unclipped(picture?.marks ?? [])).toMatchObject([
      { fill: '#000000', stroke: { color: '#808080' } },
    ]);
  });
});

describe('what a vector picture must not hold', () => {
  const bomb = Array.from(
    { length: 12 },
    (_, i) =>
      `<g id="g${i}">${`<use href="#g${i - 1}"/>`.repeat(i === 0 ? 0 : 10)}<rect width="1" height="1"/></g>`,
  ).join('');
  const deep = `${'<g>'.repeat(200)}<rect width="1" height="1"/>${'</g>'.repeat(200)}`;
  it.each([
    ['scripts', '<script>1</script>', 'svg-unsafe'],
    ['scripts under another prefix', '<x:script xmlns:x="a">1</x:script>', 'svg-unsafe'],
    ['pages inside', '<foreignObject/>', 'svg-unsafe'],
    ['event attributes', '<rect onclick="1" width="1" height="1"/>', 'svg-unsafe'],
    ['links', '<a href="https://example.org"><rect width="1" height="1"/></a>', 'svg-unsafe'],
    ['pictures inside', '<image href="data:image/png;base64,AAAA"/>', 'svg-unsafe'],
    ['files outside', '<use href="other.svg#a"/>', 'svg-unsafe'],
    ['paint from outside', '<rect style="fill:url(http://a/b)" width="1" height="1"/>', 'svg-unsafe'],
    ['text', '<text x="1" y="1">mg</text>', 'svg-text'],
    ['style sheets', '<style>rect{fill:red}</style>', 'svg-unsupported'],
    ['filters', '<filter id="f"/><rect filter="url(#f)" width="1" height="1"/>', 'svg-unsupported'],
    ['masks by style', '<rect style="mask: url(#m)" width="1" height="1"/>', 'svg-unsupported'],
    ['animation', '<animateMotion/>', 'svg-unsupported'],
    ['patterns', '<pattern id="p"/>', 'svg-unsupported'],
    ['uses that unfold without end', bomb, 'svg-too-large'],
    ['a use of itself', '<g id="a"><use href="#a"/></g>', 'svg-too-large'],
    ['too many levels', deep, 'svg-too-large'],
    ['path data that breaks off', '<path d="M0 0L1"/>', 'svg-broken'],
    ['colors that are none', '<rect width="1" height="1" fill="reddish"/>', 'svg-broken'],
    ['broken markup', '<g>', 'svg-broken'],
    ['nothing to draw', '<g/>', 'svg-broken'],
  ])('%s', (_, inside, code) => {
    const { picture, problems } = read(inside);
    expect(picture).toBeUndefined();
    expect(problems.map((p) => p.code)).toContain(`figures/${code}`);
    for (const problem of problems) {
      expect(problem.severity).toBe('stop');
      expect(problem.hint ?? '').not.toBe('');
    }
  });

  it.each([
    [
      'document types and entities',
      `<!DOCTYPE svg [<!ENTITY a "b">]>${svg('<rect width="1" height="1"/>')}`,
      'svg-unsafe',
    ],
    [
      'style sheets outside',
      `<?xml-stylesheet href="a.css"?>${svg('<rect width="1" height="1"/>')}`,
      'svg-unsafe',
    ],
    ['other files', '<html><body/></html>', 'svg-broken'],
    ['no XML at all', 'GIF89a', 'svg-broken'],
    ['nothing', '', 'svg-broken'],
    [
      'a million characters',
      svg(`<!--${'x'.repeat(1_000_000)}--><rect width="1" height="1"/>`),
      'svg-too-large',
    ],
    ['a hundred thousand levels', '<svg>'.repeat(100_000), 'svg-too-large'],
  ])('%s', (_, text, code) => {
    const { picture, problems } = readSvg(text, 'a.svg');
    expect(picture).toBeUndefined();
    expect(problems.map((p) => p.code)).toContain(`figures/${code}`);
  });

  it('is reported at its line and column', () => {
    const text = svg('\n  <rect width="1" height="1"/>\n  <text>mg</text>\n');
    expect(readSvg(text, 'pictures/a.svg').problems[0]?.place).toEqual({
      file: 'pictures/a.svg',
      line: 3,
      column: 3,
    });
    expect(readSvg('<svg>\n<g></svg>', 'b.svg').problems[0]?.place).toMatchObject({ file: 'b.svg', line: 2 });
  });

  it('never throws, whatever it is given', () => {
    const piece = fc.constantFrom(
      '<g>',
      '</g>',
      '<rect width="1" height="1" ',
      'fill="url(#a)" ',
      'transform="scale(0)" ',
      '/>',
      '<linearGradient id="a" href="#a">',
      '</linearGradient>',
      '<stop offset="2"/>',
      '<use href="#a"/>',
      '<clipPath id="a" clip-path="url(#a)">',
      '</clipPath>',
      '<path d="M0 0a1 1 0 0 1 5 5z" clip-path="url(#a)" stroke="url(#a)"/>',
      '&lt;',
      '<svg viewBox="0 0 0 1">',
      '</svg>',
      '\u0000',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(piece, fc.string())), (pieces) => {
        const { picture, problems } = readSvg(svg(pieces.join('')), 'a.svg');
        expect(picture !== undefined || problems.length > 0).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

describe('a colored picture in one ink', () => {
  it('becomes black where it is dark, white with a black edge where it is pale', () => {
    const { picture } = read(
      '<rect width="5" height="5" fill="#8e3b36"/><rect x="5" width="5" height="5" fill="#ffe9a8"/><path d="M0 9H9" fill="none" stroke="#777"/>',
    );
    if (!picture) throw new Error('The sample cannot be read.');
    expect(isOneInk(picture.marks)).toBe(false);
    const one = toOneInk(picture);
    expect(isOneInk(one.marks)).toBe(true);
    expect(unclipped(one.marks)).toMatchObject([
      { fill: '#000000', stroke: { color: '#ffffff' } },
      { fill: '#ffffff', stroke: { color: '#000000' } },
      { stroke: { color: '#000000' } },
    ]);
  });

  it('mixes opacity into the color first', () => {
    const { picture } = read('<g opacity=".1"><rect width="5" height="5" fill="#000"/></g>');
    if (!picture) throw new Error('The sample cannot be read.');
    expect(toOneInk(picture).marks).toMatchObject([{ kind: 'group', marks: [{ fill: '#ffffff' }] }]);
    expect(isOneInk(toOneInk(picture).marks)).toBe(true);
  });
});
