import { notValid } from '../../platform/http/validation.js';
import type { ClaimCorrection } from '../../contract/endpoints/catalogue.js';
import { readClaim } from './read-claim.js';
import type { ClaimedQuantity } from '../../contract/claims.js';
import { futureFaults } from '../../platform/clock/future-faults.js';

/**
 * A claim in words → the fields on record, printed and in SI.
 * @throws Problem 422 with every fault: a unit of another dimension, a number that is none, a day to come
 */
export function requireClaim(quantity: ClaimedQuantity, { basis, printed, seenOn, source }: ClaimCorrection, now: Date) {
  const read = readClaim(quantity, printed);
  const faults = [...('valueSi' in read ? [] : [read]), ...futureFaults('/seenOn', seenOn, now)];
  if (!('valueSi' in read) || faults.length > 0) throw notValid(faults);
  return { basis, printedText: printed.text, printedUnit: printed.unit, valueSi: read.valueSi, seenOn: new Date(seenOn), source };
}
