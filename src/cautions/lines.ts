import type { Report } from '../diagnostics/index.js';
import type { Block } from '../document/index.js';
import { sayFrom } from '../languages/index.js';
import { boxesOf } from './block.js';
import type { Condition, Test } from './condition.js';
import type { Facts, Pulled } from './facts.js';
import type { FigureSentence } from './figure.js';
import type { Caution } from './register.js';
import { cautionTerms } from './terms.js';
import { type Output, type Setting, sizeFor, wordsOf } from './wording.js';

/** Words by which a wording names a medicine. */
const MEDICINE =
  /\b(pills?|medicines?|lithium|insulin|warfarin|antibiotics?|maoi|glp-1|tablets?|levothyroxine|drug|drugs)\b/i;

/**
 * The standard lines that a page pulls, in the order of the register: what the page is for, what to do
 * in an emergency, who the care team is. Notes that no figure of the lesson can carry are added, so that
 * none is lost.
 */
export function standingLines(pulled: readonly Pulled[], facts: Facts, setting: Setting): readonly Pulled[] {
  const lines = setting.register.cautions.flatMap((caution): Pulled[] => {
    if (caution.kind !== 'line') return [];
    const before = pulled.find((p) => p.caution.id === caution.id);
    // What is for cards stands there, and elsewhere only where its own condition says so.
    if (before && (setting.output === 'cards' || !onlyForCards(caution))) return [before];
    const when = caution.facts[0]?.when;
    if (!when || !holds(when, pulled, facts, setting)) return [];
    return [
      {
        caution,
        reasons: [{ by: 'page', trigger: setting.output, says: caution.why }],
        reworded: {},
        slots: {},
      },
    ];
  });
  return [...lines, ...looseNotes(pulled, facts, setting.output)];
}

function onlyForCards({ place }: Caution): boolean {
  return place.includes('card') && !place.includes('block');
}

/** Notes without a figure to stand at: pulled by a topic or a word alone, or meant for the block. */
function looseNotes(pulled: readonly Pulled[], facts: Facts, output: Output): readonly Pulled[] {
  if (!['handout', 'worksheet', 'key', 'slides'].includes(output)) return [];
  const figures = new Set(facts.directives.map((d) => d.id));
  return pulled.filter(({ caution, reasons }) => {
    if (caution.kind !== 'note' || caution.place.every((p) => p === 'staff')) return false;
    const atFigure = caution.place.includes('figure');
    return !(atFigure && reasons.some((r) => r.directive !== undefined && figures.has(r.directive)));
  });
}

function holds(when: Condition, pulled: readonly Pulled[], facts: Facts, setting: Setting): boolean {
  return when.some((group) => group.every((test) => testHolds(test, pulled, facts, setting)));
}

function testHolds(test: Test, pulled: readonly Pulled[], facts: Facts, setting: Setting): boolean {
  const boxes = boxesOf(pulled);
  switch (test.name) {
    case 'output':
      return test.values.includes(setting.output);
    case 'tag':
      return facts.topics.some((t) => test.values.includes(t.name));
    case 'pulled':
      return pulled.some((p) => test.values.includes(p.caution.id));
    case 'severity':
      return boxes.some((p) => test.values.includes(p.caution.severity));
    case 'heading':
      return boxes.some((p) => p.caution.heading !== undefined && test.values.includes(p.caution.heading));
    case 'medicine':
      return boxes.some((p) => namesMedicine(p.caution));
    case 'says':
      return boxes.some((p) => {
        const words = p.caution.wordings.en?.[sizeFor(p, setting.level, setting.output)] ?? '';
        return test.values.some((v) => words.includes(v));
      });
    default:
      return false;
  }
}

/** Whether any wording of a caution names a medicine, so that "keep taking it" must stand on the page. */
export function namesMedicine(caution: Caution): boolean {
  const words = caution.wordings.en;
  return words !== undefined && MEDICINE.test(`${words.short} ${words.plain} ${words.fuller}`);
}

/** The words of standing lines, one sentence group each. */
export function standingSentences(
  lines: readonly Pulled[],
  setting: Setting,
  report: Report,
): readonly FigureSentence[] {
  return lines.map((p) => ({
    inlines: [
      {
        text: wordsOf(p, setting, report)
          .map((i) => i.text)
          .join(''),
      },
    ],
    cautions: [p.caution.id],
  }));
}

/**
 * The standing lines as one block that stands right after the caution block. They are no boxes and
 * nobody's people are pooled in them, so they may run on.
 */
export function standingBlock(lines: readonly Pulled[], setting: Setting, report: Report): Block | undefined {
  const sentences = standingSentences(lines, setting, report).filter((s) =>
    s.inlines.some((i) => i.text !== ''),
  );
  if (sentences.length === 0) return undefined;
  return {
    kind: 'figure-caution',
    inlines: sentences.flatMap((s, i) => (i === 0 ? s.inlines : [{ text: ' ' }, ...s.inlines])),
    cautions: sentences.flatMap((s) => s.cautions),
  };
}

/** "Wording not yet confirmed by a professional." while any of them is unconfirmed. */
export function unconfirmedLine(pulled: readonly Pulled[], language: string): string | undefined {
  return pulled.some((p) => p.caution.confirmed === undefined)
    ? sayFrom(cautionTerms, language)('unconfirmed')
    : undefined;
}
