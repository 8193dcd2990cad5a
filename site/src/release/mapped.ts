import { fullName } from '../words/variant-words.js';
import { addressesOf } from './addresses.js';
import type { Tables } from './load-release.js';
import { measuresOf } from './measures-of.js';
import type { Figure, VariantName } from '../../../api/contract/documents/release-documents.js';

interface Place {
  value: number;
  low: number | null;
  high: number | null;
  /** As published. */
  text: string;
}

/** A variant with force [N] and diameter [mm], both measured. */
export interface Mapped {
  slug: string;
  variant: VariantName;
  name: string;
  href: string | null;
  force: Place;
  diameter: Place;
  claimedForce: number | null;
  claimedDiameter: number | null;
}

const placeOf = ({ value, low, high }: Figure): Place => ({
  value: Number(value),
  low: low === null ? null : Number(low),
  high: high === null ? null : Number(high),
  text: value,
});
const numberOf = (text: string | null) => (text === null ? null : Number(text));

// Every variant's page shows the map of its tables.
const known = new Map<string, Promise<Mapped[]>>();

/** Those of some tables that can stand on the map, thinnest first. */
export function mapped(tables: Tables): Promise<Mapped[]> {
  const key = tables.address + tables.folder;
  const found = known.get(key) ?? look(tables);
  known.set(key, found);
  return found;
}

async function look(tables: Tables): Promise<Mapped[]> {
  const { edition, revision, overall, incomplete } = await tables.edition();
  const [measures, addresses] = [await measuresOf(tables), await addressesOf(edition.slug, revision)];
  const lines = [...overall, ...incomplete].flatMap(({ variant }): Mapped[] => {
    const found = measures.get(variant.slug);
    if (!found?.force || !found.diameter) return [];
    return [
      {
        slug: variant.slug,
        variant,
        name: fullName(variant),
        href: addresses.variant(variant.slug),
        force: placeOf(found.force),
        diameter: placeOf(found.diameter),
        claimedForce: numberOf(found.claimedForce),
        claimedDiameter: numberOf(found.claimedDiameter),
      },
    ];
  });
  return lines.sort((one, other) => one.diameter.value - other.diameter.value);
}
