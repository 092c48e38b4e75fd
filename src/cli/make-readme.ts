import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createReport } from '../diagnostics/index.js';
import { openWorkshop } from '../pipeline/build.js';
import { jobsFor } from '../pipeline/jobs.js';
import { readLesson } from '../pipeline/read.js';
import { writePng } from '../writers/png/index.js';
import { writeSvg } from '../writers/svg/index.js';
import { diskWorkspace, PROGRAM } from './disk.js';

/**
 * Makes the README's pictures from the lesson on beans: `npm run make:readme`. Run it again whenever
 * pages change their look; the day is fixed, so that nothing else changes them.
 */
const LESSON = 'beans-three-ways';
const ON = '2026-11-25';

/** Pages to show: the job's name, the page from 0, the picture's name and its width in pixels. */
const PICTURES: readonly (readonly [job: string, page: number, name: string, width: number])[] = [
  ['handout-plain-letter.pdf', 0, 'handout-plain-1', 640],
  ['handout-plain-letter.pdf', 1, 'handout-plain-2', 640],
  ['handout-short-oneink-letter.pdf', 1, 'handout-short-oneink-2', 640],
  ['worksheet-plain-letter.pdf', 1, 'worksheet-plain-2', 640],
  ['slides.pdf', 0, 'slide-title', 720],
];

const shop = openWorkshop(diskWorkspace(PROGRAM));
const desk = readLesson(shop.workspace, LESSON, shop.tables, shop.settings, ON, createReport());
if (!desk) throw new Error(`The lesson ${LESSON} cannot be read.`);
const folder = join(PROGRAM, 'assets', 'readme');
mkdirSync(folder, { recursive: true });
const jobs = new Map(jobsFor(desk, shop).map((job) => [job.name, job]));

async function picture(job: string, page: number, name: string, width: number): Promise<void> {
  const laid = await jobs.get(job)?.layOut(false);
  const found = laid?.pages.pages[page];
  if (!found) throw new Error(`${job} has no page ${page + 1}.`);
  const marks = found.items.flatMap((item) => (item.kind === 'link' ? [] : item.marks));
  const words = { title: name, description: '', language: 'en', background: '#ffffff' };
  const svg = writeSvg({ width: found.width, height: found.height, marks }, words);
  writeFileSync(join(folder, `${name}.png`), writePng(svg, { width }));
}

for (const [job, page, name, width] of PICTURES) await picture(job, page, name, width);

// The slide that shows the rinsing figure, wherever it stands in the deck.
const deck = await jobs.get('slides.pdf')?.layOut(false);
if (deck?.built.kind === 'deck') {
  const at = deck.built.deck.slides.findIndex(
    ({ stage }) => stage.kind === 'show' && stage.block.figure.id === 'rinse',
  );
  await picture('slides.pdf', at, 'slide-rinse', 720);
}
