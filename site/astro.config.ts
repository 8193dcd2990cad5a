import { defineConfig } from 'astro/config';
import { mkdirSync, realpathSync } from 'node:fs';
import { resolve } from 'node:path';
import { rootOf } from './src/languages/side-by-side.js';
import { texts } from './src/languages/texts.js';
import { keptProgram } from './src/rendering/kept-program.js';

const { SITE_PROGRAM = 'dist/site', SITE_LANGUAGE = 'en', SITE_LANGUAGES = SITE_LANGUAGE, HOUSE_TEXTS = '' } = process.env;

// Astro compiles into a folder beside its output, but only when the output lies within the working folder; else all that compile would share
// one folder. The program carries its packages (noExternal), as no node_modules may lie above it.
mkdirSync(SITE_PROGRAM, { recursive: true });
const program = realpathSync(SITE_PROGRAM);
process.chdir(program);

/** Compiles the site; `src/rendering/render-site.ts` renders it, release by release. */
export default defineConfig({
  outDir: resolve(program, 'client'),
  base: rootOf(SITE_LANGUAGE, SITE_LANGUAGES.split(',')),
  cacheDir: resolve(program, 'cache'),
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'never' },
  integrations: [texts(SITE_LANGUAGE, HOUSE_TEXTS), keptProgram()],
  image: { service: { entrypoint: 'astro/assets/services/noop' } },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
      ],
    },
  },
  devToolbar: { enabled: false },
  // No code is highlighted; the default highlighter would need inline styles.
  markdown: { syntaxHighlight: false },
  vite: {
    cacheDir: resolve(program, 'cache/vite'),
    build: { assetsInlineLimit: 0 },
    environments: { prerender: { resolve: { noExternal: true } } },
  },
});
