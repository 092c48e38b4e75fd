import { createHash } from 'node:crypto';
import { imageSize } from 'image-size';
import { type CodeTable, type Place, problemsOf, type Report } from '../diagnostics/index.js';
import type { Picture } from '../document/index.js';
import { readSvg } from '../figures/index.js';
import type { InlineNode } from '../lesson/index.js';
import type { ReadPicture } from './viewer.js';
import type { Workspace } from './workspace.js';

export const pictureCodes = {
  'pictures/missing': {
    severity: 'stop',
    rule: "A picture of a lesson lies in the lesson's own folder pictures/.",
    about: 'Write ![what it shows](pictures/name.png). Pictures are not taken from anywhere else.',
  },
  'pictures/unreadable': {
    severity: 'stop',
    rule: 'A picture is a PNG, a JPEG or an SVG file, whole and not larger than 8 MB.',
    about:
      'Other kinds, damaged files and names that do not fit their content are refused, so that no page is printed with a hole.',
  },
} as const satisfies CodeTable;
const problem = problemsOf(pictureCodes);

const MOST_BYTES = 8 * 1024 * 1024;
const MOST_PIXELS = 40_000_000;

/** Reads a lesson's own pictures; each file is read and reported once. */
export function pictureReader(workspace: Workspace, folder: string): ReadPicture {
  const read = new Map<string, Picture | undefined>();
  return (node, report) => {
    if (!read.has(node.src))
      read.set(node.src, readPicture(workspace, `${folder}/${node.src}`, node.place, report));
    return read.get(node.src);
  };
}

/** Every picture in running text. */
export function picturesIn(nodes: readonly InlineNode[]): (InlineNode & { readonly kind: 'picture' })[] {
  return nodes.flatMap((node) => {
    if (node.kind === 'picture') return [node];
    return 'children' in node ? picturesIn(node.children) : [];
  });
}

function readPicture(workspace: Workspace, path: string, place: Place, report: Report): Picture | undefined {
  const bytes = workspace.read(path);
  if (!bytes) {
    report.add(
      problem('pictures/missing', `There is no picture ${path}.`, {
        place,
        hint: 'Look at the name, capital letters too.',
      }),
    );
    return undefined;
  }
  const refuse = (why: string, hint: string) => {
    report.add(problem('pictures/unreadable', `${path} ${why}.`, { place, hint }));
    return undefined;
  };
  if (bytes.length > MOST_BYTES)
    return refuse('is larger than 8 MB', 'Make it smaller; 2,000 pixels across are enough for paper.');
  if (/\.svg$/i.test(path)) {
    const { picture, problems } = readSvg(new TextDecoder('utf-8').decode(bytes), path);
    for (const found of problems) report.add(found);
    return picture ? { kind: 'vector', ...picture } : undefined;
  }
  const size = measured(bytes);
  if (!size) return refuse('is no PNG, JPEG or SVG file', 'Save it again from a drawing or photo program.');
  if (size.width * size.height > MOST_PIXELS)
    return refuse(
      `has ${size.width} × ${size.height} pixels`,
      'Make it smaller; 2,000 pixels across are enough for paper.',
    );
  const { format, turn } = size;
  const id = createHash('sha256').update(bytes).digest('hex').slice(0, 16);
  const sideways = turn >= 5;
  return {
    kind: 'raster',
    width: sideways ? size.height : size.width,
    height: sideways ? size.width : size.height,
    raster: { id, format, bytes, width: size.width, height: size.height, turn },
  };
}

function measured(
  bytes: Uint8Array,
): { width: number; height: number; format: 'png' | 'jpeg'; turn: number } | undefined {
  try {
    const { width, height, type, orientation } = imageSize(bytes);
    const format = type === 'png' ? 'png' : type === 'jpg' ? 'jpeg' : undefined;
    if (!format || !(width > 0) || !(height > 0)) return undefined;
    const turn = orientation !== undefined && orientation >= 1 && orientation <= 8 ? orientation : 1;
    return { width, height, format, turn };
  } catch {
    return undefined;
  }
}
