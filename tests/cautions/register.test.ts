import { describe, expect, it } from 'vitest';
import {
  loadRegister,
  parseCondition,
  type RegisterText,
  SIZES,
  sentencesOf,
  slotsOf,
  wordCount,
} from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import { loadProblems, register, registerTexts } from './register-files.js';

describe('the register', () => {
  it('loads without a problem', () => {
    expect(loadProblems).toEqual([]);
  });

  it('holds 62 cautions, 12 standard lines, 25 notes and 32 refusals', () => {
    const named = register.cautions.filter((c) => c.kind !== 'line' && !c.id.startsWith('note-'));
    expect(named).toHaveLength(62);
    const count = (severity: string) => named.filter((c) => c.severity === severity).length;
    expect([count('stop'), count('ask first'), count('note')]).toEqual([21, 35, 6]);
    expect(register.cautions.filter((c) => c.kind === 'line')).toHaveLength(12);
    expect(register.cautions.filter((c) => c.id.startsWith('note-'))).toHaveLength(25);
    expect(register.refusals.map((r) => r.id)).toEqual(
      Array.from({ length: 32 }, (_, i) => `R${String(i + 1).padStart(2, '0')}`),
    );
  });

  it('names no source that it does not list', () => {
    const keys = new Set(register.sources.map((s) => s.key));
    const named = register.cautions.flatMap((c) =>
      c.basis.flatMap((b) => b.source?.split(/, (?=[A-Z])/) ?? []),
    );
    const regulation = /^\d+ CFR /;
    expect(
      named.map((s) => s.replace(/ \(.*$/, '')).filter((s) => !keys.has(s) && !regulation.test(s)),
    ).toEqual([]);
  });

  it('has been confirmed by nobody yet, and says what each must still be confirmed for', () => {
    for (const c of register.cautions) {
      expect(c.confirmed, c.id).toBeUndefined();
      expect(c.confirm.length, c.id).toBeGreaterThan(4);
    }
  });

  // House limits of the wordings: words in all, words in a sentence. Slots count as their value.
  const LIMITS = { short: [18, 12], plain: [40, 20], fuller: [70, 20] } as const;
  const SAMPLES: Readonly<Record<string, string>> = {
    'emergency-number': '911',
    'eating-disorder-line': '555-0135',
    'poison-line': '555-0122',
    'free-clinic-line': '555-0110',
    'food-help-line': '555-0164',
    poultry: '165',
    ground: '160',
    whole: '145',
    fridge: '40',
    hold: '140',
    'hot-day': '90',
    nutrients: 'calcium, iodine, vitamin D',
  };
  it('keeps its wordings as short as their level promises', () => {
    const over: string[] = [];
    for (const c of register.cautions)
      for (const size of SIZES) {
        const text = (c.wordings.en?.[size] ?? '').replace(
          /\{([a-z-]+)\}/g,
          (_, n: string) => SAMPLES[n] ?? 'x',
        );
        const [most, sentence] = LIMITS[size];
        if (wordCount(text) > most) over.push(`${c.id} ${size}: ${wordCount(text)} words`);
        // A colon ends a sentence in the house count.
        for (const s of sentencesOf(text.replaceAll(':', '.')))
          if (wordCount(s.text) > sentence) over.push(`${c.id} ${size}: "${s.text}"`);
      }
    expect(over).toEqual([]);
  });

  it('words every caution in American spelling and without brands or dashes that join numbers', () => {
    const british = /fibre|coeliac|paediatr|anaemia|labelled|colour|pasteuris|flavour|liquorice|yoghurt/i;
    for (const c of register.cautions)
      expect(
        `${c.who} ${c.why} ${c.confirm} ${Object.values(c.wordings.en ?? {}).join(' ')}`,
        c.id,
      ).not.toMatch(british);
  });
});

describe('temperatures of the register', () => {
  // Exact conversion: °F = °C × 9/5 + 32 (definition of the scale).
  const toC = (f: number) => ((f - 32) * 5) / 9;
  const toF = (c: number) => (c * 9) / 5 + 32;
  const rows = Object.entries(register.values).flatMap(([country, slots]) =>
    Object.entries(slots).flatMap(([slot, v]) => (v.kind ? [{ name: `${country} ${slot}`, ...v }] : [])),
  );

  it.each(rows)('$name prints its source value and rounds the other unit the safe way', (row) => {
    const m = /^(-?\d+) (°[CF]) \((-?\d+) (°[CF])\)$/.exec(row.print.replaceAll('\u2212', '-'));
    expect(m?.slice(1, 3)).toEqual([String(row.value), row.unit]);
    const exact = row.unit === '°F' ? toC(row.value) : toF(row.value);
    const safe = row.kind === 'heat' ? Math.ceil(exact - 1e-9) : Math.floor(exact + 1e-9);
    expect(Number(m?.[3])).toBe(safe);
  });

  it('prints 72 °C for 160 °F although official charts print 71, which is a little too cold', () => {
    expect(register.values.us?.ground?.print).toBe('160 °F (72 °C)');
  });
});

describe('mistakes in the register', () => {
  function problems(change: (texts: RegisterText[]) => RegisterText[]): string[] {
    const report = createReport();
    loadRegister(change(registerTexts()), report);
    return report.problems.map((p) =>
      `${p.place?.file.split('/').pop()}:${p.place?.line} ${p.message} ${p.hint ?? ''}`.trim(),
    );
  }
  const swap = (file: string, from: string | RegExp, to: string) => (texts: RegisterText[]) =>
    texts.map((t) => {
      if (!t.file.endsWith(file)) return t;
      expect(t.text).toMatch(from);
      return { file: t.file, text: t.text.replace(from, to) };
    });

  it.each([
    [
      'a missing wording',
      'h-food-safety.yaml',
      / {4}short: Is the can.*\n/,
      '',
      /`cautions\.\d\.short`: is missing/,
    ],
    [
      'a misspelt field',
      'h-food-safety.yaml',
      'review_months: 36',
      'review_month: 36',
      /`review_month` is not known here\. Did you mean `review_months`\?/,
    ],
    [
      'an unknown flag',
      'h-food-safety.yaml',
      'food(kidney-bean-dry)\n',
      'food(kidney-beans-dry)\n',
      /names the flag `kidney-beans-dry`.*Did you mean `kidney-bean-dry`/,
    ],
    ['an unknown test', 'h-food-safety.yaml', 'food(canned) in', 'foods(canned) in', /"foods" is no test/],
    [
      'a heading that does not fit',
      'h-food-safety.yaml',
      /heading: Stop\n {4}checks: \[S15\]\n {4}who: everyone\n {4}why: Swell/,
      'heading: Ask first\n    checks: [S15]\n    who: everyone\n    why: Swell',
      /does not go with the heading Ask first/,
    ],
    [
      'people who stand apart one way only',
      'h-food-safety.yaml',
      'apart: [cook-heat, g6pd-fava]',
      'apart: [cook-heat]',
      /`kidney-bean-boil` does not say so/,
    ],
    ['a stray brace', 'lines.yaml', '{poison-line} right away.', '{Poison line} right away.', /stray brace/],
    [
      'a trigger that waits for nothing',
      'directives.yaml',
      'waits: times of day',
      'waitz: times of day',
      /`waitz` is not known here/,
    ],
    [
      'a directive that pulls what does not exist',
      'directives.yaml',
      'always: [note-call-first]',
      'always: [note-call-fist]',
      /names the caution `note-call-fist`.*Did you mean `note-call-first`/,
    ],
    [
      'a trigger with neither condition nor wait',
      'directives.yaml',
      'soy enters a breakfast dish, waits: times of day',
      'soy enters a breakfast dish',
      /neither `when` nor `waits`/,
    ],
  ])('%s is reported at its place', (_, file, from, to, expected) => {
    const found = problems(swap(file, from, to));
    expect(found.filter((p) => expected.test(p))).not.toEqual([]);
    expect(found.every((p) => /^[a-z-]+\.yaml:\d+ /.test(p))).toBe(true);
  });

  it('an id that stands twice', () => {
    expect(
      problems((t) => [
        ...t,
        {
          file: 'x.yaml',
          text: 'notes:\n  - {id: note-basket, says: a, place: [figure], short: a, plain: a, fuller: a, confirm: x, review_months: 1}\n',
        },
      ]),
    ).toEqual(['x.yaml:2 `note-basket` stands twice in the register.']);
  });
});

describe('the language of triggers', () => {
  it('reads tests, values, places and both connectives', () => {
    expect(
      parseCondition(
        'food(canned|star-fruit) in basket|quiz and tag(sodium down) or set(diet=vegan) or word',
      ),
    ).toEqual([
      [
        { name: 'food', values: ['canned', 'star-fruit'], within: ['basket', 'quiz'] },
        { name: 'tag', values: ['sodium down'], within: [] },
      ],
      [{ name: 'set', key: 'diet', values: ['vegan'], within: [] }],
      [{ name: 'word', values: [], within: [] }],
    ]);
  });

  it('does not split inside brackets', () => {
    expect(parseCondition('tag(leftovers and cooking)')).toEqual([
      [{ name: 'tag', values: ['leftovers and cooking'], within: [] }],
    ]);
  });

  it.each([
    '',
    'food',
    'food()',
    'food(canned',
    'word(salt)',
    'tag(x) in quiz',
    'set(vegan)',
    'food(a) und tag(b)',
    'constructor(x)',
    'food(a|)',
  ])('refuses %j with a reason', (text) => {
    expect(parseCondition(text)).toHaveProperty('wrong');
  });
});

describe('slots', () => {
  it('are the same or fewer in a shorter wording, so that a short sheet needs no line that a long one does not', () => {
    for (const c of register.cautions)
      for (const w of Object.values(c.wordings)) {
        const of = (size: (typeof SIZES)[number]) => new Set(slotsOf(w[size]).map((s) => s.name));
        for (const name of of('short')) expect([...of('plain'), ...of('fuller')], c.id).toContain(name);
      }
  });
});
