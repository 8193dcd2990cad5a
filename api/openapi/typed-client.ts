import { build } from 'esbuild';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { OpenAPIObject } from '@nestjs/swagger';

const require = createRequire(import.meta.url);
const ENTRY = `
import createClient from 'openapi-fetch';
/** A client of the house at an address: every path, field and answer of its description has its type. */
export const fairpull = (address, options = {}) => createClient({ ...options, baseUrl: String(address).replace(/\\/+$/, '') });
`;
const DECLARED = `
/** A client of the house at an address: every path, field and answer of its description has its type. */
export declare const fairpull: (address: string | URL, options?: Omit<ClientOptions, 'baseUrl'>) => Client<paths>;
`;

/** A client for programs: one ES module that needs nothing else, and its types. */
export interface TypedClient {
  readonly module: string;
  readonly types: string;
}

/** Makes the client of a description. */
export async function typedClient(description: OpenAPIObject): Promise<TypedClient> {
  const [module, types] = await Promise.all([bundled(), typesOf(description)]);
  return { module, types };
}

async function bundled(): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: ENTRY, resolveDir: import.meta.dirname },
    bundle: true,
    write: false,
    platform: 'browser',
    target: 'es2022',
    format: 'esm',
    legalComments: 'inline',
  });
  return outputFiles[0]?.text ?? '';
}

async function typesOf(description: OpenAPIObject): Promise<string> {
  const { astToString, default: openapiTS } = await import('openapi-typescript');
  // It reads the document as data, and may write into what it reads.
  const described = astToString(await openapiTS(JSON.stringify(description)));
  const parts = ['openapi-typescript-helpers', 'openapi-fetch'].map((name) => readFile(declarationsOf(name), 'utf8'));
  const libraries = (await Promise.all(parts)).map((text) =>
    text.replace(/^import [^;]*;$/gms, '').replace(/export (type )?\{[^}]*\};?/g, ''),
  );
  return [described, ...libraries.map((text) => text.replace(/^\/\/# sourceMappingURL.*$/gm, '')), DECLARED].join('\n');
}

const declarationsOf = (name: string): string => require.resolve(name).replace(/index\.[cm]?js$/, 'index.d.mts');
