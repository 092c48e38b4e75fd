import {
  type Document,
  isAlias,
  isMap,
  isNode,
  isPair,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  visit,
} from 'yaml';
import type { Place, Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import { isRefusedName } from './names.js';
import { placeAt, type Source } from './source.js';
import { yamlTrouble } from './yaml-trouble.js';

/** What the YAML of a front matter says, and where each value stands. */
export interface FrontYaml {
  readonly data: unknown;
  /** By path: `topics.1`; a key's own place is at `topics#key`. */
  readonly places: ReadonlyMap<string, Place>;
}

/** Reads the lines from index `from` up to `to` as YAML; nothing after a problem with the YAML itself. */
export function readYaml(
  source: Source,
  lines: { readonly from: number; readonly to: number },
  report: Report,
): FrontYaml | undefined {
  const text = source.lines.slice(lines.from, lines.to).join('\n');
  const counter = new LineCounter();
  const yaml = parseDocument(text, { lineCounter: counter, prettyErrors: false, uniqueKeys: true });
  const at = (offset: number, to?: number): Place => {
    const start = counter.linePos(offset);
    const stop = to === undefined ? undefined : counter.linePos(to);
    const end = stop && stop.line === start.line ? stop.col : undefined;
    return placeAt(source, start.line + lines.from, start.col, end);
  };
  const sound = reportErrors(yaml, text, at, report) && reportFeatures(yaml, text, at, report);
  if (!sound) return undefined;
  if (!isMap(yaml.contents)) {
    report.add(
      problem('lesson/yaml', 'The front matter holds no keys.', {
        place: placeAt(source, lines.from + 1, 1),
        hint: 'Write title: and the other keys, one a line.',
      }),
    );
    return undefined;
  }
  const places = new Map<string, Place>();
  collectPlaces(yaml.contents, '', at, places, report);
  return { data: yaml.toJS({ maxAliasCount: 0 }), places };
}

type At = (offset: number, to?: number) => Place;

/** Every key that stands twice, and the first thing that cannot be read: what follows it is its echo. */
function reportErrors(yaml: Document, text: string, at: At, report: Report): boolean {
  for (const error of yaml.errors) {
    if (error.code !== 'DUPLICATE_KEY') continue;
    report.add(
      problem('lesson/front-key', 'This key stands twice.', {
        place: at(error.pos[0]),
        hint: 'Keep one of them.',
      }),
    );
  }
  const first = yaml.errors.find((error) => error.code !== 'DUPLICATE_KEY');
  if (first) {
    const { message, hint, offset } = yamlTrouble(first, text);
    report.add(problem('lesson/yaml', message, { place: at(offset), hint }));
  }
  return yaml.errors.length === 0;
}

/** Anchors, aliases, tags and keys that are no words; also rows of lists that YAML folds into one. */
function reportFeatures(yaml: Document, text: string, at: At, report: Report): boolean {
  let sound = true;
  const refuse = (what: string, offset: number) => {
    sound = false;
    report.add(
      problem('lesson/yaml-feature', `${what} is not used in a front matter.`, {
        place: at(offset),
        hint: 'Write the value out.',
      }),
    );
  };
  for (const warning of yaml.warnings) refuse('A tag (!)', warning.pos[0]);
  visit(yaml, (_, node) => {
    if (isPair(node)) {
      if (!isScalar(node.key))
        refuse('A key that is no word', isNode(node.key) ? (node.key.range?.[0] ?? 0) : 0);
      return;
    }
    if (!isNode(node)) return;
    const from = node.range?.[0] ?? 0;
    if (isAlias(node)) refuse('An alias (*)', from);
    else if ('anchor' in node && node.anchor) refuse('An anchor (&)', from);
    else if (node.tag?.startsWith('!') && yaml.warnings.length === 0) refuse('A tag (!)', from);
    else if (isScalar(node) && node.type === 'PLAIN') {
      const folded = /\n[ \t]*- /.exec(text.slice(from, node.range?.[1] ?? from));
      if (!folded) return;
      sound = false;
      report.add(
        problem('lesson/yaml', 'This row of a list is indented differently from the one above it.', {
          place: at(from + folded.index + folded[0].length - 2),
          hint: 'Let all hyphens of a list stand in the same column.',
        }),
      );
    }
  });
  return sound;
}

/** Where every value stands, by its path; keys that programs treat in special ways are refused. */
function collectPlaces(
  node: unknown,
  path: string,
  at: At,
  places: Map<string, Place>,
  report: Report,
): void {
  const below = (name: string | number) => (path === '' ? String(name) : `${path}.${name}`);
  if (isMap(node)) {
    for (const pair of node.items) {
      if (!isPair(pair) || !isScalar(pair.key)) continue;
      const name = String(pair.key.value);
      const [from = 0, to] = pair.key.range ?? [];
      if (isRefusedName(name))
        report.add(
          problem('lesson/refused-name', `“${name}” cannot be a key.`, {
            place: at(from, to),
            hint: 'Delete it.',
            actual: name,
          }),
        );
      places.set(`${below(name)}#key`, at(from, to));
      const value = isNode(pair.value) ? pair.value.range : undefined;
      places.set(below(name), value ? at(value[0], value[1]) : at(from, to));
      collectPlaces(pair.value, below(name), at, places, report);
    }
  } else if (isSeq(node)) {
    node.items.forEach((item, index) => {
      const range = isNode(item) ? item.range : undefined;
      if (range) places.set(below(index), at(range[0], range[1]));
      collectPlaces(item, below(index), at, places, report);
    });
  }
}
