import { CONTENTS, type Contains, type Content, type Food } from './food.js';
import { findIngredients, unknownIngredients } from './ingredient-matching.js';
import type { IngredientGroup } from './ingredient-words.js';
import { LOW_SODIUM_MG, NEED_NAMES, NEEDS, type Need, type NeedName, type NeedRule } from './needs.js';
import { ok, type Result, refuse } from './result.js';
import { nearWords } from './spelling.js';

/**
 * Whether coconut counts as a tree nut. Since January 2025 the United States' list of tree nuts no longer has it; the
 * older list did, and people who avoid nuts differ. Where it is not said, coconut is not known to be safe for them.
 */
export type CoconutRule = 'a tree nut' | 'no tree nut' | 'not said';

export interface NeedSettings {
  readonly coconut: CoconutRule;
  /** Needs that the label of this very food claims, such as `gluten-free` or `halal-style`. */
  readonly labeled?: readonly NeedName[];
}

/** One finding about a food and a need. */
export interface NeedFinding {
  readonly kind: 'breaks' | 'only if' | 'not known';
  readonly group: IngredientGroup | 'sodium';
  /** What was found and why it matters, in words for the author. */
  readonly reason: string;
}

/** Whether a food fits a need. Only `passes` passes; the worst finding decides. */
export interface NeedVerdict {
  readonly need: NeedName;
  readonly verdict: 'passes' | 'only if' | 'not known' | 'breaks';
  readonly findings: readonly NeedFinding[];
}

/** What has to be known of a food to test it. */
export type Testable = Pick<Food, 'name' | 'kind' | 'contains' | 'per100g' | 'usual'>;

/** Reads the name of a need; refuses one that is not there, with near ones. */
export function needNamed(name: string): Result<NeedName> {
  const wanted = name.trim().toLowerCase();
  const found = NEED_NAMES.find((one) => one === wanted);
  if (found !== undefined) return ok(found);
  return refuse(
    `"${name}" is not a need that can be tested.`,
    `Needs: ${NEED_NAMES.join(', ')}.`,
    nearWords(wanted, NEED_NAMES),
  );
}

/**
 * Tests a food against a need: what it contains, and the words of its name. A content that is not known is never a pass;
 * a name that says what the contents deny is not known either. A label that claims the need counts where the word is
 * defined by rule: it lifts conditions and what is not known, never what breaks.
 */
export function testFood(food: Testable, need: NeedName, settings: NeedSettings): NeedVerdict {
  const rules: Need = NEEDS[need];
  const findings = rules.rules.flatMap((rule) => testRule(food, rule, rules.rules, settings.coconut));
  if (need === 'low-sodium') findings.push(...testSodium(food));
  const labeled = rules.labelCounts && settings.labeled?.includes(need) === true;
  return verdictOf(need, labeled ? findings.filter(({ kind }) => kind === 'breaks') : findings);
}

/** Tests a food against every need in force, in the order given. */
export function testNeeds(
  food: Testable,
  needs: readonly NeedName[],
  settings: NeedSettings,
): readonly NeedVerdict[] {
  return needs.map((need) => testFood(food, need, settings));
}

/** Whether a food passes every need in force. */
export function passesAll(food: Testable, needs: readonly NeedName[], settings: NeedSettings): boolean {
  return testNeeds(food, needs, settings).every(({ verdict }) => verdict === 'passes');
}

/**
 * Tests the foods of one dish together: the worst of the foods, and for kosher-style meat and milk in one dish. The
 * settings of a food stand beside it.
 */
export function testDish(
  foods: readonly { readonly food: Testable; readonly settings: NeedSettings }[],
  need: NeedName,
): NeedVerdict {
  const findings = foods.flatMap(({ food, settings }) => testFood(food, need, settings).findings);
  if (need !== 'kosher-style') return verdictOf(need, findings);
  const state = (content: Content) => worst(foods.map(({ food }) => food.contains[content]));
  const [meat, milk] = [state('meat'), state('milk')];
  if (meat !== 'no' && milk !== 'no') {
    const sure = meat === 'yes' && milk === 'yes';
    findings.push({
      kind: sure ? 'breaks' : 'not known',
      group: 'milk',
      reason: sure
        ? 'Meat and milk are in one dish.'
        : 'Meat and milk may be in one dish, which is not known.',
    });
  }
  return verdictOf(need, findings);
}

/** What an ingredient list says about a need. It can break it; it can never pass it, because no list of words is complete. */
export interface IngredientVerdict {
  readonly need: NeedName;
  readonly verdict: 'breaks' | 'only if' | 'not known' | 'nothing found';
  readonly findings: readonly (NeedFinding & {
    readonly words: string;
    readonly start: number;
    readonly end: number;
  })[];
  /** Ingredients that no list here knows. They are reported, not taken for safe. */
  readonly unknown: readonly string[];
}

/** Looks an ingredient text through for a need. An ingredient that is not known makes the verdict `not known`. */
export function testIngredients(text: string, need: NeedName, coconut: CoconutRule): IngredientVerdict {
  const rules: Need = NEEDS[need];
  const unknown = unknownIngredients(text);
  const findings = findIngredients(text).flatMap((hit) => {
    const rule = ruleFor(rules.rules, hit.group, coconut);
    if (rule === null) return [];
    const kind =
      hit.sure === 'maybe' || (hit.group === 'coconut' && coconut === 'not said')
        ? 'not known'
        : kindOf(rule);
    return [
      { kind, group: hit.group, reason: reasonOf(`"${hit.words}"`, kind, rule), ...placeOf(hit) } as const,
    ];
  });
  const { verdict } = verdictOf(need, findings);
  const open = verdict === 'passes' ? (unknown.length > 0 ? 'not known' : 'nothing found') : verdict;
  return { need, verdict: open, findings, unknown };
}

function placeOf({
  words,
  start,
  end,
}: {
  readonly words: string;
  readonly start: number;
  readonly end: number;
}) {
  return { words, start, end };
}

const RANKS = ['passes', 'only if', 'not known', 'breaks'] as const;

function verdictOf(need: NeedName, findings: readonly NeedFinding[]): NeedVerdict {
  const verdict = findings.reduce<NeedVerdict['verdict']>(
    (so, { kind }) => (RANKS.indexOf(kind) > RANKS.indexOf(so) ? kind : so),
    'passes',
  );
  return { need, verdict, findings };
}

function testRule(
  food: Testable,
  rule: NeedRule,
  rules: readonly NeedRule[],
  coconut: CoconutRule,
): NeedFinding[] {
  const { group } = rule;
  const content = isContent(group) ? food.contains[group] : null;
  if (content === 'yes') return [found(rule, food.name)];
  const alone = !names(food, group);
  if (group === 'tree nut' && alone && names(food, 'coconut')) return testCoconut(food, rule, coconut);
  if (group === 'gluten' && alone && names(food, 'oats') && food.contains.wheat === 'no') return [];
  return content === null ? testByName(food, rule, rules) : testContent(food, rule, content);
}

/** The food table says no or not known; a name that says otherwise is a contradiction. */
function testContent(food: Testable, { group }: NeedRule, content: 'no' | 'unknown'): NeedFinding[] {
  if (content === 'unknown')
    return [notKnown(group, `It is not known whether ${food.name} has ${group} in it.`)];
  const word = wordFor(food, group);
  if (word?.sure !== 'is') return [];
  return [notKnown(group, `The name of ${food.name} says "${word.words}", and its contents do not.`)];
}

/** Groups that the food table does not hold, with the content that they are part of. */
const PARENTS: Readonly<Partial<Record<IngredientGroup, Content>>> = {
  pork: 'meat',
  gelatin: 'meat',
  'animal fat or extract': 'meat',
  'animal rennet': 'milk',
  'fish without scales': 'fish',
};

function testByName(food: Testable, rule: NeedRule, rules: readonly NeedRule[]): NeedFinding[] {
  const { group } = rule;
  const word = wordFor(food, group);
  if (word?.sure === 'is') return [found(rule, food.name)];
  const parent = PARENTS[group];
  const state = parent === undefined ? 'yes' : food.contains[parent];
  if (state === 'no') return [];
  if (word !== undefined) {
    const stated = group === 'animal rennet' && rule.onlyIf !== null;
    return [
      stated
        ? found(rule, food.name)
        : notKnown(group, `${food.name} may have ${group} in it, which is not known.`),
    ];
  }
  if (state === 'yes' || rules.some((one) => one.group === parent)) return [];
  return [notKnown(group, `It is not known whether ${food.name} has ${group} in it.`)];
}

function testCoconut(food: Testable, rule: NeedRule, coconut: CoconutRule): NeedFinding[] {
  if (coconut === 'no tree nut') return [];
  if (coconut === 'a tree nut') return [found(rule, food.name)];
  return [notKnown('coconut', `${food.name} is coconut, and it is not said whether that counts as a nut.`)];
}

/** Sodium in the usual portion against the limit of the label word. */
function testSodium(food: Testable): NeedFinding[] {
  const per100 = food.per100g.sodium;
  if (per100 === null) return [notKnown('sodium', `The sodium of ${food.name} is not known.`)];
  if ((per100 * food.usual.grams) / 100 <= LOW_SODIUM_MG) return [];
  const reason = `${food.usual.words} of ${food.name} has more than ${LOW_SODIUM_MG} mg of sodium.`;
  return [{ kind: 'breaks', group: 'sodium', reason }];
}

/** The rule for a group of an ingredient list; coconut goes by the rule for tree nuts. */
function ruleFor(rules: readonly NeedRule[], group: IngredientGroup, coconut: CoconutRule): NeedRule | null {
  if (group === 'coconut' && coconut === 'no tree nut') return null;
  const wanted = group === 'coconut' ? 'tree nut' : group;
  return rules.find((rule) => rule.group === wanted) ?? null;
}

function found(rule: NeedRule, name: string): NeedFinding {
  const kind = kindOf(rule);
  return { kind, group: rule.group, reason: reasonOf(name, kind, rule) };
}

function notKnown(group: IngredientGroup | 'sodium', reason: string): NeedFinding {
  return { kind: 'not known', group, reason };
}

function kindOf(rule: NeedRule): 'breaks' | 'only if' {
  return rule.onlyIf === null ? 'breaks' : 'only if';
}

function reasonOf(name: string, kind: NeedFinding['kind'], { onlyIf, why }: NeedRule): string {
  if (kind === 'breaks') return `${name}: ${why}.`;
  return kind === 'only if' ? `${name}: only if ${onlyIf}; ${why}.` : `${name}: it depends on what is in it.`;
}

/** The surest words of a food's name and kind for a group. */
function wordFor(food: Testable, group: IngredientGroup) {
  const hits = findIngredients(`${food.name}\n${food.kind}`).filter((hit) => hit.group === group);
  return hits.find(({ sure }) => sure === 'is') ?? hits[0];
}

function names(food: Testable, group: IngredientGroup): boolean {
  return wordFor(food, group)?.sure === 'is';
}

function isContent(group: IngredientGroup): group is Content {
  return CONTENTS.some((content) => content === group);
}

/** Of several answers: yes if one is yes, else unknown if one is unknown. */
function worst(answers: readonly Contains[]): Contains {
  if (answers.includes('yes')) return 'yes';
  return answers.includes('unknown') ? 'unknown' : 'no';
}
