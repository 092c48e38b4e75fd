import { spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium-headless-shell', 'chromium'];
/** Tagged PDFs are the browser's default; nothing here turns them off. */
const FLAGS = ['--headless', '--no-sandbox', '--disable-gpu'];

/** The first Chromium on the PATH, or nothing. */
export function findChromium() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name))).find((path) => {
    try {
      accessSync(path, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/** Such as `Chromium 140.0.7339.80`. */
export async function versionOf(program) {
  return (await output(program, ['--version'])).trim();
}

/** Cold: a process that prints one page to one file and ends. */
export async function printOnce(program, url, file) {
  await output(program, [...FLAGS, '--no-pdf-header-footer', `--print-to-pdf=${file}`, url]);
}

function output(program, args) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: ['ignore', 'pipe', 'pipe'] });
    let told = '';
    let wrong = '';
    child.stdout.on('data', (data) => {
      told += data;
    });
    child.stderr.on('data', (data) => {
      wrong += data;
    });
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve(told) : reject(new Error(`${program}: ${wrong}`))));
  });
}

/**
 * Warm: one browser and one tab, told over a pipe what to print. Messages of the DevTools protocol
 * are JSON with a zero byte at the end; the browser reads them from descriptor 3 and answers on 4.
 */
export async function openBrowser(program) {
  const child = spawn(program, [...FLAGS, '--remote-debugging-pipe'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
  });
  const [, , , out, back] = child.stdio;
  const waiting = new Map();
  const loads = [];
  const gone = new Promise((_, reject) => {
    child.on('error', reject);
    child.on('exit', (code) => reject(new Error(`${program} ended (${code}) while it was needed.`)));
  });
  gone.catch(() => {});
  let parts = [];
  let last = 0;
  back.on('data', (data) => {
    let rest = data;
    for (let end = rest.indexOf(0); end >= 0; end = rest.indexOf(0)) {
      parts.push(rest.subarray(0, end));
      hear(JSON.parse(Buffer.concat(parts).toString('utf8')));
      parts = [];
      rest = rest.subarray(end + 1);
    }
    if (rest.length > 0) parts.push(rest);
  });
  function hear(message) {
    if (message.method === 'Page.loadEventFired') loads.shift()?.();
    const answer = waiting.get(message.id);
    if (!answer) return;
    waiting.delete(message.id);
    if (message.error) answer.reject(new Error(message.error.message));
    else answer.resolve(message.result);
  }
  function send(method, params, sessionId) {
    const id = ++last;
    out.write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    const answer = new Promise((resolve, reject) => waiting.set(id, { resolve, reject }));
    return Promise.race([answer, gone]);
  }
  const { targetId } = await send('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await send('Target.attachToTarget', { targetId, flatten: true });
  await send('Page.enable', {}, sessionId);
  return {
    /** Loads the page anew and prints it. */
    async print(url) {
      const loaded = new Promise((resolve) => loads.push(resolve));
      await send('Page.navigate', { url }, sessionId);
      await Promise.race([loaded, gone]);
      const options = { printBackground: true, preferCSSPageSize: true, generateTaggedPDF: true };
      const { data } = await send('Page.printToPDF', options, sessionId);
      return Buffer.from(data, 'base64');
    },
    async close() {
      const ended = new Promise((resolve) => child.on('exit', resolve));
      await send('Browser.close', {}).catch(() => {});
      await ended;
    },
  };
}
