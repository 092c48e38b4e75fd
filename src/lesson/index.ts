export type { FrontMatter, Review } from './front-matter.js';
export type { AttributeKind, KnownAttribute, KnownDirective, KnownDirectives } from './known.js';
export * from './lesson.js';
