import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createReport } from '../../../src/diagnostics/index.js';
import { TOPICS } from '../../../src/directives/safe-food/schema.js';
import { register } from '../../cautions/register-files.js';
import { evaluate } from '../../nutrition/evaluate.js';
import { computeParts } from '../desk.js';
import { part } from '../parts.js';

const report = createReport();
const written = part('safe-food', { id: 'x', topics: TOPICS.join(', ') });
const { numbers } = computeParts([written], report);
const printed = (id: string) => numbers.get(id)?.text.replaceAll('\u00a0', ' ');

describe('limits', () => {
  it('are computed for every topic', () => expect(report.problems).toEqual([]));

  // US consumer chart, restated alike by public pages of 2015 to 2024: poultry, leftovers 165 °F; ground meat and egg
  // dishes 160 °F; whole cuts and fish 145 °F; 40 and 140 °F; 0 °F in the freezer. Celsius by hand, the safe way.
  it.each([
    ['poultry', '165 °F', '74 °C'],
    ['ground', '160 °F', '72 °C'],
    ['whole', '145 °F', '63 °C'],
    ['hold', '140 °F', '60 °C'],
    ['fridge', '40 °F', '4 °C'],
    ['freezer', '0 °F', '\u221218 °C'],
    ['hot-day', '90 °F', '32 °C'],
  ])('%s: %s and %s', (name, fahrenheit, celsius) => {
    expect([printed(`x.${name}.fahrenheit`), printed(`x.${name}.celsius`)]).toEqual([fahrenheit, celsius]);
  });

  // The same pages: 2 hours, 1 hour above 90 °F, leftovers 3 to 4 days (the safer is kept), 3 minutes of rest.
  // Pages that quote the FDA handbook: 5 hours of soaking, 30 minutes of boiling.
  it.each([
    ['chill-time', '2 hours'],
    ['hot-day-time', '1 hour'],
    ['leftover-days', '3 days'],
    ['rest-time', '3 minutes'],
    ['bean-soak', '5 hours'],
    ['bean-boil', '30 minutes'],
  ])('%s: %s', (name, words) => expect(printed(`x.${name}`)).toBe(words));

  it('print as the cautions do', () => {
    for (const [name, limit] of Object.entries(register.values.us ?? {}))
      if (limit.kind && numbers.get(`x.${name}.fahrenheit`))
        expect(`${printed(`x.${name}.fahrenheit`)} (${printed(`x.${name}.celsius`)})`).toBe(limit.print);
  });

  it('another country has its own, and none is colder or warmer than it may be', () => {
    expect(printed('x.poultry.celsius-metric')).toBe('70 °C');
    expect(printed('x.poultry.fahrenheit-metric')).toBe('158 °F');
    expect(printed('x.fridge.celsius-metric')).toBe('5 °C');
    expect(printed('x.core-time-metric')).toBe('2 minutes');
  });

  it('have a formula that gives them and a source in the list', () => {
    const list = readFileSync('assets/sources.yaml', 'utf8');
    for (const number of numbers.all) {
      expect(evaluate(number), number.id).toBeCloseTo(number.value ?? Number.NaN, 9);
      for (const source of number.sources) expect(list).toContain(`- id: ${source}\n`);
    }
  });
});
