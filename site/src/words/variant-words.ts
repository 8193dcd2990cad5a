import { say } from './say.js';
import { lineName } from '../../../api/contract/line-name.js';
import type { VariantName } from '../../../api/contract/documents/release-documents.js';

const CONSTRUCTIONS: Record<string, string> = {
  braided: say`braided`,
  fused: say`fused`,
  hollowCore: say`hollow-core`,
  twisted: say`twisted`,
  monofilament: say`monofilament`,
};

export const constructionWords = (construction: string): string => CONSTRUCTIONS[construction] ?? construction;

interface Make {
  readonly construction: string;
  readonly material: string;
  readonly carriers: number | null;
}

/** `braided UHMWPE`, `8 carriers` */
export const makeParts = ({ construction, material, carriers }: Make): string[] => [
  `${constructionWords(construction)} ${material}`,
  ...(carriers === null ? [] : [say`${carriers} carriers`]),
];

/** `braided UHMWPE, 8 carriers` */
export const makeWords = (make: Make): string => makeParts(make).join(', ');

/** `Tidewick Brinearrow, PE 1.0, moss green` */
export function fullName({ maker, line, size, colour }: VariantName): string {
  return `${lineName(maker, line)}, ${size}, ${colour}`;
}
