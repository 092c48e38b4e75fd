import { beforeAll, describe, expect, it } from 'vitest';
import type { Built } from '../../src/pipeline/build.js';
import { readPdf } from './pdf-text.js';
import { BEANS, buildFrom, fileOf, lessonText, ON, textOf } from './program.js';

const SETTINGS = { 'platework.yaml': 'paper: [letter]\nlevels: [plain]\n' };
const build = (site: string, on = ON) =>
  buildFrom(
    { ...SETTINGS, [BEANS]: lessonText().replace('site: lantern-street', `site: ${site}`) },
    'beans-three-ways',
    on,
  );

describe('a site of which only the skeleton stands', () => {
  let built: Built;
  beforeAll(async () => {
    built = await build('willow-bend');
  }, 120_000);

  it('builds, and says in one line what to fill in for this lesson, then which', () => {
    const fill = built.problems.filter(({ code }) => code === 'pipeline/to-fill');
    expect(fill.map(({ severity, message }) => `${severity}: ${message}`)).toEqual([
      'ask: To fill in for willow-bend: 2 prices, 2 places, 2 phone lines.',
    ]);
    expect(fill[0]?.hint).toBe(
      'Prices: pinto beans, dry; pinto beans, canned, with the liquid. ' +
        'Places: the place where talks are held; a shop. Phone lines: free-clinic-line; emergency-number.',
    );
    expect(built.files.length).toBeGreaterThan(10);
  });

  it('finds no fault in the skeleton itself', () => {
    expect(built.problems.filter(({ code }) => code.startsWith('local/'))).toEqual([]);
  });

  it('prints no cents, and asks for the price', async () => {
    const { text } = await readPdf(fileOf(built, 'en/handout-plain-letter.pdf'));
    expect(text).toContain('ask for this week’s price');
    expect(text).not.toMatch(/\d¢/);
    expect(text).not.toContain('Ferry Hill');
  });
});

describe('the price form', () => {
  let built: Built;
  beforeAll(async () => {
    built = await build('lantern-street');
  }, 120_000);

  it('has a row for each price, with what to look for and the day of the last price, never its sum', async () => {
    const { text, pages, fields } = await formOf(built);
    expect(pages).toBe(1);
    expect(text).toMatch(/Pinto beans, dry\s+Look for 2 lb\.\s+Last price:\s+25 November 2026\./);
    expect(text).toContain('Look for 1 can (15.5 oz).');
    for (const sum of ['3.29', '1.19', '¢', '$']) expect(text).not.toContain(sum);
    for (const column of ['Package', 'Shelf price', 'Sale price', 'Sale ends', 'Shop', 'Day'])
      expect(fields).toContain(`${column} of pinto beans, dry`);
  });

  it('comes back as rows of prices.csv', () => {
    expect(textOf(built, 'en/price-form.csv')).toBe(
      'item,package,shelf price,sale price,sale ends,shop,day,keep days,source\n' +
        '"pinto beans, dry",2 lb,,,,,,,\n' +
        '"pinto beans, canned, with the liquid",1 can (15.5 oz),,,,,,,\n',
    );
  });

  it('is not made for a lesson without prices', async () => {
    const text = lessonText()
      .replace(/^::(?:cup-cost|show\{figure=cost\}).*$/gm, '')
      .replace(/:n\[cost\]\{[^}]*\}/g, 'less');
    const without = await buildFrom({ ...SETTINGS, [BEANS]: text });
    expect(without.files.filter(({ path }) => path.includes('price-form'))).toEqual([]);
  }, 120_000);
});

describe('prices past their shelf life', () => {
  it('print no cents on any page; the build asks, and the form keeps their day', async () => {
    const built = await build('lantern-street', '2027-02-24');
    expect(built.problems.map(({ code, severity, place }) => `${severity} ${code} ${place?.file}`)).toEqual([
      'ask N13 assets/local/lantern-street/prices.csv',
      'ask N13 assets/local/lantern-street/prices.csv',
    ]);
    for (const { path, bytes } of built.files.filter(
      (f) => f.path.endsWith('.pdf') && !f.path.includes('worksheet'),
    )) {
      const { text } = await readPdf(bytes);
      expect(text, path).not.toMatch(/26¢|73¢/);
    }
    const { text } = await readPdf(fileOf(built, 'en/handout-plain-letter.pdf'));
    expect(text).toContain('This price is old. Ask for the price this week.');
    expect((await formOf(built)).text).toContain('Last price: 25 November 2026.');
  }, 120_000);
});

async function formOf(built: Built) {
  const read = await readPdf(fileOf(built, 'en/price-form-letter.pdf'));
  return { text: read.text.replaceAll('\u00a0', ' '), pages: read.pages, fields: read.alternatives };
}
