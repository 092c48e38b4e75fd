import type { PlateYield } from './cup-cost.js';
import { drainedShare } from './drained-weight.js';
import { EDIBLE_SHARE_ROWS } from './edible-share-rows.js';
import type { Content, Food } from './food.js';
import { ok, type Result, refuse } from './result.js';
import { KITCHENS, sizeOf } from './units.js';
import { input } from './working.js';

/** A food as it is eaten, and all losses and gains on the way from what was bought. */
export interface Plated {
  readonly eaten: Food;
  readonly yields: readonly PlateYield[];
  /** True when a yield was worked out and not published. */
  readonly estimated: boolean;
}

/**
 * The form in which a bought food comes to the plate when nobody says it: dry foods are cooked, canned ones drained,
 * all others eaten as they are. `forms` are the forms of its kind.
 */
export function usuallyEaten(bought: Food, forms: readonly Food[]): Food {
  if (bought.state === 'dry') return forms.find(isPlainCooked) ?? bought;
  if (bought.state === 'canned, with liquid') {
    const base = bought.form.replace(/, with (?:the|its) liquid$/, '');
    const drained = forms.find(({ form }) => form === `${base}, drained`);
    return drained ?? forms.find(({ form }) => form === `${base}, drained and rinsed`) ?? bought;
  }
  return bought;
}

/**
 * From a food as bought to a form of its kind as eaten. Refused where no yield is known: a can with its liquid that
 * has no drained record, a dry food without a cooked one, and animal foods bought raw, which lose more than water.
 * `whole` says that the weight as bought counts skin, stones and shells; household weights of the tables do not.
 */
export function platedAs(bought: Food, eaten: Food, whole = true): Result<Plated> {
  const trimmed = whole ? edibleShare(bought) : [];
  if (bought.id === eaten.id) {
    if (bought.state === 'frozen, cooked') return frozenPackage(bought);
    if (bought.state === 'dry' || bought.state === 'canned, with liquid') return unknown(bought);
    return ok({ eaten, yields: trimmed, estimated: false });
  }
  if (bought.kind !== eaten.kind) return unknown(bought);
  if (bought.state === 'canned, with liquid') {
    const share = drainedShare(bought, eaten);
    if (!share.ok) return share;
    const { working, estimated } = share.value;
    const drained = { factor: share.value.share, source: bought.record.source, what: 'draining', working };
    return ok({ eaten, yields: [drained], estimated });
  }
  const cooks = (bought.state === 'dry' || bought.state === 'raw') && eaten.state === 'cooked';
  if (!cooks || FAT_OR_EGG.some((content) => bought.contains[content] !== 'no')) return unknown(bought);
  const water = waterYield(bought, eaten);
  return water.ok ? ok({ eaten, yields: [...trimmed, water.value], estimated: true }) : water;
}

/**
 * What a food weighs cooked ÷ before, when only water comes or goes: what is not water stays the same. A little of
 * it stays in the pot, so the true yield is a few percent lower for greens and roots. Works on the water of the two
 * records; refused when it is not known of one of them. Check from outside: a pound of dry pinto beans makes 2.3 to
 * 2.5 pounds cooked (common practice, no source).
 */
export function waterYield(bought: Food, eaten: Food): Result<PlateYield> {
  const [before, after] = [bought.per100g.water, eaten.per100g.water];
  if (before === null || after === null || after >= 100 || before >= 100) {
    return refuse(
      `The water of ${before === null ? bought.name : eaten.name} is not known.`,
      'Weigh it before and after cooking.',
    );
  }
  return ok({
    factor: (100 - before) / (100 - after),
    source: eaten.record.source,
    what: 'cooking',
    working: {
      formula: '(100 - water_bought) / (100 - water_eaten)',
      inputs: [
        input(
          'water_bought',
          before,
          'g of water per 100 g',
          `${bought.record.source} ${bought.record.number}`,
        ),
        input('water_eaten', after, 'g of water per 100 g', `${eaten.record.source} ${eaten.record.number}`),
      ],
    },
  });
}

/** What is left of a raw food when skin, stones, stems and the like are gone; nothing where the record throws nothing away. */
export function edibleShare(food: Food): readonly PlateYield[] {
  const refused = food.state === 'raw' ? REFUSE.get(food.record.number) : undefined;
  if (refused === undefined) return [];
  const { percent, what } = refused;
  const working = {
    formula: '(100 - refuse) / 100',
    inputs: [
      input('refuse', percent, 'percent thrown away', `${food.record.source} ${food.record.number}`, what),
    ],
  };
  return [{ factor: (100 - percent) / 100, source: food.record.source, what, working }];
}

/** Nothing but water moves in these; the others lose fat, or set. */
const FAT_OR_EGG: readonly Content[] = ['meat', 'fish', 'shellfish', 'milk', 'egg'];

const REFUSE: ReadonlyMap<string, { readonly percent: number; readonly what: string }> = new Map(
  EDIBLE_SHARE_ROWS.trim()
    .split('\n')
    .map((line) => {
      const [number = '', percent, ...what] = line.split(' ');
      return [number, { percent: Number(percent), what: what.join(' ') }];
    }),
);

function isPlainCooked({ state, form }: Food): boolean {
  return state === 'cooked' && !/fried|with salt|parboiled|short-grain|medium-grain/.test(form);
}

/** A frozen food whose record says what a package of known weight yields when it is cooked and drained. */
function frozenPackage(food: Food): Result<Plated> {
  const measure = food.measures.find(({ note = '' }) => PACKAGE_YIELDS.test(note));
  const ounces = Number(PACKAGE_YIELDS.exec(measure?.note ?? '')?.[1]);
  if (measure === undefined || !(ounces > 0)) return unknown(food);
  const working = {
    formula: 'cooked / (package * ounce)',
    inputs: [
      input('cooked', measure.grams, 'g, cooked and drained', measure.source, measure.note),
      input('package', ounces, 'oz on the package', measure.source, measure.note),
      input('ounce', sizeOf('oz'), 'g per oz', KITCHENS['us exact'].source),
    ],
  };
  const factor = measure.grams / (ounces * sizeOf('oz'));
  const cooked = { factor, source: measure.source, what: 'cooking', working };
  return ok({ eaten: food, yields: [cooked], estimated: false });
}
const PACKAGE_YIELDS = /\((\d+(?:\.\d+)?) oz\) yields/;

function unknown({ name }: Food) {
  return refuse(
    `Nobody has published what is left of ${name} on the plate.`,
    'Take a food with a record as it is eaten, such as a dry bean that is cooked at home.',
  );
}
