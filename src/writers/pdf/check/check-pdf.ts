import { PDFDict, type PDFObject, PDFParser, PDFRef } from 'pdf-lib';
import { checkAnnotations } from './annotations.js';
import { checkDocument } from './document.js';
import { createFindings, type Finding, type Findings } from './finding.js';
import { type FontReader, openFont } from './fonts.js';
import { checkLinksToPages, type ReadPage } from './links-to-pages.js';
import { readContent, type Shown } from './marked-content.js';
import { entry, type File, listOf, nameOf, resolve, textOf as textIn } from './objects.js';
import { checkParts, shorten, type Words } from './parts.js';
import { type Part, readStructure } from './structure.js';
import { checkTablesAndLists } from './tables.js';

/**
 * What a finished PDF breaks of the rules of PDF/UA-1 (ISO 14289-1:2014) that a program can check,
 * and of our own: no scripts, one title. Nothing is taken from the code that wrote the file. Bytes
 * that are no PDF give one finding.
 *
 * Not checked: what only people can judge, such as whether an alternative fits its picture.
 */
export async function checkPdf(bytes: Uint8Array): Promise<readonly Finding[]> {
  const findings = createFindings();
  const file = await open(bytes);
  if (!file) {
    findings.add('7.1', 'The file cannot be read as a PDF.');
    return findings.all;
  }
  if (!/^%PDF-1\.[0-7][\r\n]/.test(String.fromCharCode(...bytes.subarray(0, 9))))
    findings.add('6.1', 'The file does not begin as a PDF 1.7 must.');
  checkDocument(file, findings);
  const pages = readPages(file, findings);
  if (pages.length === 0) findings.add('7.1', 'The file has no page.');
  const fonts = checkFonts(file, pages, findings);
  const structure = readStructure(file, findings);
  if (!structure) return findings.all;
  const words = wordsOf(file, pages, fonts);
  checkLinksToPages(file, pages, structure, findings);
  checkParts(file, structure, words, findings);
  checkTablesAndLists(file, structure, words, findings);
  checkAnnotations(file, pages, structure, words, findings);
  return findings.all;
}

async function open(bytes: Uint8Array): Promise<File | undefined> {
  try {
    const context = await PDFParser.forBytesWithOptions(
      bytes,
      Number.POSITIVE_INFINITY,
      true,
    ).parseDocument();
    const catalog = context.lookup(context.trailerInfo.Root);
    return catalog instanceof PDFDict ? { context, catalog } : undefined;
  } catch {
    return undefined;
  }
}

function readPages(file: File, findings: Findings): ReadPage[] {
  const pages: ReadPage[] = [];
  const seen = new Set<string>();
  const visit = (ref: PDFObject) => {
    const dict = resolve(file, ref);
    if (!(ref instanceof PDFRef) || !(dict instanceof PDFDict) || seen.has(ref.tag)) return;
    seen.add(ref.tag);
    if (nameOf(entry(file, dict, 'Type')) === 'Pages') {
      for (const kid of listOf(entry(file, dict, 'Kids'))) visit(kid);
      return;
    }
    const number = pages.length + 1;
    pages.push({ ref, dict, number, content: readContent(file, dict, number, findings) });
  };
  const root = file.catalog.entries().find(([key]) => key.decodeText() === 'Pages')?.[1];
  if (root) visit(root);
  return pages;
}

type Readers = ReadonlyMap<PDFObject, FontReader>;

function checkFonts(file: File, pages: readonly ReadPage[], findings: Findings): Readers {
  const readers = new Map<PDFObject, FontReader>();
  for (const { content, number } of pages)
    for (const { font, codes } of content.shown) {
      if (!font) {
        findings.add('7.21.4.1', 'Text stands in a font that is not there.', number);
        continue;
      }
      const reader = readers.get(font) ?? openFont(file, font, findings);
      readers.set(font, reader);
      for (const code of codes) reader.check(code);
    }
  return readers;
}

/** The first words of an element, in quotes after a space; nothing when it has none. */
function wordsOf(file: File, pages: readonly ReadPage[], fonts: Readers): Words {
  const say = ({ font, codes }: Shown) =>
    codes.map((code) => (font && fonts.get(font)?.text(code)) ?? '').join('');
  const textOf = (part: Part): string =>
    part.marked
      .flatMap(({ page, mcid }) => {
        const content = pages.find((known) => known.ref === page)?.content;
        return content?.sequences.get(mcid)?.shown.map(say) ?? [];
      })
      .join('') + part.kids.map(textOf).join(' ');
  return (part) => {
    // Right-to-left letters stand in the order in which they are drawn; the element says the true one.
    const text = (textIn(entry(file, part.dict, 'ActualText')) ?? textOf(part)).trim();
    return text === '' ? '' : ` ("${shorten(text)}")`;
  };
}
