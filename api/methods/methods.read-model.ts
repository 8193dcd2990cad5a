import { Injectable } from '@nestjs/common';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { MethodModel, MethodVersionModel } from '../platform/database/generated/models.js';
import { lastDay, toDateText } from './method-version.js';
import { checkSettingsSchema, methodLimitsSchema, methodParametersSchema, methodWordingSchema } from '../contract/endpoints/methods.js';
import type { MethodResponse, MethodVersion } from '../contract/endpoints/methods.js';
import { methodSeriesListSchema } from '../contract/method-series.js';

const WITH_VERSIONS = { versions: { orderBy: { number: 'asc' } } } as const;

type VersionRow = Omit<MethodVersionModel, 'wording'> & { readonly method: MethodModel };

interface MethodRow {
  readonly slug: string;
  readonly name: string;
  readonly versions: readonly MethodVersionModel[];
}

/** Methods and their versions, as screens, submissions and releases see them. */
@Injectable()
export class MethodsReadModel {
  constructor(private readonly database: Database) {}

  /** One version of a method by its slug and number; null when there is none. */
  async version(slug: string, number: number): Promise<MethodVersion | null> {
    const versions = await this.versionsOf(slug);
    return versions.find((version) => version.number === number) ?? null;
  }

  /** Row of a method; null when there is none. */
  async idOf(slug: string): Promise<string | null> {
    return (await this.database.client.method.findUnique({ where: { slug }, select: { id: true } }))?.id ?? null;
  }

  /** Every version of a method by its number; none of an unknown one. */
  async versionsOf(slug: string): Promise<MethodVersion[]> {
    const method = await this.database.client.method.findUnique({ where: { slug }, include: WITH_VERSIONS });
    return method ? toVersions(method) : [];
  }

  /** A method that lines are pulled by until they part, or that a reason is told of why it is not one. */
  async pullMethod(slug: string): Promise<{ readonly id: string } | { readonly code: string; readonly detail: string }> {
    const method = await this.database.client.method.findUnique({ where: { slug }, include: WITH_VERSIONS });
    if (!method) return { code: 'unknown_method', detail: `No method is called "${slug}". Look it up: GET /v1/catalogue/methods.` };
    if (toVersions(method).some(({ limits }) => limits.timeToBreakS !== null)) return { id: method.id };
    return { code: 'breaks_nothing', detail: `No version of "${slug}" breaks a line; name a method that specimens are pulled by.` };
  }

  /** Slugs of methods by their ids. */
  async slugs(ids: readonly string[]): Promise<ById<string>> {
    const rows = await this.database.client.method.findMany({ where: { id: among(ids) }, select: { id: true, slug: true } });
    return new ById(rows.map(({ id, slug }) => [id, slug]));
  }

  /** Slugs of those among these that are on record, by their ids. */
  async known(slugs: readonly string[]): Promise<ById<string>> {
    const rows = await this.database.client.method.findMany({ where: { slug: among(slugs) }, select: { id: true, slug: true } });
    return new ById(rows.map(({ id, slug }) => [id, slug]));
  }

  /** Versions as they are kept but for their wording, each with its method, by their ids. */
  async versionRows(ids: readonly string[]): Promise<ById<VersionRow>> {
    const rows = await this.database.client.methodVersion.findMany({
      where: { id: among(ids) },
      omit: { wording: true },
      include: { method: true },
    });
    return new ById(rows.map((row) => [row.id, row]));
  }

  /** Those among versions by which specimens are pulled until they part. */
  async pullingAmong(ids: readonly string[]): Promise<Set<string>> {
    const rows = await this.database.client.methodVersion.findMany({ where: { id: among(ids) }, select: { id: true, limits: true } });
    return new Set(rows.filter(({ limits }) => methodLimitsSchema.parse(limits).timeToBreakS !== null).map(({ id }) => id));
  }

  /** Ids of all versions of the method of this one. */
  async versionsOfSameMethod(id: string): Promise<string[]> {
    const where = { method: { versions: { some: { id } } } };
    return (await this.database.client.methodVersion.findMany({ where, select: { id: true } })).map((row) => row.id);
  }

  /** Versions by their ids; an unknown id has none. */
  async versionsById(ids: readonly string[]): Promise<Map<string, MethodVersion>> {
    const where = { versions: { some: { id: among(ids) } } };
    const methods = await this.database.client.method.findMany({ where, include: WITH_VERSIONS });
    const found = methods.flatMap(toVersions).filter((version) => ids.includes(version.id));
    return new Map(found.map((version) => [version.id, version]));
  }

  /** Every method with the dates of its versions, by slug. */
  async all(): Promise<MethodResponse[]> {
    const methods = await this.database.client.method.findMany({ orderBy: { slug: 'asc' }, include: WITH_VERSIONS });
    return methods.map(toMethod);
  }

  /** One method with the dates of its versions; null when there is none. */
  async bySlug(slug: string): Promise<MethodResponse | null> {
    const method = await this.database.client.method.findUnique({ where: { slug }, include: WITH_VERSIONS });
    return method && toMethod(method);
  }
}

const toMethod = (method: MethodRow): MethodResponse => ({
  slug: method.slug,
  name: method.name,
  versions: toVersions(method).map(({ number, effectiveFrom, effectiveUntil, series }) => ({
    number,
    effectiveFrom,
    effectiveUntil,
    yields: [...new Set(series.map(({ kind }) => kind))],
  })),
});

function toVersions({ slug, name, versions }: MethodRow): MethodVersion[] {
  return versions.map((row, index) => ({
    id: row.id,
    slug,
    name,
    number: row.number,
    effectiveFrom: toDateText(row.effectiveFrom),
    effectiveUntil: lastDay(row.effectiveUntil, versions[index + 1]?.effectiveFrom ?? null),
    limits: methodLimitsSchema.parse(row.limits),
    series: methodSeriesListSchema.parse(row.series),
    parameters: methodParametersSchema.parse(row.parameters),
    checks: checkSettingsSchema.parse(row.checks),
    wording: methodWordingSchema.parse(row.wording),
    isComparableWithPrevious: row.isComparableWithPrevious,
  }));
}
