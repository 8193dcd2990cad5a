import { say } from './say.js';
import type { DivisionRule } from '../../../api/contract/division.js';
import { constructionWords } from './variant-words.js';

const either = (names: readonly string[]): string => names.join(say` or `);

/** What a division takes: "Takes monofilament lines of nylon or copolymer." */
export function ruleWords({ materials, constructions }: DivisionRule): string {
  const made = constructions.length > 0 ? say`${either(constructions.map(constructionWords))} lines` : say`lines`;
  return say`Takes ${made}${materials.length > 0 ? say` of ${either(materials)}` : say` of any material`}.`;
}
