import type { Policy } from './policy.js';
import { fillSlots } from './terms.js';

/** Units of money are written `USD cents`: the smallest coin, so that sums stay whole numbers. */
const UNIT = /^([A-Z]{3}) cents$/;

/** Whether a unit is money. */
export function isMoney(unit: string): boolean {
  return UNIT.test(unit);
}

/**
 * An unrounded cost in the smallest coin as pages print it, rounded to the nearest coin: `26¢`, `$1.05`; below half a
 * coin, `less than 1¢`. A currency without words of its own in the language prints by its code.
 */
export function formatMoney(coins: number, unit: string, policy: Policy): string {
  const currency = UNIT.exec(unit)?.[1];
  if (currency === undefined) throw new Error(`${unit} is no money.`);
  const words = policy.money[currency] ?? {
    sign: currency,
    coins: '{sign} {units}',
    units: '{sign} {units}',
  };
  const whole = Math.round(Math.abs(coins) * (1 + Number.EPSILON * 4));
  if (coins > 0 && whole === 0)
    return fillSlots(policy.lessThan, { value: formatMoney(1, unit, policy) }).replaceAll(' ', '\u00a0');
  const grouped = String(Math.floor(whole / 100)).replace(/\B(?=(\d{3})+$)/g, policy.group);
  const slots = {
    sign: words.sign,
    coins: whole,
    units: `${grouped}${policy.decimal}${String(whole % 100).padStart(2, '0')}`,
  };
  const said = fillSlots(whole < 100 ? words.coins : words.units, slots).replaceAll(' ', '\u00a0');
  return coins < 0 && whole > 0 ? `\u2212${said}` : said;
}
