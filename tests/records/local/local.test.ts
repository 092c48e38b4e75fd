import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import type { MixedLine } from '../../../src/document/index.js';
import {
  interpreterLine,
  isDay,
  lineOn,
  monthsLater,
  readLines,
  readSite,
} from '../../../src/records/local/index.js';

const FOLDER = 'assets/local/lantern-street';
const LINES = readFileSync(`${FOLDER}/lines.yaml`, 'utf8');
const SITE = readFileSync(`${FOLDER}/site.yaml`, 'utf8');
const DAY = '2026-12-01';

function lines(text: string, on = DAY) {
  const report = createReport();
  return { lines: readLines(text, 'lines.yaml', on, report), report };
}
/** The line of a text that holds some words; fails when no line does. */
function lineOf(text: string, words: string): number {
  const at = text.split('\n').findIndex((line) => line.includes(words));
  if (at < 0) throw new Error(`No line holds ${words}.`);
  return at + 1;
}
const said = (report: { problems: readonly { code: string; place?: { line: number } }[] }) =>
  report.problems.map((p) => `${p.code} ${p.place?.line}`);

describe('the pack of the invented site', () => {
  it('reads without a problem', () => {
    const { lines: read, report } = lines(LINES);
    readSite(SITE, 'site.yaml', read, DAY, report);
    expect(report.problems).toEqual([]);
    expect(read.get('emergency-number')?.say).toBe('911');
  });

  it('prints no number that could ring at a real home', () => {
    for (const line of lines(LINES).lines.all)
      for (const number of line.say.match(/\d{3}-\d{4}/g) ?? []) expect(number).toMatch(/^555-01\d\d$/);
  });

  it('says the interpreter line in the reader’s language first, then in all others of the town', () => {
    const { lines: read, report } = lines(LINES);
    const site = readSite(SITE, 'site.yaml', read, DAY, report);
    if (!site) throw new Error('The site could not be read.');
    const line: MixedLine | undefined = interpreterLine(site, read, 'es', DAY);
    expect(line?.parts.map((p) => `${p.language}${p.strong ? '!' : ''} ${p.text}`)).toEqual([
      'es! Intérprete gratis: 555-0142',
      'en Free interpreter',
      'ar مترجم مجانًا',
      'ht Entèprèt gratis',
      'vi Thông dịch miễn phí',
      'zh-Hans 免费口译',
    ]);
    expect(interpreterLine(site, read, 'fr', DAY)).toBeUndefined();
  });
});

describe('shelf life', () => {
  it('ends after the last day, and then the words give way to what is true without the number', () => {
    const line = lines(LINES).lines.get('poison-line');
    if (!line) throw new Error('no line');
    expect(line.until).toBe('2028-11-25');
    expect(lineOn(line, '2028-11-25')).toEqual({ text: 'the poison help line at 555-0122', old: false });
    expect(lineOn(line, '2028-11-26')).toEqual({ text: 'your poison help line', old: true });
  });

  it('is reported for each line past it', () => {
    const { report } = lines(LINES, '2029-01-01');
    expect(report.problems.map((p) => `${p.code} ${p.message}`)).toEqual(
      ['poison-line', 'eating-disorder-line', 'free-clinic-line', 'food-help-line', 'interpreter'].map(
        (key) => `local/line-old The line \`${key}\` was good until 2028-11-25; the build is of 2029-01-01.`,
      ),
    );
  });

  it('cannot be stretched by a day in the future', () => {
    const text = LINES.replace('2026-11-25', '2036-11-25');
    expect(said(lines(text).report)).toEqual([`local/date-ahead ${lineOf(text, '2036')}`]);
  });

  it('counts months by the calendar', () => {
    expect(monthsLater('2026-08-31', 6)).toBe('2027-02-28');
    expect(monthsLater('2027-08-31', 6)).toBe('2028-02-29');
    expect(monthsLater('2026-12-15', 1)).toBe('2027-01-15');
    expect([isDay('2028-02-29'), isDay('2027-02-29'), isDay('2027-13-01'), isDay('27-01-01')]).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
});

describe('mistakes in a pack', () => {
  const change = (text: string, from: string, to: string) => {
    expect(text).toContain(from);
    return text.replace(from, to);
  };

  it.each([
    ['a number outside the free hundred', '555-0122', '555-2368', 'local/invented-number', '555-2368'],
    ['a day that does not exist', '2026-11-25', '2026-02-30', 'local/shape', '2026-02-30'],
    ['a line without words for later', '    instead: your poison help line\n', '', 'local/shape', '555-0122'],
    ['a misspelt entry', 'keep_months: 60', 'keep_month: 60', 'local/shape', 'keep_month: 60'],
  ])('%s', (_, from, to, code, where) => {
    const text = change(LINES, from, to);
    expect(said(lines(text).report)).toContain(`${code} ${lineOf(text, where)}`);
  });

  it('a real site may print its real numbers', () => {
    const real = change(change(LINES, 'invented: true', 'invented: false'), '555-0122', '203-555-2368');
    expect(lines(real).report.problems).toEqual([]);
  });

  it.each([
    ['a hall that is no place', 'hall: lantern-street-hall', 'hall: lantern-hall', 'hall: lantern-hall'],
    ['a language without interpreter words', '    vi: Thông dịch miễn phí\n', '', 'en: Free interpreter'],
    ['a place that points to no line', 'line: free-clinic-line', 'line: clinic', 'line: clinic'],
  ])('%s', (_, from, to, where) => {
    const { lines: read, report } = lines(LINES);
    const text = change(SITE, from, to);
    readSite(text, 'site.yaml', read, DAY, report);
    expect(said(report)).toEqual([`local/shape ${lineOf(text, where)}`]);
  });
});
