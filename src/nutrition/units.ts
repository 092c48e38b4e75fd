import type { Amount, EnergyUnit, MassUnit, Unit, VolumeUnit } from './quantity.js';
import { ok, type Result, refuse } from './result.js';

/** What the customary units hold: cup, spoons and fluid ounce in mL, ounce and pound in g. */
export interface KitchenUnits {
  readonly cup: number;
  readonly tbsp: number;
  readonly tsp: number;
  readonly 'fl oz': number;
  readonly oz: number;
  readonly lb: number;
  readonly source: string;
}

const EXACT = {
  cup: 236.5882365,
  tbsp: 14.78676478125,
  tsp: 4.92892159375,
  'fl oz': 29.5735295625,
  oz: 28.349523125,
  lb: 453.59237,
} as const;

/**
 * Customary units by name, because a cup is not the same everywhere. `us exact` is the default and is what
 * US food tables weigh. `us label` is what a US label may count with; that rule gives no pound, so the
 * exact one stands there. The metric cups define no ounces, so the exact ones stand there.
 */
export const KITCHENS = {
  'us exact': { ...EXACT, source: 'NIST Handbook 44, Appendix C' },
  'us label': {
    ...EXACT,
    cup: 240,
    tbsp: 15,
    tsp: 5,
    'fl oz': 30,
    oz: 28,
    source: '21 CFR 101.9(b)(5)(viii)',
  },
  metric: { ...EXACT, cup: 250, tbsp: 15, tsp: 5, source: 'metric cup and spoons, common practice' },
  australian: { ...EXACT, cup: 250, tbsp: 20, tsp: 5, source: 'Australian cup and spoons, common practice' },
  'cup of 200 mL': { ...EXACT, cup: 200, tbsp: 15, tsp: 5, source: 'cup of 200 mL, common practice' },
} as const satisfies Readonly<Record<string, KitchenUnits>>;
export type Kitchen = keyof typeof KITCHENS;

export type Dimension = 'mass' | 'volume' | 'energy';

/** The units that one unit can be turned into. */
export type SameDimension<U extends Unit> = U extends MassUnit
  ? MassUnit
  : U extends VolumeUnit
    ? VolumeUnit
    : EnergyUnit;

/** Parts of a gram; kept as whole numbers so that mg to µg is 1000 and not 1000.0000000000001. */
const PER_GRAM: Readonly<Partial<Record<Unit, number>>> = { mg: 1e3, µg: 1e6 };

/** The thermochemical kilocalorie. EU labels sum kJ by their own factors instead of using this. */
export const KJ_PER_KCAL = 4.184;

const DIMENSIONS: Readonly<Record<Unit, Dimension>> = {
  g: 'mass',
  mg: 'mass',
  µg: 'mass',
  kg: 'mass',
  oz: 'mass',
  lb: 'mass',
  mL: 'volume',
  L: 'volume',
  cup: 'volume',
  tbsp: 'volume',
  tsp: 'volume',
  'fl oz': 'volume',
  kcal: 'energy',
  kJ: 'energy',
};

/** What a unit measures. `oz` is a weight, `fl oz` a volume. */
export function dimensionOf(unit: Unit): Dimension {
  return DIMENSIONS[unit];
}

export function isMassUnit(unit: Unit): unit is MassUnit {
  return DIMENSIONS[unit] === 'mass';
}

export function isVolumeUnit(unit: Unit): unit is VolumeUnit {
  return DIMENSIONS[unit] === 'volume';
}

/** How many grams, milliliters or kilojoules one of the unit is. */
export function sizeOf(unit: Unit, kitchen: Kitchen = 'us exact'): number {
  return wholePart(unit, kitchen) / (PER_GRAM[unit] ?? 1);
}

/** How many `to` one `from` is, such as 16 for cups to tablespoons. Both must measure the same thing. */
export function unitRatio(from: Unit, to: Unit, kitchen: Kitchen = 'us exact'): number {
  if (from === to) return 1;
  return (wholePart(from, kitchen) * (PER_GRAM[to] ?? 1)) / (wholePart(to, kitchen) * (PER_GRAM[from] ?? 1));
}

function wholePart(unit: Unit, kitchen: Kitchen): number {
  switch (unit) {
    case 'cup':
    case 'tbsp':
    case 'tsp':
    case 'fl oz':
    case 'oz':
    case 'lb':
      return KITCHENS[kitchen][unit];
    case 'kg':
    case 'L':
      return 1000;
    case 'kcal':
      return KJ_PER_KCAL;
    default:
      return 1;
  }
}

/**
 * The same amount in another unit of the same kind. Mixed kinds do not compile; should a unit that was
 * hidden behind a wider type get here, it throws, because that is a bug of ours. For units read from a
 * lesson use `tryConvert`.
 */
export function convert<U extends Unit, T extends SameDimension<NoInfer<U>>>(
  amount: Amount<U>,
  to: T,
  kitchen: Kitchen = 'us exact',
): Amount<T> {
  const unit: Unit = to;
  const result = tryConvert(amount, unit, kitchen);
  if (!result.ok) throw new Error(result.reason);
  return { value: result.value.value, unit: to };
}

/** The same for units that only the run knows; refuses to turn grams into milliliters or kilocalories. */
export function tryConvert(amount: Amount, to: Unit, kitchen: Kitchen = 'us exact'): Result<Amount> {
  const from = dimensionOf(amount.unit);
  const into = dimensionOf(to);
  if (from !== into) {
    return refuse(
      `${amount.unit} measures ${from} and ${to} measures ${into}; one cannot be turned into the other.`,
      from !== 'energy' && into !== 'energy' ? 'Use a measure of the food with its weight.' : undefined,
    );
  }
  return ok({ value: amount.value * unitRatio(amount.unit, to, kitchen), unit: to });
}
