// Writes assets/pictures/<name>.svg and its one-ink twin <name>.one.svg for every row of pictures.tsv:
// icons out of two MIT sets by npm, and our own drawings. Run with `npm run make:pictures`, from the
// top folder.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import {
  bowl,
  type Contents,
  can,
  grainBowl,
  pouch,
  sack,
  seedsAs,
  smoothBowl,
  strainer,
  tofu,
} from './picture-vessels.js';

const FOLDER = 'assets/pictures';

interface IconSet {
  readonly icons: Readonly<Record<string, { readonly body: string }>>;
}
const readSet = (name: string): IconSet =>
  JSON.parse(readFileSync(`node_modules/@iconify-json/${name}/icons.json`, 'utf8')) as IconSet;
const colored = readSet('fluent-emoji-flat');
const oneInk = readSet('fluent-emoji-high-contrast');

function icon(name: string, one: boolean): string {
  const body = (one ? oneInk : colored).icons[name]?.body;
  if (!body) throw new Error(`No icon ${name} in the ${one ? 'one-ink' : 'color'} set.`);
  return body.replace(/currentColor/g, '#000');
}

const iconAs =
  (name: string): Contents =>
  (x, y, size, one) => {
    const scale = Number((0.36 * size).toFixed(3));
    const corner = (middle: number) => Number((middle - 16 * scale).toFixed(2));
    return `<g transform="translate(${corner(x)} ${corner(y)}) scale(${scale})">${icon(name, one)}</g>`;
  };

function body(from: string, one: boolean): string {
  const [kind = '', what = ''] = from.split(' ');
  const contents =
    what === 'plain' ? () => '' : what.startsWith('icon:') ? iconAs(what.slice(5)) : seedsAs(what);
  switch (kind) {
    case 'icon':
      return icon(what, one);
    case 'can':
      return can(contents, one);
    case 'sack':
      return sack(contents, one);
    case 'pouch':
      return pouch(contents, one);
    case 'bowl':
      return bowl(what, one);
    case 'strainer':
      return strainer(what, one);
    case 'tofu':
      return tofu(one);
    case 'grain-bowl':
      return grainBowl(one);
    case 'smooth-bowl':
      return what === 'brown' ? smoothBowl(one, '#c9a57c', '#a07c52') : smoothBowl(one);
    default:
      throw new Error(`No drawing of kind ${kind}.`);
  }
}

for (const file of readdirSync(FOLDER)) if (file.endsWith('.svg')) rmSync(`${FOLDER}/${file}`);
let count = 0;
for (const row of readFileSync(`${FOLDER}/pictures.tsv`, 'utf8').split('\n')) {
  if (row === '' || row.startsWith('#') || row.startsWith('name\t')) continue;
  const [name = '', from = ''] = row.split('\t');
  for (const one of [false, true]) {
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="32" height="32" viewBox="0 0 32 32">${body(from, one)}</svg>\n`;
    writeFileSync(`${FOLDER}/${name}${one ? '.one' : ''}.svg`, svg);
  }
  count++;
}
console.log(`${FOLDER}: ${count} pictures, each in color and in one ink`);
