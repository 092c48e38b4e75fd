import {
  cardCautions,
  cautionBlock,
  type Facts,
  type FigureSentence,
  figureCautionBlocks,
  type Output,
  type Pulled,
  reviewRows,
  type Setting,
  standingLines,
  standingSentences,
  withoutWeight,
} from '../cautions/index.js';
import { createReport, type Report } from '../diagnostics/index.js';
import type { Where } from '../directives/contract.js';
import {
  type Block,
  type CardCaution,
  type CautionBlock,
  type Deck,
  type Inline,
  mapInlines,
  type Sheet,
} from '../document/index.js';
import { direction, formatList, POLICIES } from '../languages/index.js';
import { type DirectivePart, type HolderPart, type Part, select } from '../lesson/index.js';
import { reviewBlocks } from '../outputs/review/blocks.js';
import type { Level } from '../reading/index.js';
import { isSource, sourceWords } from '../records/index.js';
import { interpreterLine } from '../records/local/index.js';
import type { ComputedLesson } from './compute.js';
import { noteBlocks } from './notes.js';
import { noticeLines, noticeSection } from './notices.js';
import { priceFormBlocks, priceNeeds } from './price-form.js';
import { createSourceNumbers } from './sources.js';
import { makeStamp } from './stamp.js';
import type { Local, Tables } from './tables.js';
import { pageTerms, reviewTerms } from './terms.js';
import { createViewer, type ReadPicture, type Viewer } from './viewer.js';
import { weightPlaces } from './weight.js';

/** Everything that the sheets of one lesson in one language are made from. */
export interface Desk {
  readonly computed: ComputedLesson;
  readonly facts: Facts;
  readonly pulled: readonly Pulled[];
  readonly tables: Tables;
  readonly local: Local;
  readonly language: string;
  readonly on: string;
  readonly readPicture: ReadPicture;
}

export type SheetKind = Sheet['kind'];

/** Cautions print on these; the review sheet lists them in its own way. */
const OUTPUT: Readonly<Record<SheetKind | 'slides', Output>> = {
  handout: 'handout',
  worksheet: 'worksheet',
  key: 'key',
  staff: 'staff',
  review: 'staff',
  notes: 'staff',
  cards: 'cards',
  prices: 'staff',
  slides: 'slides',
};

/** Where views stand on each sheet. */
const WHERE: Readonly<Record<SheetKind | 'slides', Where>> = {
  handout: 'handout',
  worksheet: 'worksheet',
  key: 'key',
  staff: 'staff',
  review: 'staff',
  notes: 'staff',
  cards: 'handout',
  prices: 'staff',
  slides: 'slide',
};

export function settingFor(desk: Desk, kind: SheetKind | 'slides', level: Level): Setting {
  const { tables, local, language, on } = desk;
  return {
    register: tables.register,
    output: OUTPUT[kind],
    level,
    language,
    on,
    lines: local.lines,
    country: local.site?.country ?? 'us',
  };
}

export function viewerFor(
  desk: Desk,
  kind: SheetKind | 'slides',
  level: Level,
  report: Report,
  weightFree = false,
): Viewer {
  const setting = settingFor(desk, kind, level);
  const where = WHERE[kind];
  const notes = (view: { readonly shows?: string }) =>
    view.shows === undefined ? [] : oneNote(figureCautionBlocks(desk.pulled, view.shows, setting, report));
  return createViewer(
    desk.computed,
    {
      where,
      level,
      language: desk.language,
      measures: setting.country === 'us' ? 'us' : 'metric',
      ...(weightFree ? { weightFree } : {}),
    },
    desk.readPicture,
    notes,
    desk.tables.terms,
    report,
  );
}

/** Notes and pointer of one figure run on in one line of thought: each sentence stays whole. */
function oneNote(blocks: readonly Block[]): Block[] {
  const notes = blocks.filter((block) => block.kind === 'figure-caution');
  if (notes.length === 0) return [];
  return [{ kind: 'figure-caution', ...runOn(notes) }];
}

/** Sentences as one run of text, a space between them. */
function runOn(sentences: readonly FigureSentence[]): FigureSentence {
  return {
    inlines: sentences.flatMap((s, index) => (index > 0 ? [{ text: ' ' }, ...s.inlines] : s.inlines)),
    cautions: sentences.flatMap((s) => s.cautions),
  };
}

/** One sheet: the lesson's parts for this audience, with the cautions whole, sources and stamp. */
export function makeSheet(
  desk: Desk,
  kind: 'handout' | 'worksheet' | 'key' | 'staff',
  level: Level,
  draft: boolean,
  report: Report,
): Sheet {
  return sheetOf(desk, kind, level, draft, report);
}

/** The handout without weight: what is only for it, and what directives say instead; no line speaks of a page to skip. */
export function makeWeightFree(desk: Desk, level: Level, draft: boolean, report: Report): Sheet {
  const own = { ...desk, pulled: withoutWeight(desk.pulled) };
  return { ...sheetOf(own, 'handout', level, draft, report, true), weightFree: true };
}

function sheetOf(
  desk: Desk,
  kind: 'handout' | 'worksheet' | 'key' | 'staff',
  level: Level,
  draft: boolean,
  report: Report,
  weightFree = false,
): Sheet {
  const viewer = viewerFor(desk, kind, level, report, weightFree);
  const output = weightFree ? 'weightfree' : kind === 'key' ? 'worksheet' : kind;
  const parts = withoutSlides(select(desk.computed.lesson, { level, output }));
  const more = kind === 'staff' ? leadersParts(desk, parts) : [];
  const room: Block = { kind: 'heading', level: 2, inlines: [{ text: pageTerms(desk.language)('room') }] };
  const all = [...viewer.blocks(parts), ...(more.length > 0 ? [room, ...viewer.blocks(more)] : [])];
  if (kind === 'staff') all.push(...noticeSection(desk));
  const [message, body] = kind === 'handout' ? splitMessage(all) : [[], all];
  const setting = settingFor(desk, kind, level);
  const lines = standingSentences(standingLines(desk.pulled, desk.facts, setting), setting, report);
  const cautions = { ...cautionBlock(desk.pulled, setting, report), standing: runOn(lines) };
  const here = [...cautions.lines.map(({ id }) => id), ...cautions.standing.cautions];
  // The leader's page shows what the card says, in the wording of the card.
  const cardSetting = {
    ...setting,
    output: 'cards' as const,
    level: level === 'staff' ? ('short' as const) : level,
  };
  const onCard = cardCautions(desk.pulled, desk.facts, cardSetting, report).filter(
    ({ id }) => !here.includes(id),
  );
  return finish(desk, {
    kind,
    level,
    message,
    cautions,
    // What stands in the sheet's own block is not said again on its card.
    blocks: withCautions(body, onCard),
    draft,
  });
}

/** Directives with words for the leader alone that the given parts do not show. */
export function leadersParts({ computed }: Desk, parts: readonly Part[]): readonly DirectivePart[] {
  const shown = new Set(idsIn(parts));
  return computed.entries.flatMap(({ part, kind, computed: done }) =>
    kind.forLeaders && done && !shown.has(part.id ?? '') ? [part] : [],
  );
}

/** Ids of the directives that stand in parts or are shown there again. */
function idsIn(parts: readonly Part[]): string[] {
  return parts.flatMap((part) => {
    if (part.kind === 'holder') return idsIn(part.parts);
    if (part.kind !== 'directive') return [];
    return [part.id ?? '', part.attributes.get('figure')?.value ?? ''];
  });
}

/** Cards to cut, a page for each goal card of the lesson; every copy carries the cautions that stand on cards. */
export function makeCards(desk: Desk, draft: boolean, report: Report): Sheet {
  const cards = cardsIn(desk, report).map((card): Block => ({ ...card, cut: true }));
  const onCard = cardCautions(desk.pulled, desk.facts, settingFor(desk, 'cards', 'short'), report);
  const none: CautionBlock = { lines: [], whoToAsk: '' };
  const blocks = withCautions(cards, onCard);
  return finish(desk, { kind: 'cards', level: 'plain', message: [], cautions: none, blocks, draft });
}

const CARD = 'card' as const;

function withCautions(blocks: readonly Block[], cautions: readonly CardCaution[]): Block[] {
  return blocks.map((block) => (block.kind === CARD ? { ...block, cautions } : block));
}

/** Whether a lesson has a goal card, so that there are cards to cut. */
export function hasCards(desk: Desk): boolean {
  return cardsIn(desk, createReport()).length > 0;
}

/** The cards of a lesson, each once, however often it is shown. */
function cardsIn(desk: Desk, report: Report): (Block & { readonly kind: 'card' })[] {
  const viewer = viewerFor(desk, 'cards', 'plain', report);
  const cards = desk.computed.entries.flatMap(({ part }) =>
    (viewer.view(part)?.blocks ?? []).flatMap((block) => (block.kind === CARD ? [block] : [])),
  );
  return cards.filter(({ id }, index) => cards.findIndex((card) => card.id === id) === index);
}

/** The form on which the lesson's prices are written down. It tells nobody what to eat, so no caution stands on it. */
export function makePriceForm(desk: Desk, draft: boolean): Sheet {
  const none: CautionBlock = { lines: [], whoToAsk: '' };
  const blocks = priceFormBlocks(priceNeeds(desk.computed), desk.language);
  return finish(desk, { kind: 'prices', level: 'staff', message: [], cautions: none, blocks, draft });
}

/** Speaker notes: a section for each slide with the running clock, what to do and what to say. */
export function makeNotes(desk: Desk, deck: Deck, draft: boolean): Sheet {
  const none: CautionBlock = { lines: [], whoToAsk: '' };
  const blocks = noteBlocks(deck);
  return finish(desk, { kind: 'notes', level: 'staff', message: [], cautions: none, blocks, draft });
}

/** The review sheet: every number with its story, every caution with what pulled it, every problem. */
export function makeReview(desk: Desk, draft: boolean, report: Report): Sheet {
  const setting = (level: Level) => settingFor(desk, 'handout', level);
  const levels: readonly Level[] = ['short', 'plain', 'fuller'];
  const quiet: Report = { problems: [], add: () => {} };
  const words = new Map(levels.map((level) => [level, cautionBlock(desk.pulled, setting(level), quiet)]));
  const cautions = reviewRows(desk.pulled).map((row) => ({
    id: row.id,
    heading: row.title,
    wordings: levels.flatMap((level) => {
      const line = words.get(level)?.lines.find((l) => l.id === row.id);
      return line ? [{ level, text: line.inlines.map((i) => i.text).join('') }] : [];
    }),
    pulledBy: [...new Set(row.reasons.map((reason) => reason.says))],
    toConfirm: row.confirm,
    ...(row.status === 'unconfirmed' ? {} : { confirmed: row.status }),
  }));
  const blocks = reviewBlocks({
    numbers: desk.computed.numbers.all,
    cautions,
    problems: report.problems,
    ...(weightPlaces(desk.computed).length > 0 ? { weightFree: weightFreeWords(desk) } : {}),
    words: reviewTerms(desk.language),
    sourceOf: (id) => {
      const source = desk.tables.sources.find(id);
      return isSource(source) ? sourceWords(source) : id;
    },
  });
  const none: CautionBlock = { lines: [], whoToAsk: '' };
  return finish(desk, { kind: 'review', level: 'staff', message: [], cautions: none, blocks, draft });
}

/** Which lines stand on the handout and not on the sheet without weight. */
function weightFreeWords({ pulled, language }: Desk): string {
  const kept = withoutWeight(pulled);
  const gone = pulled.filter((one) => !kept.includes(one)).map(({ caution }) => caution.id);
  return pageTerms(language)('weight-free', { lines: formatList(gone, language) });
}

interface Body {
  readonly kind: SheetKind;
  readonly level: Level;
  readonly message: readonly Inline[];
  readonly cautions: CautionBlock;
  readonly blocks: readonly Block[];
  readonly draft: boolean;
}

function finish(desk: Desk, body: Body): Sheet {
  const { lesson } = desk.computed;
  const { language } = desk;
  const numbers = createSourceNumbers(desk.tables.sources, language);
  const message = numbers.number(body.message);
  const blocks = mapInlines(body.blocks, numbers.number);
  const dataDate = newestData(desk);
  const interpreter = body.kind === 'handout' || body.kind === 'worksheet' ? interpreterOf(desk) : undefined;
  const notices = body.kind === 'handout' || body.kind === 'worksheet' ? noticeLines(desk, body.kind) : [];
  const say = pageTerms(language);
  const said = notices.length > 0 ? { notices } : {};
  const content = { title: lesson.front.title, message, cautions: body.cautions, blocks, ...said };
  return {
    kind: body.kind,
    language,
    direction: direction(language),
    level: body.level,
    title: lesson.front.title,
    strip: stripOf(desk, body.kind),
    emblem: lesson.front.emblem ?? 'bean-bowl',
    message,
    cautions: body.cautions,
    blocks,
    sources: numbers.list(),
    ...said,
    ...(interpreter ? { interpreter } : {}),
    stamp: makeStamp(lesson, {
      kind: body.kind,
      level: body.level,
      language,
      on: desk.on,
      content,
      draft: body.draft,
      ...(dataDate ? { dataDate } : {}),
    }),
    words: { sources: say('sources'), key: say('key-mark') },
  };
}

/** The newest date among the food records behind the numbers. */
export function newestData(desk: Desk): string | undefined {
  return desk.computed.numbers.all
    .flatMap((number) => number.food?.date ?? [])
    .toSorted()
    .at(-1);
}

function interpreterOf({ local, language, on }: Desk): Sheet['interpreter'] | undefined {
  return local.site ? interpreterLine(local.site, local.lines, language, on) : undefined;
}

function stripOf(desk: Desk, kind: SheetKind): Sheet['strip'] {
  const { site } = desk.local;
  const { month } = desk.computed.lesson.front;
  const say = pageTerms(desk.language);
  const what = say(kind);
  const place = site?.hall?.name ?? '';
  const word = monthWordOf(month, desk.language);
  if (!place) return { start: site?.name ?? '', end: what };
  return {
    start: site?.name ?? '',
    end: word ? say('strip-month', { kind: what, month: word, place }) : say('strip', { kind: what, place }),
  };
}

function monthWordOf(month: number | undefined, language: string): string | undefined {
  return month === undefined ? undefined : POLICIES[language as keyof typeof POLICIES]?.months[month - 1];
}

/** The first paragraph under the title is the main message. */
function splitMessage(blocks: readonly Block[]): readonly [readonly Inline[], readonly Block[]] {
  const [first, ...rest] = blocks;
  return first?.kind === 'paragraph' ? [first.inlines, rest] : [[], blocks];
}

function withoutSlides(parts: readonly Part[]): readonly Part[] {
  return parts.filter((part) => !(part.kind === 'holder' && (part as HolderPart).name === 'slide'));
}
