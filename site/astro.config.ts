import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import { mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { rootOf } from './src/languages/side-by-side.js';
import { texts } from './src/languages/texts.js';
import { pictures } from './src/pictures/pictures.js';
import { samePages } from './src/release/same-pages.js';

const { PUBLIC_URL, SITE_OUT, SITE_LANGUAGE = 'en', SITE_LANGUAGES = SITE_LANGUAGE, HOUSE_TEXTS = '' } = process.env;
const root = rootOf(SITE_LANGUAGE, SITE_LANGUAGES.split(','));
const outDir = resolve(SITE_OUT ?? 'dist/site');
// Each build has a cache of its own beside its output, so that several can run at once.
const cacheDir = `${outDir}.cache`;

// Astro renders from a bundle beside the output, but only when the output lies within the working folder; else every build would share one
// folder and overwrite the bundle of another. The bundle carries its packages (noExternal), as no node_modules may lie above it.
mkdirSync(dirname(outDir), { recursive: true });
process.chdir(dirname(outDir));

/** Variants have one lasting address; their pages within an edition, superseded revisions and what is made to be embedded are not for search engines. */
const isLasting = (page: string) => !/\/editions\/[^/]+\/(variants|revisions)\/|\/embed\//.test(page);

export default defineConfig({
  ...(PUBLIC_URL && { site: PUBLIC_URL }),
  outDir,
  base: root,
  cacheDir,
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'never', concurrency: 8 },
  integrations: [texts(SITE_LANGUAGE, HOUSE_TEXTS), samePages(), pictures(), ...(PUBLIC_URL ? [sitemap({ filter: isLasting })] : [])],
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
    cacheDir: resolve(cacheDir, 'vite'),
    build: { assetsInlineLimit: 0 },
    environments: { prerender: { resolve: { noExternal: true } } },
  },
});
