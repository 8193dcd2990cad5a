import { stringify } from 'csv-stringify/sync';
import type { CategoryDocument, EditionDocument, VariantDocument } from '../../public-api/release-documents.schemas.js';
import type { ReleaseFile } from '../release-files.js';

/** RFC 4180 with a header; a cell that a spreadsheet would take for a formula is neutralised. */
const csvFile = (path: string, columns: readonly string[], rows: readonly (readonly (string | number | null)[])[]): ReleaseFile => ({
  path,
  mediaType: 'text/csv; charset=utf-8',
  content: stringify(rows as unknown[][], { header: true, columns: [...columns], escape_formulas: true, record_delimiter: 'windows' }),
});

/** The tables of a release for spreadsheets. */
export function csvFiles(
  edition: EditionDocument,
  categories: readonly CategoryDocument[],
  variants: readonly VariantDocument[],
): ReleaseFile[] {
  const codes = edition.scheme.categories.map(({ code }) => code);
  return [
    csvFile(
      'csv/standings.csv',
      ['place', 'place if included', 'variant', 'maker', 'line', 'size', 'colour', 'score', ...codes.map((code) => `place in ${code}`)],
      edition.overall.map(({ place, placeIfIncluded, variant, score, categoryPlaces }) => [
        place,
        placeIfIncluded,
        variant.slug,
        variant.maker.name,
        variant.line.name,
        variant.size,
        variant.colour,
        score,
        ...codes.map((code) => categoryPlaces[code] ?? null),
      ]),
    ),
    csvFile(
      'csv/results.csv',
      ['category', 'variant', 'place', 'value', 'low 95 %', 'high 95 %', 'unit', 'specimens', 'submissions', 'testers', 'rigs'],
      categories.flatMap(({ category, rows }) =>
        rows.map(({ variant, place, figure }) => [
          category.code,
          variant.slug,
          place,
          figure.value,
          figure.low,
          figure.high,
          figure.unit,
          figure.specimens,
          figure.submissions,
          figure.testers,
          figure.rigs,
        ]),
      ),
    ),
    csvFile(
      'csv/specimens.csv',
      [
        'variant',
        'submission',
        'method',
        'version',
        'rig',
        'bench day',
        'specimen',
        'condition',
        'state',
        'reason',
        'reading',
        'station',
        'entered',
        'entered unit',
        'value',
        'unit',
      ],
      variants.flatMap(({ variant, submissions }) =>
        submissions.flatMap((submission) =>
          submission.specimens.flatMap((specimen) =>
            specimen.readings.map((reading) => [
              variant.slug,
              submission.reference,
              submission.method,
              submission.methodVersion,
              submission.rig,
              submission.benchDay,
              specimen.number,
              specimen.condition,
              specimen.state,
              specimen.reason,
              reading.role,
              reading.station,
              reading.entered.text,
              reading.entered.unit,
              reading.value,
              reading.unit,
            ]),
          ),
        ),
      ),
    ),
  ];
}
