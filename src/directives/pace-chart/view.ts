import type { Block } from '../../document/index.js';
import type { View, ViewContext } from '../contract.js';
import type { Result } from './compute.js';
import type { Values } from './schema.js';
import { viewBand } from './view-band.js';
import { viewPace } from './view-pace.js';

/** A band or a pace; on the sheet without weight what else changes. */
export function view(values: Values, computed: Result, context: ViewContext): View {
  if (context.weightFree) return twin(context);
  if (values.show === 'band' && computed.show === 'band') return viewBand(values, computed, context);
  if (values.show === 'pace' && computed.show === 'pace') return viewPace(values, computed, context);
  return { blocks: [] };
}

/** Gains that are not weight, in words alone. */
function twin({ say, level, where }: ViewContext): View {
  const line = (text: string): Block => ({ kind: 'paragraph', inlines: [{ text }] });
  const items = (['twin-energy', 'twin-sleep', 'twin-pressure', 'twin-walking'] as const).map((key) => [
    line(say(key)),
  ]);
  const blocks: Block[] = [
    line(say(level === 'short' ? 'twin-short' : 'twin-lead')),
    { kind: 'list', ordered: false, items },
    ...(level === 'fuller' ? [line(say('twin-more'))] : []),
  ];
  return where === 'slide' ? { blocks: [], stages: [{ kind: 'words', blocks }] } : { blocks };
}
