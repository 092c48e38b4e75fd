import type { Facts, Passage, Pulled, Register } from '../cautions/index.js';
import type { Place, Report } from '../diagnostics/index.js';
import type { Numbers } from '../document/index.js';
import type { Lesson } from '../lesson/index.js';
import { checkAlternatives } from './alternatives.js';
import { checkBodies } from './bodies.js';
import type { Built } from './built.js';
import { checkCautionsKept } from './cautions-kept.js';
import { checkLevelsAgree, type Leveled } from './levels-agree.js';
import { checkNotKnown } from './not-known.js';
import { checkRinseClaims } from './rinse-claims.js';
import { checkRuleDays } from './rule-days.js';
import {
  checkBarredFoods,
  checkNeededCautions,
  checkRefusedWords,
  checkWeightAudience,
} from './safety/index.js';
import { checkSameNumbers } from './same-numbers.js';
import { type Comparison, checkSharedBasis } from './shared-basis.js';
import { checkStructure } from './structure.js';
import { checkTallies, type Tally } from './tally.js';
import { checkWeightFree } from './weight-free.js';

/** A lesson as it was read and computed. */
export interface SourceInput {
  readonly lesson: Lesson;
  /** Every sentence that someone reads or hears. */
  readonly passages: readonly Passage[];
  readonly comparisons: readonly Comparison[];
  readonly numbers: Numbers;
  /** What the lesson pulls; its own cautions and rewordings are held to one meaning at all levels. */
  readonly pulled: readonly Pulled[];
  /** What the lesson's directives and topics hold. */
  readonly facts: Pick<Facts, 'directives' | 'topics'>;
  readonly register: Register;
  /** The day of the build. */
  readonly on: string;
  /** Where the lesson is about body weight. */
  readonly weight: readonly Place[];
}

/** The rules that need no output: N03, N18, E03, E09, S01 to S16, S18, P10, P12. */
export function checkSource(input: SourceInput, report: Report): void {
  const { lesson, passages } = input;
  checkSharedBasis(input, report);
  checkRinseClaims(input, report);
  const { language, audience } = lesson.front;
  checkBodies({ passages, language }, report);
  checkRefusedWords({ passages, language, audience, register: input.register }, report);
  checkRuleDays({ passages, language, on: input.on }, report);
  checkTallies({ tallies: talliesOf(lesson) }, report);
  checkBarredFoods({ ...input.facts, audience, register: input.register }, report);
  checkNeededCautions({ ...input.facts, passages, pulled: input.pulled, language }, report);
  checkWeightAudience({ ...input, audience, title: lesson.front.title }, report);
  checkLevelsAgree({ lesson, cautions: leveledCautions(input.pulled, language) }, report);
}

/** Everything that one build made, with what it was made from. */
export interface OutputInput {
  readonly built: readonly Built[];
  readonly numbers: Numbers;
  readonly pulled: readonly Pulled[];
  /** Standard lines that an output needs. */
  readonly standing: (built: Built) => readonly Pulled[];
}

/** The rules that look at results: N02, N04, S17, A03, A04, S19, and weight on the sheet without it. */
export function checkOutputs(input: OutputInput, report: Report): void {
  checkSameNumbers(input, report);
  checkNotKnown(input, report);
  checkCautionsKept(input, report);
  checkAlternatives(input, report);
  checkStructure(input, report);
  checkWeightFree(input, report);
}

/** The lesson's own cautions, and those of the register that it rewords, level by level. */
export function leveledCautions(pulled: readonly Pulled[], language: string): readonly Leveled[] {
  return pulled.flatMap(({ caution, reworded }): Leveled[] => {
    const words = caution.wordings[language];
    if (!words || (!caution.own && Object.keys(reworded).length === 0)) return [];
    return [
      {
        what: `the caution \`${caution.id}\``,
        texts: (['short', 'plain', 'fuller'] as const).map((level) => ({
          level,
          text: reworded[level] ?? words[level],
          place: caution.at,
        })),
      },
    ];
  });
}

function talliesOf({ front }: Lesson): Tally[] {
  return (front.tallies ?? []).map((tally, index) => {
    const place = front.places.get(`tallies.${index}.points`);
    return { ...tally, ...(place ? { place } : {}) };
  });
}
