import type { TableColumn } from '../columnSpec.ts';
import { tagWords } from '../tagKey.ts';
import { kinds } from '../../../model/channel.ts';

/** What a channel is called, where it sits and what it measures. */
export const identity = {
  tag: {
    name: 'tag',
    also: tagWords,
    required: true,
    holds: 'text',
    protective: true,
    understood: { matter: 'tag', named: [['tag']], needed: true },
    help: 'The name of the channel, the same in the probe list and in the monitor settings.',
    entry: {
      sample: 'K-201-1X',
      meaning: 'Name of the channel, the same on both sheets. Needed. Each tag once.',
    },
  },
  machine: {
    name: 'machine',
    also: ['machine name', 'machine tag', 'equipment'],
    holds: 'text',
    understood: { matter: 'text', named: [['machine']], not: ['date', 'person'] },
    help: 'The machine that the channel watches.',
    entry: { sample: 'Compressor K-201', meaning: 'Machine that the channel protects.' },
  },
  location: {
    name: 'location',
    also: ['position', 'probe location', 'bearing'],
    holds: 'text',
    understood: { matter: 'text', named: [['location']] },
    help: 'Where the probe sits, such as a bearing and a direction.',
    entry: { sample: 'drive end, 45° left', meaning: 'Where on the machine the probe sits.' },
  },
  kind: {
    name: 'kind',
    also: ['channel kind', 'channel type', 'measurement kind', 'type'],
    holds: 'choice',
    protective: true,
    understood: { matter: 'text', named: [['kind']] },
    help: 'What the channel measures: radial vibration, axial position, velocity, acceleration.',
    entry: {
      sample: 'radial',
      meaning:
        'radial (shaft vibration), axial (position), velocity, acceleration or loop (4–20 mA). Blank: radial, but needed where a zero voltage or a direction stands.',
      allowed: { words: kinds },
    },
  },
} as const satisfies Record<string, TableColumn>;
