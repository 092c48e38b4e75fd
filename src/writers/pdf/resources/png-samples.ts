import { inflateSync } from 'node:zlib';
import type { PngFile } from './png-chunks.js';

/** Where each pass of an interlaced picture starts and how far it steps (PNG specification, 8.2). */
const PASSES = [
  { x: 0, y: 0, dx: 8, dy: 8 },
  { x: 4, y: 0, dx: 8, dy: 8 },
  { x: 0, y: 4, dx: 4, dy: 8 },
  { x: 2, y: 0, dx: 4, dy: 4 },
  { x: 0, y: 2, dx: 2, dy: 4 },
  { x: 1, y: 0, dx: 2, dy: 2 },
  { x: 0, y: 1, dx: 1, dy: 2 },
];

/** All samples in reading order, as stored (0 to 2^bits − 1). A picture with too few bytes throws. */
export function readSamples(file: PngFile): Uint16Array {
  const { width, height, channels, bits } = file;
  const passes = (file.interlaced ? PASSES : [{ x: 0, y: 0, dx: 1, dy: 1 }])
    .map((pass) => ({
      ...pass,
      columns: Math.ceil((width - pass.x) / pass.dx),
      rows: Math.ceil((height - pass.y) / pass.dy),
    }))
    .filter((pass) => pass.columns > 0 && pass.rows > 0);
  const rowBytes = (columns: number) => Math.ceil((columns * channels * bits) / 8);
  const expected = passes.reduce((sum, pass) => sum + pass.rows * (rowBytes(pass.columns) + 1), 0);
  // The limit keeps a small file from unpacking into more memory than its picture needs.
  const raw = inflateSync(file.data, { maxOutputLength: expected });
  if (raw.length < expected) throw new Error('The PNG has fewer rows than it says.');
  const out = new Uint16Array(width * height * channels);
  const step = Math.max(1, (channels * bits) >> 3);
  let at = 0;
  for (const pass of passes) {
    const length = rowBytes(pass.columns);
    let above = new Uint8Array(length);
    for (let row = 0; row < pass.rows; row++) {
      const filter = raw[at] ?? 0;
      const line = new Uint8Array(raw.subarray(at + 1, at + 1 + length));
      unfilter(filter, line, above, step);
      for (let column = 0; column < pass.columns; column++) {
        const target = ((pass.y + row * pass.dy) * width + pass.x + column * pass.dx) * channels;
        for (let c = 0; c < channels; c++) out[target + c] = sampleAt(line, column * channels + c, bits);
      }
      above = line;
      at += length + 1;
    }
  }
  return out;
}

function sampleAt(line: Uint8Array, index: number, bits: number): number {
  if (bits === 8) return line[index] ?? 0;
  if (bits === 16) return ((line[index * 2] ?? 0) << 8) | (line[index * 2 + 1] ?? 0);
  const bit = index * bits;
  return ((line[bit >> 3] ?? 0) >> (8 - bits - (bit & 7))) & (2 ** bits - 1);
}

/** Undoes a row's filter in place (PNG specification, 9.2). `step` is a pixel's bytes, at least 1. */
function unfilter(filter: number, line: Uint8Array, above: Uint8Array, step: number): void {
  if (filter === 0) return;
  if (filter > 4) throw new Error(`The PNG has a row filter that does not exist: ${filter}.`);
  for (let i = 0; i < line.length; i++) {
    const left = i < step ? 0 : (line[i - step] ?? 0);
    const up = above[i] ?? 0;
    const corner = i < step ? 0 : (above[i - step] ?? 0);
    const guess =
      filter === 1 ? left : filter === 2 ? up : filter === 3 ? (left + up) >> 1 : paeth(left, up, corner);
    line[i] = ((line[i] ?? 0) + guess) & 255;
  }
}

function paeth(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const a = Math.abs(guess - left);
  const b = Math.abs(guess - up);
  const c = Math.abs(guess - corner);
  return a <= b && a <= c ? left : b <= c ? up : corner;
}
