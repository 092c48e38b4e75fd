import type { Drawing, Ink, Mark } from './drawing.js';
import { pathOf } from './shapes.js';
import { signMarks } from './signs.js';
import type { SignName } from './spec.js';
import { readPathData } from './svg/path-data.js';
import { paletteFor } from './tokens.js';

/** Things that stand on the shelf of a slide. */
export const VESSELS = ['can', 'jar', 'sack', 'bag', 'sieve', 'pot', 'cup'] as const;
export type Vessel = (typeof VESSELS)[number];

/** What stands on the shelf for a sign of the sheet; tools have no vessel and show their sign. */
const VESSEL_OF: Readonly<Partial<Record<SignName, Vessel>>> = {
  bag: 'sack',
  can: 'can',
  strainer: 'sieve',
  frozen: 'bag',
  jar: 'jar',
  pot: 'pot',
  cup: 'cup',
};

const LINE = 6;
const d = (path: string) => pathOf(readPathData(path));

const BEAN = d(
  'M-7.5 .4C-7.7 -3.4 -4.7 -5.4 -.9 -4.900C3 -5.6 7.5 -3.9 7.5 .6C7.5 4.1 4.7 5.4 2.6 4.300C.9 3.4 -1.1 3.4 -2.6 4.300C-4.9 5.6 -7.3 3.9 -7.5 .4Z',
);
const SHINE = d('M-4.7 -.7C-4.5 -2.2 -3.2 -3 -1.7 -3');
const BEAN_COLORS = [
  ['#8c5a44', '#b98468'],
  ['#7a4a37', '#a8735a'],
] as const;

/** A bean of so many units, its middle at x, y. */
function bean(x: number, y: number, size: number, degrees: number, ink: Ink, shade = 0): Mark {
  const scale = size / 15;
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle) * scale, Math.sin(angle) * scale];
  const [fill, shine] = BEAN_COLORS[shade % 2] ?? BEAN_COLORS[0];
  const one = ink === 'one';
  return {
    kind: 'group',
    at: [cos, sin, -sin, cos, x, y],
    marks: [
      {
        kind: 'shape',
        path: BEAN,
        fill: one ? '#ffffff' : fill,
        stroke: { color: one ? '#000000' : '#ffffff', width: (one ? 3.2 : 1.8) / scale },
      },
      ...(one
        ? []
        : [{ kind: 'shape', path: SHINE, stroke: { color: shine, width: 1.7, cap: 'round' } } as const]),
    ],
  };
}

/** A row of a heap: its height and where it starts and ends. */
type HeapRow = readonly [y: number, from: number, to: number];

/** Beans from the back row to the front one. Each is turned by its place, so a reprint is the same. */
function heap(rows: readonly HeapRow[], size: number, ink: Ink): Mark[] {
  return rows.flatMap(([y, from, to], r) => {
    const count = Math.max(1, Math.round((to - from) / (size * 0.72)));
    return Array.from({ length: count + 1 }, (_, i) => {
      const up = (((i * 7 + r * 5) % 5) - 2) * size * 0.05;
      return bean(from + ((to - from) * i) / count, y + up, size, (i * 97 + r * 53) % 360, ink, i * 3 + r);
    });
  });
}

type Draw = (ink: Ink) => readonly Mark[];

const color = (ink: Ink) => paletteFor('screen', ink).ink;
const body = (path: string, ink: Ink, width = LINE): Mark => ({
  kind: 'shape',
  path: d(path),
  fill: '#ffffff',
  stroke: { color: color(ink), width, cap: 'round', join: 'round' },
});
const line = (path: string, ink: Ink, width = LINE): Mark => ({
  kind: 'shape',
  path: d(path),
  stroke: { color: color(ink), width, cap: 'round', join: 'round' },
});
const inside = (path: string, marks: readonly Mark[]): Mark => ({ kind: 'group', clip: d(path), marks });
const holes = (places: readonly (readonly [number, number])[], ink: Ink): Mark[] =>
  places.map(([x, y]) => ({
    kind: 'shape',
    path: d(`M${x - 5.5} ${y}A5.5 5.5 0 0 1 ${x + 5.5} ${y}A5.5 5.5 0 0 1 ${x - 5.5} ${y}Z`),
    fill: color(ink),
  }));
/** Four, lying as they fell: two over one would look like a face. */
const few = (x: number, y: number, size: number, ink: Ink): Mark[] =>
  (
    [
      [-0.72, -0.4, 58],
      [0.42, -0.62, -14],
      [-0.3, 0.56, 12],
      [0.86, 0.34, 104],
    ] as const
  ).map(([dx, dy, turn], i) => bean(x + dx * size, y + dy * size, size * 0.92, turn, ink, i));

const JAR = 'M46 44H154V54Q172 62 172 82V179Q172 197 154 197H46Q28 197 28 179V82Q28 62 46 54Z';
const CUP = 'M10 26H150L140 182Q139 197 125 197H35Q21 197 20 182Z';

/** Each in a box of 200, its foot at 200; the lower edge of the foot line touches the shelf. */
const DRAWINGS: Readonly<Record<Vessel, Draw>> = {
  can: (ink) => [
    body('M36 18H164V190H36Z', ink),
    body('M34 4H166Q174 4 174 12V18Q174 26 166 26H34Q26 26 26 18V12Q26 4 34 4Z', ink),
    body('M34 175H166Q174 175 174 183V189Q174 197 166 197H34Q26 197 26 189V183Q26 175 34 175Z', ink),
    line('M36 48H164M36 154H164', ink),
    ...few(100, 100, 42, ink),
  ],
  jar: (ink) => [
    body(JAR, ink),
    inside(
      'M31 70H169V179Q169 194 154 194H46Q31 194 31 179Z',
      heap(
        [
          [98, 46, 154],
          [116, 36, 166],
          [134, 42, 160],
          [152, 34, 168],
          [170, 42, 160],
          [187, 36, 166],
        ],
        32,
        ink,
      ),
    ),
    line(JAR, ink),
    body('M45 8H155Q162 8 162 15V35Q162 42 155 42H45Q38 42 38 35V15Q38 8 45 8Z', ink),
    line('M62 19V31M81 19V31M100 19V31M119 19V31M138 19V31', ink, 4),
  ],
  sack: (ink) => [
    body('M62 8Q80 20 100 10Q120 20 138 8L130 52H70Z', ink),
    body(
      'M70 54C36 82 16 116 16 146C16 180 36 197 66 197H134C164 197 184 180 184 146C184 116 164 82 130 54Z',
      ink,
    ),
    line('M58 53H142', ink, 9),
    ...few(100, 134, 44, ink),
  ],
  bag: (ink) => [
    body('M30 30Q100 40 170 30L180 194Q100 200 20 194Z', ink),
    body(
      'M28 4L40 15L52 6L64 15L76 6L88 15L100 6L112 15L124 6L136 15L148 6L160 15L172 4V34Q100 44 28 34Z',
      ink,
    ),
    line('M100 62V96M85.3 70.500L114.7 87.500M114.7 70.500L85.3 87.5', ink, 5),
    ...few(100, 144, 40, ink),
  ],
  sieve: (ink) => [
    ...heap(
      [
        [32, 86, 114],
        [47, 68, 132],
        [62, 54, 146],
        [76, 42, 158],
      ],
      32,
      ink,
    ),
    body('M12 82H188Q184 156 122 168H78Q16 156 12 82Z', ink),
    line('M3 82H197', ink),
    ...holes(
      [
        [52, 106],
        [84, 106],
        [116, 106],
        [148, 106],
        [68, 131],
        [100, 131],
        [132, 131],
      ],
      ink,
    ),
    body('M76 168L68 197H132L124 168Z', ink),
  ],
  pot: (ink) => [
    ...heap(
      [
        [40, 84, 116],
        [54, 62, 138],
        [68, 44, 156],
      ],
      34,
      ink,
    ),
    body('M22 84H178V176Q178 197 157 197H43Q22 197 22 176Z', ink),
    line('M22 104H3V126H22M178 104H197V126H178', ink),
    body('M23 68H177Q186 68 186 77V79Q186 88 177 88H23Q14 88 14 79V77Q14 68 23 68Z', ink),
  ],
  cup: (ink) => [
    line('M148 54H172Q192 54 192 74V106Q192 128 170 128H144', ink),
    body(CUP, ink),
    inside(
      'M13 40H147L138 182Q137 194 125 194H35Q23 194 22 182Z',
      heap(
        [
          [76, 34, 128],
          [92, 24, 138],
          [110, 30, 132],
          [128, 26, 136],
          [146, 32, 128],
          [164, 30, 130],
          [184, 36, 124],
        ],
        32,
        ink,
      ),
    ),
    line(CUP, ink),
    line('M14 62H32', ink, 5),
  ],
};

const drawn = new Map<string, readonly Mark[]>();

/** A vessel `size` wide and high: its left edge at 0, its foot on y = 0. Lines scale with it. */
export function vesselMarks(vessel: Vessel, size: number, ink: Ink): readonly Mark[] {
  const key = `${vessel} ${ink}`;
  const marks = drawn.get(key) ?? DRAWINGS[vessel](ink);
  drawn.set(key, marks);
  const scale = size / 200;
  return [{ kind: 'group', at: [scale, 0, 0, scale, 0, -size], marks }];
}

/** What stands on the shelf for a sign: its vessel, or the sign itself for a leaf or a tool. */
export function shelfMarks(sign: SignName, size: number, ink: Ink): readonly Mark[] {
  const vessel = VESSEL_OF[sign];
  if (vessel) return vesselMarks(vessel, size, ink);
  const marks = signMarks(sign, paletteFor('screen', ink), { size, line: Math.max(3, (6 * size) / 200) });
  return [{ kind: 'group', at: [1, 0, 0, 1, size / 2, -size / 2], marks }];
}

/** A vessel by name in a box of 200, its foot on the lower edge; `undefined` for other names. */
export function vessel(name: string, ink: Ink): Drawing | undefined {
  const found = VESSELS.find((v) => v === name);
  if (!found) return undefined;
  return {
    width: 200,
    height: 200,
    marks: [{ kind: 'group', at: [1, 0, 0, 1, 0, 200], marks: vesselMarks(found, 200, ink) }],
  };
}
