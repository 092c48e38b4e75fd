import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BrickRows,
  type DotLanes,
  type DrawOptions,
  draw,
  type FigureSpec,
  isOneInk,
  type Mark,
  textBoxes,
} from '../../src/figures/index.js';
import { arabicBricks, arabicLanes, bricks, fonts, lanes, measures, paper, screen } from './samples.js';

const LEVELS = ['short', 'plain', 'fuller', 'large'] as const;
const words = (spec: FigureSpec, options: DrawOptions) =>
  textBoxes(draw(spec, options).drawing.marks).map((b) => b.words);

/** All text marks, wherever they stand. */
function texts(marks: readonly Mark[]): (Mark & { readonly kind: 'text' })[] {
  return marks.flatMap((m) => (m.kind === 'text' ? [m] : m.kind === 'group' ? texts(m.marks) : []));
}

/** Whether any two words share a place, told without the code under test. */
function collisions(marks: readonly Mark[], depth = 0.5): string[] {
  const boxes = textBoxes(marks);
  return boxes.flatMap(({ box: a, words: left }, i) =>
    boxes.slice(i + 1).flatMap(({ box: b, words: right }) => {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      return across > depth && down > depth ? [`${left} | ${right}`] : [];
    }),
  );
}

describe('a figure in every build', () => {
  for (const spec of [lanes, bricks, measures])
    for (const mode of ['shown', 'blank', 'key'] as const)
      for (const ink of ['color', 'one'] as const)
        for (const direction of ['ltr', 'rtl'] as const) {
          const figure: FigureSpec = { ...spec, mode };
          const look = `${spec.kind}, ${mode}, ${ink}, ${direction}`;
          it.each(LEVELS)(`on paper: ${look}, %s`, (level) => {
            const { drawing, problems } = draw(figure, paper({ level, ink, direction }));
            expect(problems).toEqual([]);
            expect(collisions(drawing.marks)).toEqual([]);
            if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
            for (const { box } of textBoxes(drawing.marks))
              expect(box.bottom).toBeLessThan(drawing.height + 1);
            const least = level === 'large' ? 18 : 9;
            for (const { line } of texts(drawing.marks))
              for (const run of line.runs) expect(run.size).toBeGreaterThanOrEqual(least);
          });
          it(`on a slide: ${look}`, () => {
            const { drawing, problems } = draw(figure, screen({ ink, direction }));
            expect(problems).toEqual([]);
            expect(collisions(drawing.marks)).toEqual([]);
            expect([drawing.width, drawing.height]).toEqual([1168, 468]);
            if (ink === 'one') expect(isOneInk(drawing.marks)).toBe(true);
            for (const { line } of texts(drawing.marks))
              for (const run of line.runs) expect(run.size).toBeGreaterThanOrEqual(32);
          });
        }

  for (const spec of [arabicLanes, arabicBricks])
    for (const mode of ['shown', 'blank', 'key'] as const) {
      const arabic = { language: 'ar', direction: 'rtl' } as const;
      it.each(LEVELS)(`in Arabic on paper: ${spec.kind}, ${mode}, %s`, (level) => {
        const { drawing, problems } = draw({ ...spec, mode }, paper({ ...arabic, level }));
        expect(problems).toEqual([]);
        expect(collisions(drawing.marks)).toEqual([]);
      });
      it(`in Arabic on a slide: ${spec.kind}, ${mode}`, () => {
        const { drawing, problems } = draw({ ...spec, mode }, screen(arabic));
        expect(problems).toEqual([]);
        expect(collisions(drawing.marks)).toEqual([]);
      });
    }

  it('is the same every time', () => {
    expect(JSON.stringify(draw(lanes, paper()).drawing)).toBe(JSON.stringify(draw(lanes, paper()).drawing));
  });
});

describe('what a figure prints', () => {
  it('prints every value once, each with the number that it shows', () => {
    const { drawing } = draw(lanes, paper());
    const shown = texts(drawing.marks).flatMap((t) =>
      t.line.runs.flatMap((r) => (r.span.data?.number ? [[r.span.data.number, r.span.text]] : [])),
    );
    expect(new Map(shown.map(([number, text]) => [number, text]))).toEqual(
      new Map(lanes.lanes.flatMap((l) => l.dots.map((d) => [d.number, d.text]))),
    );
  });

  it('prints both ends of a range', () => {
    expect(words(bricks, paper())).toEqual(expect.arrayContaining(['270', '370', 'somewhere in here']));
    expect(words(bricks, screen())).toContain('270 to 370 mg');
  });

  it('holds no value and no answer on a blank sheet', () => {
    for (const options of [...LEVELS.map((level) => paper({ level })), screen()]) {
      for (const spec of [
        { ...lanes, mode: 'blank' },
        { ...bricks, mode: 'blank' },
      ] as const) {
        const all = words(spec, options).join(' ');
        expect(all).not.toMatch(/\d/);
        expect(all).not.toMatch(/not known|somewhere|left|gone|may be/);
      }
    }
  });

  it('fills on a blank sheet only what is given, whatever the answer is', () => {
    const answer = (sure: number, possible: number): BrickRows => ({
      ...bricks,
      mode: 'blank',
      rows: bricks.rows.map((row, i) => (i === 0 ? row : { ...row, sure, possible })),
    });
    const marks = (sure: number, possible: number) =>
      JSON.stringify(draw(answer(sure, possible), paper()).drawing.marks.filter((m) => m.kind === 'shape'));
    expect(marks(270, 370)).toBe(marks(0, 20));
    // Also when nothing was taken away: only the first row is given.
    expect(marks(270, 370)).toBe(marks(460, 460));
    const dots = (value: number | null): DotLanes => ({
      ...lanes,
      mode: 'blank',
      lanes: lanes.lanes.map((l) => ({ ...l, dots: l.dots.map((d) => ({ ...d, value })) })),
    });
    const drawn = (value: number | null) =>
      JSON.stringify(draw(dots(value), paper()).drawing.marks.filter((m) => m.kind === 'shape'));
    expect(drawn(3)).toBe(drawn(900));
    expect(drawn(3)).toBe(drawn(null));
  });

  it('shows what is not known as a dashed ring at the far end, never at zero', () => {
    const { drawing } = draw(lanes, paper());
    const dashed = drawing.marks.filter((m) => m.kind === 'shape' && m.stroke?.dash !== undefined);
    expect(dashed).toHaveLength(1);
    const [ring] = dashed;
    const left = ring?.kind === 'shape' ? Number(/^M([\d.]+)/.exec(ring.path)?.[1]) : 0;
    expect(left).toBeGreaterThan(drawing.width * 0.9);
    expect(words(lanes, paper())).toContain('not known');
  });

  it('counts bricks and cuts the last at its true place', () => {
    const one: BrickRows = {
      ...bricks,
      worth: 10,
      rows: [{ name: 'Salt', note: '35 mg', sign: 'can', total: 35, sure: 35, possible: 35 }],
    };
    const solid = draw(one, paper({ axis: 0, width: 400 })).drawing.marks.flatMap((m) => {
      if (m.kind !== 'shape' || m.fill !== '#14212b') return [];
      const xs = [...m.path.matchAll(/[MLC ]?(-?[\d.]+) (-?[\d.]+)/g)].map((p) => Number(p[1]));
      return [Math.max(...xs) - Math.min(...xs)];
    });
    expect(solid).toHaveLength(4);
    expect((solid[3] ?? 0) / (solid[0] ?? 1)).toBeCloseTo(0.5, 2);
  });

  it('stands on zero: a dot of 0 is at the axis, and twice the value is twice as far', () => {
    const at = (value: number) => {
      const spec: DotLanes = {
        ...lanes,
        lanes: [
          {
            name: 'x',
            dots: [
              { letter: 'A', value, text: '1', number: 'n' },
              { letter: 'B', value: 100, text: '2', number: 'm' },
            ],
          },
        ],
      };
      const letters = texts(draw(spec, paper()).drawing.marks).filter((t) => t.line.text === 'A');
      const last = letters.at(-1);
      return last ? last.x + last.line.width / 2 : Number.NaN;
    };
    const axis = (42 * 72) / 25.4;
    expect(at(0)).toBeCloseTo(axis, 3);
    expect(at(60) - axis).toBeCloseTo(2 * (at(30) - axis), 3);
  });

  it('mirrors for reading from right to left, signs and digits excepted', () => {
    const ltr = draw(lanes, paper()).drawing;
    const rtl = draw(lanes, paper({ direction: 'rtl' })).drawing;
    const at = (marks: readonly Mark[], text: string) => {
      const found = textBoxes(marks).find((b) => b.words === text);
      return found ? (found.box.left + found.box.right) / 2 : Number.NaN;
    };
    for (const text of ['2 mg', '640 mg', 'A'])
      expect(at(ltr.marks, text) + at(rtl.marks, text)).toBeCloseTo(ltr.width, 0);
  });

  it('gives way when the page needs room, without smaller type', () => {
    const heights = [1, 0.5, 0].map((slack) => draw(lanes, paper({ slack })).drawing.height);
    expect(heights).toEqual([...heights].sort((a, b) => b - a));
    expect(heights[2]).toBeLessThan(heights[0] ?? 0);
  });
});

describe('what a figure refuses', () => {
  const codes = (spec: FigureSpec, options: DrawOptions) => draw(spec, options).problems.map((p) => p.code);

  it.each([Number.NaN, Number.POSITIVE_INFINITY, -3])('a dot at %d', (value) => {
    const spec: DotLanes = {
      ...lanes,
      lanes: [{ name: 'x', dots: [{ letter: 'A', value, text: '?', number: 'n' }] }],
    };
    expect(codes(spec, paper())).toContain('figures/not-drawable');
    expect(codes(spec, screen())).toContain('figures/not-drawable');
  });

  it.each([
    [{ total: 10, sure: 12, possible: 12 }, 1],
    [{ total: 10, sure: 5, possible: 3 }, 1],
    [{ total: Number.NaN, sure: 0, possible: 0 }, 1],
    [{ total: 10, sure: 5, possible: 5 }, 0],
    [{ total: 10, sure: 5, possible: 5 }, Number.NaN],
  ])('bricks of %j worth %d', (amounts, worth) => {
    const spec: BrickRows = { ...bricks, worth, rows: [{ name: 'x', note: '', sign: 'can', ...amounts }] };
    expect(codes(spec, paper())).toContain('figures/not-drawable');
    expect(codes(spec, screen())).toContain('figures/not-drawable');
  });

  it('bricks that are too narrow, with a worth that fits', () => {
    const [problem] = draw({ ...bricks, worth: 5 }, paper()).problems;
    expect(problem?.code).toBe('figures/bricks-too-narrow');
    const worth = Number(problem?.expected?.[0]);
    expect(codes({ ...bricks, worth }, paper())).not.toContain('figures/bricks-too-narrow');
  });

  it('more measures or rows than a hall can follow', () => {
    const many = {
      ...lanes,
      lanes: Array.from({ length: 4 }, () => lanes.lanes[1]).flatMap((l) => (l ? [l] : [])),
    };
    expect(codes(many, screen())).toContain('figures/too-many');
    expect(codes(many, paper())).toEqual([]);
  });

  it('words that do not fit, by name', () => {
    const long = 'Unverhältnismäßigkeitsgrundsatzprüfung';
    const spec: DotLanes = { ...lanes, lanes: [{ name: long, dots: lanes.lanes[1]?.dots ?? [] }] };
    for (const options of [paper(), screen()]) {
      const found = draw(spec, options).problems.find((p) => p.code === 'figures/does-not-fit');
      expect(found?.message).toContain(long);
    }
  });

  it('letters that no font has', () => {
    const spec: DotLanes = {
      ...lanes,
      rows: lanes.rows.map((r) => ({ ...r, words: `${r.words} \u{1F96B}` })),
    };
    expect(codes(spec, paper())).toContain('text/no-glyph');
  });
});

describe('with any amounts and words', () => {
  const word = fc.stringMatching(/^[A-Za-z]{1,9}$/);
  const phrase = fc.array(word, { minLength: 1, maxLength: 5 }).map((w) => w.join(' '));
  const value = fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: 0, max: 900, noNaN: true }) },
    { weight: 2, arbitrary: fc.constantFrom(0, 100, 100.4) },
    { weight: 1, arbitrary: fc.constant(null) },
  );
  const unit = fc.constantFrom('mg', 'g', 'µg', '% of a day');
  const anyLanes = fc
    .record({
      count: fc.integer({ min: 1, max: 4 }),
      words: fc.array(phrase, { minLength: 4, maxLength: 4 }),
      lanes: fc.array(
        fc.record({
          name: phrase,
          note: fc.oneof(phrase, fc.constant('')),
          values: fc.array(value, { minLength: 4, maxLength: 4 }),
          unit,
          look: fc.boolean(),
        }),
        { minLength: 1, maxLength: 3 },
      ),
      mode: fc.constantFrom('shown' as const, 'key' as const),
    })
    .map(({ count, words: names, lanes: measures, mode }): DotLanes => {
      const letters = ['A', 'B', 'C', 'D'].slice(0, count);
      return {
        ...lanes,
        mode,
        rows: letters.map((letter, i) => ({ letter, sign: 'can', words: names[i] ?? '' })),
        lanes: measures.map((m) => ({
          name: m.name,
          note: m.note,
          dots: letters.map((letter, i) => {
            const v = m.values[i] ?? null;
            return {
              letter,
              value: v,
              text: v === null ? 'not known' : `${Math.round(v)} ${m.unit}`,
              number: 'n',
            };
          }),
          ...(m.look && count > 1 ? { look: { from: 'B', to: 'A', word: 'rinsing' } } : {}),
        })),
      };
    });
  const anyBricks = fc
    .record({
      name: phrase,
      note: phrase,
      low: fc.integer({ min: 0, max: 500 }),
      more: fc.integer({ min: 0, max: 300 }),
      rest: fc.integer({ min: 0, max: 300 }),
      look: fc.boolean(),
      worth: fc.constantFrom(20, 50, 100),
    })
    .map(({ name, note, low, more, rest, look, worth }): BrickRows => {
      const total = low + more + rest + 1;
      return {
        ...bricks,
        worth,
        rows: [
          { name, note, sign: 'can', total, sure: total, possible: total },
          {
            name: note,
            note: name,
            sign: 'strainer',
            total,
            sure: low,
            possible: low + more,
            ...(more > 0
              ? { ends: { low: `${low}`, high: `${low + more}`, words: `${low} to ${low + more} mg` } }
              : {}),
            ...(look && more > 0 ? { look: 'somewhere in here' } : {}),
          },
        ],
      };
    });
  const build = fc.record({
    level: fc.constantFrom(...LEVELS),
    direction: fc.constantFrom('ltr' as const, 'rtl' as const),
    medium: fc.constantFrom('paper' as const, 'screen' as const),
    slack: fc.constantFrom(0, 1),
  });

  it.each([
    ['lanes', anyLanes],
    ['bricks', anyBricks],
  ] as const)('%s: either no word lies on another, or a problem says so', (_, any) => {
    fc.assert(
      fc.property(any, build, (spec, { medium, ...rest }) => {
        const options = medium === 'paper' ? paper(rest) : screen(rest);
        const { drawing, problems } = draw(spec, { ...options, fonts });
        const met = collisions(drawing.marks);
        const out = textBoxes(drawing.marks).filter(
          ({ box }) => box.left < -2 || box.right > drawing.width + 2 || box.bottom > drawing.height + 2,
        );
        if (problems.length === 0) {
          expect(met).toEqual([]);
          expect(out).toEqual([]);
        }
        for (const problem of problems) {
          expect(problem.severity).toBe('stop');
          expect(problem.hint ?? '').not.toBe('');
        }
      }),
      { numRuns: 150 },
    );
  });
});
