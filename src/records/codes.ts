import { type CodeTable, problemsOf } from '../diagnostics/index.js';

/** What can be wrong with a table of records. */
export const recordCodes = {
  'records/missing-table': {
    severity: 'stop',
    rule: 'The food tables and the list of sources are there.',
    about:
      'Every number is computed from a record, so nothing can be built without the tables. They belong to the program: install it again, or run `npm run make:foods` in its own folder for the tables of the release.',
  },
  'records/headings': {
    severity: 'stop',
    rule: 'A table has the headings that its reader knows, each once.',
    about:
      'Cells are found by the headings, with their units. A heading that is missing or misspelled would leave a whole column unread. Write the headings as the message lists them, parted by tabs.',
  },
  'records/cells': {
    severity: 'stop',
    rule: 'A row has as many cells as the table has headings.',
    about:
      'A tab too many or too few shifts every cell after it under a wrong heading, so the row is not used. A blank cell is still a cell: keep its tab.',
  },
  'records/value': {
    severity: 'stop',
    rule: 'A cell holds what its column takes.',
    about:
      'A value that cannot be read is treated as not known, and a food without its basic facts is not used. Write the cell as the message says.',
  },
  'records/terms': {
    severity: 'stop',
    rule: 'The term list holds each word once, with its meaning.',
    about:
      'Pages explain a marked word where readers meet it first. Write for each language: term, also (other forms) and means, in words that fit between brackets.',
  },
  'records/twice': {
    severity: 'stop',
    rule: 'A name, an alias, a form of a kind or a number stands for one record only.',
    about:
      'A lesson finds a food by its name; a name that two foods share could pick the wrong one, so it is left with the first. Give one of them another name.',
  },
  'records/unknown-number': {
    severity: 'stop',
    rule: 'An everyday food names a number of the release.',
    about:
      'Its nutrients come from that record, so without the record the food cannot be used. Look the number up in release.tsv; it has five digits.',
  },
  'records/description': {
    severity: 'stop',
    rule: 'An everyday food repeats the release’s own description of its number, word for word.',
    about:
      'The description is there to catch a mistyped number: a wrong number would give another food’s values without a sign. Correct the number or the description, whichever is wrong.',
  },
  'records/weight': {
    severity: 'stop',
    rule: 'A household measure that refers to a weight of the release has that weight.',
    about:
      'Grams of one measure are the release’s grams divided by the amount in its words (126 g for .5 cup is 252 g a cup). Correct the grams, or name another source for them.',
  },
  'records/import-file': {
    severity: 'stop',
    rule: 'A folder to import holds the five files of a FoodData Central download, with their headings.',
    about:
      'Foods, nutrients, amounts, portions and units stand in files of their own, and without one of them a value could be read under a wrong name. Unpack the whole download, and change nothing in it.',
  },
  'records/import-row': {
    severity: 'stop',
    rule: 'A file to import is comma-separated text whose rows all have the cells of its headings.',
    about:
      'A quotation mark that is never closed or a comma too many shifts every cell after it, so nothing of the download is imported. Unpack the download again; a spreadsheet that saved it may have changed it.',
  },
  'records/import-value': {
    severity: 'stop',
    rule: 'A cell to import holds what its column takes.',
    about:
      'A number that cannot be read, a nutrient in another unit or a food that stands twice would give wrong values without a sign, so nothing of the download is imported. Unpack the download again.',
  },
  'records/sources': {
    severity: 'stop',
    rule: 'The list of sources is YAML that can be read: a list of entries.',
    about:
      'Nothing can be cited while the list cannot be read. The message says where reading stopped; indent with spaces and begin each entry with `- id:`.',
  },
  'records/source': {
    severity: 'stop',
    rule: 'A source has an id, an author or organization, a title, a date and how it was read.',
    about:
      'A source that readers cannot look up is none, and one that was only remembered must say so. An entry that is not whole is not used. Fill in the field that the message names.',
  },
} as const satisfies CodeTable;

export const problem = problemsOf(recordCodes);
