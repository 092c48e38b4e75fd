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

function refuseStops({ problems }) {
  const stop = problems.find((problem) => problem.severity === 'stop');
  if (stop) throw new Error(`The bench's own lesson has a Stop: ${JSON.stringify(stop)}`);
}

async function readDesk({ shop, workspace }, report) {
  const { readLesson } = await program('pipeline/read.js');
  const desk = readLesson(workspace, LESSON, shop.tables, shop.settings, ON, report);
  refuseStops(report);
  return desk;
}

/** The one job of the lesson that makes the handout. */
async function handoutJob(desk, shop) {
  const { jobsFor } = await program('pipeline/jobs.js');
  return jobsFor(desk, shop).find((job) => job.name === HANDOUT);
}

/** Parse → layout → PDF: the whole way of one handout. */
export async function buildHandout(ours) {
  const report = ours.createReport();
  const job = await handoutJob(await readDesk(ours, report), ours.shop);
  const laid = await job.layOut(false);
  refuseStops(laid);
  const [file] = await job.write(laid, [], report);
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
  const [lesson, list, compute, facts, cautions, sheets, pdf] = await Promise.all(
    [
      'lesson/index.js',
      'directives/list.js',
      'pipeline/compute.js',
      'pipeline/facts.js',
      'cautions/index.js',
      'pipeline/sheets.js',
      'writers/pdf/index.js',
    ].map(program),
  );
  const bytes = workspace.read(FILE);
  const known = list.DIRECTIVES.map((directive) => directive.schema);
  const turn = async () => {
    const report = createReport();
    const desk = await readDesk(ours, report);
    const job = await handoutJob(desk, shop);
    const read = await timed(() => lesson.parseLesson(bytes, FILE, known, report));
    const computed = await timed(() => {
      const numbers = compute.computeLesson(read.result, { ...shop.tables, on: ON }, report);
      return cautions.pull(shop.tables.register, facts.factsOf(numbers), report);
    });
    const view = await timed(() => sheets.makeSheet(desk, 'handout', 'plain', false, report));
    const laid = await timed(() => job.layOut(false));
    const written = await timed(() => job.write(laid.result, [], report));
    const check = await timed(() => pdf.checkPdf(written.result[0].bytes));
    return {
      read: read.ms,
      compute: computed.ms,
      view: view.ms,
      // Laying out begins with the view, and writing ends with the check: each is timed alone and taken off.
      'lay out': Math.max(0, laid.ms - view.ms),
      write: Math.max(0, written.ms - check.ms),
      check: check.ms,
    };
  };
  const all = [];
  for (let done = 0; done < turns; done++) all.push(await turn());
  return Object.keys(all[0]).map((name) => ({ name, ms: median(all.map((times) => times[name])) }));
}
