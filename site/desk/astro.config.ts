import { defineConfig } from 'astro/config';
import { mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

const outDir = resolve(process.env['DESK_OUT'] ?? 'dist/desk');
// Each build has a cache of its own beside its output, so that several can run at once; Astro bundles there only from within the working folder.
const cacheDir = `${outDir}.cache`;
mkdirSync(dirname(outDir), { recursive: true });
process.chdir(dirname(outDir));

/** Static shells, one address a screen; each screen's script talks to the API of the same origin. */
export default defineConfig({
  base: '/desk',
  outDir,
  cacheDir,
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'never' },
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
  markdown: { syntaxHighlight: false },
  vite: {
    cacheDir: resolve(cacheDir, 'vite'),
    build: { assetsInlineLimit: 0 },
    environments: { prerender: { resolve: { noExternal: true } } },
  },
});
