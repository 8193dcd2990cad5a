import type { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import type { EditionsReadModel } from '../../editions/editions.read-model.js';
import { retiredFault } from '../../contract/retired.js';
import type { InstrumentOnRecord } from '../../instruments/instruments.read-model.js';
import type { MethodsReadModel } from '../../methods/methods.read-model.js';
import type { InputFault } from '../../platform/errors/problem.js';

type OnRecord<Answer> = NonNullable<Awaited<Answer>>;

/** What a submission names. */
export interface Naming {
  readonly edition: string;
  readonly spool: string;
  readonly method: string;
  readonly methodVersion: number;
}

/** What a submission is about, found on record. */
export interface Subject {
  readonly edition: OnRecord<ReturnType<EditionsReadModel['openEdition']>>;
  readonly spool: OnRecord<ReturnType<CatalogueReadModel['spoolByCode']>>;
  readonly method: OnRecord<ReturnType<MethodsReadModel['version']>>;
}

/** The same before it is known whether there is such a thing. */
export type SoughtSubject = { readonly [K in keyof Subject]: Subject[K] | null };

/** Names that lead nowhere; a draft may be no better than that. */
export function unknownNames(naming: Naming, { edition, spool, method }: SoughtSubject): InputFault[] {
  const faults: InputFault[] = [];
  if (!edition)
    faults.push(fault('/edition', 'unknown_edition', `No edition is called "${naming.edition}". Read its name again, or ask an editor.`));
  else if (edition.state !== 'open')
    faults.push(
      fault(
        '/edition',
        'edition_not_open',
        `Edition ${edition.slug} is ${edition.state}; submissions are taken while it is open. Name an open edition, or ask an editor.`,
      ),
    );
  if (!spool)
    faults.push(fault('/spool', 'unknown_spool', `No spool carries the code "${naming.spool}". Read the code on the spool again.`));
  if (!method)
    faults.push(
      fault(
        '/methodVersion',
        'unknown_method_version',
        `There is no version ${naming.methodVersion} of a method "${naming.method}". Read both again in the wording of the method, or ask an editor.`,
      ),
    );
  return faults;
}

/** Things on record that do not belong to this edition. */
export function strangersToEdition({ edition, spool, method }: SoughtSubject): InputFault[] {
  const faults: InputFault[] = [];
  if (edition && spool && !edition.hasEntry(spool.variant.id)) {
    faults.push(notForThis);
  }
  if (edition && method && !edition.methodVersionIds.includes(method.id)) {
    const words = `Edition ${edition.slug} did not pin version ${method.number} of ${method.slug} when it opened. Use the version that it pinned.`;
    faults.push(fault('/methodVersion', 'method_version_not_pinned', words));
  }
  return faults;
}

export const isFound = (sought: SoughtSubject): sought is Subject =>
  sought.edition !== null && sought.spool !== null && sought.method !== null;

/**
 * What a next version of a submission may not change: its edition, which is in its reference; and once it was handed in its spool
 * and method version, for another spool is another submission.
 */
export function subjectChanges(
  before: { readonly editionId: string; readonly spoolId: string; readonly methodVersionId: string; readonly state: string },
  { edition, spool, method }: Subject,
): InputFault[] {
  const faults: InputFault[] = [];
  if (before.editionId !== edition.id)
    faults.push(fault('/edition', 'other_edition', 'A submission stays in its edition. Hand in a new one for another.'));
  if (before.state === 'draft') return faults;
  if (before.spoolId !== spool.id)
    faults.push(fault('/spool', 'other_spool', 'A submission stays with its spool. Hand in a new one for another spool.'));
  if (before.methodVersionId !== method.id) {
    faults.push(
      fault('/methodVersion', 'other_method_version', 'A submission stays with its method version. Hand in a new one for another.'),
    );
  }
  return faults;
}

/** Instruments that are not on record, are named twice, or were out of use on the day. */
export function instrumentFaults(
  { instruments: codes, benchDay }: { readonly instruments: readonly string[]; readonly benchDay: string },
  instruments: readonly InstrumentOnRecord[],
): InputFault[] {
  const known = new Map(instruments.map((one) => [one.code, one]));
  return codes.flatMap((code, index) => {
    const instrument = known.get(code);
    if (!instrument)
      return [fault(`/instruments/${index}`, 'unknown_instrument', `No instrument has the code "${code}". Ask an editor to enter it.`)];
    return codes.indexOf(code) < index
      ? [fault(`/instruments/${index}`, 'duplicate', `Instrument ${code} is named twice; name it once.`)]
      : retiredFault(code, benchDay, instrument.retired, `/instruments/${index}`);
  });
}

/** A bench day after the spool was retired; the reason is the house's own. */
export function retiredSpoolFaults(benchDay: string, spool: SoughtSubject['spool']): InputFault[] {
  if (!spool?.retiredOn || benchDay <= spool.retiredOn) return [];
  const words = `Spool ${spool.blindCode} is out of use since ${spool.retiredOn}; found a bench day of ${benchDay}. Read the code on the spool again, correct the day, or ask an editor.`;
  return [fault('/spool', 'retired', words)];
}

/** Certificate of an instrument that is valid on a day; the one that began last, null when there is none. */
export function certificateOn(day: string, { calibrations }: InstrumentOnRecord): string | null {
  return calibrations.findLast(({ validFrom, validUntil }) => validFrom <= day && day <= validUntil)?.certificate ?? null;
}

/** Breaking force on the label of a variant [N]; null where it states none. */
export const claimedForceN = ({ claims }: Subject['spool']['variant']): number | null =>
  Number(claims.find(({ quantity }) => quantity === 'breakingForce')?.valueSi) || null;

/** One answer for every spool that is not to be tested so, whatever the reason: the reason would tell what the spool is. */
export const notForThis: InputFault = {
  pointer: '/spool',
  code: 'spool_not_for_this',
  detail:
    'This spool is not for this hand-in: it may be for another edition, person, method or instrument. Put it back on the shelf and ask an editor.',
};

const fault = (pointer: string, code: string, detail: string): InputFault => ({ pointer, code, detail });
