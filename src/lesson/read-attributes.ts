import { nearest, type Place, type Report } from '../diagnostics/index.js';
import type { WrittenAttribute } from './attributes.js';
import { problem } from './codes.js';
import type { AttributeKind, KnownAttribute } from './known.js';
import type { Attribute, Attributes } from './lesson.js';
import { ID, isRefusedName } from './names.js';

/** What a directive or an inline piece allows, and where its attributes stand. */
export interface AttributeRules {
  /** Named in messages. */
  readonly name: string;
  readonly known: Readonly<Record<string, KnownAttribute>>;
  readonly id: 'required' | 'optional' | 'none' | 'register';
  /** The place of a stretch of the scanned text. */
  readonly placeOf: (from: number, to: number) => Place;
  /** Where a missing attribute is reported. */
  readonly place: Place;
}

/** Written attributes → the allowed ones, each once; everything else is reported at its place. */
export function readAttributes(
  written: readonly WrittenAttribute[],
  rules: AttributeRules,
  report: Report,
): Attributes {
  const { known, name: owner, placeOf } = rules;
  const found = new Map<string, Attribute>();
  const allowed = [...(rules.id === 'none' ? [] : ['id']), ...Object.keys(known)];
  for (const attribute of written) {
    const { name, nameAt, value, valueAt, valueEnd } = attribute;
    const namePlace = placeOf(nameAt, nameAt + name.length);
    if (isRefusedName(name)) {
      report.add(
        problem('lesson/refused-name', `“${name}” cannot be an attribute.`, {
          place: namePlace,
          hint: 'Delete it.',
          actual: name,
        }),
      );
      continue;
    }
    if (!allowed.includes(name)) {
      const near = nearest(name, allowed);
      const list =
        allowed.length > 0 ? `${owner} takes ${allowed.join(', ')}.` : `${owner} takes no attributes.`;
      report.add(
        problem('lesson/attribute-name', `${owner} has no attribute “${name}”.`, {
          place: namePlace,
          hint: near[0] ? `Did you mean ${near[0]}?` : list,
          actual: name,
          expected: allowed,
        }),
      );
      continue;
    }
    if (found.has(name)) {
      report.add(
        problem('lesson/attribute-name', `The attribute “${name}” stands twice.`, {
          place: namePlace,
          hint: 'Keep one of them.',
        }),
      );
      continue;
    }
    const place = placeOf(valueAt, Math.max(valueEnd, valueAt + 1));
    // A name without a value has been reported as it was scanned.
    const empty = valueAt === nameAt;
    const trouble = empty
      ? undefined
      : name === 'id'
        ? troubleOfId(value)
        : troubleOf(value, known[name]?.kind);
    if (trouble)
      report.add(
        problem(name === 'id' ? 'lesson/id' : 'lesson/attribute-value', trouble.message, {
          place,
          hint: trouble.hint,
          actual: value,
          ...(trouble.expected ? { expected: trouble.expected } : {}),
        }),
      );
    found.set(name, { value, place });
  }
  const missing = [
    ...(rules.id === 'required' || rules.id === 'register' ? ['id'] : []),
    ...Object.keys(known).filter((n) => known[n]?.required),
  ];
  for (const name of missing) {
    if (found.has(name) || written.some((w) => w.name === name)) continue;
    const help =
      name === 'id' ? 'a name that stands once in this lesson, such as pinto' : (known[name]?.help ?? '');
    report.add(
      problem('lesson/attribute-missing', `${owner} needs the attribute ${name}.`, {
        place: rules.place,
        hint: `Add ${name}="…": ${help}`,
        expected: [name],
      }),
    );
  }
  return found;
}

interface Trouble {
  readonly message: string;
  readonly hint: string;
  readonly expected?: readonly string[];
}

function troubleOfId(value: string): Trouble | undefined {
  if (ID.test(value) && !isRefusedName(value)) return undefined;
  return {
    message: `“${value}” cannot be an id.`,
    hint: 'Write lower-case letters and digits, words joined by hyphens, as in pinto-beans.',
  };
}

/** What is wrong with a value, or nothing. */
function troubleOf(value: string, kind: AttributeKind | undefined): Trouble | undefined {
  const text = value.trim();
  if (text === '')
    return { message: 'This attribute is empty.', hint: 'Write its value between quotes, or delete it.' };
  switch (kind?.is) {
    case 'whole': {
      const number = /^\d{1,6}$/.test(text) ? Number(text) : Number.NaN;
      if (number >= kind.from && number <= kind.to) return undefined;
      return {
        message: `“${value}” is no whole number from ${kind.from} to ${kind.to}.`,
        hint: `Write digits only, ${kind.from} to ${kind.to}.`,
      };
    }
    case 'choice':
      return kind.of.includes(text) ? undefined : choiceTrouble(text, kind.of);
    case 'list': {
      const parts = text.split(kind.commas ? /[;,]/ : ';').map((part) => part.trim());
      if (parts.some((part) => part === ''))
        return { message: 'A part of this list is empty.', hint: 'Part the words with one semicolon each.' };
      const odd = kind.of && parts.find((part) => !kind.of?.includes(part));
      return odd !== undefined && kind.of ? choiceTrouble(odd, kind.of) : undefined;
    }
    case 'date':
      return isDay(text)
        ? undefined
        : { message: `“${value}” is no day.`, hint: 'Write year, month and day, as in 2027-03-01.' };
    case 'reference':
      return ID.test(text)
        ? undefined
        : { message: `“${value}” cannot be an id.`, hint: 'Write the id of a directive of this lesson.' };
    default:
      return undefined;
  }
}

function choiceTrouble(value: string, of: readonly string[]): Trouble {
  const near = nearest(value, of);
  return {
    message: `“${value}” is not one of ${of.join(', ')}.`,
    hint: near[0] ? `Did you mean ${near[0]}?` : `Write one of ${of.join(', ')}.`,
    expected: of,
  };
}

export function isDay(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.slice(0, 10) === text;
}
