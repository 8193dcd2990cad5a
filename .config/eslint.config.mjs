import tseslint from 'typescript-eslint';

const NUMBERS_ONLY = { allowNumber: true, allowBoolean: false, allowAny: false, allowNullish: false };

export default tseslint.config(
  {
    ignores: [
      '**/node_modules/',
      'api/platform/database/generated/',
      '**/*.mjs',
      '**/*.cjs',
      '.data/',
      'coverage/',
      'dist/',
      'site/.astro/',
      'tests/clients/',
      'site/src/examples/',
      'site/public/',
      'site/desk/.astro/',
      'site/desk/public/',
    ],
  },
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { project: './tsconfig.json', tsconfigRootDir: new URL('..', import.meta.url).pathname } },
    rules: {
      // Numbers are what this program writes; a template may hold them.
      '@typescript-eslint/restrict-template-expressions': ['error', NUMBERS_ONLY],
      // Nest's modules are classes that carry nothing but their decorator.
      '@typescript-eslint/no-extraneous-class': ['error', { allowWithDecorator: true }],
      // `(resolve) => server.close(resolve)` reads well, whatever close answers.
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // Nest declares its options as classes and takes plain objects.
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      // One file reads the environment, checks it and hands it on.
      'no-restricted-properties': [
        'error',
        { object: 'process', property: 'env', message: 'Only api/config.ts reads the environment; take CONFIG.' },
      ],
      'max-lines': ['error', { max: 300, skipBlankLines: false, skipComments: false }],
      eqeqeq: 'error',
      'prefer-const': 'error',
      'no-console': 'error',
    },
  },
  {
    // The site has a compiler configuration of its own: it runs in browsers and in Astro.
    files: ['site/**'],
    languageOptions: { parserOptions: { project: './site/tsconfig.json' } },
  },
  {
    // The desk runs in browsers alone, and has JSX.
    files: ['site/desk/src/**'],
    languageOptions: { parserOptions: { project: './site/desk/tsconfig.json' } },
  },
  {
    // Programs that a person or the platform starts: they read the environment and talk to the terminal.
    files: [
      'api/config.ts',
      'api/start.ts',
      'api/main.ts',
      'api/worker.ts',
      'api/in-program.ts',
      'api/invite-first-admin.ts',
      'api/let-admin-in.ts',
      'api/backup-command.ts',
      'api/new-signing-key.ts',
      'api/rebuild-files-command.ts',
      'api/platform/start-up/**',
      'api/platform/embedded-postgres/**',
      'api/platform/migrations/**',
      'api/platform/logger/**',
      'site/astro.config.ts',
      'site/desk/astro.config.ts',
      'site/src/release/fetch-bytes.ts',
      'site/src/languages/written-in.ts',
      'site/src/rendering/render-site.ts',
      'prisma/**',
      'tests/**',
      '.config/**',
    ],
    rules: { 'no-restricted-properties': 'off', 'no-console': 'off' },
  },
  {
    files: [
      'api/contract/**/*.ts',
      'site/src/languages/en.ts',
      'tests/checks/check-cases.ts',
      'tests/measurement/ranking/rank-with-uncertainty.test.ts',
    ],
    // Tables of data: their length is the number of fields, or of cases.
    rules: { 'max-lines': 'off' },
  },
  {
    files: ['api/**', 'prisma/**'],
    rules: { 'max-lines-per-function': ['error', { max: 40, skipBlankLines: true, skipComments: true }] },
  },
  {
    // Loops over arrays of numbers whose length was checked at the door: `x[i]!` says so where `?? 0` would hide a fault.
    files: ['api/measurement/**', 'site/src/weigh/**'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' },
  },
  {
    files: ['tests/**'],
    rules: {
      // Tests look into answers and reference files whose shape is the thing under test.
      '@typescript-eslint/no-explicit-any': 'off',
      // The linter's compiler is older than the one that checks types, and the two differ on such assertions.
      '@typescript-eslint/no-unnecessary-type-assertion': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
      '@typescript-eslint/restrict-plus-operands': 'off',
      '@typescript-eslint/restrict-template-expressions': 'off',
      // A generator of chunks is asynchronous in shape alone.
      '@typescript-eslint/require-await': 'off',
    },
  },
);
