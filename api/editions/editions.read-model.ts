import { Injectable } from '@nestjs/common';
import { among, ById } from '../platform/database/by-id.js';
import { Database } from '../platform/database/database.js';
import type { CheckDocument } from '../contract/documents/release-documents.js';
import { schemeRules } from '../contract/endpoints/schemes.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import type { Amendment } from '../contract/amendment.js';
import { comparedIn, plannedDivisions, WITH_DIVISIONS } from './divisions.js';
import { bySlug, toPinnedMethod } from './edition.js';
import { EditionEntries } from './edition-entries.read-model.js';

const day = (date: Date): string => date.toISOString().slice(0, 10);

interface PinnedId {
  readonly methodVersionId: string;
}
const versionIdOf = ({ methodVersionId }: PinnedId): string => methodVersionId;

const toAmendment = ({ at, reason, changes }: { at: Date; reason: string; changes: unknown }): Amendment => ({
  on: day(at),
  reason,
  ...(changes as Omit<Amendment, 'on' | 'reason'>),
});

/** What other features and screens may know of editions. */
@Injectable()
export class EditionsReadModel {
  constructor(
    private readonly database: Database,
    private readonly methods: MethodsReadModel,
    private readonly entries: EditionEntries,
  ) {}

  async schemes() {
    const rows = await this.database.client.scheme.findMany({ orderBy: [{ slug: 'asc' }, { number: 'asc' }] });
    return rows.map(({ slug, number, name, words, rules }) => ({ slug, number, name, words, rules: schemeRules.parse(rules) }));
  }

  /** Row and state of an edition that is known to be there. */
  standOf(slug: string) {
    return this.database.client.edition.findUniqueOrThrow({ where: { slug }, select: { id: true, state: true } });
  }

  /** Slugs and names of editions by their ids. */
  async named(ids: readonly string[]): Promise<ById<{ readonly slug: string; readonly name: string }>> {
    const where = { id: among(ids) };
    const rows = await this.database.client.edition.findMany({ where, select: { id: true, slug: true, name: true } });
    return new ById(rows.map(({ id, ...named }) => [id, named]));
  }

  async slugs(ids: readonly string[]): Promise<ById<string>> {
    return new ById([...(await this.named(ids))].map(([id, { slug }]) => [id, slug]));
  }

  /** Digests of the keys of blind codes of all editions that were opened, oldest first. */
  async commitments(): Promise<{ openedOn: string; blindKeyDigest: string }[]> {
    const rows = await this.database.client.edition.findMany({ where: { blindKeyDigest: { not: null } }, orderBy: { opensOn: 'asc' } });
    return rows.map(({ opensOn, blindKeyDigest }) => ({ openedOn: day(opensOn), blindKeyDigest: blindKeyDigest ?? '' }));
  }

  /** What was sealed and pinned when an edition opened. */
  async pinnedAtOpening(where: { slug: string } | { id: string }): Promise<{ blindKey: string | null; checks: CheckDocument[] | null }> {
    const { blindKey, checkSet } = await this.database.client.edition.findUniqueOrThrow({ where });
    return { blindKey, checks: checkSet as CheckDocument[] | null };
  }

  /** The versions that each of these editions pins, by method. */
  private async pinnedBy(rows: readonly { readonly methods: readonly PinnedId[] }[]) {
    const versions = await this.methods.versionRows(rows.flatMap(({ methods }) => methods.map(versionIdOf)));
    return ({ methods }: { readonly methods: readonly PinnedId[] }) => bySlug(methods.map((pinned) => versions.of(versionIdOf(pinned))));
  }

  /** Variants entered in an edition, by id. */
  async entriesOf(slug: string): Promise<string[]> {
    const rows = await this.database.client.entry.findMany({ where: { edition: { slug } }, select: { variantId: true } });
    return rows.map(({ variantId }) => variantId);
  }

  /** Codes of the categories that an edition is ranked in; none where there is no such edition. */
  async categoriesOf(slug: string): Promise<string[]> {
    const rows = await this.database.client.division.findMany({
      where: { edition: { slug } },
      select: { scheme: { select: { rules: true } } },
    });
    return [...new Set(rows.flatMap(({ scheme }) => schemeRules.parse(scheme.rules).categories.map(({ code }) => code)))];
  }

  /** Slugs of editions whose movement is told against this one. */
  async following(slug: string): Promise<string[]> {
    const rows = await this.database.client.edition.findMany({
      where: { previous: { slug } },
      select: { slug: true },
      orderBy: { slug: 'asc' },
    });
    return rows.map((row) => row.slug);
  }

  async editions(slug?: string) {
    const rows = await this.database.client.edition.findMany({
      where: slug === undefined ? {} : { slug },
      orderBy: { slug: 'asc' },
      include: {
        ...WITH_DIVISIONS,
        previous: true,
        methods: true,
        amendments: { orderBy: { id: 'asc' } },
        _count: { select: { entries: true } },
      },
    });
    const pinned = await this.pinnedBy(rows);
    return rows.map((row) => ({
      slug: row.slug,
      name: row.name,
      state: row.state as 'planned' | 'open' | 'closed' | 'published',
      ...plannedDivisions(row.divisions),
      opensOn: day(row.opensOn),
      closesOn: day(row.closesOn),
      previous: row.previous?.slug ?? null,
      blindKeyDigest: row.blindKeyDigest,
      closedOn: row.closedOn && day(row.closedOn),
      entries: row._count.entries,
      methods: pinned(row).map(({ number, method }) => ({ slug: method.slug, number })),
      amendments: row.amendments.map(toAmendment),
      version: row.version,
    }));
  }

  /** An edition as a tester's submission meets it; null when there is none. */
  async openEdition(slug: string) {
    const edition = await this.database.client.edition.findUnique({
      where: { slug },
      select: {
        id: true,
        slug: true,
        state: true,
        opensOn: true,
        checkSet: true,
        methods: { select: { methodVersionId: true } },
        entries: { select: { variantId: true } },
      },
    });
    if (!edition) return null;
    const entered = new Set(edition.entries.map((entry) => entry.variantId));
    return {
      id: edition.id,
      slug: edition.slug,
      state: edition.state,
      opensOn: day(edition.opensOn),
      /** As pinned when it opened; null of one that was opened before checks were pinned. */
      checkSet: edition.checkSet as CheckDocument[] | null,
      methodVersionIds: edition.methods.map(versionIdOf),
      hasEntry: (variantId: string): boolean => entered.has(variantId),
    };
  }

  /** Everything about an edition that its standings and its release need; methods and entries by slug. */
  async forStandings(slug: string) {
    const edition = await this.database.client.edition.findUnique({
      where: { slug },
      include: {
        ...WITH_DIVISIONS,
        previous: { select: { slug: true } },
        methods: true,
        amendments: { orderBy: { id: 'asc' } },
        entries: { include: { exclusion: true, overruling: true } },
      },
    });
    if (!edition) return null;
    const pinned = await this.pinnedBy([edition]);
    const entries = await this.entries.withVariants(edition.entries);
    return {
      id: edition.id,
      slug: edition.slug,
      name: edition.name,
      state: edition.state,
      opensOn: day(edition.opensOn),
      closesOn: day(edition.closesOn),
      ...(edition.closedOn ? { closedOn: day(edition.closedOn) } : {}),
      ...(edition.amendments.length > 0 ? { amendments: edition.amendments.map(toAmendment) } : {}),
      previous: edition.previous?.slug ?? null,
      blindKeyDigest: edition.blindKeyDigest,
      ...comparedIn(edition.divisions, entries),
      methods: pinned(edition).map(toPinnedMethod),
      entries: entries.map((entry) => ({
        variantId: entry.variantId,
        variant: entry.variant.slug,
        exclusion: entry.exclusion && {
          reasonCode: entry.exclusion.reasonCode,
          words: entry.exclusion.words,
          effect: entry.exclusion.effect as 'closedUp' | 'shownUnplaced',
        },
      })),
    };
  }
}
