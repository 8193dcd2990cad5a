// The direction of imports, as a program: `npm run architecture`. tests/architecture feeds each rule an import that it must refuse.

/** Features in the order of the work; each is a folder of api/. */
const FEATURES =
  'accounts|proposals|catalogue|instruments|methods|control-pulls|round-robins|submissions|checks|reviews|retests|editions|releases|public-api|audit';
/** What the measurement core may lean on: pure number libraries, no I/O. */
const NUMBER_LIBRARIES = '^node_modules/(@stdlib/|decimal\\.js/|pure-rand/)';

/** What features take from one another beside read models. */
const COMMON = [
  '\\.read-model\\.ts$',
  '^api/audit/audit-trail\\.store\\.ts$',
  '^api/accounts/(actor|role)\\.ts$',
  '^api/public-api/[^/]+\\.schemas\\.ts$',
  // Evidence is what leaves a feature for good, as plain JSON; a release computes an edition from it anew.
  '-evidence\\.ts$',
  '^api/editions/(compute-edition|known-effects|certainty|eligibility|results|measured|series|quantity|estimate|editions\\.schemas)\\.ts$',
  '^api/control-pulls/(control-charts|chart-document|rig-effect|read-force|rig-kinds)\\.ts$',
  '^api/submissions/(submission-figures|actions|submission)\\.ts$',
  '^api/catalogue/blind-code\\.ts$',
  '^api/round-robins/(report-of|tester-effect)\\.ts$',
  '^api/(methods/(methods|series)|proposals/proposals)\\.schemas\\.ts$',
  '^api/methods/series\\.ts$',
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
      name: 'features-meet-at-read-models',
      comment:
        "A feature reads another's facts through its read model, so its inner shape stays free. Common to all: the audit trail, the actor, the role, the shape of the public documents, and the checks with their list and findings.",
      severity: 'error',
      from: { path: `^api/(${FEATURES})/`, pathNot: ['\\.module\\.ts$', '^api/checks/'] },
      to: {
        path: `^api/(${FEATURES})/`,
        pathNot: ['^api/$1/', '^api/checks/check[^/.]*\\.ts$', '^api/checks/(finding|instruments-for)\\.ts$', ...COMMON],
      },
    },
    {
      name: 'checks-read-submissions-only',
      comment: 'A check is a pure rule on what was handed in: it knows the content and figures of a submission, and no other feature.',
      severity: 'error',
      from: { path: '^api/checks/', pathNot: '\\.module\\.ts$' },
      to: {
        path: `^api/(${FEATURES})/`,
        pathNot: ['^api/checks/', '^api/submissions/(submission-content|submission-figures|readings-si)\\.ts$', ...COMMON],
      },
    },
    {
      name: 'modules-wire-modules',
      comment: "A feature's wiring joins whole features; what it takes out of another by hand is not declared anywhere.",
      severity: 'error',
      from: { path: `^api/(${FEATURES})/.*\\.module\\.ts$` },
      to: {
        path: `^api/(${FEATURES})/`,
        pathNot: ['^api/$1/', '\\.module\\.ts$', '\\.read-model\\.ts$', '^api/audit/audit-trail\\.store\\.ts$'],
      },
    },
    {
      name: 'public-pages-read-releases-only',
      comment: 'What the public sees was published and signed; nothing that is still open can leak into it.',
      severity: 'error',
      from: { path: '^api/public-api/' },
      to: { path: `^api/(?!releases/|public-api/)(${FEATURES})/` },
    },
    {
      name: 'platform-knows-no-feature',
      comment: 'Plumbing without a word of the domain can be understood, tested and replaced alone. Wiring of the audit trail apart.',
      severity: 'error',
      from: { path: '^api/platform/' },
      to: { path: [`^api/(${FEATURES})/`, '^api/measurement/'], pathNot: '^api/audit/audit-trail\\.store\\.ts$' },
    },
    {
      name: 'site-speaks-http',
      comment: 'The site is built from what anybody can fetch; it shares the shape of the public documents and nothing else.',
      severity: 'error',
      from: { path: '^site/' },
      to: { path: ['^api/', '^prisma/'], pathNot: '^api/public-api/[^/]+\\.schemas\\.ts$' },
    },
    {
      name: 'site-computes-nothing',
      comment: 'Every figure arrives finished; a second computation would sooner or later disagree with the first.',
      severity: 'error',
      from: { path: '^site/' },
      to: { path: NUMBER_LIBRARIES },
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
    exclude: { path: ['^site/(\\.astro|dist)/'] },
    doNotFollow: { path: ['^node_modules/', '^api/platform/database/generated/'] },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.cjs', '.json', '.astro'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
