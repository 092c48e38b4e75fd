// How long a person waits for `platework foods beans`, beside a Node that does nothing.
import { spawnSync } from 'node:child_process';
import { inTurns, median } from './timing.mjs';

const PROGRAM = 'out/.program/cli/main.js';

const started = (args) => () => {
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}.`);
};

export async function foodsLines() {
  const contenders = [
    { name: 'nothing', run: started(['-e', '0']) },
    { name: 'foods', run: started([PROGRAM, 'foods', 'beans']) },
  ];
  const times = await inTurns(contenders, { turns: 15, skip: 2 });
  const [nothing, foods] = contenders.map(({ name }) => median(times.get(name)));
  return [
    'Finding a food, from a cold start',
    `  platework foods beans takes ${(foods / nothing).toFixed(1)} times as long as node -e 0 (aim: below 3)`,
    `  ${foods.toFixed(0)} ms beside ${nothing.toFixed(0)} ms`,
  ];
}
