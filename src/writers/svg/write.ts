import type { Color, Drawing } from '../../figures/index.js';
import { createDefinitions } from './definitions.js';
import { marksSvg } from './marks.js';
import { element, escapeXml } from './xml.js';

export interface SvgOptions {
  /** What it is, in a few words: the alternative's label, or a slide's title. */
  readonly title: string;
  /** All that it says, in sentences; may be empty. */
  readonly description: string;
  /** BCP 47 tag of title and description. */
  readonly language: string;
  /** What one unit of the drawing is when the file is shown by itself. Default `px`. */
  readonly unit?: 'pt' | 'px';
  /** Painted behind everything; without it the ground shows through. */
  readonly background?: Color;
  /** Starts every id; give each drawing of one HTML page another one. Letters and digits. */
  readonly idPrefix?: string;
}

/**
 * The drawing as a self-contained SVG file: outlines instead of text, pictures inside, no scripts and
 * no references outward. The same drawing gives the same bytes.
 */
export function writeSvg(drawing: Drawing, options: SvgOptions): string {
  const { width, height } = drawing;
  const prefix = options.idPrefix ?? '';
  const definitions = createDefinitions(prefix);
  const marks = marksSvg(drawing.marks, definitions);
  const defs = definitions.written();
  const unit = options.unit ?? 'px';
  const [titleId, aboutId] = [`${prefix}title`, `${prefix}about`];
  const about =
    options.description === '' ? '' : `<desc id="${aboutId}">${escapeXml(options.description)}</desc>`;
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${size(width)}${unit}`,
      height: `${size(height)}${unit}`,
      viewBox: `0 0 ${size(width)} ${size(height)}`,
      role: 'img',
      'aria-labelledby': titleId,
      'aria-describedby': about === '' ? undefined : aboutId,
      'xml:lang': options.language,
      lang: options.language,
    },
    [
      `<title id="${titleId}">${escapeXml(options.title)}</title>`,
      about,
      defs === '' ? '' : `<defs>${defs}</defs>`,
      options.background === undefined ? '' : element('rect', { width, height, fill: options.background }),
      marks,
    ].join(''),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svg}\n`;
}

const size = (length: number) => String(Number(length.toFixed(3)));
