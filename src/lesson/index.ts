export { lessonCodes } from './codes.js';
export type { FrontMatter, Review } from './front-matter.js';
export { EDITIONS, frontMatterJsonSchema } from './front-shape.js';
export type { AttributeKind, KnownAttribute, KnownDirective, KnownDirectives } from './known.js';
export * from './lesson.js';
export { parseLesson } from './parse.js';
export { type Choice, select } from './select.js';
export { HOLDING, INLINE, INLINE_ATTRIBUTES, type InlineName, OUTPUTS, type Output } from './service.js';
export * from './to-blocks.js';
