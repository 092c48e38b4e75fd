import { parseDocument } from 'yaml';
import { z } from 'zod';
import { type CodeTable, nearest, problemsOf, type Report } from '../diagnostics/index.js';
import { LANGUAGES } from '../languages/index.js';
import type { Paper } from '../layout/index.js';

export const settingCodes = {
  'workspace/settings': {
    severity: 'stop',
    rule: 'platework.yaml is YAML with the entries site, paper, languages and levels, all optional.',
    about: 'A misspelt entry would be passed over in silence, and the wrong sheets would be built.',
  },
} as const satisfies CodeTable;
const problem = problemsOf(settingCodes);

export const HANDOUT_LEVELS = ['short', 'plain', 'fuller'] as const;
export type HandoutLevel = (typeof HANDOUT_LEVELS)[number];

/** What `platework.yaml` says of a workspace. */
export interface Settings {
  /** Folder name of the local pack, for lessons that name none. */
  readonly site?: string;
  readonly paper: readonly Paper[];
  readonly languages: readonly string[];
  readonly levels: readonly HandoutLevel[];
}

export const DEFAULTS: Settings = { paper: ['letter', 'a4'], languages: ['en'], levels: HANDOUT_LEVELS };

const shape = z.strictObject({
  site: z
    .string()
    .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
    .optional(),
  paper: z
    .array(z.enum(['letter', 'a4']))
    .min(1)
    .optional(),
  languages: z.array(z.enum(LANGUAGES)).min(1).optional(),
  levels: z.array(z.enum(HANDOUT_LEVELS)).min(1).optional(),
});

export const SETTINGS_FILE = 'platework.yaml';

/** Reads `platework.yaml`. What is wrong is reported at its place, and the default stands instead. */
export function readSettings(text: string | undefined, report: Report): Settings {
  if (text === undefined || text.trim() === '') return DEFAULTS;
  const yaml = parseDocument(text, { prettyErrors: false });
  const placeAt = (offset: number) => {
    const before = text.slice(0, offset).split('\n');
    return { file: SETTINGS_FILE, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
  };
  const [fault] = yaml.errors;
  if (fault) {
    report.add(
      problem('workspace/settings', 'platework.yaml is no YAML.', {
        place: placeAt(fault.pos[0]),
        hint: fault.message.split('\n')[0] ?? '',
      }),
    );
    return DEFAULTS;
  }
  const read = shape.safeParse(yaml.toJS({ maxAliasCount: 10 }) ?? {});
  if (read.success) {
    const given = Object.fromEntries(Object.entries(read.data).filter(([, value]) => value !== undefined));
    return { ...DEFAULTS, ...given };
  }
  for (const issue of read.error.issues) {
    const keys = issue.code === 'unrecognized_keys' ? issue.keys : [];
    const path = keys.length > 0 ? [...issue.path, keys[0]] : issue.path;
    const node = yaml.getIn(path, true) as { range?: [number, number, number] } | undefined;
    const near = keys[0] === undefined ? undefined : nearest(keys[0], Object.keys(shape.shape))[0];
    report.add(
      problem(
        'workspace/settings',
        keys.length > 0
          ? `platework.yaml knows no "${keys.join('", "')}".`
          : `${path.join('.')}: ${issue.message}.`,
        {
          place: placeAt(node?.range?.[0] ?? 0),
          hint: near ? `Did you mean "${near}"?` : `Entries: ${Object.keys(shape.shape).join(', ')}.`,
        },
      ),
    );
  }
  return DEFAULTS;
}
