import type { Problem } from '../../diagnostics/index.js';
import type { Mark, Matrix } from '../drawing.js';
import { IDENTITY, multiply } from '../geometry.js';
import { marksBox } from '../marks-box.js';
import { figureProblem } from '../problems.js';
import { rectPath, transformPath } from '../shapes.js';
import { isShape, outlineOf, type Viewport } from './outline.js';
import { paintShape } from './paint.js';
import { propertiesOf, START, type Style, styleOf, urlId } from './style.js';
import { DEEPEST, type SvgElement } from './tree.js';
import { readLength, readNumbers, readShare, readTransform } from './values.js';

const MOST_SHAPES = 20_000;
/** Elements looked at, each use of one counted anew. */
const MOST_STEPS = 100_000;

/** Stops the reading of a picture that unfolds into too much. */
export class TooMuch extends Error {}

export const placed = (element: SvgElement) => (element.place ? { place: element.place } : {});

export interface ViewBox extends Viewport {
  readonly x: number;
  readonly y: number;
}

export function viewBoxOf(element: SvgElement): ViewBox | undefined {
  const [x, y, width, height] = readNumbers(element.attributes.viewBox ?? '') ?? [];
  if (x !== undefined && y !== undefined && width !== undefined && height !== undefined)
    return width > 0 && height > 0 ? { x, y, width, height } : undefined;
  const w = readLength(element.attributes.width ?? '');
  const h = readLength(element.attributes.height ?? '');
  return w !== undefined && h !== undefined && w > 0 && h > 0
    ? { x: 0, y: 0, width: w, height: h }
    : undefined;
}

/** What a level of the tree hands down. */
interface Context {
  readonly style: Style;
  readonly viewport: Viewport;
  readonly depth: number;
  /** Ids of the `use` elements' targets that we are inside of. */
  readonly inside: readonly string[];
}

/** A function that turns the root's contents into marks; it reports what makes no sense and throws `TooMuch`. */
export function createReader(root: SvgElement, add: (problem: Problem) => void) {
  const byId = new Map<string, SvgElement>();
  const index = (element: SvgElement) => {
    const id = element.attributes.id;
    if (id !== undefined && !byId.has(id)) byId.set(id, element);
    element.children.forEach(index);
  };
  index(root);
  let shapes = 0;
  let looked = 0;
  const countShape = () => {
    shapes++;
    if (shapes > MOST_SHAPES) throw new TooMuch('The picture unfolds to more than 20,000 shapes.');
  };

  const wrongIn = (element: SvgElement) => (property: string, value: string) =>
    add(
      figureProblem('figures/svg-broken', `<${element.name}> has a “${property}” that cannot be read.`, {
        actual: value.slice(0, 60),
        hint:
          property === 'fill' || property === 'stroke'
            ? 'Write the color as #rrggbb.'
            : 'Save it again as plain SVG.',
        ...placed(element),
      }),
    );
  const simplified = (element: SvgElement, what: string) =>
    add(figureProblem('figures/svg-simplified', `In the picture, ${what}.`, placed(element)));

  function readElement(element: SvgElement, parent: Context): Mark[] {
    looked++;
    if (looked > MOST_STEPS) throw new TooMuch('The picture uses its own parts too many times.');
    if (parent.depth > DEEPEST) throw new TooMuch(`The picture unfolds to more than ${DEEPEST} levels.`);
    const properties = propertiesOf(element.attributes);
    if (properties.get('display')?.trim() === 'none') return [];
    const wrong = wrongIn(element);
    const style = styleOf(parent.style, properties, wrong);
    const context: Context = { ...parent, style, depth: parent.depth + 1 };
    const at = readTransform(properties.get('transform') ?? '');
    if (!at) wrong('transform', properties.get('transform') ?? '');
    const marks = contentsOf(element, properties, context, wrong);
    if (marks.length === 0) return [];
    return wrap(properties, marks, at ?? IDENTITY, context);
  }

  function contentsOf(
    element: SvgElement,
    properties: ReadonlyMap<string, string>,
    context: Context,
    wrong: (property: string, value: string) => void,
  ): Mark[] {
    if (isShape(element)) {
      const path = outlineOf(element, properties, context.viewport, wrong);
      if (path === '' || !context.style.visible) return [];
      countShape();
      return paintShape(path, context.style, context.viewport, byId, (what) => simplified(element, what));
    }
    switch (element.name) {
      case 'g':
      case 'a':
        return element.children.flatMap((child) => readElement(child, context));
      case 'svg':
        return readViewport(element, properties, context);
      case 'use':
        return readUse(properties, context);
      default:
        // Definitions are drawn only where they are used; names that SVG does not know draw nothing.
        return [];
    }
  }

  /** A drawing with a view box of its own, placed into its width and height. */
  function readViewport(
    element: SvgElement,
    properties: ReadonlyMap<string, string>,
    context: Context,
  ): Mark[] {
    const size = (name: string, whole: number) => readLength(properties.get(name) ?? '', whole);
    const { viewport } = context;
    const width = size('width', viewport.width) ?? viewport.width;
    const height = size('height', viewport.height) ?? viewport.height;
    const box = viewBoxOf({ ...element, attributes: { ...element.attributes, width: '', height: '' } });
    const inner = box ?? { x: 0, y: 0, width, height };
    const marks = element.children.flatMap((child) => readElement(child, { ...context, viewport: inner }));
    if (marks.length === 0 || !(width > 0) || !(height > 0)) return [];
    const ratio = (properties.get('preserveAspectRatio') ?? 'xMidYMid').trim();
    const scale = Math.min(width / inner.width, height / inner.height);
    const [sx, sy] = ratio.startsWith('none') ? [width / inner.width, height / inner.height] : [scale, scale];
    const x = (size('x', viewport.width) ?? 0) + (width - inner.width * sx) / 2 - inner.x * sx;
    const y = (size('y', viewport.height) ?? 0) + (height - inner.height * sy) / 2 - inner.y * sy;
    const clip = rectPath(inner.x, inner.y, inner.width, inner.height);
    return [{ kind: 'group', at: [sx, 0, 0, sy, x, y], clip, marks }];
  }

  function readUse(properties: ReadonlyMap<string, string>, context: Context): Mark[] {
    const id = (properties.get('href') ?? properties.get('xlink:href') ?? '').trim().slice(1);
    const target = byId.get(id);
    if (!target) return [];
    if (context.inside.includes(id))
      throw new TooMuch(`The picture uses “${id.slice(0, 40)}” inside itself.`);
    const inner: Context = { ...context, inside: [...context.inside, id] };
    const place = (name: string, whole: number) => readLength(properties.get(name) ?? '0', whole) ?? 0;
    const x = place('x', context.viewport.width);
    const y = place('y', context.viewport.height);
    const sized = (name: 'width' | 'height') => properties.get(name) ?? target.attributes[name] ?? '100%';
    const marks =
      target.name === 'symbol'
        ? readElement(
            {
              ...target,
              name: 'svg',
              attributes: { ...target.attributes, width: sized('width'), height: sized('height') },
            },
            inner,
          )
        : readElement(target, inner);
    return x === 0 && y === 0 ? marks : [{ kind: 'group', at: [1, 0, 0, 1, x, y], marks }];
  }

  /** Puts an element's transform, clip and opacity around its marks. */
  function wrap(
    properties: ReadonlyMap<string, string>,
    marks: Mark[],
    at: Matrix,
    context: Context,
  ): Mark[] {
    const opacity = readShare(properties.get('opacity') ?? '1') ?? 1;
    if (opacity === 0) return [];
    const clipId = urlId(properties.get('clip-path') ?? '');
    const clips = clipId === undefined ? [] : clipsOf(clipId, marks, context);
    if (clips === 'nothing') return [];
    let inside: readonly Mark[] = marks;
    for (const clip of clips.slice(1)) inside = [{ kind: 'group', clip, marks: inside }];
    const first = clips[0];
    const still = at.every((v, i) => v === IDENTITY[i]);
    if (still && opacity === 1 && first === undefined) return [...inside];
    return [
      {
        kind: 'group',
        ...(still ? {} : { at }),
        ...(first === undefined ? {} : { clip: first }),
        ...(opacity < 1 ? { opacity } : {}),
        marks: inside,
      },
    ];
  }

  /** The outlines to clip by, in turn; `nothing` when the clip lets nothing through. */
  function clipsOf(id: string, marks: readonly Mark[], context: Context): string[] | 'nothing' {
    const clipPath = byId.get(id);
    if (clipPath?.name !== 'clipPath') return [];
    if (context.inside.includes(id)) throw new TooMuch(`The clip “${id.slice(0, 40)}” clips itself.`);
    const inner: Context = {
      ...context,
      style: START,
      inside: [...context.inside, id],
      depth: context.depth + 1,
    };
    if (inner.depth > DEEPEST) throw new TooMuch(`The picture unfolds to more than ${DEEPEST} levels.`);
    const own = readTransform(clipPath.attributes.transform ?? '') ?? IDENTITY;
    let units: Matrix = IDENTITY;
    if (clipPath.attributes.clipPathUnits?.trim() === 'objectBoundingBox') {
      const box = marksBox(marks);
      if (!box) return 'nothing';
      units = [box.right - box.left, 0, 0, box.bottom - box.top, box.left, box.top];
    }
    const paths: string[] = [];
    for (const child of clipPath.children) collectOutlines(child, multiply(units, own), inner, paths);
    const path = paths.join('');
    if (path === '') return 'nothing';
    const further = urlId(clipPath.attributes['clip-path'] ?? '');
    const more = further === undefined ? [] : clipsOf(further, marks, inner);
    return more === 'nothing' ? 'nothing' : [path, ...more];
  }

  function collectOutlines(element: SvgElement, at: Matrix, context: Context, into: string[]): void {
    const properties = propertiesOf(element.attributes);
    if (properties.get('display')?.trim() === 'none') return;
    const style = styleOf(context.style, properties, wrongIn(element));
    const matrix = multiply(at, readTransform(properties.get('transform') ?? '') ?? IDENTITY);
    if (isShape(element)) {
      countShape();
      const path = outlineOf(element, properties, context.viewport, wrongIn(element));
      if (style.clipEvenOdd && (path.match(/M/g)?.length ?? 0) > 1)
        simplified(element, 'a clip with holes is filled');
      if (path !== '' && style.visible) into.push(transformPath(matrix, path, 5));
      return;
    }
    if (element.name !== 'use') return;
    const id = (properties.get('href') ?? properties.get('xlink:href') ?? '').trim().slice(1);
    const target = byId.get(id);
    if (!target || context.inside.includes(id)) return;
    const move: Matrix = [
      1,
      0,
      0,
      1,
      readLength(properties.get('x') ?? '0') ?? 0,
      readLength(properties.get('y') ?? '0') ?? 0,
    ];
    collectOutlines(
      target,
      multiply(matrix, move),
      { ...context, style, inside: [...context.inside, id] },
      into,
    );
  }

  return (viewport: Viewport): Mark[] => {
    const context: Context = { style: START, viewport, depth: 0, inside: [] };
    const properties = propertiesOf(root.attributes);
    const style = styleOf(START, properties, wrongIn(root));
    const marks = root.children.flatMap((child) => readElement(child, { ...context, style, depth: 1 }));
    return marks.length === 0 ? [] : wrap(properties, marks, IDENTITY, context);
  };
}
