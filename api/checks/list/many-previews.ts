import { observe } from '../check.js';
import type { Check } from '../check.js';

export const manyPreviews: Check<'previews'> = {
  code: 'tester/many-previews',
  title: 'Very many previews of one spool',
  severity: 'note',
  looksAt: ['previews'],
  explains:
    'A preview tells nothing of the label or of others; somebody who looks at very many of one spool may be looking for it all the same. They are counted for each spool and tester; the tester is not told.',
  limit: 'Previews of the spool by its tester before the hand-in.',
  limits: { previews: { words: 'Previews of one spool by one tester', value: 200, unit: '', atLeast: 20, atMost: 10_000 } },
  source: 'common practice of blind testing',
  example: 'Three hundred previews of one spool, each of another force.',
  run({ previews }, limits) {
    if (previews <= limits.previews) return [];
    return [
      observe(`The tester looked at ${previews} previews of this spool.`, {
        actual: String(previews),
        expected: `at most ${limits.previews}`,
      }),
    ];
  },
};
