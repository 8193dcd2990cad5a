import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { DivisionRule } from '../contract/division.js';
import { schemeRules } from '../contract/endpoints/schemes.js';
import type { EditionRequest, PlannedDivision } from '../contract/endpoints/editions.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import { Database } from '../platform/database/database.js';
import { Problem } from '../platform/errors/problem.js';
import { categoryFaults } from './category-faults.js';
import { editionProblems } from './editions.errors.js';

interface Numbered {
  readonly slug: string;
  readonly number: number;
}

type NamedDivision = Pick<PlannedDivision, 'takes' | 'scheme'> & { readonly slug: string | null; readonly name: string | null };

/** A division as it is put on record. */
export interface DivisionRow extends Omit<NamedDivision, 'takes' | 'scheme'>, DivisionRule {
  readonly position: number;
  readonly schemeId: string;
}

const unknown = (what: string) => new Problem(editionProblems['editions/unknown-reference'], `Not on record: ${what}.`);

/** What an edition names, found on record, or told by name that it is not. */
@Injectable()
export class EditionParts {
  constructor(
    private readonly database: Database,
    private readonly methods: MethodsReadModel,
    private readonly catalogue: CatalogueReadModel,
  ) {}

  async versionIds(methods: readonly Numbered[]): Promise<string[]> {
    return (await this.versions(methods)).map(({ id }) => id);
  }

  /** Slugs of the methods of these versions. */
  async methodsOf(versionIds: readonly string[]): Promise<string[]> {
    return [...(await this.methods.versionRows(versionIds)).values()].map(({ method }) => method.slug);
  }

  /** What an edition is to be ranked by: one division without a name that takes everything, or several. */
  async divisions({ scheme, divisions }: Pick<EditionRequest, 'scheme' | 'divisions'>): Promise<DivisionRow[] | undefined> {
    const named = divisions ?? (scheme && [{ slug: null, name: null, takes: { materials: [], constructions: [] }, scheme }]);
    return named && Promise.all(named.map(async (one, position) => this.division(one, position)));
  }

  private async division({ slug, name, takes, scheme }: NamedDivision, position: number): Promise<DivisionRow> {
    return { position, slug, name, ...takes, schemeId: (await this.scheme(scheme)).id };
  }

  /** @throws Problem 422 where a category of a scheme could never count by these methods */
  async requireCountable({ scheme, divisions = [], methods }: EditionRequest): Promise<void> {
    const versions = await this.versions(methods);
    for (const named of [...(scheme ? [scheme] : []), ...divisions.map((division) => division.scheme)]) {
      const { rules } = await this.scheme(named);
      const faults = categoryFaults(schemeRules.parse(rules).categories, versions, 'pin a version of it among the methods');
      if (faults.length > 0)
        throw new Problem(
          editionProblems['editions/cannot-count'],
          `Categories of the scheme ${named.slug} number ${named.number} that no result could ever count in.`,
          faults.map((fault) => ({ ...fault, pointer: '/methods' })),
        );
    }
  }

  private async scheme({ slug, number }: Numbered) {
    const scheme = await this.database.client.scheme.findUnique({ where: { slug_number: { slug, number } } });
    if (!scheme) throw unknown(`scheme ${slug} number ${number}`);
    return scheme;
  }

  private versions(methods: readonly Numbered[]) {
    return Promise.all(
      methods.map(async ({ slug, number }) => {
        const version = await this.methods.version(slug, number);
        if (!version) throw unknown(`version ${number} of method ${slug}`);
        return version;
      }),
    );
  }

  async variantIds(slugs: readonly string[]): Promise<string[]> {
    const found = await Promise.all(slugs.map(async (slug) => ({ slug, variant: await this.catalogue.variantBySlug(slug) })));
    const missing = found.filter(({ variant }) => variant === null).map(({ slug }) => slug);
    if (missing.length > 0)
      throw new Problem(editionProblems['editions/unknown-reference'], `Not in the catalogue: ${missing.join(', ')}.`);
    const retired = found.filter(({ variant }) => variant?.isRetired).map(({ slug }) => slug);
    if (retired.length > 0) throw new Problem(editionProblems['editions/retired-entry'], `Retired: ${retired.join(', ')}.`);
    return found.flatMap(({ variant }) => (variant ? [variant.id] : []));
  }

  /**
   * The edition before.
   * @param of the edition that is to follow it, which may not come before it itself
   */
  async previousId(previous: string | null, of?: string): Promise<string | null> {
    if (previous === null) return null;
    const line: string[] = [];
    let slug: string | null = previous;
    let id: string | null = null;
    while (slug !== null) {
      const row: { id: string; previous: { slug: string } | null } | null = await this.database.client.edition.findUnique({
        where: { slug },
        select: { id: true, previous: { select: { slug: true } } },
      });
      if (!row) throw unknown(`edition ${slug}`);
      line.push(slug);
      if (slug === of)
        throw new Problem(editionProblems['editions/follows-itself'], `${of} would follow ${line.join(', which follows ')}.`);
      id ??= row.id;
      slug = row.previous?.slug ?? null;
    }
    return id;
  }
}
