import type { InlineNode } from './lesson.js';

/** Running text without its looks; a number stands as its name. */
export function plainText(nodes: readonly InlineNode[]): string {
  return nodes
    .map((node) => {
      switch (node.kind) {
        case 'text':
        case 'code':
        case 'term':
          return node.text;
        case 'number':
          return node.name;
        case 'break':
          return ' ';
        case 'picture':
        case 'cite':
          return '';
        default:
          return plainText(node.children);
      }
    })
    .join('');
}
