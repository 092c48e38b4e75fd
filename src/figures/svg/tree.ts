import { parseXml, XmlElement, XmlError, type XmlNode } from '@rgrove/parse-xml';
import { createReport, type Place, type Problem } from '../../diagnostics/index.js';
import { figureProblem } from '../problems.js';

const MOST_CHARACTERS = 1_000_000;
export const DEEPEST = 64;

/** An element of a picture: its name without the `svg:` prefix, what is inside, and where it begins. */
export interface SvgElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly SvgElement[];
  readonly place: Place | undefined;
}

export type Tree =
  | { readonly root: SvgElement; readonly problems: readonly Problem[] }
  | { readonly root: undefined; readonly problems: readonly Problem[] };

const UNSAFE = /^(script|foreignobject|iframe|image|audio|video|canvas|handler|listener|feimage)$/;
const TEXT = /^(text|tspan|textpath|tref|altglyph|font|font-face)$/;
const UNSUPPORTED =
  /^(filter|mask|pattern|style|marker|switch|cursor|hatch|meshgradient|mesh|set|discard|mpath|fe[a-z]+)$|^animate/;
/** Properties that would draw a thing that is refused, or draw it in another way than we do. */
const UNSUPPORTED_PROPERTIES = /^(filter|mask|marker|marker-start|marker-mid|marker-end|mix-blend-mode)$/;
/** What holds no drawing; skipped with everything inside. */
const SILENT = /^(title|desc|metadata)$/;

/** Line and column, both from 1, of a character of the text. */
function placeIn(file: string | undefined, text: string): (offset: number) => Place | undefined {
  if (file === undefined) return () => undefined;
  const starts = [0];
  for (const found of text.matchAll(/\r\n|\n|\r/g)) starts.push(found.index + found[0].length);
  return (offset) => {
    let line = starts.length - 1;
    while (line > 0 && (starts[line] ?? 0) > offset) line--;
    return { file, line: line + 1, column: Math.max(0, offset) - (starts[line] ?? 0) + 1 };
  };
}

/**
 * The picture as a tree of elements, comments and words between them left out. `root` is missing when
 * the text is no SVG, too large, or holds what a picture must not hold; then `problems` say why.
 */
export function readTree(text: string, file?: string): Tree {
  const report = createReport();
  const refuse = (problem: Problem): Tree => {
    report.add(problem);
    return { root: undefined, problems: report.problems };
  };
  if (text.length > MOST_CHARACTERS)
    return refuse(
      figureProblem(
        'figures/svg-too-large',
        `The picture has ${text.length.toLocaleString('en-US')} characters; the most is one million.`,
        {
          hint: 'Simplify its paths, or save it as PNG.',
          ...(file ? { place: { file, line: 1, column: 1 } } : {}),
        },
      ),
    );
  const placeOf = placeIn(file, text);
  const at = (node: XmlNode) => {
    const place = placeOf(node.start);
    return place ? { place } : {};
  };
  const unsafe = (node: XmlNode, message: string, hint: string) =>
    report.add(figureProblem('figures/svg-unsafe', message, { hint, ...at(node) }));

  let document: ReturnType<typeof parseXml>;
  try {
    document = parseXml(text.replace(/^\uFEFF/, ''), { includeOffsets: true, preserveDocumentType: true });
  } catch (error) {
    if (error instanceof RangeError)
      return refuse(figureProblem('figures/svg-too-large', 'The picture is nested too deep to be read.'));
    if (!(error instanceof XmlError)) throw error;
    const message = (error.message.split('\n')[0] ?? '').replace(/ \(line \d+, column \d+\)$/, '');
    return refuse(
      figureProblem('figures/svg-broken', `The picture is not well-formed: ${message}`, {
        hint: 'Save it again as plain SVG.',
        ...(file ? { place: { file, line: error.line, column: error.column } } : {}),
      }),
    );
  }

  /** Looks at one element's name and attributes; adds a problem for each thing that is refused. */
  const inspect = (node: XmlElement, name: string) => {
    if (UNSAFE.test(name))
      unsafe(
        node,
        `The picture holds <${node.name}>.`,
        name === 'image' ? 'Put the photo itself into the lesson as PNG or JPEG.' : 'Take it out.',
      );
    else if (TEXT.test(name))
      report.add(
        figureProblem('figures/svg-text', `The picture holds text (<${node.name}>).`, {
          hint: 'Convert the text to outlines (paths), or take it out and say it in the lesson.',
          ...at(node),
        }),
      );
    else if (UNSUPPORTED.test(name))
      report.add(
        figureProblem(
          'figures/svg-unsupported',
          `The picture holds <${node.name}>, which cannot be printed.`,
          {
            hint: 'Save the picture as plain SVG with presentation attributes and flattened effects.',
            ...at(node),
          },
        ),
      );
    for (const [key, value] of Object.entries(node.attributes))
      inspectAttribute(node, key.toLowerCase(), value);
  };
  const inspectAttribute = (node: XmlElement, key: string, value: string) => {
    const local = key.slice(key.indexOf(':') + 1);
    if (/^on[a-z]/.test(local)) unsafe(node, `The picture has the event attribute “${key}”.`, 'Take it out.');
    if ((local === 'href' || local === 'src') && !value.trim().startsWith('#'))
      unsafe(
        node,
        `The picture refers to “${shorten(value)}”, which is outside of it.`,
        'Take the link out.',
      );
    if (key.startsWith('xmlns')) return;
    const outside = [...value.matchAll(/url\(\s*['"]?([^'")]*)/gi)].find(
      ([, to = '']) => !to.trim().startsWith('#'),
    );
    if (outside || /@import|javascript:/i.test(value))
      unsafe(
        node,
        `The picture refers to “${shorten(outside?.[1] ?? value)}”, which is outside of it.`,
        'Take it out.',
      );
    const declared = key === 'style' ? value.split(';').map((d) => d.split(':')) : [[key, value]];
    for (const [property = '', setting = ''] of declared) {
      if (!UNSUPPORTED_PROPERTIES.test(property.trim()) || /^\s*(none|normal)\s*$/.test(setting)) continue;
      report.add(
        figureProblem(
          'figures/svg-unsupported',
          `The picture uses “${property.trim()}”, which cannot be printed.`,
          {
            hint: 'Save the picture with flattened effects.',
            ...at(node),
          },
        ),
      );
    }
  };

  let tooDeep = false;
  const convert = (node: XmlElement, depth: number): SvgElement => {
    const prefixed = node.name.includes(':') && !node.name.startsWith('svg:');
    const local = node.name.slice(node.name.indexOf(':') + 1);
    if (!prefixed || UNSAFE.test(local.toLowerCase())) inspect(node, local.toLowerCase());
    if (depth > DEEPEST) tooDeep = true;
    const inside =
      prefixed || SILENT.test(local) || depth > DEEPEST
        ? []
        : node.children
            .filter((child) => child instanceof XmlElement)
            .map((child) => convert(child, depth + 1));
    return {
      name: prefixed ? '' : local,
      attributes: node.attributes,
      children: inside,
      place: placeOf(node.start),
    };
  };

  for (const node of document.children) {
    if (node.type === 'doctype')
      unsafe(node, 'The picture has a document type, which may hold entities.', 'Take the line out.');
    if (node.type === 'pi' && /stylesheet/i.test((node as XmlNode & { name?: string }).name ?? ''))
      unsafe(node, 'The picture refers to a style sheet outside of it.', 'Take the line out.');
  }
  const top = document.root;
  if (!top) return refuse(figureProblem('figures/svg-broken', 'The picture is empty.'));
  const root = convert(top, 1);
  if (tooDeep)
    return refuse(
      figureProblem('figures/svg-too-large', `The picture is nested more than ${DEEPEST} levels deep.`, {
        hint: 'Ungroup it in a drawing program.',
        ...at(top),
      }),
    );
  if (root.name !== 'svg')
    return refuse(
      figureProblem('figures/svg-broken', `The file holds <${shorten(top.name)}>, not <svg>.`, {
        hint: 'Save the picture as SVG.',
        ...at(top),
      }),
    );
  const { problems } = report;
  return problems.length > 0 ? { root: undefined, problems } : { root, problems };
}

const shorten = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
