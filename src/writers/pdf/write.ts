import type { Place, Report, Spoils } from '../../diagnostics/index.js';
import type { Pages } from '../../layout/index.js';
import { checkPdf } from './check/index.js';
import { pdfProblem } from './codes.js';
import { type Built, buildObjects } from './document/build.js';
import { xmpPacket } from './document/metadata.js';
import { saveObjects } from './document/save.js';

export interface PdfOptions {
  /** Name of the file, for messages. */
  readonly name: string;
  /** Where the lesson's author should look, if anywhere. */
  readonly place?: Place;
  /** What a problem of this file spoils. */
  readonly spoils?: Spoils;
}

/**
 * Pages as a tagged PDF 1.7. The same pages give the same bytes on every machine. The finished file
 * is read back and checked (`checkPdf`); only a file without a finding says of itself that it is
 * PDF/UA-1. What the check finds is reported as `A04`, and the file comes back all the same, as a
 * proof. Pages that contradict themselves (content of an element that the structure does not hold)
 * are a bug of ours and throw.
 */
export async function writePdf(pages: Pages, options: PdfOptions, report: Report): Promise<Uint8Array> {
  const built = buildObjects(pages);
  for (const { href, page } of built.refused)
    report.add(
      pdfProblem(
        'A04',
        `${options.name}, page ${page + 1}: a link leads to "${href}", and links may lead to web pages, mail and phones only.`,
        {
          hint: 'Write an address that starts with https://, http://, mailto: or tel:, or take the link away.',
          ...where(options),
        },
      ),
    );
  const claimed = await save(built, pages, true);
  const findings = await checkPdf(claimed);
  if (findings.length === 0) return claimed;
  for (const { rule, message, page } of findings)
    report.add(
      pdfProblem(
        'A04',
        `${options.name}${page === undefined ? '' : `, page ${page}`}: ${message} (PDF/UA-1, ${rule})`,
        {
          hint: 'If the message names something in the lesson, mend it there; if not, the program is wrong: please report it.',
          ...where(options),
        },
      ),
    );
  return save(built, pages, false);
}

function where({ place, spoils }: PdfOptions) {
  return { ...(place ? { place } : {}), ...(spoils ? { spoils } : {}) };
}

function save({ context, metadata }: Built, pages: Pages, identified: boolean): Promise<Uint8Array> {
  // Metadata stands unpacked, so that a search over files can read it.
  const packet = context.stream(xmpPacket(pages, identified), { Type: 'Metadata', Subtype: 'XML' });
  context.assign(metadata, packet);
  return saveObjects(context);
}
