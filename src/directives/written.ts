import type { Attribute, DirectivePart } from '../lesson/index.js';

/** An attribute with something in it. One that is missing or empty was reported when the lesson was read. */
export function written(part: DirectivePart, name: string): Attribute | undefined {
  const attribute = part.attributes.get(name);
  return attribute?.value.trim() ? attribute : undefined;
}
