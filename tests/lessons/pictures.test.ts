import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { readPdf } from './pdf-text.js';
import { buildFrom, fileOf } from './program.js';

const LESSON = (picture: string) => `---
title: Pictures
minutes: 10
audience: anyone
objectives: [see a picture]
guidance: us-2025
topics: []
site: lantern-street
review: none
---

# Pictures

Look at this.

## One

![Two cans side by side, the left one dented](pictures/${picture})
`;

const PATH = 'lessons/pictures/lesson.md';

function chunk(type: string, data: Uint8Array): Uint8Array {
  const body = new Uint8Array([...new TextEncoder().encode(type), ...data]);
  const out = new Uint8Array(body.length + 8);
  const view = new DataView(out.buffer);
  view.setUint32(0, data.length);
  out.set(body, 4);
  view.setUint32(out.length - 4, crc(body));
  return out;
}

/** CRC-32 as ISO 3309 has it (PNG specification, annex D). */
function crc(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) {
    c ^= byte;
    for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  }
  return (c ^ 0xffffffff) >>> 0;
}

/** A small PNG of one gray. */
function png(width: number, height: number): Uint8Array {
  const head = new Uint8Array(13);
  const view = new DataView(head.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  head.set([8, 0, 0, 0, 0], 8);
  const rows = new Uint8Array((width + 1) * height).fill(128);
  for (let y = 0; y < height; y++) rows[y * (width + 1)] = 0;
  const parts = [chunk('IHDR', head), chunk('IDAT', deflateSync(rows)), chunk('IEND', new Uint8Array())];
  return new Uint8Array([
    0x89,
    0x50,
    0x4e,
    0x47,
    0x0d,
    0x0a,
    0x1a,
    0x0a,
    ...parts.flatMap((part) => [...part]),
  ]);
}

const SVG =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 10"><rect width="20" height="10" fill="#456"/></svg>';
const build = (name: string, bytes: string | Uint8Array) =>
  buildFrom({ [PATH]: LESSON(name), [`lessons/pictures/pictures/${name}`]: bytes }, 'pictures');

describe("a lesson's own pictures", () => {
  it.each([
    ['cans.png', png(60, 40)],
    ['cans.svg', SVG],
  ])(
    '%s goes in with its alternative',
    async (name, bytes) => {
      const built = await build(name, bytes);
      expect(built.problems.filter((p) => p.severity === 'stop')).toEqual([]);
      const { alternatives } = await readPdf(fileOf(built, 'en/handout-plain-letter.pdf'));
      expect(alternatives).toContain('Two cans side by side, the left one dented');
    },
    60_000,
  );

  it.each([
    ['a script', 'cans.svg', SVG.replace('<rect', '<script>alert(1)</script><rect'), /^figures\/svg/],
    ['an event', 'cans.svg', SVG.replace('<rect', '<rect onclick="alert(1)"'), /^figures\/svg/],
    [
      'a picture from outside',
      'cans.svg',
      SVG.replace('<rect', '<image href="https://example.org/a.png"/><rect'),
      /^figures\/svg/,
    ],
    ['an entity', 'cans.svg', `<!DOCTYPE svg [<!ENTITY a "b">]>${SVG}`, /^figures\/svg/],
    ['no picture at all', 'cans.png', 'This is text.', /^pictures\/unreadable$/],
    ['half a picture', 'cans.png', png(60, 40).slice(0, 20), /^pictures\/unreadable$/],
  ])(
    'with %s is refused at its place, and a proof is built',
    async (_, name, bytes, code) => {
      const built = await build(name, bytes);
      const stop = built.problems.find((p) => p.severity === 'stop');
      expect(stop?.code).toMatch(code);
      expect(built.files.find((f) => f.path.includes('handout-plain-letter'))?.draft).toContain(stop?.code);
      const { texts } = await readPdf(fileOf(built, 'en/handout-plain-letter.pdf'));
      for (const text of texts) expect(text).toContain('Draft, do not hand out');
    },
    60_000,
  );

  it('that is not there is a problem where it is named', async () => {
    const built = await buildFrom({ [PATH]: LESSON('cans.png') }, 'pictures');
    expect(built.problems).toEqual([
      expect.objectContaining({
        code: 'pictures/missing',
        place: expect.objectContaining({ line: 18, column: 1 }),
      }),
    ]);
  }, 60_000);
});
