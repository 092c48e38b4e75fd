import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Programs of other makers that read a finished PDF. */
export type Tool = 'qpdf' | 'pdfinfo' | 'pdffonts' | 'pdftotext' | 'pdftoppm' | 'pdfimages';

const found = new Map<Tool, boolean>();

/** Whether the program can be started here. */
export function has(tool: Tool): boolean {
  let known = found.get(tool);
  if (known === undefined) {
    try {
      execFileSync(tool, [tool === 'qpdf' ? '--version' : '-v'], { stdio: 'ignore' });
      known = true;
    } catch {
      known = false;
    }
    found.set(tool, known);
  }
  return known;
}

/**
 * Tests that ask another program. Where it is not installed the test is skipped under a name that
 * says so; on the build server (CI is set) a missing program is a failure.
 */
export function describeWith(tools: readonly Tool[], name: string, tests: () => void): void {
  const missing = tools.filter((tool) => !has(tool));
  if (missing.length === 0) {
    describe(name, tests);
    return;
  }
  describe(name, () => {
    it.runIf(process.env.CI)(`has ${missing.join(', ')}`, () => expect(missing).toEqual([]));
    it.skip(`not asked, because ${missing.join(', ')} is not installed`, () => undefined);
  });
}

/** What the program prints about a file; `{}` in the arguments stands for the file. */
export function ask(tool: Tool, bytes: Uint8Array, args: readonly string[]): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'platework-pdf-'));
  try {
    const path = join(folder, 'file.pdf');
    writeFileSync(path, bytes);
    return execFileSync(
      tool,
      args.map((arg) => (arg === '{}' ? path : arg)),
      { maxBuffer: 1 << 28 },
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Pixels of one page, three bytes each. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  at(x: number, y: number): readonly [number, number, number];
}

/** A page as poppler draws it; one pixel a point unless `dpi` says otherwise. */
export function drawn(bytes: Uint8Array, page = 1, dpi = 72): Picture {
  const ppm = ask('pdftoppm', bytes, ['-r', String(dpi), '-f', String(page), '-l', String(page), '{}']);
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(ppm.subarray(0, 40).toString('latin1'));
  if (!head) throw new Error('pdftoppm gave no picture.');
  const [start, width, height] = [head[0].length, Number(head[1]), Number(head[2])];
  return {
    width,
    height,
    at(x, y) {
      const i = start + (Math.floor(y) * width + Math.floor(x)) * 3;
      return [ppm[i] ?? 0, ppm[i + 1] ?? 0, ppm[i + 2] ?? 0];
    },
  };
}
