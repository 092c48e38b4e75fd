import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Built } from '../../src/pipeline/build.js';
import { ROOT } from '../house/source.js';
import { readPdf } from './pdf-text.js';
import { BEANS, buildFrom, fileOf, lessonText, textOf } from './program.js';

/** Canned peas, drained: number 11308 in the release. */
const NUMBER = '11308';
const ID = 'peas.canned-drained.sodium';

/** The release with another sodium for one food, everything else as it is. */
function releaseWith(sodium: number): string {
  const lines = readFileSync(join(ROOT, 'assets/foods/release.tsv'), 'utf8').split('\n');
  const head = lines.find((line) => /(^|\t)sodium\b/i.test(line) && !line.startsWith('#')) ?? '';
  const column = head.split('\t').findIndex((name) => /^sodium\b/i.test(name));
  return lines
    .map((line) => {
      const cells = line.split('\t');
      if (cells[0] !== NUMBER) return line;
      cells[column] = String(sodium);
      return cells.join('\t');
    })
    .join('\n');
}

let before: Built;
let after: Built;
beforeAll(async () => {
  before = await buildFrom({ [BEANS]: lessonText() });
  after = await buildFrom({ [BEANS]: lessonText(), 'assets/foods/release.tsv': releaseWith(120) });
}, 240_000);

describe("one food's sodium changed in the table", () => {
  const shown = (built: Built) => {
    const { numbers } = JSON.parse(textOf(built, 'numbers.json')) as {
      numbers: { id: string; text: string }[];
    };
    return numbers.find((n) => n.id === ID)?.text ?? '';
  };

  it('changes numbers.json', () => {
    expect(shown(before)).not.toBe('');
    expect(shown(after)).not.toBe(shown(before));
  });

  it.each([
    'en/handout-plain-letter.pdf',
    'en/handout-fuller-a4.pdf',
    'en/worksheet-plain-letter.pdf',
    'en/worksheet-plain-key-letter.pdf',
    'en/slides.pdf',
    'en/review-letter.pdf',
  ])('changes %s alike', async (path) => {
    const plain = async (built: Built) => (await readPdf(fileOf(built, path))).text.replaceAll('\u00a0', ' ');
    const [old, fresh] = [await plain(before), await plain(after)];
    expect(old).toContain(shown(before));
    expect(old).not.toContain(shown(after));
    expect(fresh).toContain(shown(after));
    expect(fresh).not.toContain(shown(before));
  });

  it('changes the alternative text alike', async () => {
    const alternatives = async (built: Built) =>
      (await readPdf(fileOf(built, 'en/slides.pdf'))).alternatives.join(' ').replaceAll('\u00a0', ' ');
    expect(await alternatives(before)).toContain(shown(before));
    expect(await alternatives(after)).toContain(shown(after));
    expect(await alternatives(after)).not.toContain(shown(before));
  });
});

describe('two builds of the same day', () => {
  it('give the same bytes', async () => {
    const again = await buildFrom({ [BEANS]: lessonText() });
    expect(again.files.map((f) => f.path)).toEqual(before.files.map((f) => f.path));
    for (const [index, file] of again.files.entries())
      expect(Buffer.from(file.bytes).equals(Buffer.from(before.files[index]?.bytes ?? [])), file.path).toBe(
        true,
      );
  }, 120_000);

  it('do not depend on line endings of the lesson', async () => {
    const crlf = await buildFrom({ [BEANS]: lessonText().replaceAll('\n', '\r\n') });
    const { numbers } = JSON.parse(textOf(before, 'numbers.json')) as { numbers: unknown };
    expect((JSON.parse(textOf(crlf, 'numbers.json')) as { numbers: unknown }).numbers).toEqual(numbers);
    expect(
      Buffer.from(fileOf(crlf, 'en/handout-plain-letter.pdf')).equals(
        Buffer.from(fileOf(before, 'en/handout-plain-letter.pdf')),
      ),
    ).toBe(true);
  }, 120_000);
});
