import { Inject, Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { certaintyOf } from '../editions/certainty.js';
import { ComputeStandings } from '../editions/compute-standings.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import type { CategoryDocument, EditionDocument, VariantDocument } from '../public-api/release-documents.schemas.js';
import type { PublishedResult } from './documents/published-result.js';
import type { EarlierEdition, ReleaseContext } from './documents/release-context.js';
import { sha256 } from '../platform/identifiers/identifiers.js';
import { canonicalJson } from './canonical-json.js';
import { ReleasesReadModel } from './releases.read-model.js';
import type { PublishedRelease } from './releases.read-model.js';

/** Gathers everything that a release is built from. Reads only. */
@Injectable()
export class GatherRelease {
  constructor(
    private readonly standings: ComputeStandings,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
    private readonly releases: ReleasesReadModel,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async run(slug: string, revision: number, publishedAt: Date): Promise<ReleaseContext> {
    const computed = await this.standings.run(slug);
    const variantIds = computed.edition.entries.map(({ variantId }) => variantId);
    const slugs = [...new Set(computed.edition.methods.map((method) => method.slug))];
    const all = await Promise.all(slugs.map((method) => this.methods.bySlug(method)));
    const versions = await Promise.all(
      all.flatMap((method) => (method ? method.versions.map(({ number }) => this.methods.version(method.slug, number)) : [])),
    );
    return {
      house: this.config.HOUSE_NAME,
      isDemo: this.config.IS_DEMO,
      revision,
      publishedAt: publishedAt.toISOString(),
      computed,
      certainty: certaintyOf(computed, sha256(canonicalJson(evidenceOf(computed)))),
      names: await this.catalogue.variantNames(variantIds),
      methods: new Map(versions.flatMap((version) => (version ? [[version.id, version] as const] : []))),
      spools: await this.catalogue.spoolsOf(variantIds),
      earlier: await this.earlierEditions(computed.edition.previous),
    };
  }

  /** Current releases of the editions before, newest first, as their bundles tell them. */
  private async earlierEditions(previous: string | null): Promise<EarlierEdition[]> {
    const found: EarlierEdition[] = [];
    for (let slug = previous; slug !== null;) {
      const release = await this.releases.find(slug);
      const edition = release && (await this.releases.document<EditionDocument>(release, 'documents/edition.json'));
      if (!release || !edition) break;
      found.push(await this.earlierEdition(release, edition));
      slug = edition.previousEdition;
    }
    return found;
  }

  private async earlierEdition(release: PublishedRelease, edition: EditionDocument): Promise<EarlierEdition> {
    const paths = release.manifest.files.map(({ path }) => path);
    const read = async <T>(folder: string): Promise<T[]> => {
      const documents = await Promise.all(
        paths.filter((path) => path.startsWith(folder)).map((path) => this.releases.document<T>(release, path)),
      );
      return documents.filter((document) => document !== null);
    };
    const bundle = await this.releases.document<{ outputs: { results: PublishedResult[] } }>(release, 'bundle.json');
    return {
      edition,
      categories: new Map((await read<CategoryDocument>('documents/standings/')).map((document) => [document.category.code, document])),
      variants: new Map((await read<VariantDocument>('documents/variants/')).map((document) => [document.variant.slug, document])),
      results: bundle?.outputs.results ?? [],
    };
  }
}

/** What the draws are seeded by: every counted reading by its submission, and the scheme. Nobody can choose it without changing a reading. */
const evidenceOf = ({ edition, submissions }: ReleaseContext['computed']) => ({
  edition: edition.slug,
  scheme: edition.scheme.rules,
  submissions: submissions.map(({ reference, specimens }) => ({ reference, specimens })),
});
