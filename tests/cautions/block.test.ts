import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxesOf,
  boxWords,
  cautionBlock,
  figureCautionBlocks,
  figureCautions,
  HEADINGS,
  NO_FACTS,
  type Pulled,
  pull,
  reviewRows,
  type Setting,
  slideCautions,
  slideFigureCautions,
  slidePointer,
  standingBlock,
  standingLines,
  strongParts,
  unconfirmedLine,
  waiting,
} from '../../src/cautions/index.js';
import { createReport } from '../../src/diagnostics/index.js';
import type { Block, CautionBlock } from '../../src/document/index.js';
import type { FoodState } from '../../src/nutrition/index.js';
import { NO_LINES } from '../../src/records/local/index.js';
import { BEANS, register, setting } from './register-files.js';

const beans = pull(register, BEANS, createReport());
const text = (line: { inlines: readonly { text: string }[] }) => line.inlines.map((i) => i.text).join('');

function block(over: Partial<Setting> = {}, pulled: readonly Pulled[] = beans) {
  const report = createReport();
  const made: CautionBlock = cautionBlock(pulled, setting(over), report);
  return { lines: made.lines, who: made.whoToAsk, problems: report.problems };
}
const pulledIds = (...ids: string[]) =>
  pull(register, { ...NO_FACTS, called: ids.map((id) => ({ id })) }, createReport());

describe('the block of the beans sheet', () => {
  it('prints Stop, then Ask first, a line an id, whole', () => {
    const { lines, who, problems } = block({ level: 'short' });
    expect(problems).toEqual([]);
    expect(who).toBe('your doctor, nurse or pharmacist');
    expect(lines.map((l) => `${l.word}: ${text(l)}`)).toEqual([
      'Stop: Is the can swollen, leaking or badly dented? Do not open it. Throw it out.',
      'Stop: Soak dry kidney beans. Then boil them hard for 30 minutes. Slow cookers are not hot enough.',
      'Ask first: Potassium salt is not for children. Pregnant, kidney trouble, or daily pills? Ask your care team first.',
      'Ask first: Do you take lithium? Ask your care team before you cut back on salt.',
      'Ask first: Heart failure or water pills? Ask your care team before you change your salt.',
      'Ask first: Adrenal disease, low blood pressure, or told to eat salt? Ask your care team first.',
      'Ask first: Told to limit fluids, or heart, liver or kidney trouble? Ask your care team before you drink more.',
      'Ask first: Add fiber slowly and drink water. Gut trouble or surgery? Ask your care team first.',
    ]);
  });

  it('prints the plain wording of a stop that the lesson is about on the plain sheet, and no other', () => {
    const plain = block({ level: 'plain' }).lines;
    expect(text(plain[0] ?? { inlines: [] })).toMatch(/^Throw out cans that are swollen/);
    expect(text(plain[3] ?? { inlines: [] })).toBe(
      'Do you take lithium? Ask your care team before you cut back on salt.',
    );
  });

  it('does so only for a topic: a stop that a food alone pulls stays short', () => {
    const facts = { ...BEANS, topics: BEANS.topics.filter((t) => t.name !== 'cans') };
    const { lines } = block({ level: 'plain' }, pull(register, facts, createReport()));
    expect(text(lines[0] ?? { inlines: [] })).toMatch(/^Is the can swollen/);
  });

  it('prints plain wordings at fuller, the fullest for staff, the short on slides', () => {
    const first = (over: Partial<Setting>) => text(block(over).lines[3] ?? { inlines: [] });
    expect(first({ level: 'fuller' })).toMatch(/^If you take lithium, keep your salt/);
    expect(first({ level: 'staff', output: 'staff' })).toMatch(/^Your kidneys handle lithium and salt/);
    expect(first({ level: 'fuller', output: 'slides' })).toBe(
      'Do you take lithium? Ask your care team before you cut back on salt.',
    );
  });

  it('has 125, 125 and 295 words, as counted by hand, within the budget', () => {
    const boxes = boxesOf(beans);
    expect(boxes).toHaveLength(8);
    expect(['short', 'plain', 'fuller'].map((l) => boxWords(boxes, l as 'short', 'en'))).toEqual([
      125, 125, 295,
    ]);
    for (const level of ['short', 'plain', 'fuller'] as const) expect(block({ level }).problems).toEqual([]);
  });

  it('marks the condition strong and leaves what to do', () => {
    expect(block({ level: 'short' }).lines[3]?.inlines).toEqual([
      { text: 'Do you take lithium? ', strong: true },
      { text: 'Ask your care team before you cut back on salt.' },
    ]);
  });
});

describe('too many', () => {
  it('boxes or words are an Ask that names what pulls each line, and nothing is dropped', () => {
    const many = pull(
      register,
      { ...BEANS, topics: [...BEANS.topics, { name: 'grapefruit' }, { name: 'greens steady' }] },
      createReport(),
    );
    const { lines, problems } = block({ level: 'short' }, many);
    expect(lines).toHaveLength(10);
    expect(problems.map((p) => `${p.code} ${p.severity}: ${p.message}`)).toEqual([
      'cautions/boxes ask: This lesson pulls 10 boxes; at most 8 can be found by the people they are for.',
      'cautions/budget ask: The boxes of the short sheet have 154 words; 130 is about the most.',
    ]);
    expect(problems[0]?.hint).toContain('grapefruit-medicine: topic grapefruit.');
    expect(problems.map((p) => p.place?.line)).toEqual([8, 8]);
  });
});

describe('slots', () => {
  it('are filled from the local pack and the country', () => {
    const { lines, problems } = block(
      { level: 'fuller' },
      pulledIds('activity-stop', 'cook-heat', 'choking-child'),
    );
    expect(problems).toEqual([]);
    const all = lines.map(text).join(' ');
    expect(all).toContain('Call 911 if it does not pass');
    expect(all).toContain('leftovers to 165 °F (74 °C)');
    expect(all).toContain('Children under 4 can choke');
    expect(all).not.toMatch(/[{}]/);
  });

  it('of another country take its own table', () => {
    const { lines } = block({ country: 'uk', level: 'short' }, pulledIds('cook-heat'));
    expect(lines.map(text).join(' ')).toContain('70 °C (158 °F)');
  });

  it('that nothing fills are a Stop for that output, and the proof does not print braces', () => {
    const { lines, problems } = block({ lines: NO_LINES, level: 'short' }, pulledIds('activity-stop'));
    expect(problems).toMatchObject([
      {
        code: 'cautions/slot',
        severity: 'stop',
        spoils: { languages: ['en'], levels: ['short'], outputs: ['handout'] },
      },
    ]);
    expect(lines.map(text)).toEqual([
      'Chest pain, faint, or hard to breathe? Stop. Call (emergency number).',
    ]);
  });

  it('past the shelf life of a help line say so honestly, and stop the page', () => {
    const { lines, problems } = block({ on: '2032-01-01', level: 'short' }, pulledIds('activity-stop'));
    expect(problems).toMatchObject([{ code: 'cautions/old-line', severity: 'stop' }]);
    expect(lines.map(text)).toEqual([
      'Chest pain, faint, or hard to breathe? Stop. Call your emergency number.',
    ]);
  });
});

describe('a language without wordings', () => {
  it('is a Stop for that language alone and never falls back', () => {
    const report = createReport();
    const own = beans.map((p) => ({
      ...p,
      caution: { ...p.caution, wordings: { es: { short: 'a', plain: 'a', fuller: 'a' } } },
    }));
    cautionBlock(own.slice(0, 1), setting(), report);
    expect(report.problems).toMatchObject([
      { code: 'cautions/no-wording', severity: 'stop', spoils: { languages: ['en'] } },
    ]);
  });
});

describe('strong parts', () => {
  it.each([
    ['short', 'Gut trouble or surgery? Ask first.', '[Gut trouble or surgery? ]Ask first.'],
    [
      'short',
      'Do not eat star fruit if you have kidney disease.',
      'Do not eat star fruit if you have kidney disease.',
    ],
    [
      'plain',
      'It runs high. Do you take pills? Ask your care team.',
      'It runs high. [Do you take pills? ]Ask your care team.',
    ],
    [
      'plain',
      'If you take lithium, keep steady. It can rise. Ask first.',
      '[If you take lithium, keep steady. ]It can rise. Ask first.',
    ],
  ] as const)('%s: %s', (size, words, marked) => {
    expect(
      strongParts(words, size)
        .map((p) => (p.strong ? `[${p.text}]` : p.text))
        .join(''),
    ).toBe(marked);
  });

  it('never change a letter of any wording', () => {
    for (const c of register.cautions)
      for (const w of Object.values(c.wordings))
        for (const size of ['short', 'plain', 'fuller'] as const)
          expect(
            strongParts(w[size], size)
              .map((p) => p.text)
              .join(''),
          ).toBe(w[size]);
  });
});

describe('beside a figure', () => {
  it('stands each note whole, then one pointer to the lines of the block', () => {
    const blocks: readonly Block[] = figureCautionBlocks(
      beans,
      'pinto',
      setting({ slots: { state: 'ready to eat' } }),
      createReport(),
    );
    expect(blocks.map((b) => (b.kind === 'figure-caution' ? text(b) : b.kind))).toEqual([
      'Brands differ. Check your own can.',
      'Fresh is not the only good choice. Canned and frozen count too.',
      'Numbers here are close, not exact.',
      'Stop, line 1. Ask first, lines 2, 3, 4, and 6.',
    ]);
  });

  it('fills the state of its foods, and misses it when nobody knows it', () => {
    const report = createReport();
    const say = (states: readonly FoodState[], slots: Record<string, string> = {}) => {
      const quiz = {
        name: 'quiz',
        id: 'q1',
        nutrients: [],
        foods: states.map((state) => ({ food: { name: 'beans', flags: [], state } })),
        slots,
      };
      const found = pull(register, { ...NO_FACTS, directives: [quiz] }, createReport());
      return figureCautions(found, 'q1', setting({ level: 'fuller' }), report)
        .map(text)
        .join(' ');
    };
    expect(say(['cooked', 'canned, drained'])).toContain('They are for food that is ready to eat.');
    expect(say(['dry'])).toContain('They are for food that is dry.');
    expect(say(['dry'], { state: 'as the bag has it' })).toContain(
      'They are for food that is as the bag has it.',
    );
    expect(report.problems).toEqual([]);
    say([]);
    expect(report.problems).toMatchObject([{ code: 'cautions/slot' }]);
  });

  it('stands nothing when the figure pulls nothing', () => {
    expect(figureCautions(beans, 'other', setting(), createReport())).toEqual([]);
  });
});

describe('on slides', () => {
  it('the boxes stand in steps of at most five lines, all of them, in order', () => {
    const steps = slideCautions(beans, setting({ output: 'slides' }), createReport());
    expect(steps.map((s) => s.lines.length)).toEqual([5, 3]);
    expect(steps.flatMap((s) => s.lines.map((l) => l.id))).toEqual(boxesOf(beans).map((p) => p.caution.id));
  });

  it('a figure carries its notes, its stop lines and the headings to point to', () => {
    const here = slideFigureCautions(beans, 'rinse', setting({ output: 'slides' }), createReport());
    expect(here.notes.map(text)).toEqual([
      'Brands differ. Check your own can.',
      'Rinsed beans still have some salt. It still counts in your day.',
    ]);
    expect(here.stops.map((l) => l.id)).toEqual(['damaged-cans']);
    expect(slidePointer(here.headings, 4, 'en')).toBe('Stop: slide 4. Ask first: slide 4.');
  });
});

describe('standing lines', () => {
  const ids = (output: Setting['output'], facts = BEANS, pulled = beans) =>
    standingLines(pulled, facts, setting({ output, level: 'short' })).map((p) => p.caution.id);

  it('are what each page needs', () => {
    expect(ids('handout')).toEqual([
      'line-education',
      'line-own-plan',
      'line-keep-medicine',
      'line-care-team',
      'line-emergency',
    ]);
    expect(ids('worksheet')).toEqual([
      'line-education',
      'line-keep-medicine',
      'line-care-team',
      'line-emergency',
      'line-get-help',
      'line-private',
    ]);
    expect(ids('slides')).toEqual(['line-education', 'line-keep-medicine', 'line-care-team']);
    expect(ids('cards')).toEqual(['line-own-plan', 'line-keep-medicine', 'line-private', 'line-goal-ask']);
    expect(ids('staff')).toEqual([]);
  });

  it('leave out what a lesson without medicine and stops does not need', () => {
    expect(ids('handout', NO_FACTS, [])).toEqual(['line-education', 'line-own-plan']);
  });

  it('take in notes that no figure can carry', () => {
    const facts = { ...NO_FACTS, topics: [{ name: 'caffeine' }] };
    expect(ids('handout', facts, pull(register, facts, createReport()))).toContain('caffeine-limit');
  });

  it('make one block after the boxes, short at every level of a sheet, with the lines of the site', () => {
    for (const level of ['short', 'plain', 'fuller'] as const) {
      const made = standingBlock(
        standingLines(beans, BEANS, setting({ level })),
        setting({ level }),
        createReport(),
      );
      const words = made?.kind === 'figure-caution' ? text(made) : '';
      expect(words).toMatch(/^This sheet teaches\. It does not treat you\./);
      expect(words).toContain('Passed out? Call 911 now.');
    }
  });
});

describe('confirmation', () => {
  it('is missing for every line, and the review sheet gets what is to be confirmed', () => {
    expect(unconfirmedLine(beans, 'en')).toBe('Wording not yet confirmed by a professional.');
    expect(unconfirmedLine([], 'en')).toBeUndefined();
    const rows = reviewRows(beans);
    expect(rows.every((r) => r.status === 'unconfirmed')).toBe(true);
    expect(rows.find((r) => r.id === 'sodium-lithium')?.confirm).toMatch(/^Pharmacist: signs to act on/);
  });
  it('triggers that nothing evaluates yet are listed with what they wait for', () => {
    expect(waiting(register).find((w) => w.trigger === 'carb-low-sugar#4')?.waits).toMatch(/^an energy cut/);
  });
});

describe('whatever is pulled', () => {
  const all = register.cautions.filter((c) => c.kind !== 'line').map((c) => c.id);
  it('every box stands in the block once, in the order of headings, at every level', () => {
    fc.assert(
      fc.property(fc.subarray(all), fc.constantFrom('short', 'plain', 'fuller', 'staff'), (ids, level) => {
        const pulled = pulledIds(...ids);
        const { lines } = block({ level, slots: { nutrients: 'calcium' } }, pulled);
        const boxes = pulled.filter((p) => p.caution.kind === 'box').map((p) => p.caution.id);
        expect(lines.map((l) => l.id).sort()).toEqual([...boxes].sort());
        const order = lines.map((l) => HEADINGS.indexOf(l.heading));
        expect(order).toEqual([...order].sort((a, b) => a - b));
        for (const line of lines) expect(text(line)).not.toMatch(/[{}]/);
      }),
      { numRuns: 60 },
    );
  });
});
