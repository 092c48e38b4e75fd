import type { TextInk } from '../../figures/index.js';
import type { GlyphRun, Line } from '../../text/index.js';
import type { Definitions } from './definitions.js';
import { decimal, element } from './xml.js';

/**
 * A set line as outlines: the same glyphs at the same places as in PDF, so no viewer needs a font.
 * Each run is a group in the units of its font, in which letters are used by their id.
 */
export function textSvg(line: Line<TextInk>, x: number, baseline: number, definitions: Definitions): string {
  return line.runs.map((run) => runSvg(run, x + run.x, baseline, definitions)).join('');
}

function runSvg(run: GlyphRun<TextInk>, x: number, baseline: number, definitions: Definitions): string {
  const scale = run.size / run.font.unitsPerEm;
  const units = (length: number) => decimal(length / scale, 1);
  let pen = 0;
  let letters = '';
  for (const glyph of run.glyphs) {
    const id = definitions.glyph(run.font, glyph.id);
    const at = pen + glyph.dx;
    if (id !== undefined)
      letters += element('use', {
        href: `#${id}`,
        x: units(at) === '0' ? undefined : units(at),
        y: units(glyph.dy) === '0' ? undefined : units(glyph.dy),
      });
    pen += glyph.advance;
  }
  if (run.span.data?.underline) letters += underline(run.width / scale, run.font.unitsPerEm);
  return element(
    'g',
    {
      fill: run.span.data?.color ?? '#000000',
      transform: `matrix(${decimal(scale, 6)} 0 0 ${decimal(-scale, 6)} ${decimal(x)} ${decimal(baseline)})`,
    },
    letters,
  );
}

/** A line under the run, in font units: a tenth of the size below the baseline, a sixteenth thick. */
function underline(width: number, unitsPerEm: number): string {
  const [top, bottom] = [-0.1 * unitsPerEm, -0.1625 * unitsPerEm];
  return element('path', { d: `M0 ${decimal(top)}H${decimal(width)}V${decimal(bottom)}H0Z` });
}
