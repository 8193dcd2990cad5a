import canonicalize from 'canonicalize';
import { sha256 } from '../../platform/identifiers/identifiers.js';
import type { ReadSubmission } from './examined-submission.js';

/**
 * SHA-256 of all that a tester hands in of a spool: readings in SI, and what stands around them. The same file again, in whatever
 * order or form, has the same digest. Which specimens count is in it too: a change of mind is no repetition.
 */
export function contentDigest(
  testerId: string,
  { content, subject, temperatureC, specimens, readingsDigest }: Omit<ReadSubmission, 'contentDigest'>,
): string {
  const { benchDay, zone, instruments, ambient, seenLabel, note, fewerBecause } = content;
  const all = {
    testerId,
    about: [subject.edition.id, subject.spool.id, subject.method.id, benchDay, zone],
    instruments: instruments.toSorted(),
    air: [temperatureC, String(Number(ambient.humidityPercent))],
    words: [seenLabel, note ?? null, fewerBecause ?? null],
    states: specimens.map(({ number, state, reason }) => [number, state, reason]).sort(([one], [other]) => Number(one) - Number(other)),
    readingsDigest,
  };
  return sha256(canonicalize(all) ?? '');
}
