import type { ImageParts } from './image-parts.js';
import { type PngFile, readChunks } from './png-chunks.js';
import { readSamples } from './png-samples.js';

/**
 * A PNG as PDF wants it. Most files pass through as they are, since PDF knows PNG's own compression;
 * a file with clear pixels or interlacing is unpacked into samples of eight bits. Bytes that are no
 * whole PNG throw: pictures were checked when the lesson was read.
 */
export function readPng(bytes: Uint8Array): ImageParts {
  const file = readChunks(bytes);
  if (file.hasAlpha || file.interlaced || file.transparency) return unpack(file);
  return {
    width: file.width,
    height: file.height,
    bits: file.bits,
    space: file.palette ? { indexed: file.palette } : file.channels === 3 ? 'DeviceRGB' : 'DeviceGray',
    data: file.data,
    packed: {
      Filter: 'FlateDecode',
      DecodeParms: {
        Predictor: 15,
        Colors: file.channels,
        BitsPerComponent: file.bits,
        Columns: file.width,
      },
    },
  };
}

/** Parts color from alpha, keeps gray pictures gray and drops an alpha that hides nothing. */
function unpack(file: PngFile): ImageParts {
  const { width, height, palette, transparency } = file;
  const samples = readSamples(file);
  const count = width * height;
  const colors = palette || file.channels > 2 ? 3 : 1;
  const data = new Uint8Array(count * colors);
  const alpha = new Uint8Array(count).fill(255);
  const most = 2 ** file.bits - 1;
  const keys = keyColors(file);
  let solid = true;
  for (let pixel = 0; pixel < count; pixel++) {
    const at = pixel * file.channels;
    if (palette) {
      const index = samples[at] ?? 0;
      for (let c = 0; c < 3; c++) data[pixel * 3 + c] = palette[index * 3 + c] ?? 0;
      alpha[pixel] = transparency?.[index] ?? 255;
    } else {
      let matches = keys !== undefined;
      for (let c = 0; c < colors; c++) {
        const value = samples[at + c] ?? 0;
        if (keys && value !== keys[c]) matches = false;
        data[pixel * colors + c] = Math.round((value * 255) / most);
      }
      if (file.hasAlpha) alpha[pixel] = Math.round(((samples[at + colors] ?? 0) * 255) / most);
      else if (matches) alpha[pixel] = 0;
    }
    if (alpha[pixel] !== 255) solid = false;
  }
  return {
    width,
    height,
    bits: 8,
    space: colors === 3 ? 'DeviceRGB' : 'DeviceGray',
    data,
    ...(solid ? {} : { alpha }),
  };
}

/** The one color that a gray or RGB file declares clear. */
function keyColors({ palette, transparency, channels }: PngFile): number[] | undefined {
  if (palette || !transparency || transparency.length < channels * 2) return undefined;
  return Array.from(
    { length: channels },
    (_, c) => ((transparency[c * 2] ?? 0) << 8) | (transparency[c * 2 + 1] ?? 0),
  );
}
