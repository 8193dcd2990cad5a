import { say } from '../words/say.js';
import type { EditionDocument } from '../../../api/contract/documents/release-documents.js';
import type { Release } from './load-release.js';

/** The schema.org description of a release as a dataset, with the tables that a page shows, for search engines and catalogues of data. */
export function datasetOf({ summary, address }: Release, documents: EditionDocument[], site: URL | undefined): object {
  const [{ house, edition, isDemo }] = documents as [EditionDocument];
  const categories = new Map(documents.flatMap(({ scheme }) => scheme.categories).map(({ name, unit }) => [name, unit]));
  const absolute = (path: string) => (site ? new URL(path, site).href : path);
  const file = (path: string, format: string) => ({
    '@type': 'DataDownload',
    contentUrl: absolute(address + path),
    encodingFormat: format,
  });
  return {
    '@context': 'https://schema.org',
    '@type': 'Dataset',
    name: `${house}: ${edition.name}`,
    description: say`${isDemo ? say`Invented figures for demonstration. ` : ''}Test results and standings of fishing lines, ${edition.name}, with every specimen behind each figure.`,
    url: absolute(`/editions/${edition.slug}/`),
    identifier: `urn:sha256:${summary.digest}`,
    version: String(summary.revision),
    datePublished: summary.publishedAt,
    temporalCoverage: `${edition.openedOn}/${edition.closedOn}`,
    creator: { '@type': 'Organization', name: house },
    isAccessibleForFree: true,
    variableMeasured: [...categories].map(([name, unit]) => ({ '@type': 'PropertyValue', name, unitText: unit })),
    distribution: [
      file('bundle.json', 'application/json'),
      file('csv/standings.csv', 'text/csv'),
      file('csv/results.csv', 'text/csv'),
      file('csv/readings.csv', 'text/csv'),
    ],
  };
}
