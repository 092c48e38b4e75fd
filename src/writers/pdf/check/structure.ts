import { PDFDict, type PDFObject, PDFRef } from 'pdf-lib';
import type { Findings } from './finding.js';
import { entry, type File, listOf, nameOf, numberOf, rawEntry, resolve, sameRef } from './objects.js';

/** A structure element as the finished file has it. */
export interface Part {
  readonly role: string;
  readonly ref: PDFRef;
  readonly dict: PDFDict;
  readonly parent: Part | undefined;
  readonly kids: Part[];
  /** Marked content of its own. */
  readonly marked: { readonly page: PDFObject | undefined; readonly mcid: number }[];
  /** Annotations of its own. */
  readonly objects: PDFObject[];
}

export interface Structure {
  /** All parts in reading order, each before its kids. */
  readonly parts: readonly Part[];
  /** Marked content in reading order. */
  readonly order: readonly {
    readonly page: PDFObject | undefined;
    readonly mcid: number;
    readonly part: Part;
  }[];
  /** What the parent tree has under a key. */
  parentsAt(key: number | undefined): PDFObject | undefined;
}

/** Reads the structure tree and reports where it does not hold together. */
export function readStructure(file: File, findings: Findings): Structure | undefined {
  const root = entry(file, file.catalog, 'StructTreeRoot');
  if (!(root instanceof PDFDict)) {
    findings.add('7.1', 'The file has no structure tree.');
    return undefined;
  }
  const rootRef = rawEntry(file.catalog, 'StructTreeRoot');
  const parts: Part[] = [];
  const order: { page: PDFObject | undefined; mcid: number; part: Part }[] = [];
  const seen = new Set<string>();

  function read(object: PDFObject, parent: Part | undefined): void {
    const dict = resolve(file, object);
    if (!(object instanceof PDFRef) || !(dict instanceof PDFDict)) {
      findings.add('7.1', 'The structure tree holds something that is no element.');
      return;
    }
    if (seen.has(object.tag)) {
      findings.add('7.1', 'An element stands twice in the structure tree.');
      return;
    }
    seen.add(object.tag);
    const role = nameOf(entry(file, dict, 'S')) ?? '';
    const part: Part = { role, ref: object, dict, parent, kids: [], marked: [], objects: [] };
    parts.push(part);
    parent?.kids.push(part);
    if (!sameRef(rawEntry(dict, 'P'), parent?.ref ?? rootRef))
      findings.add('7.1', `An element (${role}) names another parent than the one it stands in.`);
    for (const kid of listOf(entry(file, dict, 'K'))) readKid(kid, part);
  }

  function readKid(kid: PDFObject, part: Part): void {
    const thing = resolve(file, kid);
    const page = rawEntry(thing, 'Pg') ?? rawEntry(part.dict, 'Pg');
    const kind = nameOf(entry(file, thing, 'Type'));
    const mcid = numberOf(thing) ?? (kind === 'MCR' ? numberOf(entry(file, thing, 'MCID')) : undefined);
    if (mcid !== undefined) {
      part.marked.push({ page, mcid });
      order.push({ page, mcid, part });
    } else if (kind === 'OBJR') {
      const object = rawEntry(thing, 'Obj');
      if (object) part.objects.push(object);
    } else read(kid, part);
  }

  for (const kid of listOf(entry(file, root, 'K'))) read(kid, undefined);
  const parents = readParentTree(file, entry(file, root, 'ParentTree'));
  return { parts, order, parentsAt: (key) => (key === undefined ? undefined : parents.get(key)) };
}

/** A number tree, flat. */
function readParentTree(file: File, tree: PDFObject | undefined): ReadonlyMap<number, PDFObject> {
  const out = new Map<number, PDFObject>();
  const visit = (node: PDFObject | undefined, depth: number) => {
    if (depth > 20) return;
    const nums = listOf(entry(file, node, 'Nums'));
    for (let i = 0; i + 1 < nums.length; i += 2) {
      const key = numberOf(resolve(file, nums[i]));
      const value = nums[i + 1];
      if (key !== undefined && value) out.set(key, value);
    }
    for (const kid of listOf(entry(file, node, 'Kids'))) visit(resolve(file, kid), depth + 1);
  };
  visit(tree, 0);
  return out;
}
