import { type PDFContext, PDFHexString, type PDFRef } from 'pdf-lib';
import type { Raster } from '../../../figures/index.js';
import type { ImageParts } from './image-parts.js';
import { readJpeg } from './jpeg.js';
import { readPng } from './png.js';

/** Unpacking a picture is slow and a lesson prints it in a dozen files, so the parts are kept with it. */
const known = new WeakMap<Raster, ImageParts>();

function partsOf(raster: Raster): ImageParts {
  const ready = known.get(raster);
  if (ready) return ready;
  const parts = raster.format === 'png' ? readPng(raster.bytes) : readJpeg(raster.bytes);
  if (parts.width !== raster.width || parts.height !== raster.height)
    throw new Error(
      `Picture ${raster.id} is ${parts.width} × ${parts.height} pixels, not ${raster.width} × ${raster.height}.`,
    );
  known.set(raster, parts);
  return parts;
}

/** Puts a picture into the file, with its alpha as a soft mask. */
export function embedImage(context: PDFContext, raster: Raster): PDFRef {
  const parts = partsOf(raster);
  const entries = {
    Type: 'XObject',
    Subtype: 'Image',
    Width: parts.width,
    Height: parts.height,
    BitsPerComponent: parts.bits,
    ColorSpace: colorSpace(context, parts),
    ...(parts.inverted ? { Decode: [1, 0, 1, 0, 1, 0, 1, 0] } : {}),
    ...(parts.alpha ? { SMask: embedAlpha(context, parts, parts.alpha) } : {}),
  };
  return context.register(
    parts.packed
      ? context.stream(parts.data, { ...entries, ...parts.packed })
      : context.flateStream(parts.data, entries),
  );
}

function colorSpace(context: PDFContext, { space }: ImageParts) {
  if (typeof space === 'string') return space;
  const colors = Buffer.from(space.indexed).toString('hex').toUpperCase();
  return context.obj([
    'Indexed',
    'DeviceRGB',
    Math.floor(space.indexed.length / 3) - 1,
    PDFHexString.of(colors),
  ]);
}

function embedAlpha(context: PDFContext, { width, height }: ImageParts, alpha: Uint8Array): PDFRef {
  return context.register(
    context.flateStream(alpha, {
      Type: 'XObject',
      Subtype: 'Image',
      Width: width,
      Height: height,
      BitsPerComponent: 8,
      ColorSpace: 'DeviceGray',
    }),
  );
}
