import { deflateSync } from 'node:zlib';

/** A picture's samples, 0 to 2^bits − 1, and how to pack them. */
export interface PngPlan {
  readonly width: number;
  readonly height: number;
  readonly colorType: 0 | 2 | 3 | 4 | 6;
  readonly bits: 1 | 2 | 4 | 8 | 16;
  readonly interlaced?: boolean;
  /** Filter of each row, in turn; all kinds by default. */
  readonly filters?: readonly number[];
  readonly palette?: readonly number[];
  readonly transparency?: readonly number[];
  sample(x: number, y: number, channel: number): number;
}

const CHANNELS = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 } as const;
const PASSES: readonly (readonly [number, number, number, number])[] = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
];

/** Packs a PNG by the W3C's specification. */
export function makePng(plan: PngPlan): Uint8Array {
  const { width, height, colorType, bits, filters = [0, 1, 2, 3, 4] } = plan;
  const channels = CHANNELS[colorType];
  const step = Math.max(1, (channels * bits) >> 3);
  const rows: Buffer[] = [];
  let count = 0;
  for (const [x0, y0, dx, dy] of plan.interlaced ? PASSES : [[0, 0, 1, 1] as const]) {
    const columns = Math.ceil((width - x0) / dx);
    if (columns <= 0) continue;
    let above = Buffer.alloc(Math.ceil((columns * channels * bits) / 8));
    for (let y = y0; y < height; y += dy) {
      const line = Buffer.alloc(above.length);
      for (let column = 0; column < columns; column++)
        for (let c = 0; c < channels; c++) {
          const value = plan.sample(x0 + column * dx, y, c);
          const bit = (column * channels + c) * bits;
          if (bits === 16) line.writeUInt16BE(value, bit / 8);
          else line[bit >> 3] = (line[bit >> 3] ?? 0) | (value << (8 - bits - (bit & 7)));
        }
      const filter = filters[count++ % filters.length] ?? 0;
      rows.push(Buffer.of(filter), filtered(line, above, step, filter));
      above = line;
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([bits, colorType, 0, 0, plan.interlaced ? 1 : 0], 8);
  const data = deflateSync(Buffer.concat(rows));
  return new Uint8Array(
    Buffer.concat([
      Buffer.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
      chunk('IHDR', head),
      ...(plan.palette ? [chunk('PLTE', Buffer.from(plan.palette))] : []),
      ...(plan.transparency ? [chunk('tRNS', Buffer.from(plan.transparency))] : []),
      // Two pieces, as big pictures have them.
      chunk('IDAT', data.subarray(0, 7)),
      chunk('IDAT', data.subarray(7)),
      chunk('IEND', Buffer.alloc(0)),
    ]),
  );
}

function chunk(kind: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(kind, 'latin1'), body]);
  const out = Buffer.alloc(named.length + 8);
  out.writeUInt32BE(body.length, 0);
  out.set(named, 4);
  out.writeUInt32BE(crc32(named), named.length + 4);
  return out;
}

/** The check sum of a chunk (PNG specification, annex D). */
function crc32(bytes: Buffer): number {
  let crc = -1;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return ~crc >>> 0;
}

function filtered(line: Buffer, above: Buffer, step: number, filter: number): Buffer {
  return Buffer.from(
    line.map((value, i) => {
      const a = i < step ? 0 : (line[i - step] ?? 0);
      const b = above[i] ?? 0;
      const c = i < step ? 0 : (above[i - step] ?? 0);
      const p = a + b - c;
      const [pa, pb, pc] = [Math.abs(p - a), Math.abs(p - b), Math.abs(p - c)];
      const paeth = pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
      return (value - ([0, a, b, (a + b) >> 1, paeth][filter] ?? 0)) & 255;
    }),
  );
}
