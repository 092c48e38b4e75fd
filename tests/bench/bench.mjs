// What takes how long, in one run on one machine. Ratios, no pass and no fail: npm run bench
// Each part is a file that gives back its lines of text; a new part is one file and one line here.
import { foodsLines } from './foods.mjs';
import { handoutLines } from './handout.mjs';

const PARTS = [foodsLines, handoutLines];

for (const part of PARTS) process.stdout.write(`${(await part()).join('\n')}\n\n`);
