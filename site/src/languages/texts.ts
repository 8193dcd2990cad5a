import type { AstroIntegration } from 'astro';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { messagesIn } from './messages.js';
import { putWords } from './put-words.js';
import { readWords } from './read-words.js';

const SOURCES = fileURLToPath(new URL('..', import.meta.url));
const HERE = fileURLToPath(new URL('.', import.meta.url));
const isOurs = (id: string): boolean => id.startsWith(SOURCES) && /\.(astro|ts)$/.test(id) && !id.startsWith(HERE);

/** Compiles the site in the language of a house, with the house's own words where it has some. */
export function texts(language: string, folder: string): AstroIntegration {
  const words = readWords(language, folder);
  const unused = new Set(Object.keys(words));
  /** In place of a source, before anything else sees it: the same in these words. */
  const load = (id: string): string | undefined => {
    if (!isOurs(id)) return undefined;
    const source = readFileSync(id, 'utf8');
    for (const message of messagesIn(id, source)) unused.delete(message.words);
    return putWords(id, source, words);
  };
  return {
    name: 'texts',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        if (unused.size > 0) updateConfig({ vite: { plugins: [{ name: 'texts', enforce: 'pre', load }] } });
      },
      'astro:build:done': () => {
        const missing = [...unused].map((one) => `words “${one}”`);
        if (missing.length > 0)
          throw new Error(`The site has no ${missing.join(', no ')}. Take it out of HOUSE_TEXTS, or write it as the site has it.`);
      },
    },
  };
}
