import { z } from 'zod';
import { foodsShape } from './foods.js';
import { linesShape } from './lines.js';
import { noticesShape } from './notices.js';
import { siteShape } from './site.js';

const SHAPES = {
  site: { shape: siteShape, title: 'A site: who hands the pages out, and where' },
  lines: { shape: linesShape, title: 'Phone lines of a site' },
  foods: { shape: foodsShape, title: 'Foods that a site knows from labels' },
  notices: { shape: noticesShape, title: 'Notices of a site' },
} as const;

export type PackFile = keyof typeof SHAPES;
/** The YAML files of a site's pack, without their endings. */
export const PACK_FILES = Object.keys(SHAPES) as readonly PackFile[];

/** The shape of one file of a pack as JSON Schema, for editors. */
export function packJsonSchema(file: PackFile): unknown {
  const { shape, title } = SHAPES[file];
  return { ...z.toJSONSchema(shape, { io: 'input', unrepresentable: 'any' }), title };
}
