import type { AstroIntegration } from 'astro';
import { rename } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

/** Astro looks for the compiled program by this name. */
const ENTRY = 'prerender-entry';
const PROGRAM = fileURLToPath(new URL('render-site.ts', import.meta.url));

/** Compiles the site and renders none of it: the program that renders a release is kept, beside what browsers load. */
export function keptProgram(): AstroIntegration {
  let outDir: URL;
  return {
    name: 'kept-program',
    hooks: {
      'astro:config:done': ({ config }) => {
        ({ outDir } = config);
      },
      'astro:build:setup': ({ updateConfig }) => {
        const rolldownOptions = { input: { [ENTRY]: PROGRAM }, output: { entryFileNames: '[name].mjs' } };
        updateConfig({ environments: { prerender: { build: { rolldownOptions } } } });
      },
      'astro:build:start': ({ setPrerenderer }) => {
        setPrerenderer({
          name: 'kept-program',
          // All is compiled by now; what lies here is taken away once the pages are rendered, of which there are none.
          getStaticPaths: async () => {
            await rename(new URL('.prerender/', outDir), new URL('../pages/', outDir));
            return [];
          },
          render: () => Promise.reject(new Error('A page is rendered by the kept program.')),
        });
      },
    },
  };
}
