import { z } from 'zod';
import { nearest, type Report } from '../diagnostics/index.js';
import { problem } from './codes.js';
import { readYaml, shaped } from './yaml.js';

/** One word of the term list in one language. */
export interface TermForm {
  /** The approved form. */
  readonly term: string;
  /** Other forms that may stand: plural, with an article … */
  readonly also: readonly string[];
  /** What it means, in words that fit between brackets. */
  readonly means: string;
}

/** A thing that has one name in each language. */
export interface Term {
  readonly id: string;
  readonly forms: Readonly<Record<string, TermForm>>;
}

/** The words that lessons mark with `:t[…]`. */
export interface TermList {
  readonly all: readonly Term[];
  /** The term that a word names in a language, whatever the case of its letters; else up to five that come near. */
  find(words: string, language: string): Term | { readonly near: readonly string[] };
}

/** Where the list stands under `assets/`. */
export const TERMS_FILE = 'terms.yaml';

const words = z.string().trim().min(1, 'holds no words');
const form = z.strictObject({ term: words, also: z.array(words).default([]), means: words });
const entry = z.object({ id: z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'is no id') }).catchall(form);
const shape = z.strictObject({ terms: z.array(entry) });

/** Whether a lookup found a term. */
export function isTerm(found: Term | { readonly near: readonly string[] }): found is Term {
  return !('near' in found);
}

/** Reads the list. What is not whole is reported and left out, and so is a word that stands for two things. */
export function loadTerms(text: string, report: Report, file = `assets/${TERMS_FILE}`): TermList {
  const fault = (message: string, more: Parameters<typeof problem>[2]) =>
    problem('records/terms', message, more);
  const yaml = readYaml(text, file, fault, report);
  const data = yaml && shaped(shape, yaml, fault, report);
  const all: Term[] = [];
  const known = new Map<string, Term>();
  for (const [index, { id, ...forms }] of (data?.terms ?? []).entries()) {
    const term: Term = { id, forms: forms as Record<string, TermForm> };
    const keys = Object.entries(term.forms).flatMap(([language, { term: main, also }]) =>
      [main, ...also].map((one) => keyOf(one, language)),
    );
    const taken = keys.find((key) => known.has(key)) ?? (all.some((one) => one.id === id) ? id : undefined);
    if (taken !== undefined && yaml) {
      report.add(
        fault(`"${taken.replace(/^.*?:/, '')}" already stands for something else.`, {
          place: yaml.place(['terms', index, 'id']),
          hint: 'Give each thing one entry, with all its forms.',
        }),
      );
      continue;
    }
    all.push(term);
    for (const key of keys) known.set(key, term);
  }
  return {
    all,
    find: (written, language) =>
      known.get(keyOf(written, language)) ?? {
        near: nearest(
          written,
          all.flatMap(({ forms }) => forms[language]?.term ?? []),
          5,
        ),
      },
  };
}

function keyOf(term: string, language: string): string {
  return `${language}:${term.trim().replace(/\s+/g, ' ').toLowerCase()}`;
}
