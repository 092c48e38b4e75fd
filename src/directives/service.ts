import {
  HOLDING,
  type HolderName,
  INLINE_ATTRIBUTES,
  type InlineName,
  type KnownAttribute,
} from '../lesson/index.js';

/**
 * A container or a piece of running text that belongs to the lesson itself. It computes and draws nothing:
 * it says where or for whom its parts are, or stands for a number or a source. What an author may write is
 * declared where lessons are read; a folder here shows it with examples.
 */
export interface ServicePiece {
  readonly name: string;
  readonly form: 'container' | 'running text';
  readonly attributes: Readonly<Record<string, KnownAttribute>>;
  /** Where it may stand. */
  readonly stands: string;
}

export function holderPiece(name: HolderName, stands: string): ServicePiece {
  const schema = HOLDING.find((holder) => holder.name === name);
  if (!schema) throw new Error(`Lessons know no container ${name}.`);
  return { name, form: 'container', attributes: schema.attributes, stands };
}

export function textPiece(name: InlineName, stands: string): ServicePiece {
  return { name, form: 'running text', attributes: INLINE_ATTRIBUTES[name], stands };
}
