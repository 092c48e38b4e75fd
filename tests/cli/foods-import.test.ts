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
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EXTRACT } from '../records/import/extract.js';
import { platework } from './command.js';

let root: string;
let download: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'platework-import-'));
  mkdirSync(join(root, 'lessons'));
  download = join(root, 'download_csv_2024-10-31');
  mkdirSync(download);
  for (const [file, text] of Object.entries(EXTRACT)) writeFileSync(join(download, file), text);
});
afterEach(() => rmSync(root, { recursive: true, force: true }));
const importing = (...more: string[]) => platework(['foods', 'import', ...more], root);
const TABLE = 'assets/local/foods/download-csv-2024-10-31.tsv';

describe('platework foods import', () => {
  it('writes one table with release and date, and says what it skipped and why', () => {
    const { code, out, err } = importing(download);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(`${TABLE}: 3 foods of download_csv_2024-10-31, 2024-10-31\n`);
    expect(out).toMatch(/skipped 1 branded foods: their amounts may stand per 100 mL/);
    expect(readFileSync(join(root, TABLE), 'utf8')).toContain('# date: 2024-10-31\n');
    const found = platework(['foods', 'moonbean', 'soup'], root);
    expect(found.out).toMatch(/^Moonbean soup \(imported; lessons cannot name it\)/);
    expect(found.out).toMatch(/protein +5 g\n/);
    expect(found.out).toMatch(/energy +not known\n/);
  });

  it('takes another name and date, and tells machines', () => {
    const { out } = importing(download, '--release', 'Our extract', '--date', '2025-01-02', '--json');
    expect(JSON.parse(out)).toMatchObject({
      file: 'assets/local/foods/our-extract.tsv',
      release: 'Our extract',
      date: '2025-01-02',
      foods: 3,
    });
  });

  it('refuses a malformed file with its line and column, and leaves the old table as it was', () => {
    importing(download);
    const before = readFileSync(join(root, TABLE), 'utf8');
    writeFileSync(join(download, 'food_portion.csv'), EXTRACT['food_portion.csv'].replace('"92.5"', '"9x"'));
    const { code, err } = importing(download);
    expect(code).toBe(1);
    expect(err).toContain('food_portion.csv:3:53');
    expect(err).toContain('Nothing was imported');
    expect(readFileSync(join(root, TABLE), 'utf8')).toBe(before);
    expect(readdirSync(join(root, 'assets/local/foods'))).toEqual(['download-csv-2024-10-31.tsv']);
  });

  it('refuses a folder that lacks files, a day that is none, and no workspace', () => {
    rmSync(join(download, 'nutrient.csv'));
    expect(importing(download)).toMatchObject({
      code: 2,
      err: expect.stringContaining('lacks nutrient.csv'),
    });
    writeFileSync(join(download, 'nutrient.csv'), EXTRACT['nutrient.csv']);
    expect(importing(download, '--date', 'soon')).toMatchObject({ code: 2 });
    expect(importing()).toMatchObject({ code: 2 });
    rmSync(join(root, 'lessons'), { recursive: true });
    expect(importing(download)).toMatchObject({ code: 2, err: expect.stringContaining('--workspace') });
    expect(existsSync(join(root, 'assets'))).toBe(false);
  });
});
