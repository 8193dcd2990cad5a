import type { Figure, VariantDocument } from '../../contract/documents/release-documents.js';
import type { Tables } from '../documents/bundle.js';
import type { FileInParts, ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { catalogueTables } from './catalogue-tables.js';
import { CsvText } from './csv-text.js';
import { dataPackageFile } from './data-package.js';
import { evidenceTables } from './evidence-tables.js';
import { standingsTables } from './standings-tables.js';

/** The CSV files of a release: rows are taken from each page as it is made, so that no page has to be kept. */
export class ReleaseTables {
  private readonly catalogue = catalogueTables([]).map((table) => new CsvText(table));
  private readonly evidence = evidenceTables([]).map((table) => new CsvText(table));
  private readonly figures = new Map<string, readonly Figure[]>();
  private all: readonly CsvText[] = [];

  add(variant: VariantDocument): void {
    this.figures.set(variant.variant.slug, variant.figures);
    catalogueTables([variant]).forEach(({ rows }, i) => this.catalogue[i]?.add(rows));
    evidenceTables([variant]).forEach(({ rows }, i) => this.evidence[i]?.add(rows));
  }

  /** Once all are added. */
  files(divisions: readonly Tables[]): FileInParts[] {
    const standings = standingsTables(divisions, this.figures).map((table) => new CsvText(table));
    this.all = [...this.catalogue, ...standings, ...this.evidence];
    return this.all.map((one) => one.file());
  }

  dataPackage(inputs: ReleaseInputs): ReleaseFile {
    return dataPackageFile(inputs, this.all);
  }
}
