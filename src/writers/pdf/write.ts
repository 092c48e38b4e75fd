import type { Pages } from '../../layout/index.js';
import { buildObjects } from './document/build.js';
import { xmpPacket } from './document/metadata.js';
import { saveObjects } from './document/save.js';

export async function writePdf(pages: Pages): Promise<Uint8Array> {
  const built = buildObjects(pages);
  built.context.assign(
    built.metadata,
    built.context.stream(xmpPacket(pages, true), { Type: 'Metadata', Subtype: 'XML' }),
  );
  return saveObjects(built.context);
}
