import { say } from './say.js';
import type { VariantName } from '../../../api/contract/documents/release-documents.js';

const CONSTRUCTIONS: Record<string, string> = {
  braided: say`braided`,
  fused: say`fused`,
  hollowCore: say`hollow-core`,
  twisted: say`twisted`,
  monofilament: say`monofilament`,
};

export const constructionWords = (construction: string): string => CONSTRUCTIONS[construction] ?? construction;

/** `braided UHMWPE, 8 carriers` */
export function makeWords(line: { construction: string; material: string; carriers: number | null }): string {
  const carriers = line.carriers === null ? '' : say`, ${line.carriers} carriers`;
  return `${constructionWords(line.construction)} ${line.material}${carriers}`;
}

/** `Tidewick Brinearrow, PE 1.0, moss green` */
export function fullName({ maker, line, size, colour }: VariantName): string {
  return `${maker.name} ${line.name}, ${size}, ${colour}`;
}
