import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { Built } from '../../src/pipeline/build.js';
import { ROOT } from '../house/source.js';
import { readPdf } from './pdf-text.js';
import { BEANS, buildFrom, fileOf, lessonText, textOf } from './program.js';

interface Entry {
  readonly id: string;
  readonly short: string;
  readonly plain: string;
  readonly fuller: string;
}

/** The register's wordings, read here on their own, without the program. */
const WORDINGS = new Map(
  readdirSync(join(ROOT, 'assets/cautions')).flatMap((name) => {
    const data = parse(readFileSync(join(ROOT, 'assets/cautions', name), 'utf8')) as Record<string, unknown>;
    const lists = [data.cautions, data.lines, data.notes].filter(Array.isArray) as Entry[][];
    return lists.flat().map((entry) => [entry.id, entry] as const);
  }),
);

/** One of the three wordings, whole; a slot stands for any words. */
function stands(entry: Entry, text: string): boolean {
  return [entry.short, entry.plain, entry.fuller].some((wording) => {
    const parts = wording
      .split(/\{[a-z-]+\}/)
      .map((part) => part.replace(/\s+/g, ' ').replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
    return new RegExp(parts.join('.{1,60}?'), 'u').test(text);
  });
}

/** The boxes that the lesson on beans must carry, by cautions for fiber, sodium, cans and dried beans. */
const BOXES = [
  'damaged-cans',
  'kidney-bean-boil',
  'potassium-salt',
  'sodium-lithium',
  'sodium-heart-water-pills',
  'sodium-need-more',
  'fluids-limit',
  'fiber-slowly',
];
const SHEETS = ['short', 'plain', 'fuller'].flatMap((level) => [
  `handout-${level}-letter`,
  `handout-${level}-oneink-a4`,
  `worksheet-${level}-letter`,
  `worksheet-${level}-key-a4`,
]);

async function missingFrom(built: Built, path: string, ids: readonly string[]): Promise<string[]> {
  const { text } = await readPdf(fileOf(built, path));
  const words = text.replaceAll('\u00a0', ' ');
  return ids.filter((id) => {
    const entry = WORDINGS.get(id);
    return !entry || !stands(entry, words);
  });
}

describe('cautions of the beans lesson', () => {
  let built: Built;
  beforeAll(async () => {
    built = await buildFrom({ [BEANS]: lessonText() });
  }, 120_000);

  it('are the ones that its topics and figures call for', () => {
    const { cautions } = JSON.parse(textOf(built, 'manifest.json')) as { cautions: { id: string }[] };
    expect(cautions.map((c) => c.id)).toEqual(expect.arrayContaining(BOXES));
  });

  it.each([...SHEETS, 'slides'])('stand whole in %s', async (name) => {
    expect(await missingFrom(built, `en/${name}.pdf`, BOXES)).toEqual([]);
  });

  it('stand before the first figure in reading order', async () => {
    for (const level of ['short', 'plain', 'fuller']) {
      const { outline } = await readPdf(fileOf(built, `en/handout-${level}-letter.pdf`));
      const figure = outline.findIndex((line) => line.startsWith('Figure'));
      const before = outline.slice(0, figure).join(' ').replaceAll('\u00a0', ' ');
      expect(
        BOXES.filter((id) => !stands(WORDINGS.get(id) as Entry, before)),
        level,
      ).toEqual([]);
    }
  });
});

describe('attempts to lose a caution at a level', () => {
  const source = lessonText();
  it.each([
    [
      'its topics are taken out',
      source.replace(/^topics:.*$/m, 'topics: []'),
      ['damaged-cans', 'sodium-lithium', 'sodium-heart-water-pills', 'sodium-need-more'],
    ],
    ['the figure stands only at the fuller level', source.replaceAll('::show{figure=rinse}', ''), BOXES],
    [
      'a level block words it anew with nothing',
      source.replace('## Rinse a can', ':::caution{id=damaged-cans}\n- short = \n:::\n\n## Rinse a can'),
      BOXES,
    ],
    [
      'the caution is called for the slides only',
      source.replace(
        '::::slide{minutes=3}',
        '::::only{out=slides}\n::caution{id=damaged-cans}\n::::\n\n::::slide{minutes=3}',
      ),
      BOXES,
    ],
  ])(
    '%s: it stands all the same',
    async (_, text, ids) => {
      const built = await buildFrom({ [BEANS]: text });
      for (const name of [
        'handout-short-letter',
        'handout-plain-letter',
        'worksheet-short-letter',
        'slides',
      ]) {
        expect(await missingFrom(built, `en/${name}.pdf`, ids), name).toEqual([]);
      }
    },
    120_000,
  );
});
