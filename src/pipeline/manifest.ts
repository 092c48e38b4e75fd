import { createHash } from 'node:crypto';
import type { BuiltFile } from './jobs.js';
import { editionsOf } from './numbers.js';
import type { Desk } from './sheets.js';

/** What was built, from what, on which day: `manifest.json`. */
export function makeManifest(desk: Desk, files: readonly BuiltFile[]) {
  const { lesson } = desk.computed;
  return {
    lesson: lesson.slug ?? '',
    title: lesson.front.title,
    on: desk.on,
    editions: editionsOf(desk),
    review: lesson.front.review,
    source: { file: lesson.file, sha256: sha256(new TextEncoder().encode(lesson.text)) },
    cautions: desk.pulled.map(({ caution }) => ({ id: caution.id, confirmed: caution.confirmed ?? null })),
    files: files
      .map(({ path, bytes, version, pages }) => ({
        path,
        bytes: bytes.length,
        sha256: sha256(bytes),
        ...(version ? { version } : {}),
        ...(pages ? { pages } : {}),
      }))
      .toSorted((a, b) => (a.path < b.path ? -1 : 1)),
    draft: files.filter((file) => file.draft?.length).map((file) => ({ path: file.path, codes: file.draft })),
  };
}

function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
