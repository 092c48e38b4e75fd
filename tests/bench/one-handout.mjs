// A cold run of ours: one process, one handout, one file.
import { writeFileSync } from 'node:fs';
import { buildHandout, openOurs } from './ours.mjs';

writeFileSync(process.argv[2], await buildHandout(await openOurs()));
