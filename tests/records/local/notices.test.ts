import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { isSource, loadSources, withSources } from '../../../src/records/index.js';
import {
  noticeSource,
  noticesFor,
  PACK_FILES,
  packJsonSchema,
  readLines,
  readNotices,
} from '../../../src/records/local/index.js';
import { ROOT } from '../../house/source.js';

const ON = '2026-12-01';
const pack = (name: string, site = 'lantern-street') =>
  readFileSync(join(ROOT, `assets/local/${site}/${name}.yaml`), 'utf8');
const NOTICES = `site: here
notices:
  - id: free-test
    words: The town tests water from wells at no cost. Call {food-help-line}.
    from: 2026-11-20
    until: 2027-05-31
    dated: 2026-11-25
    keep_months: 12
    source: the water desk
    print: [handout, leader]
  - id: market
    words: The market opens at 10.30 on 1/6/2027.
    dated: 2026-11-25
    keep_months: 1
    source: the board
`;

function read(text: string, on = ON) {
  const report = createReport();
  const lines = readLines(pack('lines'), 'lines.yaml', on, createReport());
  const isTaken = (id: string) => id === 'usda-sr28';
  return { notices: readNotices(text, 'notices.yaml', { lines, on, isTaken }, report), report };
}
const said = (report: { problems: readonly { code: string; place?: { line: number; column: number } }[] }) =>
  report.problems.map((p) => `${p.code} ${p.place?.line}:${p.place?.column}`);

describe('a notice', () => {
  it('prints where it says, and on the leader’s page alone when it says nothing', () => {
    const { notices, report } = read(NOTICES);
    expect(report.problems).toEqual([]);
    expect(noticesFor(notices, 'handout', ON).map(({ id }) => id)).toEqual(['free-test']);
    expect(noticesFor(notices, 'leader', ON).map(({ id }) => id)).toEqual(['free-test', 'market']);
    expect(noticesFor(notices, 'slides', ON)).toEqual([]);
  });

  it('says a phone line as it stands in lines.yaml, and without the number once that is old', () => {
    expect(read(NOTICES).notices[0]?.words).toContain('Call the food help line at 555-0164.');
    const later = read(
      NOTICES.replaceAll('2026-11-25', '2028-12-01').replace('2027-05-31', '2029-01-31'),
      '2028-12-01',
    );
    expect(later.notices[0]?.words).toContain('Call the food help line in your town.');
  });

  it('prints from its first day to its last, and past it the build asks', () => {
    const ids = (on: string) => noticesFor(read(NOTICES, on).notices, 'leader', on).map(({ id }) => id);
    expect(ids('2026-12-25')).toEqual(['free-test', 'market']);
    expect(ids('2026-12-26')).toEqual(['free-test']);
    expect(said(read(NOTICES, '2026-12-26').report)).toEqual(['local/notice-old 13:12']);
    expect(ids('2027-05-31')).toEqual(['free-test']);
    const ended = read(NOTICES, '2027-06-01');
    expect(said(ended.report)).toEqual(['local/notice-old 7:12', 'local/notice-old 13:12']);
    expect(ended.report.problems[0]).toMatchObject({
      severity: 'ask',
      message: 'The notice `free-test` was good until 2027-05-31; the build is of 2027-06-01.',
    });
    expect(ids('2027-06-01')).toEqual([]);
  });

  it('waits for its first day without a word', () => {
    const later = NOTICES.replace('from: 2026-11-20', 'from: 2027-03-01');
    expect(read(later).report.problems).toEqual([]);
    expect(noticesFor(read(later).notices, 'handout', ON)).toEqual([]);
  });

  it('dated ahead of the build is asked about', () => {
    expect(said(read(NOTICES, '2026-11-24').report)).toEqual([
      'local/date-ahead 7:12',
      'local/date-ahead 13:12',
    ]);
  });

  it('is a source that a caution can name', () => {
    const own = loadSources('', createReport());
    const more = withSources(own, read(NOTICES).notices.map(noticeSource));
    const found = more.find('free-test');
    expect(isSource(found) && [found.kind, found.authors, found.dataDate]).toEqual([
      'notice',
      ['the water desk'],
      '2026-11-25',
    ]);
  });

  it('of the example sites reads without a problem', () => {
    const { notices, report } = read(pack('notices'));
    expect(report.problems).toEqual([]);
    expect(notices.map(({ print }) => print)).toEqual(notices.map(() => ['leader']));
    expect(noticesFor(notices, 'leader', '2027-03-01').map(({ id }) => id)).toContain('market-opens');
    expect(read(pack('notices', 'willow-bend'))).toMatchObject({ notices: [], report: { problems: [] } });
  });
});

describe('what is wrong with a notice', () => {
  it.each<[string, string, string, string]>([
    ['no YAML', 'notices:', 'notices: [', 'local/shape 3:3'],
    ['a misspelt entry', 'keep_months: 1\n', 'keep_month: 1\n', 'local/shape 14:5'],
    ['an id with blanks', 'id: market', 'id: the market', 'local/shape 11:9'],
    ['an id twice', 'id: market', 'id: free-test', 'local/shape 11:9'],
    ['the id of a source', 'id: market', 'id: usda-sr28', 'local/shape 11:9'],
    ['an end before its begin', 'until: 2027-05-31', 'until: 2026-11-19', 'local/shape 6:12'],
    ['a day that is none', 'until: 2027-05-31', 'until: 2027-05-32', 'local/shape 6:12'],
    ['a page that is none', '[handout, leader]', '[poster]', 'local/shape 10:13'],
    ['a line that the site does not have', '{food-help-line}', '{food-line}', 'local/shape 4:12'],
    ['a brace without a partner', '{food-help-line}', '{food-help-line', 'local/shape 4:12'],
    ['no words', 'words: The market opens at 10.30 on 1/6/2027.', 'words: " "', 'local/shape 12:12'],
    ['words that end no sentence', '1/6/2027.', '1/6/2027', 'local/shape 12:12'],
    ['three sentences', 'The market opens', 'It is here. Come. It opens', 'local/shape 12:12'],
    ['too many words', 'The market opens', `The market ${'very '.repeat(27)}opens`, 'local/shape 12:12'],
    ['a typed number', '{food-help-line}', '555-0164', 'local/notice-number 4:12'],
    ['a real number', '{food-help-line}', '(203) 555 2368', 'local/notice-number 4:12'],
    ['a number of another land', '{food-help-line}', '01632 960123', 'local/notice-number 4:12'],
    ['a short number', 'Call {food-help-line}', 'Call 211', 'local/notice-number 4:12'],
    ['a number in its source', 'the board', 'the board, 5550164', 'local/notice-number 15:13'],
  ])('is reported: %s', (_what, from, to, code) => {
    expect(NOTICES).toContain(from);
    const { notices, report } = read(NOTICES.replace(from, to));
    expect(said(report)).toContain(code);
    expect(notices.length).toBeLessThan(2);
  });

  it('is told with the line to name instead', () => {
    const typed = read(NOTICES.replace('{food-help-line}', '555-0164')).report.problems[0];
    expect(typed?.hint).toContain('{food-help-line}');
    const near = read(NOTICES.replace('{food-help-line}', '{food-help-lin}')).report.problems[0];
    expect(near?.hint).toBe('Did you mean {food-help-line}?');
  });

  it('is a third one on the same page and day', () => {
    const three = NOTICES.replace('    source: the board\n', '    source: the board\n    print: [handout]\n');
    const one = three.slice(three.indexOf('  - id: market'));
    const { notices, report } = read(three + one.replace('id: market', 'id: fair'));
    expect(said(report)).toEqual(['local/notice-room 18:12']);
    expect(noticesFor(notices, 'handout', ON).map(({ id }) => id)).toEqual(['free-test', 'market']);
  });
});

describe('the JSON Schema of a pack’s files', () => {
  it.each(PACK_FILES)('is the committed one: %s', (name) => {
    const committed = JSON.parse(readFileSync(join(ROOT, `assets/pack-${name}.schema.json`), 'utf8'));
    expect(committed).toEqual(JSON.parse(JSON.stringify(packJsonSchema(name))));
    expect(committed.required).toContain('site');
  });
});
