// The vessels of our own pictures: what a form of a food comes in. Flat, two to four colors and no
// outline in color; a two-unit outline, white inside, in one ink.
import { fewSeeds, heapOfSeeds } from './picture-seeds.js';

/** Puts what the vessel holds around a middle, `size` times its usual size. */
export type Contents = (x: number, y: number, size: number, one: boolean) => string;

const fill = (d: string, color: string) => `<path d="${d}" fill="${color}"/>`;
const edge = (d: string, width = 2, inside = '#fff') =>
  `<path d="${d}" fill="${inside}" stroke="#000" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`;

/** A can with what is in it on its label. */
export function can(contents: Contents, one: boolean): string {
  if (one)
    return [
      edge('M5.4 5.8V26.4C5.4 28.6 10.1 30.2 16 30.2S26.6 28.6 26.6 26.4V5.8'),
      edge('M5.4 5.8C5.4 3.7 10.1 2.2 16 2.2S26.6 3.7 26.6 5.8S21.9 9.4 16 9.4S5.4 7.9 5.4 5.8Z'),
      edge('M5.4 12.4C7.6 14 11.4 14.8 16 14.8S24.4 14 26.6 12.4', 1.6, 'none'),
      contents(16, 22, 1.1, one),
    ].join('');
  return [
    fill('M5 5.6V26.6C5 28.9 9.9 30.6 16 30.6S27 28.9 27 26.6V5.6Z', '#aeb9c0'),
    fill('M5 11.4C6.8 13 11 14 16 14S25.2 13 27 11.4V24.4C25.2 26 21 27 16 27S6.8 26 5 24.4Z', '#d3e4ec'),
    fill('M5 5.6C5 3.4 9.9 1.8 16 1.8S27 3.4 27 5.6S22.1 9.4 16 9.4S5 7.8 5 5.6Z', '#dfe5e8'),
    fill('M8 5.5C8 4.2 11.6 3.2 16 3.2S24 4.2 24 5.5S20.4 7.8 16 7.8S8 6.8 8 5.5Z', '#c3cdd3'),
    contents(16, 20.2, 1.15, one),
  ].join('');
}

/** A cloth sack, for what is dry, with a window. */
export function sack(contents: Contents, one: boolean): string {
  const neck = 'M9.6 2.6C11.8 3.8 13.7 2.1 16 3.1C18.3 2.1 20.2 3.8 22.4 2.6L20.8 8.2H11.2Z';
  if (one)
    return [
      edge(neck),
      edge(
        'M11 8.4C6.8 12 4.6 16.6 4.6 21.4C4.6 26.8 7.6 29.6 12.4 29.6H19.6C24.4 29.6 27.4 26.8 27.4 21.4C27.4 16.6 25.2 12 21 8.4Z',
      ),
      edge('M9.8 8.4H22.2', 2.6),
      contents(16, 19.6, 1.25, one),
    ].join('');
  return [
    fill(neck, '#c79f70'),
    fill(
      'M10.8 8C6.6 11.6 4.2 16.4 4.2 21.4C4.2 27.2 7.4 30.2 12.4 30.2H19.6C24.6 30.2 27.8 27.2 27.8 21.4C27.8 16.4 25.4 11.6 21.2 8Z',
      '#dcb98c',
    ),
    fill(
      'M9 8.4C9 7.6 9.6 7 10.4 7H21.6C22.4 7 23 7.6 23 8.4S22.4 9.8 21.6 9.8H10.4C9.6 9.8 9 9.2 9 8.4Z',
      '#876644',
    ),
    fill(
      'M7.8 20.4C7.8 15.9 11.5 12.2 16 12.2S24.2 15.9 24.2 20.4S20.5 28.6 16 28.6S7.8 24.9 7.8 20.4Z',
      '#eef4f6',
    ),
    contents(16, 20.2, 1.15, one),
  ].join('');
}

/** A pouch with pinked ends and a flake, for what is frozen. */
export function pouch(contents: Contents, one: boolean): string {
  const flake = 'M16 6V12.8M13 7.7L19 11.1M19 7.7L13 11.1';
  if (one)
    return [
      edge(
        'M5.4 3.4L8.9 5L12.5 3.4L16 5L19.5 3.4L23.1 5L26.6 3.4V28.6L23.1 27L19.5 28.6L16 27L12.5 28.6L8.9 27L5.4 28.6Z',
      ),
      edge(flake, 1.6, 'none'),
      contents(16, 20.2, 1.15, one),
    ].join('');
  return [
    fill(
      'M4.8 2.6L8.5 4.4L12.3 2.6L16 4.4L19.7 2.6L23.5 4.4L27.2 2.6V29.4L23.5 27.6L19.7 29.4L16 27.6L12.3 29.4L8.5 27.6L4.8 29.4Z',
      '#7fb6d9',
    ),
    fill('M4.8 5.6H27.2V26.4H4.8Z', '#d3e9f5'),
    `<path d="${flake}" fill="none" stroke="#2b76ad" stroke-width="1.3" stroke-linecap="round"/>`,
    contents(16, 19.8, 1.25, one),
  ].join('');
}

/** A bowl with a heap, for what is ready to eat. */
export function bowl(seeds: string, one: boolean): string {
  if (one)
    return [
      heapOfSeeds(seeds, 13.6, one),
      fill('M2.4 15H29.6C29.6 21.6 25 27 20.8 27H11.2C7 27 2.4 21.6 2.4 15Z', '#000'),
      edge('M11.4 29.2H20.6', 2.2),
    ].join('');
  return [
    heapOfSeeds(seeds, 14, one),
    fill('M2.2 14.6H29.8C29.8 21.6 25 27.2 20.8 27.2H11.2C7 27.2 2.2 21.6 2.2 14.6Z', '#4b8193'),
    fill('M2.2 14.6H29.8L29.5 17.2H2.5Z', '#74a5b4'),
    fill('M11 27.2H21L20.3 29.6H11.7Z', '#37697a'),
  ].join('');
}

const HOLES = [10.4, 15.4, 14.1, 15.4, 17.9, 15.4, 21.6, 15.4, 12.3, 18.4, 16, 18.4, 19.7, 18.4, 16, 21.2];
const DROP = 'c1.2 1.6 1.5 2.2 1.5 2.8a1.5 1.5 0 0 1 -3 0c0 -.6 .3 -1.2 1.5 -2.8z';

/** A strainer with a heap and water running off, for what is drained and rinsed. */
export function strainer(seeds: string, one: boolean): string {
  const holes = HOLES.flatMap((x, i) =>
    i % 2 ? [] : [`<circle cx="${x}" cy="${HOLES[i + 1]}" r=".95" fill="${one ? '#000' : '#66777f'}"/>`],
  ).join('');
  if (one)
    return [
      heapOfSeeds(seeds, 10.4, one),
      edge('M5.2 12.4H26.8C26.8 19.2 22.2 23.6 16 23.6S5.2 19.2 5.2 12.4Z'),
      edge('M2.2 11.8H29.8', 2.6),
      holes,
      edge('M10.4 26.2V28M16 26.8V29.6M21.6 26.2V28'),
    ].join('');
  return [
    heapOfSeeds(seeds, 10.6, one),
    fill('M4.6 12H27.4C27.4 19.6 22.6 24.2 16 24.2S4.6 19.6 4.6 12Z', '#aab7bf'),
    fill(
      'M1.6 11.6C1.6 10.8 2.2 10.2 3 10.2H29C29.8 10.2 30.4 10.8 30.4 11.6S29.8 13 29 13H3C2.2 13 1.6 12.4 1.6 11.6Z',
      '#7f909a',
    ),
    holes,
    fill(`M10.4 25.2${DROP}M16 26.4${DROP}M21.6 25.2${DROP}`, '#3a9fd8'),
  ].join('');
}

/** A block of tofu. */
export function tofu(one: boolean): string {
  const block = 'M3 13L17 8L29 12.5V22.5L15 28.5L3 23.5Z';
  if (one) return edge(block) + edge('M3 13L15 18L29 12.5M15 18V28.5', 1.8, 'none');
  return (
    fill(block, '#efe6d2') +
    fill('M3 13L17 8L29 12.5L15 18Z', '#fbf5e6') +
    fill('M15 18V28.5L29 22.5V12.5Z', '#ddd2b8')
  );
}

/** A bowl heaped with grain. */
export function grainBowl(one: boolean, grain = '#e9c98f', speck = '#c79a55'): string {
  const specks = [10.2, 11.6, 14, 8.8, 18.2, 10.8, 22.2, 11.8, 14, 12.8, 20.2, 8.2];
  const dots = specks
    .flatMap((x, i) =>
      i % 2 ? [] : [`<circle cx="${x}" cy="${specks[i + 1]}" r="1.1" fill="${one ? '#000' : speck}"/>`],
    )
    .join('');
  if (one)
    return [
      edge('M5 14.4C6 8.8 10.6 6 16 6S26 8.8 27 14.4'),
      dots,
      fill('M2.4 15H29.6C29.6 21.6 25 27 20.8 27H11.2C7 27 2.4 21.6 2.4 15Z', '#000'),
      edge('M11.4 29.2H20.6', 2.2),
    ].join('');
  return [
    fill('M4.5 14.8C5.5 8.5 10.5 5.5 16 5.5S26.5 8.5 27.5 14.8Z', grain),
    dots,
    fill('M2.2 14.6H29.8C29.8 21.6 25 27.2 20.8 27.2H11.2C7 27.2 2.2 21.6 2.2 14.6Z', '#4b8193'),
    fill('M2.2 14.6H29.8L29.5 17.2H2.5Z', '#74a5b4'),
    fill('M11 27.2H21L20.3 29.6H11.7Z', '#37697a'),
  ].join('');
}

/** A bowl of something smooth: yogurt, porridge, a spread. */
export function smoothBowl(one: boolean, color = '#f7f3ea', shade = '#dcd3c0'): string {
  const top =
    'M4 14.8C4.6 11.6 7.2 11.4 9.4 11.8C10.6 8.6 13.8 7.4 16.6 8.6C18.8 6.8 23 8 23.4 11.4C26 10.8 27.8 12.4 28 14.8Z';
  const swirl = 'M11 13C13 10.8 16 10.4 18.4 11.8M20 12.8C21 12 22.2 11.9 23.2 12.4';
  if (one)
    return [
      edge(top),
      edge(swirl, 1.6, 'none'),
      fill('M2.4 15H29.6C29.6 21.6 25 27 20.8 27H11.2C7 27 2.4 21.6 2.4 15Z', '#000'),
      edge('M11.4 29.2H20.6', 2.2),
    ].join('');
  return [
    fill(top, color),
    `<path d="${swirl}" fill="none" stroke="${shade}" stroke-width="1.2" stroke-linecap="round"/>`,
    fill('M2.2 14.6H29.8C29.8 21.6 25 27.2 20.8 27.2H11.2C7 27.2 2.2 21.6 2.2 14.6Z', '#4b8193'),
    fill('M2.2 14.6H29.8L29.5 17.2H2.5Z', '#74a5b4'),
    fill('M11 27.2H21L20.3 29.6H11.7Z', '#37697a'),
  ].join('');
}

/** Seeds as the contents of a can, sack or pouch. */
export const seedsAs =
  (name: string): Contents =>
  (x, y, size, one) =>
    fewSeeds(name, x, y, size, one);
