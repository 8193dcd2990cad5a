import { stringify } from 'csv-stringify/sync';
import type { CategoryDocument, EditionDocument, VariantDocument } from '../../public-api/release-documents.schemas.js';
import type { ReleaseFile } from '../release-files.js';

type Cell = string | number | null;

/** RFC 4180 with a header; a cell that a spreadsheet would take for a formula is neutralised. */
const csvFile = (path: string, rows: readonly Readonly<Record<string, Cell>>[], columns: readonly string[]): ReleaseFile => ({
  path,
  mediaType: 'text/csv; charset=utf-8',
  content: stringify([...rows], { header: true, columns: [...columns], escape_formulas: true, record_delimiter: 'windows' }),
});

/** The tables of a release for spreadsheets. */
export const csvFiles = (
  edition: EditionDocument,
  categories: readonly CategoryDocument[],
  variants: readonly VariantDocument[],
): ReleaseFile[] => [standingsFile(edition), resultsFile(categories), specimensFile(variants)];

function standingsFile(edition: EditionDocument): ReleaseFile {
  const codes = edition.scheme.categories.map(({ code }) => code);
  const rows = edition.overall.map(({ place, placeIfIncluded, variant, score, categoryPlaces }) => ({
    place,
    'place if included': placeIfIncluded,
    variant: variant.slug,
    maker: variant.maker.name,
    line: variant.line.name,
    size: variant.size,
    colour: variant.colour,
    score,
    ...Object.fromEntries(codes.map((code) => [`place in ${code}`, categoryPlaces[code] ?? null])),
  }));
  const columns = [
    'place',
    'place if included',
    'variant',
    'maker',
    'line',
    'size',
    'colour',
    'score',
    ...codes.map((code) => `place in ${code}`),
  ];
  return csvFile('csv/standings.csv', rows, columns);
}

const RESULT_COLUMNS = [
  'category',
  'variant',
  'place',
  'value',
  'low 95 %',
  'high 95 %',
  'unit',
  'specimens',
  'submissions',
  'testers',
  'rigs',
];

function resultsFile(categories: readonly CategoryDocument[]): ReleaseFile {
  const rows = categories.flatMap(({ category, rows: standings }) =>
    standings.map(({ variant, place, figure }) => ({
      category: category.code,
      variant: variant.slug,
      place,
      value: figure.value,
      'low 95 %': figure.low,
      'high 95 %': figure.high,
      unit: figure.unit,
      specimens: figure.specimens,
      submissions: figure.submissions,
      testers: figure.testers,
      rigs: figure.rigs,
    })),
  );
  return csvFile('csv/results.csv', rows, RESULT_COLUMNS);
}

const SPECIMEN_COLUMNS = [
  ...['variant', 'submission', 'method', 'version', 'rig', 'bench day', 'specimen', 'condition', 'state', 'reason'],
  ...['reading', 'station', 'entered', 'entered unit', 'value', 'unit'],
];

function specimensFile(variants: readonly VariantDocument[]): ReleaseFile {
  const rows = variants.flatMap(({ variant, submissions }) =>
    submissions.flatMap(({ reference, method, methodVersion, rig, benchDay, specimens }) => {
      const shared = { variant: variant.slug, submission: reference, method, version: methodVersion, rig, 'bench day': benchDay };
      return specimens.flatMap(({ number, condition, state, reason, readings }) =>
        readings.map(({ role, station, entered, value, unit }) => ({
          ...shared,
          specimen: number,
          condition,
          state,
          reason,
          reading: role,
          station,
          entered: entered.text,
          'entered unit': entered.unit,
          value,
          unit,
        })),
      );
    }),
  );
  return csvFile('csv/specimens.csv', rows, SPECIMEN_COLUMNS);
}
