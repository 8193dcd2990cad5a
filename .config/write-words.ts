/** `npm run words`: writes the words of the site, as they stand in its sources, into site/src/languages/en.ts. Commit it with them. */
import { writeFile } from 'node:fs/promises';
import { format } from 'prettier';
import { messagesOfSite } from '../site/src/languages/messages-of-site.js';

const HEAD = `/** Every message of the site in English, by the source that says it first: what a language has words for, and a house may put others for. Written by \`npm run words\`. */`;
const TAIL = `] as const;

export type Message = (typeof en)[number];`;

const said = await messagesOfSite();
const lines = [...said].map(
  ([words, file], index, all) => `${file === all[index - 1]?.[1] ? '' : `// ${file}\n`}${JSON.stringify(words)},`,
);
const source = [HEAD, 'export const en = [', ...lines, TAIL].join('\n');
await writeFile('site/src/languages/en.ts', await format(source, { parser: 'typescript', printWidth: 140, singleQuote: true }));
