import type { Report } from '../diagnostics/index.js';
import type { Block, Deck, Inline, Sheet } from '../document/index.js';
import {
  type Drawing,
  draw,
  type FigureSpec,
  type Ink,
  type SignName,
  shelfMarks,
  vessel,
} from '../figures/index.js';
import { direction } from '../languages/index.js';
import type { Pages } from '../layout/index.js';
import { mm } from '../layout/index.js';
import type { SlideTools } from '../outputs/slides/index.js';
import { writePng } from '../writers/png/index.js';
import { writeSvg } from '../writers/svg/index.js';
import type { BuiltFile } from './jobs.js';
import type { HandoutLevel } from './settings.js';
import type { Desk } from './sheets.js';
import { slideWords } from './slide-words.js';
import type { Drawers } from './tables.js';

/** The whole measure of a Letter page, for which the figures' own files are drawn. */
const MEASURE = mm(183.9);
/** Pixels across of a slide's picture. */
const SLIDE_PIXELS = 1920;

/** Every figure of a handout as an SVG file in color. */
export function figureFiles(
  sheet: Sheet,
  level: HandoutLevel,
  drawers: Drawers,
  report: Report,
): BuiltFile[] {
  const { language } = sheet;
  return figuresIn(sheet.blocks).map((figure) => {
    const drawn = draw(figure, {
      fonts: drawers.fonts,
      picture: drawers.pictures.picture,
      medium: 'paper',
      ink: 'color',
      level,
      language,
      direction: sheet.direction,
      width: MEASURE,
    });
    for (const found of drawn.problems) report.add(found);
    const { label, reading } = figure.alternative;
    const svg = writeSvg(drawn.drawing, {
      title: label,
      description: reading,
      language,
      unit: 'pt',
      background: '#ffffff',
    });
    return { path: `${language}/figures/${figure.id}-${level}.svg`, bytes: utf8(svg) };
  });
}

function figuresIn(blocks: readonly Block[]): FigureSpec[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'figure') return [block.figure];
    if (block.kind === 'quote') return figuresIn(block.blocks);
    return block.kind === 'list' ? block.items.flatMap(figuresIn) : [];
  });
}

/** Each page of a deck as SVG and as PNG. */
export function slideFiles(deck: Deck, pages: Pages, draft: readonly string[]): BuiltFile[] {
  const { version } = deck.stamp;
  return pages.pages.flatMap((page, index): BuiltFile[] => {
    const slide = deck.slides[index];
    const marks = page.items.flatMap((item) => (item.kind === 'link' ? [] : item.marks));
    const words = {
      title: textOf(slide?.title ?? []),
      description: slide ? slideWords(slide) : '',
      language: deck.language,
    };
    const svg = writeSvg({ width: page.width, height: page.height, marks }, { ...words, unit: 'pt' });
    const path = `${deck.language}/slides/${String(index + 1).padStart(2, '0')}`;
    return [
      { path: `${path}.svg`, bytes: utf8(svg), version, draft },
      { path: `${path}.png`, bytes: writePng(svg, { width: SLIDE_PIXELS }), version, draft },
    ];
  });
}

function textOf(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.text).join('');
}

function utf8(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** Fonts, figures and vessels as the slides need them. */
export function slideTools(desk: Desk, drawers: Drawers, report: Report, ink: Ink = 'color'): SlideTools {
  const { language } = desk;
  return {
    fonts: drawers.fonts,
    frames: drawers.frames,
    ink,
    date: desk.on,
    sign: (sign: SignName, size: number) => shelfMarks(sign, size, ink),
    picture: (name: string): Drawing | undefined => vessel(name, ink) ?? drawers.pictures.picture(name, ink),
    draw: (spec, width, height) => {
      const drawn = draw(spec, {
        fonts: drawers.fonts,
        picture: drawers.pictures.picture,
        medium: 'screen',
        ink,
        level: 'plain',
        language,
        direction: direction(language),
        width,
        height,
      });
      for (const found of drawn.problems) report.add(found);
      return drawn.drawing;
    },
  };
}
