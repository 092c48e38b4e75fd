import type { EquivalentKind } from './equivalents.js';
import type { Food } from './food.js';
import { ok, type Result, refuse } from './result.js';

/** Names of vegetables that count two cups as one when they are raw. */
const LEAFY = words(
  'arugula; beet greens; chard; cilantro; collard; endive; greens; kale; lettuce; parsley; spinach; watercress',
);
/** Foods on the starchy side of a plate that count as vegetables in the patterns. */
const STARCHY_VEGETABLES = words(
  'fries; cassava; corn; parsnips; peas; plantain; potato; potatoes; taro; yam; yams; yuca; breadfruit; malanga; yautia',
);
const CORN_GRAIN = words(
  'cornmeal; grits; hominy; masa; popcorn; tortilla; tortillas; chips; cornstarch; arepa; flakes',
);
const DRIED_FRUIT = words('dates; figs; prunes; raisins; currants');
const BREADS = words(
  'bread; tortilla; tortillas; bun; roll; pita; bagel; muffin; naan; chapati; roti; paratha; cracker; crackers; matzo; ' +
    'waffle; pancake; arepa; chips; shells',
);
const NOT_COUNTED = words(
  'soup; stew; pizza; pie; cake; cookie; salad; casserole; sandwich; broth; tamale; pupusa; cakes; nectar; puffed; cornstarch; pearls; chestnuts',
);

/**
 * What a food counts as in equivalents, by its plate kind, state and the words of its name. Refused, with the reason,
 * when it counts as none: mixed dishes, fats, seasonings, drinks that are no milk or juice, raw meat, dry beans, and
 * canned food with its liquid. A row that is refused may name its kind itself.
 */
export function equivalentKindOf(
  food: Pick<Food, 'name' | 'kind' | 'state' | 'plate' | 'contains'>,
): Result<EquivalentKind> {
  const has = (list: ReadonlySet<string>) =>
    nameWords(`${food.name} ${food.kind}`).some((word) => list.has(word));
  const says = (word: string) => nameWords(food.name).includes(word);
  const no = (reason: string) =>
    refuse(`${food.name} ${reason}.`, 'Leave it out of the count, or name what it counts as.');
  if (food.state === 'canned, with liquid') return no('is weighed with its liquid, which is not eaten');
  if (has(NOT_COUNTED))
    return no('is a mixed dish, or has an equivalent of its own that is not in this table');
  if (says('lotus') && says('seeds')) return no('is a seed that counts as no grain');
  const juice = says('juice') && !says('cocktail');
  switch (food.plate[0]) {
    case 'vegetable':
      if (juice) return ok('vegetable juice');
      if (says('dried')) return ok('dried vegetable');
      return ok(food.state === 'raw' && has(LEAFY) ? 'raw leafy greens' : 'vegetable');
    case 'fruit':
      if (juice) return ok('fruit juice');
      return ok(has(DRIED_FRUIT) || says('dried') ? 'dried fruit' : 'fruit');
    case 'drink':
      if (!juice) return no('is no milk and no juice');
      return ok(says('tomato') || says('vegetable') || says('carrot') ? 'vegetable juice' : 'fruit juice');
    case 'dairy or calcium':
      return dairyKind(food, says, no);
    case 'grain or starch':
      if (has(STARCHY_VEGETABLES) && !has(CORN_GRAIN)) return ok('vegetable');
      return grainKind(food, says);
    case 'protein':
      return proteinKind(food, says, no);
    default:
      return no('counts in no food group');
  }
}

type Says = (word: string) => boolean;
type No = (reason: string) => Result<never>;

function dairyKind(food: Pick<Food, 'contains'>, says: Says, no: No): Result<EquivalentKind> {
  if (says('cottage') || says('ricotta'))
    return no('has an equivalent of its own, which is not in this table');
  if (says('cheese') || says('queso'))
    return ok(says('processed') || says('american') ? 'processed cheese' : 'natural cheese');
  if (food.contains.milk === 'yes' || says('soy')) {
    if (says('evaporated') || says('condensed') || says('powder') || says('dry'))
      return no('is milk with water taken out');
    return ok('milk, yogurt or fortified soy drink');
  }
  return no('is no dairy and no fortified soy drink');
}

function grainKind(food: Pick<Food, 'state'>, says: Says): Result<EquivalentKind> {
  if (says('flakes') || says('popcorn')) return ok('cereal flakes');
  if ([...BREADS].some(says)) return ok('bread');
  if (food.state === 'cooked') return ok('cooked grain');
  return ok(food.state === 'dry' || says('bran') || says('flour') ? 'dry grain' : 'cooked grain');
}

function proteinKind(
  food: Pick<Food, 'state' | 'plate' | 'contains'>,
  says: Says,
  no: No,
): Result<EquivalentKind> {
  const { contains, state, plate } = food;
  if (plate.includes('grain or starch')) {
    return state === 'dry' || state === 'raw' ? no('is not cooked') : ok('cooked beans');
  }
  if (says('tofu') || says('tempeh')) return ok('tofu');
  if (contains.egg === 'yes') {
    return says('white') || says('yolk') ? no('is only part of an egg') : ok('egg');
  }
  if (says('butter') || says('tahini')) return ok('nut butter');
  if (contains.meat === 'yes' || contains.fish === 'yes' || contains.shellfish === 'yes') {
    return state === 'raw' ? no('is not cooked') : ok('cooked meat, poultry or seafood');
  }
  const nut = contains['tree nut'] === 'yes' || contains.peanut === 'yes' || contains.sesame === 'yes';
  return nut || says('seeds') || says('seed') || says('flaxseed')
    ? ok('nuts and seeds')
    : no('is a protein food of no known kind');
}

function nameWords(text: string): string[] {
  return text.toLowerCase().split(/[^\p{L}]+/u);
}

function words(list: string): ReadonlySet<string> {
  return new Set(list.split('; '));
}
