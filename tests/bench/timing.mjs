/** Milliseconds that `work` takes. */
export async function timed(work) {
  const start = performance.now();
  const result = await work();
  return { result, ms: performance.now() - start };
}

/** The middle value: one slow run on a busy machine does not move it. */
export function median(values) {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/** Repeats a per second, from times in milliseconds. */
export function perSecond(times) {
  return 1000 / median(times);
}

/**
 * Times several contenders in turns, so that whatever else the machine does meets them alike.
 * Each contender is `{ name, run }`; the answer holds the times of each, without the first `skip` turns.
 */
export async function inTurns(contenders, { turns, skip = 0 }) {
  const times = new Map(contenders.map(({ name }) => [name, []]));
  for (let turn = 0; turn < skip + turns; turn++)
    for (const { name, run } of contenders) {
      const { ms } = await timed(run);
      if (turn >= skip) times.get(name).push(ms);
    }
  return times;
}
