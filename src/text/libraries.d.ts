/** Types for two libraries whose own do not fit how Node loads them. */

declare module 'linebreak' {
  export default class LineBreaker {
    constructor(text: string);
    /** The next place where a line may end (or must, when `required`); `null` after the end of the text. */
    nextBreak(): { readonly position: number; readonly required: boolean } | null;
  }
}

declare module 'bidi-js' {
  export interface EmbeddingLevels {
    readonly levels: Uint8Array;
    readonly paragraphs: readonly { readonly start: number; readonly end: number; readonly level: number }[];
  }
  export interface Bidi {
    getEmbeddingLevels(text: string, baseDirection: 'ltr' | 'rtl'): EmbeddingLevels;
    getBidiCharTypeName(character: string): string;
  }
  export default function bidiFactory(): Bidi;
}

/** The part of the platform's WebAssembly that is used; the types for Node leave it out. */
declare namespace WebAssembly {
  class Module {
    constructor(bytes: Uint8Array);
  }
  class Instance {
    constructor(module: Module);
    readonly exports: object;
  }
  interface Memory {
    readonly buffer: ArrayBuffer;
  }
}
