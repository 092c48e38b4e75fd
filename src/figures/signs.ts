import type { Color, Mark } from './drawing.js';
import { pathOf } from './shapes.js';
import type { SignName } from './spec.js';
import { readPathData } from './svg/path-data.js';
import { type Palette, paperLines } from './tokens.js';

/** A stretch of a sign: closed ones are tinted or white inside, open ones are lines. */
interface Part {
  readonly path: string;
  readonly inside?: 'tint' | 'paper';
}

const tinted = (d: string): Part => ({ path: pathOf(readPathData(d)), inside: 'tint' });
const white = (d: string): Part => ({ path: pathOf(readPathData(d)), inside: 'paper' });
const lines = (d: string): Part => ({ path: pathOf(readPathData(d)) });

/** Outlines on a 24 grid, our own, drawn after the things themselves. */
const SIGNS: Readonly<Record<SignName, readonly Part[]>> = {
  can: [
    tinted('M5 5.4V18.6C5 20.2 8.1 21.4 12 21.4S19 20.2 19 18.6V5.4'),
    white('M5 5.400C5 4 8.1 2.8 12 2.800S19 4 19 5.400S15.9 8 12 8S5 6.8 5 5.400Z'),
    lines('M5 10.600C5 12 8.1 13.2 12 13.200S19 12 19 10.600M5 15.400C5 16.8 8.1 18 12 18S19 16.8 19 15.4'),
  ],
  bag: [
    tinted(
      'M8.4 7.200C5.6 9.6 4.2 12.8 4.2 16C4.2 19.6 6.2 21.4 9 21.400H15C17.8 21.4 19.8 19.6 19.8 16C19.8 12.8 18.4 9.6 15.6 7.200Z',
    ),
    tinted('M7.4 2.900C9 3.7 10.3 2.5 12 3.300C13.7 2.5 15 3.7 16.6 2.900L15.6 7.200H8.400Z'),
    white(
      'M7.7 15.300C7.5 14.1 8.6 13.2 9.8 13.500C11 13.8 11.3 15 10.5 15.700C9.6 16.5 7.9 16.4 7.7 15.300Z',
    ),
    white(
      'M13 17.400C13 16.2 14.2 15.4 15.3 15.800C16.4 16.2 16.6 17.4 15.7 18.100C14.7 18.8 13 18.5 13 17.400Z',
    ),
  ],
  strainer: [
    tinted('M4.2 8.200H19.800C19.8 13.8 16.6 17.2 12 17.200S4.2 13.8 4.2 8.200Z'),
    lines('M1.6 8.200H22.400M8.2 19.400V20.800M12 19.800V22.400M15.8 19.400V20.8'),
    lines('M8.4 11.300H8.500M12 11.300H12.100M15.5 11.300H15.600M10.2 14.200H10.300M13.7 14.200H13.8'),
  ],
  frozen: [
    tinted('M4.6 3L8.3 4.400L12 3L15.7 4.400L19.4 3V21L15.7 19.600L12 21L8.3 19.600L4.6 21Z'),
    lines('M12 7.400V16.600M8 9.700L16 14.300M16 9.700L8 14.3'),
  ],
  leaf: [
    tinted('M5.6 18.400C4.6 10.4 9.6 4.4 20.4 3.600C21 14.4 14.4 20 5.6 18.400Z'),
    lines('M2.8 21.200L14.4 9.6'),
  ],
  jar: [
    tinted(
      'M7.2 6.400C5.6 7.6 5 8.8 5 10.600V18.200C5 20.3 6.1 21.4 8.2 21.400H15.800C17.9 21.4 19 20.3 19 18.200V10.600C19 8.8 18.4 7.6 16.8 6.400Z',
    ),
    white(
      'M6.6 3.600C6.6 3 7 2.6 7.6 2.600H16.400C17 2.6 17.4 3 17.4 3.600V5.400C17.4 6 17 6.4 16.4 6.400H7.600C7 6.4 6.6 6 6.6 5.400Z',
    ),
    lines('M5 12.200H19M5 17H19'),
  ],
  scissors: [
    lines('M8.2 8.700L21.4 17.600M8.2 15.300L21.4 6.4'),
    white('M2.6 7A3 3 0 0 1 8.6 7A3 3 0 0 1 2.6 7Z'),
    white('M2.6 17A3 3 0 0 1 8.6 17A3 3 0 0 1 2.6 17Z'),
  ],
  pencil: [
    tinted('M3.4 20.600L4.7 15.700L16.3 4.100C17.3 3.1 18.8 3.1 19.8 4.100S20.8 6.6 19.8 7.600L8.2 19.300Z'),
    lines('M14.2 6.200L17.8 9.700M4.7 15.700L8.2 19.3'),
  ],
  pot: [
    tinted('M4.4 9.200H19.600V17.400C19.6 19.5 18.3 20.8 16.2 20.800H7.800C5.7 20.8 4.4 19.5 4.4 17.400Z'),
    lines(
      'M2.4 9.200H21.600M4.4 12.600H1.800M19.6 12.600H22.200M9 6.600C9 5.4 10 5.4 10 4.200C10 3.4 9.6 3 9.6 2.600M14 6.600C14 5.4 15 5.4 15 4.200C15 3.4 14.6 3 14.6 2.6',
    ),
  ],
  cup: [
    tinted('M4.2 5.400H17L15.8 18.800C15.7 20 14.9 20.8 13.7 20.800H7.500C6.3 20.8 5.5 20 5.4 18.800Z'),
    lines(
      'M16.7 8.600H18.800C20.4 8.6 21.4 9.6 21.4 11.200V12.400C21.4 14 20.4 15 18.8 15H16.100M4.6 10.200H11',
    ),
  ],
};

export interface SignLook {
  /** Side of the box, in the drawing's unit. */
  readonly size: number;
  /** Line width in the drawing's unit, whatever the size. Default 1.25, for paper. */
  readonly line?: number;
  readonly color?: Color;
}

/** A sign with its middle at 0, 0. */
export function signMarks(name: SignName, palette: Palette, look: SignLook): readonly Mark[] {
  const scale = look.size / 24;
  const stroke = {
    color: look.color ?? palette.ink,
    width: (look.line ?? paperLines.sign) / scale,
    cap: 'round',
    join: 'round',
  } as const;
  const marks = SIGNS[name].map(
    ({ path, inside }): Mark => ({
      kind: 'shape',
      path,
      ...(inside ? { fill: palette[inside] } : {}),
      stroke,
    }),
  );
  return [{ kind: 'group', at: [scale, 0, 0, scale, -look.size / 2, -look.size / 2], marks }];
}
