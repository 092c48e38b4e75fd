// Contract

/** Units of mass, volume, energy, money per something and counts that the core knows. */
export type MassUnit = 'g' | 'mg' | 'µg' | 'kg' | 'oz' | 'lb';
export type VolumeUnit = 'mL' | 'L' | 'cup' | 'tbsp' | 'tsp' | 'fl oz';
export type EnergyUnit = 'kcal' | 'kJ';
export type Unit = MassUnit | VolumeUnit | EnergyUnit;

/** A known number with its unit. A bare number is never an amount. */
export interface Amount<U extends Unit = Unit> {
  readonly value: number;
  readonly unit: U;
}

/**
 * A nutrient quantity that may be unknown. `value` is `null` when it is not known, never 0 for missing.
 * `atLeast` is true when `value` is the sum of the known parts and some part is unknown.
 */
export interface Quantity<U extends Unit = Unit> {
  readonly value: number | null;
  readonly unit: U;
  readonly atLeast: boolean;
}

/** A span with both ends printed, low ≤ high. */
export interface Range<U extends Unit = Unit> {
  readonly low: number;
  readonly high: number;
  readonly unit: U;
}
