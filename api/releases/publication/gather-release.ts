import { Inject, Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import { checkSetOf } from '../../checks/check-set-of.js';
import { CONFIG } from '../../config.js';
import type { Config } from '../../config.js';
import { EditionsReadModel } from '../../editions/editions.read-model.js';
import { Problem } from '../../platform/errors/problem.js';
import { MethodsReadModel } from '../../methods/methods.read-model.js';
import type { EditionDocument } from '../../contract/documents/release-documents.js';
import { unmetExpectations } from '../../reckoning/erratum.js';
import { StatementsReadModel } from '../../statements/statements.read-model.js';
import type { Correction, Licence, ReleaseInputs } from '../../reckoning/release-inputs.js';
import { EarlierEditions } from '../earlier-editions.read-model.js';
import type { CurrentRelease } from '../earlier-editions.read-model.js';
import { EditionEvidenceReadModel } from '../edition-evidence.read-model.js';
import { ReleasesReadModel } from '../releases.read-model.js';
import type { PublishedRelease } from '../releases.read-model.js';
import { releaseProblems } from '../releases.errors.js';
import { SOFTWARE_VERSION } from '../../platform/program/software-version.js';

const LICENCES: Readonly<Record<Config['DATA_LICENCE'], Licence>> = {
  'CC-BY-4.0': {
    name: 'CC-BY-4.0',
    title: 'Creative Commons Attribution 4.0',
    path: 'https://creativecommons.org/licenses/by/4.0/',
  },
  'CC0-1.0': { name: 'CC0-1.0', title: 'Creative Commons Zero 1.0', path: 'https://creativecommons.org/publicdomain/zero/1.0/' },
  'ODC-By-1.0': {
    name: 'ODC-By-1.0',
    title: 'Open Data Commons Attribution 1.0',
    path: 'https://opendatacommons.org/licenses/by/1-0/',
  },
};

type Stated = Omit<Correction, 'before' | 'corrected'> | null;

interface Heading {
  readonly slug: string;
  readonly revision: number;
  readonly publishedAt: Date;
  readonly stated: Stated;
  readonly softwareVersion: string;
}

/** Gathers everything that a release is computed from. Reads only. */
@Injectable()
export class GatherRelease {
  constructor(
    private readonly evidence: EditionEvidenceReadModel,
    private readonly earlier: EarlierEditions,
    private readonly editions: EditionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
    private readonly releases: ReleasesReadModel,
    private readonly statements: StatementsReadModel,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async run(slug: string, revision: number, publishedAt: Date, stated: Stated): Promise<ReleaseInputs> {
    return this.asOf({ slug, revision, publishedAt, stated, softwareVersion: SOFTWARE_VERSION });
  }

  /**
   * What a published release was computed from, as far as the record still has it: what was withdrawn or renamed since is missing.
   * @throws Problem when what its erratum expected is not found
   */
  async again({ edition, revision, manifest }: PublishedRelease): Promise<ReleaseInputs> {
    const publishedAt = new Date(manifest.publishedAt);
    const erratum = (await this.releases.state(edition, revision))?.erratum as EditionDocument['erratum'] | undefined;
    const stated = erratum ? { reasonCode: erratum.reasonCode, words: erratum.words, expects: erratum.expected } : null;
    const heading = { slug: edition, revision, publishedAt, stated, softwareVersion: manifest.softwareVersion };
    return this.asOf(heading, (slug) => this.releases.currentAt(slug, publishedAt));
  }

  private async asOf({ slug, revision, publishedAt, stated, softwareVersion }: Heading, current?: CurrentRelease): Promise<ReleaseInputs> {
    const evidence = await this.evidence.of(slug);
    const variantIds = await this.editions.entriesOf(slug);
    const variants = [...(await this.catalogue.variantNames(variantIds)).values()].sort((one, other) => (one.slug < other.slug ? -1 : 1));
    const earlier = await this.earlier.from(evidence.edition.previous, current);
    const pinned = await this.editions.pinnedAtOpening({ slug });
    const statement = await this.statements.houseAt(publishedAt);
    const entries = variants.map(({ slug: variant, line, construction }) => ({ variant, line: line.slug, construction }));
    const before = revision > 1 ? await this.releases.find(slug, revision - 1) : null;
    return {
      house: this.config.HOUSE_NAME,
      licence: LICENCES[this.config.DATA_LICENCE],
      isDemo: this.config.IS_DEMO,
      revision,
      publishedAt: publishedAt.toISOString(),
      softwareVersion,
      previousDigest: before?.digest ?? earlier[0]?.digest ?? null,
      evidence,
      variants,
      methods: await this.methodVersions(evidence.edition.methods.map((method) => method.slug)),
      checks: pinned.checks ?? checkSetOf().checks,
      blindKey: pinned.blindKey,
      spools: await this.catalogue.spoolsOf(variantIds),
      earlier,
      ...(statement ? { statement } : {}),
      remarks: await this.statements.standingAt(publishedAt, slug, entries),
      correction: stated && before && (await this.correctionOf(stated, before)),
    };
  }

  private async methodVersions(slugs: readonly string[]): Promise<ReleaseInputs['methods']> {
    const methods = await Promise.all(slugs.map((slug) => this.methods.versionsOf(slug)));
    return methods.flat().map(({ id: _, series: __, ...version }) => version);
  }

  private async correctionOf(stated: NonNullable<Stated>, before: PublishedRelease): Promise<Correction> {
    const { reasonCode, words, expects } = stated;
    const cells = await this.releases.contentsOf(before);
    const unmet = unmetExpectations(expects, cells);
    if (unmet.length > 0) throw new Problem(releaseProblems['releases/expected-otherwise'], undefined, unmet);
    return { reasonCode, words, expects, before: cells, corrected: await this.correctedUpTo(before) };
  }

  private async correctedUpTo({ edition, revision: last }: PublishedRelease): Promise<string[]> {
    const corrected: string[] = [];
    for (let revision = 2; revision <= last; revision++) {
      const release = await this.releases.find(edition, revision);
      const erratum = release && (await this.releases.kept<EditionDocument>(release, 'documents/edition.json')).erratum;
      corrected.push(...(erratum?.changes ?? []).map(({ where }) => where));
    }
    return corrected;
  }
}
