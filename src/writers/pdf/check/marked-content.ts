import type { PDFDict, PDFObject } from 'pdf-lib';
import type { Findings } from './finding.js';
import { bytesOf, entry, type File, listOf, nameOf, rawEntry, resolve } from './objects.js';
import { isLanguageTag } from './parts.js';
import { type Operand, operationsOf } from './tokens.js';

/** Codes of one font that a page shows, and what it says of one marked-content sequence. */
export interface Shown {
  readonly font: PDFObject | undefined;
  readonly codes: readonly number[];
}

export interface Sequence {
  readonly mcid: number;
  readonly tag: string;
  /** True when something is painted inside. */
  painted: boolean;
  readonly shown: Shown[];
}

/** What the content of one page holds. */
export interface PageContent {
  /** By MCID, in the order in which they stand in the content. */
  readonly sequences: ReadonlyMap<number, Sequence>;
  /** All text of the page, tagged or not. */
  readonly shown: readonly Shown[];
}

const PAINTS = new Set([
  'S',
  's',
  'f',
  'F',
  'f*',
  'B',
  'B*',
  'b',
  'b*',
  'sh',
  'Do',
  'BI',
  'Tj',
  'TJ',
  "'",
  '"',
]);

interface Mark {
  readonly tag: string;
  readonly sequence: Sequence | undefined;
}

/** Reads a page's content and reports what is neither tagged nor an artifact, or both. */
export function readContent(file: File, page: PDFDict, number: number, findings: Findings): PageContent {
  const sequences = new Map<number, Sequence>();
  const shown: Shown[] = [];
  const marks: Mark[] = [];
  const forms = new Set<PDFObject>();

  function begin(tag: string, mcid: number | undefined): void {
    const inArtifact = marks.some((mark) => mark.tag === 'Artifact');
    const inTagged = marks.some((mark) => mark.sequence);
    if (tag === 'Artifact' && inTagged)
      findings.add('7.1', 'An artifact stands inside tagged content.', number);
    if (mcid !== undefined && inArtifact)
      findings.add('7.1', `Tagged content (${tag}) stands inside an artifact.`, number);
    if (mcid !== undefined && inTagged)
      findings.add('7.1', `Tagged content (${tag}) stands inside other tagged content.`, number);
    if (mcid !== undefined && forms.size > 0)
      findings.add('7.1', `A group of drawings holds tagged content (${tag}) of its own.`, number);
    if (mcid !== undefined && sequences.has(mcid))
      findings.add('7.1', `Two pieces of content have the same number ${mcid}.`, number);
    const sequence = mcid === undefined ? undefined : { mcid, tag, painted: false, shown: [] };
    if (sequence) sequences.set(sequence.mcid, sequence);
    marks.push({ tag, sequence });
  }

  function checkLanguage(properties: Operand | undefined): void {
    const language = properties instanceof Map ? properties.get('Lang') : undefined;
    if (typeof language !== 'object' || language === null || !('bytes' in language)) return;
    const tag = String.fromCharCode(...language.bytes);
    if (!isLanguageTag(tag)) findings.add('7.2', `"${tag}" is no language tag.`, number);
  }

  function paint(what: string): void {
    const sequence = marks.find((mark) => mark.sequence)?.sequence;
    if (sequence) sequence.painted = true;
    else if (!marks.some((mark) => mark.tag === 'Artifact'))
      findings.add('7.1', `${what} is neither tagged nor an artifact.`, number);
  }

  function show(font: PDFObject | undefined, operands: readonly Operand[]): void {
    const codes = operands.flatMap(codesIn);
    const piece = { font, codes };
    shown.push(piece);
    marks.find((mark) => mark.sequence)?.sequence?.shown.push(piece);
  }

  function drawForm(form: PDFObject): void {
    if (forms.has(form)) {
      findings.add('7.1', 'A group of drawings contains itself.', number);
      return;
    }
    if (rawEntry(form, 'Ref')) findings.add('7.20', 'A drawing is taken from another file.', number);
    forms.add(form);
    run(bytesOf(form), entry(file, form, 'Resources'));
    forms.delete(form);
  }

  function run(bytes: Uint8Array | undefined, resources: PDFObject | undefined): void {
    if (!bytes) return;
    const depth = marks.length;
    let font: PDFObject | undefined;
    const saved: (PDFObject | undefined)[] = [];
    const named = (kind: string, operand: Operand | undefined) =>
      entry(file, entry(file, resources, kind), nameIn(operand) ?? '');
    for (const { operator, operands } of operationsOf(bytes)) {
      const last = operands.at(-1);
      if (operator === 'q') saved.push(font);
      else if (operator === 'Q') font = saved.pop();
      else if (operator === 'Tf') font = named('Font', operands[0]);
      else if (operator === 'BMC') begin(nameIn(last) ?? '', undefined);
      else if (operator === 'BDC') {
        checkLanguage(last);
        begin(nameIn(operands[0]) ?? '', mcidIn(last));
      } else if (operator === 'EMC') {
        if (marks.length <= depth)
          findings.add('7.1', 'A marked piece of content ends that never began.', number);
        else marks.pop();
      } else if (PAINTS.has(operator)) {
        if (operator.startsWith('T') || operator === "'" || operator === '"') {
          paint('Text');
          show(font, operands);
        } else if (operator === 'BI') {
          findings.add('7.1', 'A picture stands inside the content, where it cannot be checked.', number);
          return;
        } else if (operator === 'Do') {
          const object = named('XObject', last);
          paint(nameOf(entry(file, object, 'Subtype')) === 'Image' ? 'A picture' : 'A group of drawings');
          if (object && nameOf(entry(file, object, 'Subtype')) === 'Form') drawForm(object);
        } else paint('A shape');
      }
    }
    if (marks.length > depth) {
      findings.add('7.1', 'A marked piece of content does not end.', number);
      marks.length = depth;
    }
  }

  try {
    run(contentBytes(file, page), inherited(file, page, 'Resources'));
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    findings.add('7.1', `The page's content cannot be read: ${why}`, number);
  }
  return { sequences, shown };
}

function contentBytes(file: File, page: PDFDict): Uint8Array {
  const parts = listOf(entry(file, page, 'Contents')).flatMap((part) => {
    const bytes = bytesOf(resolve(file, part));
    // Streams of one page join as if with a space between.
    return bytes ? [bytes, Uint8Array.of(10)] : [];
  });
  return new Uint8Array(Buffer.concat(parts));
}

/** A page's entry, or that of the nearest branch of the page tree above it. */
export function inherited(file: File, page: PDFDict, key: string): PDFObject | undefined {
  let holder: PDFObject | undefined = page;
  for (let steps = 0; holder && steps < 50; steps++) {
    const found = entry(file, holder, key);
    if (found) return found;
    holder = entry(file, holder, 'Parent');
  }
  return undefined;
}

function nameIn(operand: Operand | undefined): string | undefined {
  return operand !== null && typeof operand === 'object' && 'name' in operand ? operand.name : undefined;
}

function mcidIn(operand: Operand | undefined): number | undefined {
  const mcid = operand instanceof Map ? operand.get('MCID') : undefined;
  return typeof mcid === 'number' ? mcid : undefined;
}

/** Two-byte codes, as Identity-H has them; arrays also hold moves. */
function codesIn(operand: Operand): number[] {
  if (Array.isArray(operand)) return operand.flatMap(codesIn);
  if (operand === null || typeof operand !== 'object' || !('bytes' in operand)) return [];
  const codes: number[] = [];
  for (let i = 0; i + 1 < operand.bytes.length; i += 2)
    codes.push(((operand.bytes[i] ?? 0) << 8) | (operand.bytes[i + 1] ?? 0));
  return codes;
}
