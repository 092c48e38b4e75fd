import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { findChromium, openBrowser, printOnce, versionOf } from './chromium.mjs';
import { equivalentHtml } from './equivalent.mjs';
import { buildHandout, handoutSheet, openOurs, phasesOf } from './ours.mjs';
import { inTurns, perSecond } from './timing.mjs';

const ASSETS = new URL('../../assets/', import.meta.url).href;
const ONE_HANDOUT = fileURLToPath(new URL('one-handout.mjs', import.meta.url));
const COLD = { turns: 7, skip: 1 };
const WARM = { turns: 25, skip: 5 };

/** One two-page handout: ours and the browser's, cold and warm, and where our time goes. */
export async function handoutLines() {
  const folder = mkdtempSync(join(tmpdir(), 'platework-bench-'));
  try {
    return await measure(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measure(folder) {
  const ours = await openOurs();
  const page = join(folder, 'handout.html');
  writeFileSync(page, equivalentHtml(await handoutSheet(ours), ASSETS));
  const url = pathToFileURL(page).href;
  const files = { ours: join(folder, 'ours.pdf'), theirs: join(folder, 'theirs.pdf') };
  const program = findChromium();

  const cold = [{ name: 'ours', run: () => runNode(ONE_HANDOUT, files.ours) }];
  const warm = [{ name: 'ours', run: () => buildHandout(ours) }];
  const browser = program ? await openBrowser(program) : undefined;
  if (browser) {
    cold.push({ name: 'theirs', run: () => printOnce(program, url, files.theirs) });
    warm.push({ name: 'theirs', run: () => browser.print(url) });
  }
  const times = { cold: await inTurns(cold, COLD), warm: await inTurns(warm, WARM) };
  const last = browser ? await browser.print(url) : undefined;
  await browser?.close();

  const names = [['ours', 'platework'], ...(program ? [['theirs', await versionOf(program)]] : [])];
  const rates = names.map(([key, name]) => ({
    name,
    cold: perSecond(times.cold.get(key)),
    warm: perSecond(times.warm.get(key)),
  }));
  const [mine, other] = rates;
  const made = [
    ['platework', await lookAt(readFileSync(files.ours))],
    ...(last ? [[other.name, await lookAt(last)]] : []),
  ];
  return [
    'One handout, tests/bench/neutral/lesson.md: text to PDF, documents per second (median)',
    row('', 'cold', 'warm'),
    ...rates.map(({ name, cold, warm }) => row(name, number(cold), number(warm))),
    ...(other
      ? [row('ours ÷ theirs', number(mine.cold / other.cold), number(mine.warm / other.warm))]
      : ['No chromium-headless-shell or chromium on the PATH: ours stands alone.']),
    'Cold: a new process for each. Warm: one process with tables and fonts, or one browser, loaded.',
    '',
    'The finished files',
    row('', 'pages', 'tagged', 'KiB'),
    ...made.map(([name, { pages, tagged, size }]) =>
      row(name, pages, tagged ? 'yes' : 'no', number(size / 1024)),
    ),
    '',
    'Phases of ours, warm, milliseconds (median)',
    ...(await phasesOf(ours, WARM.turns)).map(({ name, ms }) => row(name, number(ms))),
  ];
}

function runNode(...args) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, args, { stdio: ['ignore', 'ignore', 'inherit'] });
    child.on('error', reject);
    child.on('close', (code) =>
      code === 0 ? resolve() : reject(new Error(`${args[0]} ended with ${code}.`)),
    );
  });
}

/** What a finished PDF holds, read with another library: both files must be the same kind of thing. */
async function lookAt(bytes) {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const file = await task.promise;
  const tagged = (await file.getMarkInfo())?.Marked === true;
  const found = { pages: file.numPages, tagged, size: bytes.length };
  await task.destroy();
  return found;
}

function row(name, ...cells) {
  return `  ${name.padEnd(28)}${cells.map((cell) => String(cell).padStart(10)).join('')}`;
}

function number(value) {
  return value.toPrecision(3);
}
