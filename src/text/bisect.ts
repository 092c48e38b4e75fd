/** How many of the items, which stand in rising order, end at or before the position. Found by halves. */
export function countUpTo<T>(items: readonly T[], position: number, endOf: (item: T) => number): number {
  let low = 0;
  let high = items.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const item = items[middle];
    if (item !== undefined && endOf(item) <= position) low = middle + 1;
    else high = middle;
  }
  return low;
}
