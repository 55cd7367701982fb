import { say } from '../../model/say.ts';
import type { SheetComponent } from '../component.ts';

export const quoted: SheetComponent = {
  name: 'Quoted',
  stands: 'either',
  holds: 'text',
  meaning:
    'Someone else’s words, as from a label, a seed list or a neighbour. They are set in quotation marks, and what they claim is not held against the findings. Say before it whose words they are.',
  attributes: [],
  example: () =>
    say('The packet says {words}.', { words: `<Quoted>${say('ready in seven weeks')}</Quoted>` }),
  resolve: () => [{ kind: 'quoted' }],
};
