import type { Role, StructureNode } from './pages.js';

type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** A structure element while the sheet is being laid out: the place of a figure is known last. */
export interface Draft extends Writable<Omit<StructureNode, 'children'>> {
  readonly children: Draft[];
}

/** The structure tree of a sheet, in reading order. */
export interface Tree {
  readonly root: Draft;
  /** A new last child of `parent`. */
  add(parent: Draft, role: Role, more?: Omit<Partial<StructureNode>, 'id' | 'role' | 'children'>): Draft;
  finish(): StructureNode;
}

export function createTree(): Tree {
  let count = 0;
  const make = (role: Role, more: object): Draft => {
    count += 1;
    return { id: `n${count}`, role, children: [], ...more };
  };
  const root = make('Document', {});
  return {
    root,
    add(parent, role, more = {}) {
      const node = make(role, more);
      parent.children.push(node);
      return node;
    },
    finish: () => frozen(root),
  };
}

function frozen(draft: Draft): StructureNode {
  return { ...draft, children: draft.children.map(frozen) };
}
