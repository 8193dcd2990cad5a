import { sha256 } from '../platform/identifiers/identifiers.js';
import type { SpecimenInSi } from './readings-si.js';

/**
 * SHA-256 of the readings in SI, in the order of specimens, roles and stations: the same readings in other units, or typed in
 * another order, have the same digest. What stands around the readings does not count.
 */
export function readingsDigest(specimens: readonly SpecimenInSi[]): string {
  const inOrder = [...specimens].sort((one, other) => one.number - other.number);
  const readings = inOrder.map(({ condition, readings: ofSpecimen }) => [
    condition,
    ofSpecimen.map(({ role, station, valueSi }) => `${role} ${station ?? '-'} ${valueSi}`).sort(),
  ]);
  // Lists of texts alone are canonical as they are (RFC 8785).
  return sha256(JSON.stringify(readings));
}
