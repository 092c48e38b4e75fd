// Writes assets/fonts/: whole families as plain TrueType files, their licenses and a list of where
// each file comes from. The committed files are the truth, so the packages are not dependencies;
// to write them again run, from the top folder, the command that this script prints when a package
// is missing, then `npm run make:fonts`.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';

const TO = 'assets/fonts';
const CUTTER = 'subset-font';

/** The packages, exact: other versions may draw other shapes. */
const PACKAGES: Readonly<Record<string, string>> = {
  '@expo-google-fonts/atkinson-hyperlegible-next': '0.4.1',
  '@expo-google-fonts/noto-sans': '0.4.2',
  '@expo-google-fonts/noto-sans-math': '0.4.2',
  '@expo-google-fonts/noto-sans-symbols-2': '0.4.1',
  '@expo-google-fonts/vazirmatn': '0.4.1',
  '@fontsource/noto-sans-sc': '5.3.0',
  [CUTTER]: '2.9.0',
};

type Range = readonly [first: number, last: number];

interface Family {
  /** Start of the file names. */
  readonly file: string;
  readonly source: string;
  readonly license: string;
  /** A copyright line that the package's license file leaves out. */
  readonly notice?: string;
  /** Weight and the file's place in the package. */
  readonly weights: readonly (readonly [number, string])[];
  /** Only these characters are kept; without it the whole file is. */
  readonly keep?: readonly Range[];
}

const STYLES: readonly (readonly [number, string])[] = [
  [400, 'Regular'],
  [500, 'Medium'],
  [600, 'SemiBold'],
  [700, 'Bold'],
  [800, 'ExtraBold'],
];

function styles(name: string, of: readonly number[]): (readonly [number, string])[] {
  return STYLES.filter(([weight]) => of.includes(weight)).map(
    ([weight, style]) => [weight, `${weight}${style}/${name}_${weight}${style}.ttf`] as const,
  );
}

const ALL = [400, 500, 600, 700, 800];

/** Latin with Vietnamese and phonetics, Greek, Cyrillic, and their punctuation, currency and fractions. */
const LETTERS: readonly Range[] = [
  [0x20, 0x52f],
  [0x1e00, 0x1fff],
  [0x2000, 0x20cf],
  [0x2100, 0x218f],
  [0x2200, 0x22ff],
  [0x25cc, 0x25cc],
  [0xfb00, 0xfb06],
  [0xfffd, 0xfffd],
];
/** Arrows, mathematical signs and plain shapes. */
const SIGNS: readonly Range[] = [
  [0x20, 0x20],
  [0x2190, 0x21ff],
  [0x2200, 0x22ff],
  [0x25a0, 0x25ff],
];
/** Boxes to check and check marks. */
const MARKS: readonly Range[] = [
  [0x20, 0x20],
  [0x2610, 0x2612],
  [0x2713, 0x2718],
];

const FAMILIES: readonly Family[] = [
  {
    file: 'atkinson-hyperlegible-next',
    source: '@expo-google-fonts/atkinson-hyperlegible-next',
    license: 'LICENSE_FONT',
    weights: styles('AtkinsonHyperlegibleNext', ALL),
  },
  {
    file: 'noto-sans',
    source: '@expo-google-fonts/noto-sans',
    license: 'LICENSE_FONT',
    weights: styles('NotoSans', ALL),
    keep: LETTERS,
  },
  {
    file: 'vazirmatn',
    source: '@expo-google-fonts/vazirmatn',
    license: 'LICENSE_FONT',
    weights: styles('Vazirmatn', ALL),
  },
  {
    file: 'noto-sans-sc',
    source: '@fontsource/noto-sans-sc',
    license: 'LICENSE',
    notice: "(c) 2014-2021 Adobe (http://www.adobe.com/), with Reserved Font Name 'Source'.",
    weights: [400, 700].map(
      (weight) => [weight, `files/noto-sans-sc-chinese-simplified-${weight}-normal.woff`] as const,
    ),
    keep: [[0x20, 0x10ffff]],
  },
  {
    file: 'noto-sans-math',
    source: '@expo-google-fonts/noto-sans-math',
    license: 'LICENSE_FONT',
    weights: styles('NotoSansMath', [400]),
    keep: SIGNS,
  },
  {
    file: 'noto-sans-symbols-2',
    source: '@expo-google-fonts/noto-sans-symbols-2',
    license: 'LICENSE_FONT',
    weights: styles('NotoSansSymbols2', [400]),
    keep: MARKS,
  },
];

const missing = Object.entries(PACKAGES).filter(
  ([name, version]) => versionOf(`node_modules/${name}/package.json`) !== version,
);
if (missing.length > 0) {
  const wanted = Object.entries(PACKAGES).map(([name, version]) => `${name}@${version}`);
  console.error(`First install the packages:\n\nnpm install --no-save ${wanted.join(' ')}\n`);
  process.exit(1);
}

function versionOf(file: string): string | undefined {
  if (!existsSync(file)) return undefined;
  return /"version":\s*"([^"]+)"/.exec(readFileSync(file, 'utf8'))?.[1];
}

const NAMES = [0, 1, 2, 3, 4, 5, 6, 13, 14, 16, 17];

const { default: cut } = await import('subset-font');

/** Names 13 and 14 are the license, 16 and 17 the family and weight; they stay in a font that was cut. */
async function keepOnly(font: Uint8Array, ranges: readonly Range[]): Promise<Uint8Array> {
  let text = '';
  for (const [first, last] of ranges)
    for (let code = first; code <= last; code++)
      if (code < 0xd800 || code > 0xdfff) text += String.fromCodePoint(code);
  return cut(font, text, { targetFormat: 'truetype', preserveNameIds: NAMES });
}

/** Line ends of the repository, no spaces before them. */
function plain(text: string): string {
  return `${text
    .split(/\r\n|\n|\r/)
    .map((line) => line.trimEnd())
    .join('\n')
    .trimEnd()}\n`;
}

const LIST = [
  '# Fonts',
  '',
  'All are under the SIL Open Font License 1.1, whose text and copyright lines stand beside each family as',
  '`<family>.license.txt`. The files are written by `npm run make:fonts`. *Cut* means that only some characters',
  'were kept (the ranges are in the script); the shapes are unchanged.',
  '',
  '| file | from | | SHA-256 |',
  '| --- | --- | --- | --- |',
];

mkdirSync(TO, { recursive: true });
for (const family of FAMILIES) {
  const from = `node_modules/${family.source}`;
  writeFileSync(
    `${TO}/${family.file}.license.txt`,
    plain(`${family.notice ?? ''}\n${readFileSync(`${from}/${family.license}`, 'utf8')}`.trimStart()),
  );
  for (const [weight, place] of family.weights) {
    const whole = readFileSync(`${from}/${place}`);
    const font = family.keep ? await keepOnly(whole, family.keep) : whole;
    const name = `${family.file}-${weight}.ttf`;
    writeFileSync(`${TO}/${name}`, font);
    const sum = createHash('sha256').update(font).digest('hex');
    LIST.push(
      `| ${name} | ${family.source} ${PACKAGES[family.source]}, ${place} | ${family.keep ? 'cut' : 'whole'} | ${sum} |`,
    );
    console.log(`${TO}/${name}: ${font.length} bytes`);
  }
}
writeFileSync(`${TO}/README.md`, `${LIST.join('\n')}\n`);
