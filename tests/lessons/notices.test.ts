import { beforeAll, describe, expect, it } from 'vitest';
import type { Built } from '../../src/pipeline/build.js';
import { readPdf } from './pdf-text.js';
import { buildFrom, fileOf, ON, program, textOf } from './program.js';

const LESSON = `---
title: Water for soup
minutes: 10
audience: anyone
site: our-hall
objectives:
  - say who tests a well
guidance: us-2025
topics: [cans]
review: none
---

# Water for soup

Soup begins with water.

## One cup

A cup of soup fills a small bowl.

:::caution{id=well-water severity="ask first" source=well-notice review-by=2027-03-01}
- short = Water from a well of your own? Ask the clinic before you give it to a baby.
- plain = Is your water from a well of your own? Ask the clinic before you give it to a baby.
- fuller = Is your water from a well of your own? Ask the clinic what was found in it before you give it to a baby.
:::

::::staff
Have a jug of water on the table.
::::

::::worksheet
## Your bowl

::write{lines=2 label="What goes into your bowl"}
::::

::::slide{minutes=5}
# Water for soup
::::
`;
const SAYS = 'The town tests water from wells at no cost.';
const notices = (print: string, more = '') => `site: our-hall
notices:
  - id: well-notice
    words: ${SAYS} Call {food-help-line}.
    dated: 2026-11-20
    keep_months: 12
    source: the water desk
    print: [${print}]
${more}`;
const pack = (name: string) =>
  new TextDecoder()
    .decode(program.asset(`local/lantern-street/${name}`) ?? new Uint8Array())
    .replace('site: lantern-street', 'site: our-hall');
const build = (text: string | undefined, on = ON) =>
  buildFrom(
    {
      'lessons/water/lesson.md': LESSON,
      'platework.yaml': 'paper: [letter]\nlevels: [plain]\n',
      'assets/local/our-hall/lines.yaml': pack('lines.yaml'),
      'assets/local/our-hall/site.yaml': pack('site.yaml'),
      ...(text === undefined ? {} : { 'assets/local/our-hall/notices.yaml': text }),
    },
    'water',
    on,
  );
const pageOf = async (built: Built, name: string) => (await readPdf(fileOf(built, `en/${name}`))).text;
const stops = (built: Built) =>
  built.problems
    .filter(({ severity }) => severity === 'stop')
    .map(({ code, message }) => `${code} ${message}`);
const versionOf = (built: Built, name: string) =>
  JSON.parse(textOf(built, 'manifest.json')).files.find((f: { path: string }) => f.path === `en/${name}`)
    .version;

describe('a notice for the leader', () => {
  let built: Built;
  beforeAll(async () => {
    built = await build(notices('leader'));
  }, 60_000);

  it('is what the lesson’s own caution rests on', async () => {
    expect(stops(built)).toEqual([]);
    expect(await pageOf(built, 'handout-plain-letter.pdf')).toContain('a well of your own?');
    const without = await build(undefined);
    expect(stops(without).join()).toContain('There is no source `well-notice`.');
  }, 60_000);

  it('stands on the leader’s page with who says it and its days, and nowhere else', async () => {
    const page = await pageOf(built, 'staff-letter.pdf');
    expect(page).toContain('Notices');
    expect(page).toMatch(/tests water from wells at no cost\. Call\s+the food help line at 555-0164\./);
    expect(page).toMatch(/the water desk, 20 November 2026\. Good until\s+20 November 2027\./);
    for (const name of ['handout-plain-letter.pdf', 'worksheet-plain-letter.pdf', 'slides.pdf'])
      expect(await pageOf(built, name)).not.toContain('at no cost');
  });

  it('past its shelf life is gone, and asked about; the caution stays', async () => {
    const old = await build(notices('leader'), '2027-11-21');
    expect(old.problems.map(({ code, severity }) => `${severity} ${code}`)).toContain('ask local/notice-old');
    expect(await pageOf(old, 'staff-letter.pdf')).not.toContain('at no cost');
    expect(await pageOf(old, 'handout-plain-letter.pdf')).toContain('a well of your own?');
  }, 60_000);
});

describe('a notice for people', () => {
  let built: Built;
  beforeAll(async () => {
    built = await build(notices('handout, worksheet, slides'));
  }, 60_000);

  it.each(['handout-plain', 'handout-plain-oneink', 'worksheet-plain'])(
    'stands once, under the lines for everybody and before the lesson: %s',
    async (name) => {
      const page = await pageOf(built, `${name}-letter.pdf`);
      const says = `Notice: ${SAYS} Call the food help line at 555-0164.`;
      const words = page.replace(/\s+/g, ' ');
      expect(words.split(says)).toHaveLength(2);
      expect(words.indexOf(says)).toBeGreaterThan(words.indexOf('Call 911'));
      const [opens] = words.match(/One cup|Your bowl/) ?? ['no lesson'];
      expect(words.indexOf(opens)).toBeGreaterThan(words.indexOf(says));
      expect(words.slice(0, words.indexOf(says))).toContain('a well of your own?');
    },
  );

  it('stands on a slide of its own before the sources, and not on the leader’s page', async () => {
    expect(await pageOf(built, 'slides.pdf')).toContain('at no cost');
    expect(await pageOf(built, 'staff-letter.pdf')).not.toContain('at no cost');
    expect(stops(built)).toEqual([]);
  });

  it('gives the page another version', async () => {
    const other = await build(notices('leader'));
    for (const name of ['handout-plain-letter.pdf', 'worksheet-plain-letter.pdf', 'slides.pdf'])
      expect(versionOf(other, name)).not.toBe(versionOf(built, name));
  }, 60_000);

  it.each(['handout', 'leader'])(
    'is held to what no lesson may say: %s',
    async (page) => {
      const refused = await build(
        notices(page).replace(SAYS, 'You can stop taking your insulin when you eat this soup.'),
      );
      expect(refused.problems.map(({ place, severity }) => `${severity} ${place?.file}`)).toContain(
        'stop assets/local/our-hall/notices.yaml',
      );
    },
    60_000,
  );
});
