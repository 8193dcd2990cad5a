import type { DivisionRule } from '../../../api/contract/division.js';
import { constructionWords } from './variant-words.js';

const either = (names: readonly string[]): string => names.join(' or ');

/** What a division takes: "Takes monofilament lines of nylon or copolymer." */
export function ruleWords({ materials, constructions }: DivisionRule): string {
  const made = constructions.length > 0 ? `${either(constructions.map(constructionWords))} lines` : 'lines';
  return `Takes ${made}${materials.length > 0 ? ` of ${either(materials)}` : ' of any material'}.`;
}
