import type { Block, Inline } from '../../document/index.js';
import type { Computed, View, ViewContext } from '../contract.js';
import type { Prompt, Values } from './schema.js';

/** One prompt at `short`, two at the other levels; the leader's page has them all, with what to listen for. */
export function view({ prompts }: Values, _: Computed, context: ViewContext): View {
  const { where, level, say } = context;
  if (where === 'staff') return { blocks: staffBlocks(prompts, context) };
  const shown = prompts.slice(0, level === 'short' ? 1 : 2);
  const lead: Block = { kind: 'paragraph', inlines: [{ text: say('lead'), strong: true }] };
  const asked = shown.map((prompt) => ({ prompt, words: context.inlines(prompt.words) }));
  switch (where) {
    case 'worksheet':
      return {
        blocks: [
          lead,
          ...asked.map(({ words }): Block => ({ kind: 'write', label: textOf(words), lines: 2 })),
        ],
      };
    case 'key':
      return {
        blocks: [lead, ...asked.flatMap(({ prompt, words }) => [paragraph(words), keyLine(prompt, context)])],
      };
    default:
      return {
        blocks: [
          lead,
          ...(asked.length === 1
            ? asked.map(({ words }) => paragraph(words))
            : [listOf(asked.map(({ words }) => words))]),
        ],
      };
  }
}

function staffBlocks(prompts: readonly Prompt[], context: ViewContext): Block[] {
  const { say } = context;
  const each = prompts.flatMap((prompt): Block[] => [
    paragraph(context.inlines(prompt.words).map((inline) => ({ ...inline, strong: true }))),
    paragraph([{ text: say('listen') }]),
    listOf(prompt.listenFor.map((point) => context.inlines(point))),
    paragraph([{ text: say('objective', { objective: withoutStop(prompt.objective) }) }]),
  ]);
  return [paragraph([{ text: say('staff-lead') }]), ...each, paragraph([{ text: say('stops') }])];
}

function keyLine({ listenFor }: Prompt, { say, list, inlines }: ViewContext): Block {
  const points = list(listenFor.map((point) => withoutStop(textOf(inlines(point)))));
  return { kind: 'why', inlines: [{ text: say('listen-key', { points }) }] };
}

function paragraph(inlines: readonly Inline[]): Block {
  return { kind: 'paragraph', inlines };
}

function listOf(items: readonly (readonly Inline[])[]): Block {
  return { kind: 'list', ordered: false, items: items.map((inlines) => [paragraph(inlines)]) };
}

function textOf(inlines: readonly Inline[]): string {
  return inlines.map((inline) => inline.text).join('');
}

function withoutStop(words: string): string {
  return words.replace(/[.\s]+$/u, '');
}
