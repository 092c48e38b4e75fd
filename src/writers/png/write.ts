import { Resvg } from '@resvg/resvg-js';

export interface PngOptions {
  /** Pixels across; the height follows. From 1 to 8,000. */
  readonly width: number;
  /** Behind everything; default is transparent. */
  readonly background?: string;
}

/**
 * A picture of an SVG file that holds no text elements, as `writeSvg` makes them. No font and no file
 * of the computer is used, so the same text gives the same bytes everywhere.
 */
export function writePng(svg: string, options: PngOptions): Uint8Array {
  if (!(options.width >= 1 && options.width <= 8000))
    throw new Error(`A picture cannot be ${options.width} pixels wide.`);
  const image = new Resvg(svg, {
    fitTo: { mode: 'width', value: Math.round(options.width) },
    font: { loadSystemFonts: false },
    ...(options.background === undefined ? {} : { background: options.background }),
  });
  return image.render().asPng();
}
