import { readFileSync } from 'node:fs';
import { median, timed } from './timing.mjs';

/** What both sides print: the neutral lesson's plain handout on Letter, in color. */
const LESSON = 'room-set-ups';
const FILE = `lessons/${LESSON}/lesson.md`;
const HANDOUT = 'handout-plain-letter.pdf';
/** Dates are held against one fixed day, so that every run does the same. */
const ON = '2026-11-25';

/** A module of the compiled program; loaded late, so that a cold run pays for what it uses. */
function program(path) {
  return import(new URL(`../../out/.program/${path}`, import.meta.url).href);
}

/** Opens the program on a workspace that holds the neutral lesson: tables now, fonts when first used. */
export async function openOurs() {
  const [{ openWorkshop }, { memoryWorkspace }, { programFiles }, diagnostics] = await Promise.all([
    program('pipeline/build.js'),
    program('pipeline/workspace.js'),
    program('cli/disk.js'),
    program('diagnostics/index.js'),
  ]);
  const text = readFileSync(new URL('neutral/lesson.md', import.meta.url));
  const workspace = memoryWorkspace({ [FILE]: text }, programFiles);
  const { createReport } = diagnostics;
  return { shop: openWorkshop(workspace), workspace, createReport };
}

function refuseStops(report) {
  const stop = report.problems.find((problem) => problem.severity === 'stop');
  if (stop) throw new Error(`The bench's own lesson has a Stop: ${JSON.stringify(stop)}`);
}

async function readDesk({ shop, workspace }, report) {
  const { readLesson } = await program('pipeline/read.js');
  const desk = readLesson(workspace, LESSON, shop.tables, shop.settings, ON, report);
  refuseStops(report);
  return desk;
}

/** Parse → layout → PDF: the whole way of one handout. */
export async function buildHandout(ours) {
  const { jobsFor } = await program('pipeline/jobs.js');
  const report = ours.createReport();
  const desk = await readDesk(ours, report);
  const [file] = await jobsFor(desk, ours.shop, report)
    .find((job) => job.name === HANDOUT)
    .make();
  refuseStops(report);
  return file.bytes;
}

/** The handout before it is laid out: what the equivalent web page is written from. */
export async function handoutSheet(ours) {
  const { makeSheet } = await program('pipeline/sheets.js');
  const report = ours.createReport();
  return makeSheet(await readDesk(ours, report), 'handout', 'plain', false, report);
}

/** Milliseconds of each phase of one handout, the median of several. */
export async function phasesOf(ours, turns) {
  const { shop, workspace, createReport } = ours;
  const [lesson, list, compute, facts, cautions, sheets, paper, pdf] = await Promise.all(
    [
      'lesson/index.js',
      'directives/list.js',
      'pipeline/compute.js',
      'pipeline/facts.js',
      'cautions/index.js',
      'pipeline/sheets.js',
      'outputs/paper.js',
      'writers/pdf/index.js',
    ].map(program),
  );
  const bytes = workspace.read(FILE);
  const known = list.DIRECTIVES.map((directive) => directive.schema);
  const figures = {
    draw() {
      throw new Error('The neutral handout has no figures.');
    },
    picture: (name, ink) => shop.drawers.pictures.picture(name, ink),
  };
  const times = { read: [], compute: [], view: [], 'lay out': [], write: [], check: [] };
  for (let turn = 0; turn < turns; turn++) {
    const report = createReport();
    const desk = await readDesk(ours, report);
    const read = await timed(() => lesson.parseLesson(bytes, FILE, known, report));
    const computed = await timed(() => {
      const numbers = compute.computeLesson(read.result, { ...shop.tables, on: ON }, report);
      const found = facts.factsOf(numbers);
      return { computed: numbers, facts: found, pulled: cautions.pull(shop.tables.register, found, report) };
    });
    const view = await timed(() =>
      sheets.makeSheet({ ...desk, ...computed.result }, 'handout', 'plain', false, report),
    );
    const options = {
      paper: 'letter',
      ink: 'color',
      fonts: shop.drawers.fonts,
      figures,
      date: ON,
      subject: '',
    };
    const pages = await timed(() => paper.layOutSheet(view.result, options, report));
    // Writing checks its own file; the check is timed once more on the finished file, and taken off.
    const written = await timed(() => pdf.writePdf(pages.result, { name: HANDOUT }, report));
    const check = await timed(() => pdf.checkPdf(written.result));
    times.read.push(read.ms);
    times.compute.push(computed.ms);
    times.view.push(view.ms);
    times['lay out'].push(pages.ms);
    times.write.push(Math.max(0, written.ms - check.ms));
    times.check.push(check.ms);
  }
  return Object.entries(times).map(([name, list]) => ({ name, ms: median(list) }));
}
