import { type PDFContext, PDFHexString, type PDFRef, PDFString } from 'pdf-lib';
import type { Pages } from '../../../layout/index.js';

const PROGRAM = 'platework';

/** The information dictionary. Its only date is the day that the build depends on. */
export function writeInfo(context: PDFContext, pages: Pages): PDFRef {
  const stamp = PDFString.of(`D:${pages.date.replaceAll('-', '')}000000Z`);
  return context.register(
    context.obj({
      Title: PDFHexString.fromText(oneLine(pages.title)),
      ...(pages.subject === undefined ? {} : { Subject: PDFHexString.fromText(oneLine(pages.subject)) }),
      Creator: PDFString.of(PROGRAM),
      Producer: PDFString.of(PROGRAM),
      CreationDate: stamp,
      ModDate: stamp,
    }),
  );
}

/**
 * The XMP packet, which says the same as the information dictionary. `identified` adds the claim to
 * be PDF/UA-1; it may stand only in a file that passed the check.
 */
export function xmpPacket(pages: Pages, identified: boolean): Uint8Array {
  const date = `${pages.date}T00:00:00Z`;
  const subject =
    pages.subject === undefined
      ? ''
      : `<dc:description><rdf:Alt><rdf:li xml:lang="x-default">${escaped(pages.subject)}</rdf:li></rdf:Alt></dc:description>\n`;
  const claim = identified ? '<pdfuaid:part>1</pdfuaid:part>\n' : '';
  const text = `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escaped(pages.title)}</rdf:li></rdf:Alt></dc:title>
${subject}<dc:language><rdf:Bag><rdf:li>${escaped(pages.language)}</rdf:li></rdf:Bag></dc:language>
<xmp:CreateDate>${date}</xmp:CreateDate>
<xmp:ModifyDate>${date}</xmp:ModifyDate>
<xmp:CreatorTool>${PROGRAM}</xmp:CreatorTool>
<pdf:Producer>${PROGRAM}</pdf:Producer>
${claim}</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="w"?>`;
  return new TextEncoder().encode(text);
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

function escaped(text: string): string {
  return oneLine(text).replace(/[&<>]/g, (character) => ENTITIES[character] ?? character);
}

/** Text without what XML forbids, so that both places say the same: control characters become spaces. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\ufffe\uffff]/gu, ' ').replace(/\p{Surrogate}/gu, '\ufffd');
}
