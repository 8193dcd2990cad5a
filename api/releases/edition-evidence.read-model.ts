import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { ControlPullsReadModel } from '../control-pulls/control-pulls.read-model.js';
import { InstrumentsReadModel } from '../instruments/instruments.read-model.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import type { RetestsEvidence } from '../reckoning/evidence/retests-evidence.js';
import { RetestsReadModel } from '../retests/retests.read-model.js';
import { RoundRobinsReadModel } from '../round-robins/round-robins.read-model.js';
import { SubmissionsReadModel } from '../submissions/submissions.read-model.js';
import type { EditionEvidence } from '../reckoning/evidence/edition-evidence.js';
import { SupersededReadModel } from './superseded.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';

/** What an edition's results are computed from, as accepted now. */
@Injectable()
export class EditionEvidenceReadModel {
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly submissions: SubmissionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly instruments: InstrumentsReadModel,
    private readonly retests: RetestsReadModel,
    private readonly roundRobins: RoundRobinsReadModel,
    private readonly controlPulls: ControlPullsReadModel,
    private readonly superseded: SupersededReadModel,
  ) {}

  async of(slug: string): Promise<EditionEvidence> {
    const found = await this.editions.forStandings(slug);
    if (!found) throw new Problem(platformProblems['request/not-found'], `No edition is called ${slug}.`);
    const { id, state: _, entries, ...edition } = found;
    const submissions = await this.submissions.acceptedInEdition(id);
    const codes = new Set(submissions.flatMap((submission) => submission.instruments.map(({ code }) => code)));
    const instruments = await this.instruments.byCodes([...codes]);
    const until = edition.closedOn !== undefined && edition.closedOn > edition.closesOn ? edition.closedOn : edition.closesOn;
    const pulls = await this.controlPulls.pulls({ rigs: new Map(instruments.map(({ id: rig, code }) => [rig, code])), until });
    const superseded = await this.superseded.under(slug, new Set(submissions.map(({ reference }) => reference)));
    return {
      edition: { ...edition, entries: entries.map(({ variant, exclusion }) => ({ variant, exclusion })) },
      submissions,
      withdrawn: await this.submissions.withdrawnInEdition(id),
      instruments: instruments.map(({ code, kind, name, capacity, resolution, calibrations }) => ({
        code,
        kind,
        name,
        capacity,
        resolution,
        calibrations,
      })),
      claims: await this.catalogue.claimsOf(entries.map(({ variantId }) => variantId)),
      retests: await this.retestsOf(slug, id),
      roundRobins: await this.roundRobins.closedBetween(edition.opensOn, until),
      controlPulls: pulls.map(({ id: _, ...pull }) => pull),
      ...(superseded.length > 0 ? { superseded } : {}),
    };
  }

  private async retestsOf(slug: string, editionId: string): Promise<RetestsEvidence | undefined> {
    const draw = await this.retests.ofEdition(slug);
    if (!draw) return undefined;
    const found = await this.submissions.retestedInEdition(editionId);
    const { drawn, ...told } = draw;
    return {
      ...told,
      drawn: drawn.map(({ original, again }) => ({ original, again: found.find(({ reference }) => reference === again) ?? null })),
    };
  }
}
