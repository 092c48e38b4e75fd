import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { replaceFolder } from '../../src/cli/disk.js';
import { platework } from './command.js';

const SMALL = `---
title: A small lesson
minutes: 10
audience: anyone
objectives:
  - compare two cans
guidance: us-2025
topics: [cans]
review: none
---

# A small lesson

Rinse beans from a can.

## One cup

:::form-compare{id=pinto food="pinto beans" basis="1 cup, ready to eat" show="sodium"}
- canned, drained
- canned, drained and rinsed
:::

::::staff
## Before the talk

One cup has :n[sodium]{of=pinto row="canned, drained and rinsed"} of sodium.
::::
`;

const LINES = `site: our-hall
invented: true
lines:
  emergency-number:
    say: "911"
    instead: your emergency number
    what: ambulance, fire and police
    dated: 2026-11-25
    keep_months: 60
    source: the emergency number of the United States
`;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'platework-'));
  mkdirSync(join(folder, 'lessons', 'small'), { recursive: true });
  writeFileSync(join(folder, 'lessons', 'small', 'lesson.md'), SMALL);
  writeFileSync(join(folder, 'platework.yaml'), 'site: our-hall\npaper: [letter]\nlevels: [plain]\n');
  mkdirSync(join(folder, 'assets', 'local', 'our-hall'), { recursive: true });
  writeFileSync(join(folder, 'assets', 'local', 'our-hall', 'lines.yaml'), LINES);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the command line', () => {
  it('says what it can do', () => {
    const { code, out } = platework(['--help']);
    expect(code).toBe(0);
    for (const name of ['build', 'check', 'explain']) expect(out).toContain(name);
    for (const name of ['build', 'check', 'explain'])
      expect(platework([name, '--help']).out).toContain(`platework ${name}`);
  });

  it('names the nearest command and option', () => {
    expect(platework(['biuld'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('Did you mean build?'),
    });
    expect(platework(['build', '--workspce', '.'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('Did you mean --workspace?'),
    });
    expect(platework(['build', '--on', 'tomorrow'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('tomorrow'),
    });
  });

  it('builds a workspace outside the clone, with its own settings', () => {
    const { code, out, err } = platework(['build', '--on', '2026-11-25', '--workspace', folder]);
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toContain('small');
    const names = readdirSync(join(folder, 'out', 'small', 'en'));
    expect(names).toContain('handout-plain-letter.pdf');
    expect(names.filter((name) => name.includes('a4') || name.includes('short'))).toEqual([]);
  }, 60_000);

  it('finds the workspace from a folder inside it', () => {
    const { code, out } = platework(['explain', 'small'], join(folder, 'lessons', 'small'));
    expect(code).toBe(0);
    expect(out).toContain('pinto.canned-drained-and-rinsed.sodium');
  });

  it('takes a workspace by its path from here', () => {
    const { code, out } = platework(['check', 'small', '--workspace', '.', '--cautions'], folder);
    expect(code).toBe(0);
    expect(out).toMatch(
      / {2}damaged-cans \(stop, S15\)\n {4}lessons\/small\/lesson\.md:\d+:\d+ {2}topic cans/,
    );
  });

  it("tells a number's whole story", () => {
    const { code, out } = platework([
      'explain',
      'small',
      'pinto.canned-drained-and-rinsed.sodium',
      '--workspace',
      folder,
    ]);
    expect(code).toBe(0);
    for (const words of [
      '360 mg',
      'usda-sr28 16345',
      'per100',
      '2015-09',
      'handout, plain',
      "leader's page",
      'Standard Reference',
    ])
      expect(out).toContain(words);
  });

  it('offers the nearest number and lesson', () => {
    expect(
      platework(['explain', 'small', 'pinto.canned-drained.sodum', '--workspace', folder]),
    ).toMatchObject({ code: 2, err: expect.stringContaining('pinto.canned-drained.sodium') });
    expect(platework(['check', 'smal', '--workspace', folder])).toMatchObject({
      code: 1,
      out: expect.stringContaining('Lessons here: small'),
    });
  });

  it('checks, with places, for people and for machines', () => {
    writeFileSync(
      join(folder, 'lessons', 'small', 'lesson.md'),
      SMALL.replace('canned, drained and rinsed', 'canned, rinced'),
    );
    const text = platework(['check', '--workspace', folder, '--on', '2026-11-25']);
    expect(text.code).toBe(1);
    expect(text.out).toMatch(/lessons\/small\/lesson\.md:20:3 {2}Stop/);
    const json = JSON.parse(
      platework(['check', '--json', '--workspace', folder, '--on', '2026-11-25']).out,
    ) as { problems: { place?: { line: number } }[] }[];
    expect(json[0]?.problems.some((p) => p.place?.line === 20)).toBe(true);
    writeFileSync(join(folder, 'lessons', 'small', 'lesson.md'), SMALL);
  }, 60_000);

  it('explains a code, and lists them all', () => {
    expect(platework(['check', '--explain', 'N03'])).toMatchObject({
      code: 0,
      out: expect.stringContaining('basis'),
    });
    expect(platework(['check', '--explain', 'N33']).code).toBe(2);
    const all = platework(['check', '--explain', 'all']).out;
    for (const code of ['N02', 'N03', 'N04', 'N18', 'S17', 'S18', 'P12', 'A03', 'A04'])
      expect(all).toMatch(new RegExp(`^${code} `, 'm'));
  });

  it('says plainly that there is no workspace', () => {
    const empty = mkdtempSync(join(tmpdir(), 'platework-'));
    expect(platework(['build'], empty)).toMatchObject({
      code: 2,
      err: expect.stringContaining('--workspace'),
    });
    rmSync(empty, { recursive: true });
  });
});

describe('output', () => {
  it('is written whole or not at all', () => {
    const target = join(folder, 'out', 'whole');
    const bytes = new TextEncoder().encode('one');
    replaceFolder(target, [{ path: 'a.txt', bytes }]);
    // The second file cannot be written: its folder would be the first file.
    expect(() =>
      replaceFolder(target, [
        { path: 'b.txt', bytes },
        { path: 'b.txt/c.txt', bytes },
      ]),
    ).toThrow();
    expect(readdirSync(target)).toEqual(['a.txt']);
    expect(readFileSync(join(target, 'a.txt'), 'utf8')).toBe('one');
    expect(existsSync(`${target}.new`)).toBe(false);
  });

  it('of an unreadable lesson leaves what was there', () => {
    const built = join(folder, 'out', 'small', 'manifest.json');
    const before = readFileSync(built, 'utf8');
    writeFileSync(join(folder, 'lessons', 'small', 'lesson.md'), new Uint8Array([0xff, 0xfe, 0x41, 0x00]));
    const { code } = platework(['build', '--workspace', folder, '--on', '2026-11-25']);
    expect(code).toBe(1);
    expect(readFileSync(built, 'utf8')).toBe(before);
    writeFileSync(join(folder, 'lessons', 'small', 'lesson.md'), SMALL);
  });
});
