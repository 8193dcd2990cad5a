// The direction of imports, as a program: `npm run architecture`. tests/architecture feeds each rule an import that it must refuse.

const { readdirSync } = require('node:fs');
const { join } = require('node:path');

/** Rooms without database, clock, network or chance, each leaning on those before it only. */
const PURE = 'measurement|contract|readings|checks|reckoning';
/** What every feature writes beside its own tables: who did what, what a row said before, who read a key. It leans on no feature. */
const RECORD = 'audit';
/** Every other room but the plumbing and the description of the API: a new one is a feature from its first day. */
const FEATURES = readdirSync(join(__dirname, '../api'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && !['platform', 'openapi', RECORD, ...PURE.split('|')].includes(entry.name))
  .map(({ name }) => name)
  .join('|');
/** What the measurement core may lean on: pure number libraries, no I/O. */
const NUMBER_LIBRARIES = '^node_modules/(@stdlib/|decimal\\.js/|pure-rand/)';
/** Pure parts of the plumbing: the shape of a fault and a digest. */
const PLAIN_PLUMBING = '^api/platform/(errors/problem|identifiers/identifiers)\\.ts$';

/** Stores that another feature writes through, because one act changes both and a table has one writer. */
const SHARED_STORES = [
  // A decision moves the state of the submission that it is about.
  '^api/submissions/submissions\\.store\\.ts$',
  // Checks, traces and control pulls find; reviewers answer.
  '^api/findings/findings\\.store\\.ts$',
  // A review is a decision, a question or a claim on record, which submissions and proposals read.
  '^api/decisions/decisions\\.store\\.ts$',
  // Handing in takes a running number under the edition's lock; the board closes it, its first release publishes it.
  '^api/editions/editions\\.store\\.ts$',
  // A result that is tested again goes back on the shelf under a new code.
  '^api/catalogue/spools/spools\\.store\\.ts$',
];

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    {
      name: 'measurement-stands-alone',
      comment: 'The figures must be checkable by a reader who knows nothing else of the program, and repeatable on any machine.',
      severity: 'error',
      from: { path: '^api/measurement/' },
      to: { pathNot: ['^api/measurement/', NUMBER_LIBRARIES] },
    },
    {
      name: 'tables-behind-stores-and-read-models',
      comment: 'Each table has one writer, so its rules are kept in one file and a change of the schema is felt in few.',
      severity: 'error',
      from: { path: '^api/', pathNot: ['\\.store\\.ts$', '\\.read-model\\.ts$', '^api/platform/database/'] },
      to: { path: ['^node_modules/(@prisma|\\.prisma|prisma)/', '^api/platform/database/generated/'] },
    },
    {
      name: 'stories-know-no-caller',
      comment: 'Nouns and verbs tell the work; who calls them (HTTP, a job, the wiring) may change without them.',
      severity: 'error',
      from: { path: `^api/(${FEATURES})/`, pathNot: '\\.(controller|job|module)\\.ts$' },
      to: { path: '^api/.*\\.(controller|job|module)\\.ts$' },
    },
    {
      name: 'controllers-change-nothing',
      comment: 'What is written together stands in one verb, which a job or another route may call as well.',
      severity: 'error',
      from: { path: '\\.controller\\.ts$' },
      to: { path: ['^api/platform/database/', `^api/(${FEATURES})/.*\\.store\\.ts$`] },
    },
    {
      name: 'contract-runs-anywhere',
      comment:
        'Site, desk and clients load the contract in a browser as it is: zod, plain types, and the table of units that it validates by.',
      severity: 'error',
      from: { path: '^api/contract/' },
      to: { pathNot: ['^api/contract/', '^api/measurement/(units/|errors\\.ts$)', '^node_modules/zod/'] },
    },
    {
      name: 'readings-know-no-feature',
      comment: 'What a reading, a specimen, a series is holds whoever asks; it is read without a database.',
      severity: 'error',
      from: { path: '^api/readings/' },
      to: { pathNot: ['^api/(readings|contract|measurement)/', PLAIN_PLUMBING, '^node_modules/canonicalize/'] },
    },
    {
      name: 'checks-judge-what-they-are-given',
      comment: 'A check is a pure rule on what was handed in: it knows the content and figures of a submission, and no feature.',
      severity: 'error',
      from: { path: '^api/checks/' },
      to: { pathNot: ['^api/(checks|readings|contract|measurement)/', PLAIN_PLUMBING] },
    },
    {
      name: 'reckoning-computes-from-inputs',
      comment: 'A release is a pure function of its inputs, so that anybody computes it again with verify.mjs alone.',
      severity: 'error',
      from: { path: '^api/reckoning/' },
      to: {
        pathNot: [
          '^api/(reckoning|readings|contract|measurement)/',
          PLAIN_PLUMBING,
          NUMBER_LIBRARIES,
          '^node_modules/(zod|canonicalize|csv-stringify|fflate)/',
        ],
      },
    },
    {
      name: 'features-meet-at-read-models',
      comment:
        "A feature reads another's facts through its read model, so its inner shape stays free; it writes another's table through that table's one store. Modules wire modules.",
      severity: 'error',
      from: { path: `^api/(${FEATURES})/` },
      to: {
        path: `^api/(${FEATURES})/`,
        pathNot: ['^api/$1/', '\\.read-model\\.ts$', '\\.module\\.ts$', ...SHARED_STORES],
      },
    },
    {
      name: 'record-knows-no-feature',
      comment: 'Every feature writes into it; what leaned on one of them could be used by none that this one leans on.',
      severity: 'error',
      from: { path: `^api/${RECORD}/` },
      to: { path: `^api/(${FEATURES})/` },
    },
    {
      name: 'public-pages-read-releases-only',
      comment: 'What the public sees was published and signed; nothing that is still open can leak into it.',
      severity: 'error',
      from: { path: '^api/public-api/' },
      to: { path: `^api/(?!releases/|public-api/)(${FEATURES}|${RECORD}|readings|checks|reckoning)/` },
    },
    {
      name: 'platform-knows-no-feature',
      comment:
        'Plumbing without a word of the domain can be understood, tested and replaced alone. Who may call what is typed by the roles of the contract.',
      severity: 'error',
      from: { path: '^api/platform/' },
      to: { path: [`^api/(${FEATURES}|${RECORD}|${PURE})/`], pathNot: '^api/contract/(body-sizes|order-state|problem|roles)\\.ts$' },
    },
    {
      name: 'site-speaks-http',
      comment: 'The site is built from what anybody can fetch; it shares the shape of the public documents and nothing else.',
      severity: 'error',
      from: { path: '^site/', pathNot: '^site/src/weigh/' },
      to: { path: ['^api/', '^prisma/'], pathNot: '^api/contract/' },
    },
    {
      name: 'own-weights-take-the-core-alone',
      comment:
        "A reader's own weights are put together by the very code that makes the published score, and by nothing else of the program.",
      severity: 'error',
      from: { path: '^site/src/weigh/' },
      to: { path: ['^api/', '^prisma/'], pathNot: ['^api/measurement/', '^api/contract/'] },
    },
    {
      name: 'site-computes-nothing',
      comment: 'Every figure arrives finished; a second computation would sooner or later disagree with the first.',
      severity: 'error',
      from: { path: '^site/' },
      to: { path: NUMBER_LIBRARIES },
    },
    {
      name: 'site-and-desk-meet-in-the-look',
      comment:
        'One is built for each release, the other once for a version of the program: what both show is in site/look/ and leans on neither.',
      severity: 'error',
      from: { path: '^site/(src|desk|look)/' },
      to: { path: '^site/(src|desk)/', pathNot: '^site/$1/' },
    },
    {
      name: 'program-knows-no-test',
      comment: 'What runs for users must not depend on what runs for us.',
      severity: 'error',
      from: { path: '^(api|site|prisma)/' },
      to: { path: '^tests/' },
    },
    {
      name: 'program-needs-no-development-package',
      comment: 'An installation without development packages must run.',
      severity: 'error',
      from: { path: '^(api|prisma)/' },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'no-cycle',
      comment: 'In a cycle no file can be read, tested or moved first.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'names-say-what',
      comment: 'A folder called utils or a file called *.service.ts gathers everything and explains nothing; name the work.',
      severity: 'error',
      from: {},
      to: {
        path: ['/(utils|util|common|helpers|helper)/', '(\\.service|-impl|-manager|-utils|-util|-helpers|-helper)\\.ts$'],
        pathNot: '^node_modules/',
      },
    },
    {
      name: 'imports-lead-somewhere',
      comment: 'An import that cannot be followed cannot be judged by the other rules.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: ['^astro:', '^virtual:'] },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    exclude: { path: ['^site/(desk/)?(\\.astro|dist)/', '^(tests/clients|site/src/examples)/'] },
    doNotFollow: { path: ['^node_modules/', '^api/platform/database/generated/'] },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.cjs', '.json', '.astro'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
