import { createRequire } from 'node:module';

/** Finds packages of the project: the bundle that renders pages lies elsewhere, and a package with a program of its own cannot be bundled. */
export const fromProject = createRequire(process.env['SITE_PROJECT'] ?? import.meta.url);
