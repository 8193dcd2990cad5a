import { readdirSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';

/** What the contract comes to where there is the language and nothing else. */
interface Contract {
  readonly content: {
    readonly safeParse: (typed: unknown) => { readonly success: boolean; readonly error?: { readonly issues: unknown[] } };
  };
  readonly roles: readonly string[];
}

test('the contract runs in a browser as it is', async () => {
  const files = readdirSync('api/contract', { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
  const all = files.map((name, index) => `import * as file${index} from './${name}'; held.push(file${index});`);
  const { outputFiles, warnings } = await build({
    stdin: {
      contents: `const held = [];\n${all.join('\n')}
        export { submissionContent as content } from './submission-content.ts';\nexport { ROLES as roles } from './roles.ts';`,
      resolveDir: 'api/contract',
      loader: 'ts',
    },
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    globalName: 'contract',
  });
  expect(warnings).toEqual([]);
  const { content, roles } = runInNewContext(`${outputFiles[0]?.text ?? ''}; contract`) as Contract;
  expect([...roles]).toContain('tester');
  expect(content.safeParse({}).error?.issues.length).toBeGreaterThan(3);
});
