import { type Drawing, draw, type Ink } from '../figures/index.js';
import type { Fonts } from '../text/index.js';
import type { FigureTools } from './desk.js';

/** Figures drawn for paper, and pictures by the name that `picture` knows. */
export function figureTools(
  fonts: Fonts,
  picture: (name: string, ink: Ink) => Drawing | undefined,
): FigureTools {
  return {
    picture,
    draw(spec, { width, ink, level, language, direction, slack, place }, report) {
      const { drawing, problems } = draw(spec, {
        fonts,
        picture,
        medium: 'paper',
        ink,
        level: level === 'staff' ? 'fuller' : level,
        language,
        direction,
        width,
        slack: 1 - slack,
      });
      for (const problem of problems) report.add(place && !problem.place ? { ...problem, place } : problem);
      return drawing;
    },
  };
}
