import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import type { Superseded } from '../contract/superseded.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { SupersededRows } from '../audit/superseded.store.js';

/** What was put right after results of an edition rested on it. */
@Injectable()
export class SupersededReadModel {
  constructor(
    private readonly rows: SupersededRows,
    private readonly catalogue: CatalogueReadModel,
    private readonly instruments: InstrumentsReadModel,
  ) {}

  /** Oldest first, with those of these references that rested on it; what none of them rested on is left out. */
  async under(edition: string, references: ReadonlySet<string>): Promise<Superseded[]> {
    const rows = await this.rows.restedOnIn(edition);
    const ids = rows.map(({ objectId }) => objectId);
    const names = new Map([...(await this.catalogue.rowNames(ids)), ...(await this.instruments.certificateNames(ids))]);
    return rows
      .map(({ kind, objectId, was, reason, at, rested }) => ({
        kind: kind as Superseded['kind'],
        what: names.get(objectId) ?? objectId,
        was: inWords(was),
        reason,
        on: at.slice(0, 10),
        submissions: rested.submissions.filter((reference) => references.has(reference)),
      }))
      .filter(({ submissions }) => submissions.length > 0);
  }
}

/** What follows from what is printed, or names the claim, is not said again. */
const OF_A_CLAIM: ReadonlySet<string> = new Set(['quantity', 'value', 'unit']);

/** `{ coverageFactor: '2', lot: null }` → "coverage factor 2, no lot". */
const inWords = (was: Readonly<Record<string, unknown>>): string =>
  Object.entries(was)
    .filter(([name]) => !('printed' in was) || !OF_A_CLAIM.has(name))
    .map(([name, value]) => [name.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`), value] as const)
    .map(([name, value]) => (value === null ? `no ${name}` : `${name} ${textOf(value)}`))
    .join(', ');

const textOf = (value: unknown): string => (typeof value === 'object' && value !== null ? Object.values(value).join(' ') : String(value));
