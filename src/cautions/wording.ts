import type { Report } from '../diagnostics/index.js';
import type { Level } from '../reading/index.js';
import { type LocalLines, lineOn } from '../records/index.js';
import { cautionProblem } from './codes.js';
import type { Pulled } from './facts.js';
import type { Register, Size } from './register.js';
import { sentencesOf } from './sentences.js';
import { slotsOf } from './slots.js';

export const OUTPUTS = [
  'handout',
  'worksheet',
  'key',
  'slides',
  'staff',
  'cards',
  'feedback',
  'tally',
] as const;
/** The kinds of page as cautions tell them apart. */
export type Output = (typeof OUTPUTS)[number];

/** Where a caution is to print. */
export interface Setting {
  readonly register: Register;
  readonly output: Output;
  readonly level: Level;
  readonly language: string;
  /** The day of the build. */
  readonly on: string;
  readonly lines: LocalLines;
  /** Country whose temperatures and ages are printed, such as `us`. */
  readonly country: string;
  /** Values that the page or the figure fills in: `state`, `edition`, `date`, `shop`, `nutrients` … */
  readonly slots?: Readonly<Record<string, string>>;
}

/**
 * Which of the three wordings prints. `short` and `plain` sheets print the short one, so that the block
 * stays tight; a caution of severity stop that a topic of the lesson pulls prints its plain wording on
 * the plain sheet; `fuller` prints the plain wording, slides the short one, staff pages the fullest.
 * Standard lines, which are for everybody, stay short on the fuller sheet too: the boxes need the room.
 */
export function sizeFor(pulled: Pulled, level: Level, output: Output): Size {
  if (output === 'slides') return 'short';
  if (output === 'staff' || level === 'staff') return 'fuller';
  if (level === 'fuller') return pulled.caution.kind === 'line' ? 'short' : 'plain';
  const subject = pulled.caution.severity === 'stop' && pulled.reasons.some((r) => r.by === 'topic');
  return level === 'plain' && subject ? 'plain' : 'short';
}

/** A stretch of a caution's words; the condition is strong. */
export interface CautionInline {
  readonly text: string;
  readonly strong?: boolean;
}

/**
 * The words of a caution for a page, slots filled. Without a wording in the page's language, or with a
 * slot that nothing fills, a Stop for that output is reported and the words are the best that is true.
 */
export function wordsOf(pulled: Pulled, setting: Setting, report: Report): readonly CautionInline[] {
  const { caution } = pulled;
  const { level, language, output } = setting;
  const size = sizeFor(pulled, level, output);
  const wording = caution.wordings[language];
  if (!wording) {
    report.add(
      cautionProblem('cautions/no-wording', `\`${caution.id}\` has no wording in \`${language}\`.`, {
        place: caution.at,
        hint: 'Send it to translation. The outputs in other languages are built.',
        spoils: { languages: [language] },
      }),
    );
    return [];
  }
  const own = output === 'slides' ? undefined : pulled.reworded[level];
  const text = filled(own ?? wording[size], pulled, setting, report);
  return strongParts(text, own === undefined ? size : 'plain');
}

/** Past their date these withhold the page: people in need call what it prints. */
const HELP_LINES: ReadonlySet<string> = new Set(['emergency-number', 'poison-line', 'eating-disorder-line']);

function filled(text: string, pulled: Pulled, setting: Setting, report: Report): string {
  let result = '';
  let from = 0;
  for (const slot of slotsOf(text)) {
    result += text.slice(from, slot.at) + slotValue(slot.name, pulled, setting, report);
    from = slot.end;
  }
  return result + text.slice(from);
}

function slotValue(name: string, pulled: Pulled, setting: Setting, report: Report): string {
  const own = setting.slots?.[name];
  if (own !== undefined) return own;
  const given = [...new Set(Object.values(pulled.slots).flatMap((slots) => slots[name] ?? []))];
  if (given.length > 0) return given.join('; ');
  const spoils = { languages: [setting.language], levels: [setting.level], outputs: [setting.output] };
  const line = setting.lines.get(name);
  if (line) {
    const { text, old } = lineOn(line, setting.on);
    if (old && HELP_LINES.has(name))
      report.add(
        cautionProblem(
          'cautions/old-line',
          `\`${pulled.caution.id}\` needs the line \`${name}\`, which was good until ${line.until}.`,
          {
            place: line.place,
            hint: 'Check the line, then write the new day into `dated`.',
            spoils,
          },
        ),
      );
    return text;
  }
  const value = setting.register.values[setting.country]?.[name];
  if (value) return value.print;
  report.add(
    cautionProblem('cautions/slot', `\`${pulled.caution.id}\` needs {${name}}, and nothing fills it.`, {
      place: pulled.caution.at,
      hint:
        name.endsWith('-line') || name.endsWith('-number')
          ? `Add the line \`${name}\` to the local pack of the site.`
          : `Hand {${name}} in with the page or the figure.`,
      spoils,
    }),
  );
  return `(${name.replaceAll('-', ' ')})`;
}

/**
 * The condition strong, what to do after it: in a short wording the last sentence is what to do, and all
 * before it is strong; in a longer one the questions are strong, or the first sentence when nothing is
 * asked. A wording of one sentence has no condition to part off.
 */
export function strongParts(text: string, size: Size): readonly CautionInline[] {
  const sentences = sentencesOf(text);
  if (sentences.length < 2) return [{ text }];
  const asks = sentences.some((s) => /[?؟？]/.test(s.text));
  const strong = sentences.map((s, i) =>
    size === 'short' ? i < sentences.length - 1 : asks ? /[?؟？]/.test(s.text) : i === 0,
  );
  const parts: { text: string; strong: boolean }[] = [];
  sentences.forEach((s, i) => {
    const end = sentences[i + 1]?.at ?? text.length;
    const last = parts.at(-1);
    const piece = text.slice(i === 0 ? 0 : s.at, end);
    if (last && last.strong === strong[i]) last.text += piece;
    else parts.push({ text: piece, strong: strong[i] === true });
  });
  return parts.map((p) => (p.strong ? { text: p.text, strong: true } : { text: p.text }));
}
