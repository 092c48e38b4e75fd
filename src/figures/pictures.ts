import { nearest, type Problem } from '../diagnostics/index.js';
import type { Ink, Mark } from './drawing.js';
import { figureProblem } from './problems.js';
import { readSvg, type VectorPicture } from './svg/read-svg.js';

/** The project's pictures of foods and things, by name. */
export interface Pictures {
  /** All names that there are, in order. */
  readonly names: readonly string[];
  /** The picture in color or its twin in one ink; `undefined` when there is none of that name. */
  picture(name: string, ink: Ink): VectorPicture | undefined;
  /** What to tell an author who wrote a name that is not there; nothing when it is. */
  problem(name: string): Problem | undefined;
}

const LIST = 'pictures/pictures.tsv';

/**
 * Pictures that are read when first needed and kept. `read` gets a path below `assets/` and returns its
 * text, or nothing where there is no file. Throws when the list or a listed picture is missing or
 * cannot be drawn: the shipped files are ours.
 */
export function loadPictures(read: (path: string) => string | undefined): Pictures {
  const need = (path: string): string => {
    const text = read(path);
    if (text === undefined) throw new Error(`assets/${path} is missing.`);
    return text;
  };
  let listed: ReadonlySet<string> | undefined;
  const known = () => {
    listed ??= new Set(namesIn(need(LIST)));
    return listed;
  };
  const kept = new Map<string, VectorPicture>();
  return {
    get names() {
      return [...known()];
    },
    picture(name, ink) {
      if (!known().has(name)) return undefined;
      const path = `pictures/${name}${ink === 'one' ? '.one' : ''}.svg`;
      const before = kept.get(path);
      if (before) return before;
      const { picture, problems } = readSvg(need(path), path);
      if (!picture) throw new Error(`assets/${path} cannot be drawn: ${problems[0]?.message ?? 'unknown'}`);
      kept.set(path, picture);
      return picture;
    },
    problem(name) {
      if (known().has(name)) return undefined;
      const [near] = nearest(name, known());
      return figureProblem('figures/no-picture', `There is no picture “${name}”.`, {
        hint:
          near === undefined
            ? 'See `assets/pictures/pictures.tsv` for the names.'
            : `Did you mean “${near}”?`,
        actual: name,
        ...(near === undefined ? {} : { expected: [near] }),
      });
    },
  };
}

/** First column of the list. */
function namesIn(list: string): readonly string[] {
  return list
    .split(/\r?\n/)
    .filter((row) => row !== '' && !row.startsWith('#') && !row.startsWith('name\t'))
    .map((row) => row.split('\t')[0] ?? '');
}

/** A picture in the middle of a square, as large as fits, with its middle at 0, 0. */
export function centeredPicture(picture: VectorPicture, size: number): Mark {
  const scale = size / Math.max(picture.width, picture.height);
  return {
    kind: 'group',
    at: [scale, 0, 0, scale, (-picture.width * scale) / 2, (-picture.height * scale) / 2],
    marks: picture.marks,
  };
}
