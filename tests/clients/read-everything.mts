/** Reads every public document by the client that is made from the description, without a cast, and prints the addresses that it read. */
import { fairpull } from './fairpull.mjs';

const [, , address = ''] = process.argv;
const api = fairpull(address);
const read: string[] = [];

/** What an answer holds. @throws Error with the problem that came instead */
function got<Data>(path: string, { data, error }: { data?: Data; error?: { code: string; detail?: string | undefined } }): Data {
  if (data === undefined) throw new Error(`${path}: ${error?.code ?? 'no answer'} ${error?.detail ?? ''}`);
  read.push(path);
  return data;
}

const releases = got('/v1/releases', await api.GET('/v1/releases'));
const editions = got('/v1/editions', await api.GET('/v1/editions'));
const keys = got('/v1/signing-keys', await api.GET('/v1/signing-keys'));
const changes = got('/v1/changes', await api.GET('/v1/changes', { params: { query: { after: 0, limit: 1000 } } }));
const makers = got('/v1/makers', await api.GET('/v1/makers'));
const lines = got('/v1/lines', await api.GET('/v1/lines'));
const checks = got('/v1/checks', await api.GET('/v1/checks'));
const problems = got('/v1/problems', await api.GET('/v1/problems'));
const columns = got('/v1/submissions/csv-columns', await api.GET('/v1/submissions/csv-columns'));
const actions = got('/v1/submission-actions', await api.GET('/v1/submission-actions'));
const commitments = got('/v1/commitments', await api.GET('/v1/commitments'));

const [release] = editions.items;
if (!release) throw new Error('No edition is published.');
const { edition, revision } = release;
const inEdition = { params: { path: { edition } } };
const inRelease = { params: { path: { edition, revision } } };
const manifest = got('manifest', await api.GET('/v1/releases/{edition}/{revision}/manifest.json', inRelease));
const signature = got('signature', await api.GET('/v1/releases/{edition}/{revision}/signature.json', inRelease));
const file = await api.GET('/v1/releases/{edition}/{revision}/{path}', {
  params: { path: { ...inRelease.params.path, path: 'README.md' } },
  parseAs: 'text',
});
const readme: string = file.data ?? '';

const document = got('edition', await api.GET('/v1/editions/{edition}', inEdition));
if (!('divisions' in document)) throw new Error('The edition has one division; this one was to have several.');
const [{ slug: division } = { slug: '' }] = document.divisions;
const inDivision = { params: { path: { edition, division } } };
const divided = got('division', await api.GET('/v1/editions/{edition}/divisions/{division}', inDivision));
const standings = got('overall', await api.GET('/v1/editions/{edition}/divisions/{division}/standings', inDivision));
const [category] = divided.scheme.categories;
if (!category) throw new Error('The scheme has no category.');
const inCategory = { params: { path: { edition, division, category: category.code } } };
const table = got('category', await api.GET('/v1/editions/{edition}/divisions/{division}/standings/{category}', inCategory));
const records = got('records', await api.GET('/v1/editions/{edition}/divisions/{division}/records', inDivision));
const pairs = got('pairs', await api.GET('/v1/editions/{edition}/divisions/{division}/pairs', inDivision));
const withdrawn = got('withdrawn', await api.GET('/v1/editions/{edition}/withdrawn', inEdition));
const claims = got('claims', await api.GET('/v1/editions/{edition}/claims', inEdition));
const roundRobins = got('round robins', await api.GET('/v1/editions/{edition}/round-robins', inEdition));
const retests = got('retests', await api.GET('/v1/editions/{edition}/retest-results', inEdition));
const rigs = got('rigs', await api.GET('/v1/editions/{edition}/rigs', inEdition));
const catalogue = got('catalogue', await api.GET('/v1/editions/{edition}/catalogue', inEdition));

const [first] = divided.overall;
if (!first) throw new Error('Nobody has a place.');
const variant = first.variant.slug;
const inVariant = { params: { path: { edition, variant } } };
const ofVariant = { params: { path: { variant } } };
const page = got('variant in edition', await api.GET('/v1/editions/{edition}/variants/{variant}', inVariant));
const provenance = got('provenance', await api.GET('/v1/editions/{edition}/variants/{variant}/provenance', inVariant));
const newest = got('variant', await api.GET('/v1/variants/{variant}', ofVariant));
const history = got('history', await api.GET('/v1/variants/{variant}/history', ofVariant));
const specimens = got('specimens', await api.GET('/v1/variants/{variant}/specimens', ofVariant));
const [pinned] = catalogue.methods;
if (!pinned) throw new Error('The edition pins no method.');
const method = { params: { path: { method: pinned.slug, number: pinned.number } } };
const wording = got('method', await api.GET('/v1/methods/{method}/versions/{number}', method));

/** Fields from the depth of each document, by their own types: a field that is missing or of another type does not compile. */
const texts: readonly string[] = [
  releases.items.map(({ digest }) => digest).join(),
  keys.items.map(({ fingerprint }) => fingerprint).join(),
  changes.items.map(({ kind, erratum }) => `${kind} ${erratum?.changes.length ?? 0}`).join(),
  makers.items.flatMap((one) => one.lines.flatMap(({ variants }) => variants.map(({ slug }) => slug))).join(),
  lines.items.map(({ maker }) => maker.name).join(),
  checks.items.map(({ code }) => code).join(),
  problems.items.map(({ explains }) => explains).join(),
  columns.items.map(({ name }) => name).join(),
  manifest.files.map(({ sha256 }) => sha256).join(),
  signature.publicKey,
  readme,
  standings.overall.map(({ score }) => score).join(),
  table.rows.map(({ figure }) => `${figure.value} ${figure.unit} ${figure.low ?? ''}`).join(),
  rigs.instruments.flatMap(({ charts }) => charts.flatMap(({ points }) => points.map(({ benchDay }) => benchDay))).join(),
  page.submissions.flatMap(({ specimens: pulled }) => pulled.flatMap(({ readings }) => readings.map(({ role }) => role))).join(),
  provenance.figures.map(({ quantity, figure }) => `${quantity} ${figure?.value ?? ''}`).join(),
  `${newest.variant.line.name} ${newest.variant.size}`,
  history.history.map((one) => one.edition).join(),
  specimens.submissions.map(({ reference }) => reference).join(),
  wording.purpose,
];
const counts: readonly number[] = [
  actions.items,
  commitments.items,
  claims.items,
  roundRobins.items,
  retests.pairs,
  withdrawn.items,
  records.records,
  pairs.variants,
].map(({ length }) => length);
process.stdout.write(JSON.stringify({ read, texts: texts.map(({ length }) => length), counts }));
