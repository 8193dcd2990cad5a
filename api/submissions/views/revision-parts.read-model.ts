import { Injectable } from '@nestjs/common';
import { DecisionsReadModel } from '../../decisions/decisions.read-model.js';
import { FindingsReadModel } from '../../findings/findings.read-model.js';
import type { FindingOnRecord } from '../../findings/findings.read-model.js';
import { InstrumentsReadModel } from '../../instruments/instruments.read-model.js';
import type { SpecimenInSi } from '../../readings/readings-si.js';
import { toSpecimenInSi } from './submission-view.js';
import type { StoredSpecimen } from './submission-view.js';

export interface RevisionRow {
  readonly id: string;
  readonly instruments: readonly { readonly instrumentId: string; readonly certificate: string | null }[];
  readonly specimens: readonly (Omit<StoredSpecimen, 'setAside'> & { readonly id: string })[];
}

/** What belongs to a revision, from wherever it is kept. */
export interface PartsOfRevision {
  /** By code. */
  readonly instruments: { readonly code: string; readonly kind: string; readonly certificate: string | null }[];
  readonly specimens: SpecimenInSi[];
  /** Oldest first. */
  readonly findings: readonly FindingOnRecord[];
}

/** Puts beside revisions what other features keep of them: instruments, findings, why specimens were set aside. */
@Injectable()
export class RevisionParts {
  constructor(
    private readonly instruments: InstrumentsReadModel,
    private readonly findings: FindingsReadModel,
    private readonly decisions: DecisionsReadModel,
  ) {}

  /** With as many statements for one revision as for thousands. */
  async of(revisions: readonly RevisionRow[]): Promise<(revision: RevisionRow) => PartsOfRevision> {
    const ids = revisions.map(({ id }) => id);
    const [named, findings, setAside] = await Promise.all([
      this.instruments.named(revisions.flatMap(({ instruments }) => instruments.map(({ instrumentId }) => instrumentId))),
      this.findings.ofRevisions(ids),
      this.decisions.setAsideIn(ids),
    ]);
    return ({ id, instruments, specimens }) => ({
      instruments: instruments
        .map(({ instrumentId, certificate }) => ({ ...named.of(instrumentId), certificate }))
        .sort((one, other) => (one.code < other.code ? -1 : 1)),
      specimens: specimens.map((specimen) => {
        const reason = setAside.get(specimen.id);
        return toSpecimenInSi({ ...specimen, setAside: reason === undefined ? null : { reason } });
      }),
      findings: findings.get(id) ?? [],
    });
  }
}
