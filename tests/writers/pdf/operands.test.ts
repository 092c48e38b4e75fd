import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { operationsOf } from '../../../src/writers/pdf/check/tokens.js';
import { multiply, pageBoxIn, scaleOf } from '../../../src/writers/pdf/content/matrix.js';
import { digitsFor, operand } from '../../../src/writers/pdf/content/number.js';
import { pathOperators } from '../../../src/writers/pdf/content/path.js';

const operations = (text: string) => [...operationsOf(Uint8Array.from(Buffer.from(text, 'latin1')))];

describe('numbers of a content stream', () => {
  it.each([
    [0, '0'],
    [-0.0001, '0'],
    [12, '12'],
    [100, '100'],
    [0.5, '0.5'],
    [-1.25, '-1.25'],
    [1e-9, '0'],
    [1234567.8911, '1234567.891'],
  ])('%d is %s', (value, text) => {
    expect(operand(value)).toBe(text);
  });

  it('have no exponent and are exact to what the eye sees at any scale', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2000, max: 2000, noNaN: true }),
        fc.double({ min: 0.001, max: 900, noNaN: true }),
        (value, scale) => {
          const text = operand(value, digitsFor(scale));
          expect(text).toMatch(/^-?\d+(\.\d*[1-9])?$/);
          // A hundredth of a point is far below what any printer shows.
          expect(Math.abs(Number(text) - value) * scale).toBeLessThan(0.01);
        },
      ),
    );
  });
});

describe('matrices', () => {
  const number = fc.double({ min: -50, max: 50, noNaN: true });
  const matrix = fc.tuple(number, number, number, number, number, number);

  it('multiply as one after the other', () => {
    fc.assert(
      fc.property(matrix, matrix, number, number, (outer, inner, x, y) => {
        const apply = ([a, b, c, d, e, f]: readonly number[], [px, py]: readonly number[]) => [
          (a ?? 0) * (px ?? 0) + (c ?? 0) * (py ?? 0) + (e ?? 0),
          (b ?? 0) * (px ?? 0) + (d ?? 0) * (py ?? 0) + (f ?? 0),
        ];
        const [u, v] = apply(multiply(outer, inner), [x, y]);
        const [s, t] = apply(outer, apply(inner, [x, y]));
        expect(u).toBeCloseTo(s ?? 0, 6);
        expect(v).toBeCloseTo(t ?? 0, 6);
      }),
    );
  });

  it('see the page from inside', () => {
    expect(pageBoxIn([1, 0, 0, -1, 0, 100], 200, 100).map((v) => v + 0)).toEqual([0, 0, 200, 100]);
    expect(pageBoxIn([2, 0, 0, 2, 10, 10], 200, 100)).toEqual([-5, -5, 95, 45]);
    expect(pageBoxIn([0, 0, 0, 0, 1, 1], 200, 100)).toEqual([0, 0, 0, 0]);
    expect(scaleOf([0, 3, -2, 0, 9, 9])).toBe(3);
  });
});

describe('paths', () => {
  it.each([
    ['M0 0L10,5.5Z', '0 0 m\n10 5.5 l\nh\n'],
    ['M0 0 10 0 10 10Z', '0 0 m\n10 0 l\n10 10 l\nh\n'],
    ['M-1-2C1 2 3 4 5 6 7 8 9 10 11 12', '-1 -2 m\n1 2 3 4 5 6 c\n7 8 9 10 11 12 c\n'],
    ['M.5.25L1e1 2', '0.5 0.25 m\n10 2 l\n'],
    ['', ''],
  ])('%s', (path, expected) => {
    expect(pathOperators(path)).toBe(expected);
  });
});

describe('the reader of content streams', () => {
  it('reads all that ISO 32000-1, 7.3 has', () => {
    const [first] = operations(
      '/Na#6de -1.5 +2 .5 true false null (a(b)\\)\\101\\n\\\nc) <4 1f> [1 [2]] <</K /V>> op % note\n',
    );
    expect(first?.operator).toBe('op');
    expect(first?.operands).toEqual([
      { name: 'Name' },
      -1.5,
      2,
      0.5,
      true,
      false,
      null,
      { bytes: Uint8Array.from(Buffer.from('a(b))A\nc')) },
      { bytes: Uint8Array.of(0x41, 0xf0) },
      [1, [2]],
      new Map([['K', { name: 'V' }]]),
    ]);
  });

  it('keeps operands with their operators', () => {
    expect(
      operations('q\n1 0 0 1 5 5 cm/F1 12 Tf[(a)-2<62>]TJ Q').map((o) => [o.operator, o.operands.length]),
    ).toEqual([
      ['q', 0],
      ['cm', 6],
      ['Tf', 2],
      ['TJ', 1],
      ['Q', 0],
    ]);
  });

  it.each([
    ['(open', /does not end/],
    ['<41', /does not end/],
    ['<4x>', /holds something else/],
    ['[1 2', /"\]" is missing/],
    ['[1 op]', /"op" stands before a "\]"/],
    ['1 ) 2', /stands where nothing like it may/],
  ])('%s is an error', (text, message) => {
    expect(() => operations(text)).toThrow(message);
  });

  it('ends for any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 80 }), (bytes) => {
        try {
          expect([...operationsOf(bytes)].length).toBeLessThanOrEqual(bytes.length);
        } catch (error) {
          expect(error).toBeInstanceOf(Error);
        }
      }),
      { numRuns: 500 },
    );
  });
});
