import { describe, expect, it } from 'vitest';
import { createReport } from '../../../../src/diagnostics/index.js';
import { checkPdf, writePdf } from '../../../../src/writers/pdf/index.js';
import { handout } from '../handout.js';
import { changed, content } from './faults.js';

describe('the check of finished files', () => {
  it('finds nothing in a good file, however it is saved', async () => {
    expect(await checkPdf(await writePdf(handout(), { name: 'handout.pdf' }, createReport()))).toEqual([]);
    expect(await checkPdf(await changed())).toEqual([]);
  });

  it('says on which page', async () => {
    const bytes = await changed((d) => content(d, (t) => `${t}0 0 5 5 re\nf\n`, 1));
    expect(await checkPdf(bytes)).toEqual([
      { rule: '7.1', message: 'A shape is neither tagged nor an artifact.', page: 2 },
    ]);
  });

  it('does not stumble over bytes that are no PDF', async () => {
    const whole = await changed();
    for (const bytes of [
      new Uint8Array(),
      new TextEncoder().encode('Beans'),
      whole.slice(0, whole.length / 2),
    ])
      expect((await checkPdf(bytes)).length).toBeGreaterThan(0);
  });
});
