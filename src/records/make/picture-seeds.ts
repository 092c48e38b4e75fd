// The seeds of our own pictures: beans, peas and lentils as they lie in a bowl, on the 32 grid of the
// icon sets that stand beside them. Flat and without outline in color; black outline in one ink.

/** How one seed looks: its outline around the origin, about seven units long, and its colors. */
interface Seed {
  readonly shape: string;
  readonly fill: string;
  /** A paler or darker stroke that gives the seed a side. */
  readonly mark: string;
  readonly markPath: string;
  /** Solid in one ink, so that dark beans differ from pale ones there too. */
  readonly dark?: boolean;
  /** Its mark is drawn in one ink as well. */
  readonly speckled?: boolean;
  /** Size beside a bean; the small ones come in greater number. */
  readonly size?: number;
  readonly eye?: string;
}

const BEAN =
  'M-3.5 .2C-3.6 -1.6 -2.2 -2.5 -.4 -2.3C1.4 -2.6 3.5 -1.8 3.5 .3C3.5 1.9 2.2 2.5 1.2 2C.4 1.6 -.5 1.6 -1.2 2C-2.3 2.6 -3.4 1.8 -3.5 .2Z';
const OVAL = 'M-3.3 0C-3.3 -1.5 -1.8 -2.3 0 -2.3S3.3 -1.5 3.3 0S1.8 2.3 0 2.3S-3.3 1.5 -3.3 0Z';
const ROUND = 'M-2.3 0C-2.3 -1.3 -1.3 -2.3 0 -2.3S2.3 -1.3 2.3 0S1.3 2.3 0 2.3S-2.3 1.3 -2.3 0Z';
const BEAKED =
  'M-2.5 .3C-2.5 -1.2 -1.6 -2.2 -.5 -2.2C.1 -2.2 .4 -1.9 .8 -1.9C1.3 -1.9 1.6 -2.5 2.1 -2.3C2.6 -2.1 2.2 -1.4 2.4 -.8C2.6 -.3 2.7 0 2.6 .5C2.4 1.8 1.4 2.5 0 2.5S-2.5 1.6 -2.5 .3Z';
const HALF =
  'M-2.4 .9C-2.4 -.9 -1.4 -2 0 -2S2.4 -.9 2.4 .9C2.4 1.3 2.1 1.5 1.8 1.5H-1.8C-2.1 1.5 -2.4 1.3 -2.4 .9Z';
const KERNEL = 'M-2.2 -1.2C-2 -2.4 2 -2.4 2.2 -1.2L1.5 1.6C1.2 2.4 -1.2 2.4 -1.5 1.6Z';
const SHINE = 'M-2.2 -.3C-2.1 -1 -1.5 -1.4 -.8 -1.4';
const ARC = 'M-1.3 -.2C-1.2 -.8 -.8 -1.2 -.2 -1.3';
const CREASE = 'M-1.2 1C-.6 1.4 .6 1.4 1.2 1';

const SEEDS: Readonly<Record<string, Seed>> = {
  bean: { shape: BEAN, fill: '#8c5a44', mark: '#b98468', markPath: SHINE },
  'kidney-bean': { shape: BEAN, fill: '#8e3b36', mark: '#b9655c', markPath: SHINE, dark: true },
  'black-bean': { shape: BEAN, fill: '#2f2b36', mark: '#6a6478', markPath: SHINE, dark: true },
  'pinto-bean': {
    shape: BEAN,
    fill: '#c9997a',
    mark: '#8a5a44',
    markPath: 'M-2.3 -.5C-1.7 -1 -1.2 -.9 -.8 -1.2M.6 -1.3C1.2 -.9 1.6 -1.2 2.2 -.8M-.4 .3C.2 0 .8 .5 1.6 .3',
    speckled: true,
  },
  'white-bean': { shape: BEAN, fill: '#f6ecd2', mark: '#d8c296', markPath: 'M-1.6 1.2C-.9 .8 .6 .8 1.4 1.2' },
  'lima-bean': {
    shape: OVAL,
    fill: '#cfdc9b',
    mark: '#95a85c',
    markPath: 'M-1.6 1.1C-.7 1.5 .7 1.5 1.6 1.1',
  },
  'fava-bean': {
    shape: OVAL,
    fill: '#a58a4b',
    mark: '#5f4c26',
    markPath: 'M-2.4 .3C-2.2 .9 -1.8 1.3 -1.2 1.5',
  },
  'black-eyed-pea': {
    shape: BEAN,
    fill: '#eeddb4',
    mark: '#c9ae78',
    markPath: SHINE,
    eye: 'M-1 .9C-1 .3 -.6 -.1 0 -.1S1 .3 1 .9S.6 1.7 0 1.7S-1 1.5 -1 .9Z',
  },
  chickpea: { shape: BEAKED, fill: '#dfb673', mark: '#b1843f', markPath: CREASE, size: 1.05 },
  lentil: { shape: ROUND, fill: '#8b6b43', mark: '#b7986b', markPath: ARC, size: 0.72 },
  'red-lentil': { shape: ROUND, fill: '#e2793b', mark: '#f2a873', markPath: ARC, size: 0.72 },
  pea: { shape: ROUND, fill: '#5da241', mark: '#9bd07c', markPath: ARC, size: 0.9 },
  'split-pea': { shape: HALF, fill: '#86ad4c', mark: '#b9d68a', markPath: ARC, size: 0.75 },
  soybean: { shape: OVAL, fill: '#d9bf83', mark: '#7b5c30', markPath: 'M-.8 1.2H.8', size: 0.85 },
  edamame: { shape: OVAL, fill: '#7fb850', mark: '#b4dd8d', markPath: SHINE },
  'mung-bean': { shape: OVAL, fill: '#6f7f35', mark: '#eef0d6', markPath: 'M-.7 1.1H.7', size: 0.7 },
  almond: {
    shape:
      'M-3.6 .2C-2.6 -1.6 -.4 -2.3 1.4 -2C2.8 -1.7 3.6 -.8 3.6 .1C3.6 1 2.8 1.8 1.4 2C-.4 2.3 -2.8 1.6 -3.6 .2Z',
    fill: '#b5723c',
    mark: '#d79f6b',
    markPath: 'M-2 .1C-.8 -.6 .8 -.7 2.2 -.4M-1.4 .9C-.4 .7 .8 .7 1.8 .9',
  },
  raisin: {
    shape: OVAL,
    fill: '#4c2f3d',
    mark: '#84606f',
    markPath: 'M-2 -.5C-1 .2 .2 -.9 1.8 -.3M-1.4 .8C-.6 .5 .6 1.1 1.5 .7',
    dark: true,
    size: 0.8,
  },
  'small-seed': { shape: OVAL, fill: '#8a6f47', mark: '#c2a87e', markPath: ARC, size: 0.5 },
  sprout: {
    shape:
      'M-3.2 1.4C-2.4 -1.2 .2 -2.4 3 -1.8C3.4 -1.7 3.5 -1.1 3 -1C.8 -.8 -1 .2 -1.8 1.8C-2.2 2.6 -3.5 2.4 -3.2 1.4Z',
    fill: '#e6ebc8',
    mark: '#a9b878',
    markPath: 'M-2.4 1.2C-1.6 -.2 0 -1.1 1.6 -1.4',
  },
  corn: {
    shape: KERNEL,
    fill: '#f0b429',
    mark: '#f9dd8f',
    markPath: 'M-1.1 -1C-.8 -1.3 -.3 -1.4 .2 -1.4',
    size: 0.9,
  },
};

/** Where a seed lies: x, y, turn in degrees. */
type Place = readonly [number, number, number];

const tidy = (v: number) => Number(v.toFixed(2));
const info = (name: string): Seed => {
  const seed = SEEDS[name];
  if (!seed) throw new Error(`No seed ${name}.`);
  return seed;
};

function draw(name: string, [x, y, turn]: Place, size: number, one: boolean): string {
  const seed = info(name);
  const scale = tidy(size * (seed.size ?? 1));
  const eye = seed.eye ? `<path d="${seed.eye}" fill="${one ? '#000' : '#2f2b36'}"/>` : '';
  const body = one
    ? // A white edge keeps two black seeds apart; a black edge closes a white one.
      `<path d="${seed.shape}" fill="${seed.dark ? '#000' : '#fff'}" stroke="${seed.dark ? '#fff' : '#000'}" stroke-width="${tidy((seed.dark ? 1 : 1.5) / scale)}"/>${eye}${seed.speckled ? `<path d="${seed.markPath}" fill="none" stroke="#000" stroke-width="${tidy(0.9 / scale)}" stroke-linecap="round"/>` : ''}`
    : `<path d="${seed.shape}" fill="${seed.fill}"/>${eye}<path d="${seed.markPath}" fill="none" stroke="${seed.mark}" stroke-width=".8" stroke-linecap="round"/>`;
  return `<g transform="translate(${tidy(x)} ${tidy(y)}) rotate(${turn}) scale(${scale})">${body}</g>`;
}

const isSmall = (name: string) => (info(name).size ?? 1) < 0.79;

/** Four, lying as they fell: two over one would look like a face. */
const FEW: readonly Place[] = [
  [-4.3, -1.9, 58],
  [1.8, -3.4, -14],
  [-1.7, 2.9, 12],
  [4.7, 1.6, 104],
];
const FEW_SMALL: readonly Place[] = [
  [-4.4, -1, 0],
  [-1, -3.2, 20],
  [3, -2.4, 0],
  [-2.4, 2.6, 0],
  [0.6, 0.4, 10],
  [4.8, 0.8, 30],
  [2, 3.6, 60],
];

/** A few seeds around a middle, as on a label or in a window. */
export function fewSeeds(name: string, x: number, y: number, size: number, one: boolean): string {
  const own = isSmall(name) ? size : size * 0.86;
  return (isSmall(name) ? FEW_SMALL : FEW)
    .map(([dx, dy, turn]) => draw(name, [x + dx * size, y + dy * size, turn], own, one))
    .join('');
}

const HEAP: readonly Place[] = [
  [12.4, -5.4, 35],
  [19.2, -5.6, -20],
  [8, -1.6, -40],
  [15.8, -2.2, 10],
  [23.8, -1.8, 50],
];
const HEAP_SMALL: readonly Place[] = [
  [12.8, -6.4, 0],
  [16.6, -7.4, 20],
  [20, -6, 0],
  [9, -3.8, 0],
  [13, -3.4, 40],
  [17, -4, 0],
  [21, -3, 10],
  [24.4, -2, 0],
  [6.8, -0.6, 0],
  [10.6, -0.4, 30],
  [14.8, -0.4, 0],
  [18.8, -0.6, 70],
  [25.8, 0, 0],
  [22.6, 0, 0],
];

/** A heap seen from the front, lying on a rim at y, from the back row to the front row. */
export function heapOfSeeds(name: string, y: number, one: boolean): string {
  const size = isSmall(name) ? 1.25 : 1.2;
  return (isSmall(name) ? HEAP_SMALL : HEAP)
    .map(([x, dy, turn]) => draw(name, [x, y + dy, turn], size, one))
    .join('');
}
