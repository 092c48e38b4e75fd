import { describe, expect, it } from 'vitest';
import { folderOf, type Import, importsOf, type SourceFile, sourceFiles } from './source.js';

/**
 * Who may import whom, in reading order. `types` may be imported as types only. The reason stands
 * beside each row; a new import that breaks one is a change of design, not of this table.
 */
const HOUSE: Readonly<Record<string, { may: readonly string[]; types?: readonly string[]; why: string }>> = {
  diagnostics: { may: [], why: 'everything reports problems, so this stands on nothing' },
  nutrition: { may: [], why: 'anyone can check the numbers without reading the rest' },
  languages: { may: ['diagnostics'], types: ['nutrition'], why: 'words and digits know no food' },
  records: {
    may: ['diagnostics', 'nutrition', 'languages'],
    why: 'tables become foods here and nowhere else',
  },
  reading: { may: ['diagnostics', 'languages'], why: 'levels and measures look at words only' },
  cautions: {
    may: ['diagnostics', 'languages', 'reading', 'records'],
    types: ['document', 'nutrition'],
    why: 'a caution depends on topics and facts, never on a page',
  },
  text: { may: ['diagnostics', 'languages'], why: 'glyphs know no meaning' },
  figures: {
    may: ['diagnostics', 'languages', 'text'],
    types: ['reading'],
    why: 'shapes and labels know no food',
  },
  document: {
    may: ['diagnostics', 'languages', 'reading'],
    types: ['nutrition', 'figures'],
    why: 'the hub that every output reads depends on no output',
  },
  lesson: { may: ['diagnostics', 'languages', 'reading', 'document'], why: 'Markdown ends here' },
  translation: {
    may: ['diagnostics', 'languages', 'reading', 'lesson'],
    types: ['document'],
    why: 'words travel without pages',
  },
  directives: {
    may: [
      'diagnostics',
      'nutrition',
      'languages',
      'records',
      'reading',
      'cautions',
      'text',
      'figures',
      'document',
      'lesson',
    ],
    why: 'a directive uses what stands above it and no other directive',
  },
  layout: {
    may: ['diagnostics', 'languages', 'text', 'figures', 'document'],
    types: ['reading'],
    why: 'places on a page know no food and no lesson',
  },
  outputs: {
    may: ['diagnostics', 'languages', 'reading', 'document', 'layout', 'text', 'figures'],
    why: 'what goes on which page',
  },
  checks: {
    may: ['diagnostics', 'nutrition', 'languages', 'records', 'reading', 'cautions', 'document', 'lesson'],
    types: ['figures', 'layout', 'outputs', 'text'],
    why: 'rules look at results and make none',
  },
  writers: {
    may: ['diagnostics', 'languages', 'text'],
    types: ['figures', 'layout', 'document'],
    why: 'pages become bytes without asking what they say',
  },
  pipeline: { may: ['*'], why: 'the order of the phases' },
  preview: { may: ['diagnostics', 'pipeline'], why: 'shows what the pipeline makes' },
  cli: { may: ['*'], why: 'arguments, disk, exit codes' },
};
const ORDER = Object.keys(HOUSE);

/** One door per engine. */
const DOORS: Readonly<Record<string, readonly string[]>> = {
  'pdf-lib': ['src/writers/pdf/'],
  '@resvg/resvg-js': ['src/writers/png/'],
  satori: ['src/figures/'],
  harfbuzzjs: ['src/text/'],
  linebreak: ['src/text/'],
  'bidi-js': ['src/text/'],
  unified: ['src/lesson/'],
  'remark-parse': ['src/lesson/'],
  'remark-directive': ['src/lesson/'],
  'remark-gfm': ['src/lesson/'],
  mdast: ['src/lesson/'],
  syllable: ['src/reading/'],
  'dale-chall': ['src/reading/'],
  spache: ['src/reading/'],
  '@rgrove/parse-xml': ['src/figures/', 'src/translation/', 'src/writers/'],
};

/** Disk, clock, process and network belong to the outside. */
const OUTSIDE = ['src/cli/', 'src/preview/', 'src/records/make/', 'src/pipeline/workers/'];
/** Pure parts of the platform. */
const PURE_MODULES = /^node:(buffer|crypto|zlib|util|path|url)$/;

function importFaults(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => importsOf(file).flatMap((i) => faultOf(i) ?? []));
}

function faultOf(i: Import): string | undefined {
  const from = folderOf(i.from);
  if (i.own) {
    const to = folderOf(i.to);
    if (from === 'directives' && to === 'directives') return sisterFault(i);
    if (from === to) return from === 'writers' ? sisterWriter(i) : undefined;
    const rule = HOUSE[from];
    if (!rule) return `${i.from}: no row for ${from}/ in the house`;
    const allowed =
      rule.may.includes('*') || rule.may.includes(to) || (i.typeOnly && rule.types?.includes(to));
    if (!allowed) return `${i.from} imports ${to}/: ${rule.why}`;
    if (ORDER.indexOf(to) > ORDER.indexOf(from) && !(i.typeOnly && rule.types?.includes(to)))
      return `${i.from} imports ${to}/, which stands below it`;
    return computeFault(i);
  }
  if (from === 'nutrition') return `${i.from} imports ${i.to}: ${HOUSE.nutrition?.why}`;
  const door = DOORS[i.to];
  if (door && !door.some((d) => i.from.startsWith(d)))
    return `${i.from} imports ${i.to}, whose door is ${door.join(', ')}`;
  if (i.to.startsWith('node:') && !PURE_MODULES.test(i.to) && !OUTSIDE.some((d) => i.from.startsWith(d)))
    return `${i.from} imports ${i.to}: only ${OUTSIDE.join(', ')} may touch the outside`;
  return undefined;
}

function sisterFault(i: Import): string | undefined {
  const [, , a, below] = i.from.split('/');
  const [, , b, deeper] = i.to.split('/');
  if (below === undefined || deeper === undefined || a === b) return computeFault(i);
  return `${i.from} imports directives/${b}/: a directive can be deleted in one move`;
}

function sisterWriter(i: Import): string | undefined {
  const a = i.from.split('/')[2];
  const b = i.to.split('/')[2];
  return a === b || i.to.split('/').length === 3
    ? undefined
    : `${i.from} imports writers/${b}/: each writer stands alone`;
}

/** `compute.ts` and its parts, `compute-….ts`, see no words; `view.ts` does no arithmetic of the core. */
function computeFault(i: Import): string | undefined {
  if (/^src\/directives\/[^/]+\/compute(?:-[a-z-]+)?\.ts$/.test(i.from)) {
    const fine =
      /^src\/(nutrition|diagnostics)\//.test(i.to) ||
      ['contract', 'problems', 'published'].some((name) => i.to === `src/directives/${name}.ts`) ||
      i.to.endsWith('/schema.ts') ||
      /\/compute-[a-z-]+\.ts$/.test(i.to) ||
      (i.typeOnly && i.to.startsWith('src/document/'));
    if (!fine && !(i.to === 'src/document/index.ts' && /^\{\s*kebab\s*\}$/.test(i.names)))
      return `${i.from} imports ${i.to}: computing knows no words`;
  }
  if (/^src\/directives\/[^/]+\/view\.ts$/.test(i.from) && i.to.startsWith('src/nutrition/') && !i.typeOnly)
    return `${i.from} imports functions of nutrition/: what is shown was computed`;
  return undefined;
}

function cycles(files: readonly SourceFile[]): string[] {
  const edges = new Map(
    files.map((f) => [
      f.path,
      importsOf(f)
        .filter((i) => i.own && !i.typeOnly)
        .map((i) => i.to),
    ]),
  );
  const state = new Map<string, 'open' | 'done'>();
  const found: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    if (state.get(path) === 'done') return;
    if (state.get(path) === 'open') {
      found.push([...trail.slice(trail.indexOf(path)), path].join(' → '));
      return;
    }
    state.set(path, 'open');
    for (const to of edges.get(path) ?? []) visit(to, [...trail, path]);
    state.set(path, 'done');
  };
  for (const path of edges.keys()) visit(path, []);
  return found;
}

describe('the walls of the house', () => {
  const files = sourceFiles();

  it('lets each folder import only what its row names', () => {
    expect(importFaults(files)).toEqual([]);
  });

  it('has no import cycles', () => {
    expect(cycles(files)).toEqual([]);
  });

  it('touches clock, chance and process only at the outside', () => {
    const faults = files
      .filter((f) => !OUTSIDE.some((d) => f.path.startsWith(d)))
      .flatMap((f) =>
        [
          ...f.text.matchAll(
            /\b(Date\.now|new Date\(\)|Math\.random|process\.(?!emit)\w+|setTimeout|fetch\(|performance\.now)/g,
          ),
        ].map((m) => `${f.path}: ${m[0]}`),
      );
    expect(faults).toEqual([]);
  });

  it('names files for what they are', () => {
    expect(
      files
        .map((f) => f.path)
        .filter(
          (p) => /(^|\/)(utils?|helpers?|common|managers?|misc)(\.|\/)/.test(p) || !/^[a-z0-9./-]+$/.test(p),
        ),
    ).toEqual([]);
  });

  it('has no default exports and no ignored types', () => {
    expect(
      files
        .filter((f) => /^export default|@ts-ignore|@ts-expect-error|: any\b|as any\b/m.test(f.text))
        .map((f) => f.path),
    ).toEqual([]);
  });
});

describe('each wall has been seen to fail', () => {
  const file = (path: string, text: string): SourceFile => ({ path, text });
  it.each([
    ['nutrition imports a package', file('src/nutrition/x.ts', "import { z } from 'zod';")],
    [
      'nutrition imports a folder',
      file('src/nutrition/x.ts', "import type { A } from '../languages/index.js';"),
    ],
    ['figures import records', file('src/figures/x.ts', "import { loadFoods } from '../records/index.js';")],
    [
      'a value where only a type may be',
      file('src/document/x.ts', "import { draw } from '../figures/index.js';"),
    ],
    [
      'one directive imports another',
      file('src/directives/a/view.ts', "import { x } from '../b/compute.js';"),
    ],
    [
      'compute knows words',
      file('src/directives/a/compute.ts', "import { sayFrom } from '../../languages/index.js';"),
    ],
    [
      'a view computes',
      file('src/directives/a/view.ts', "import { amountOf } from '../../nutrition/index.js';"),
    ],
    ['pdf-lib outside its door', file('src/layout/x.ts', "import { PDFDocument } from 'pdf-lib';")],
    ['the disk inside', file('src/records/x.ts', "import { readFileSync } from 'node:fs';")],
    ['one writer imports another', file('src/writers/png/x.ts', "import { a } from '../svg/write.js';")],
  ])('%s', (_, wrong) => {
    expect(importFaults([wrong])).toHaveLength(1);
  });

  it('a type may pass where its row says so, also listed one by one', () => {
    expect(
      importFaults([
        file(
          'src/document/x.ts',
          "import type { FigureSpec } from '../figures/index.js';\nimport { type Mark } from '../figures/index.js';",
        ),
      ]),
    ).toEqual([]);
  });

  it('a cycle', () => {
    expect(
      cycles([
        file('src/text/a.ts', "import { b } from './b.js';"),
        file('src/text/b.ts', "import { a } from './a.js';"),
      ]),
    ).toHaveLength(1);
  });
});
