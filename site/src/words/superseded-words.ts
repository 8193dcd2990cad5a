import { say } from './say.js';
import type { Superseded } from '../../../api/contract/superseded.js';
import { quantityWords } from './quantity-words.js';

const KINDS: Record<Superseded['kind'], string> = {
  maker: say`Maker`,
  line: say`Line`,
  variant: say`Variant`,
  claim: say`Label claim`,
  spool: say`Spool`,
  calibration: say`Certificate`,
};

/** `claim` and `gannet-20 breakingForce` → `Label claim: Breaking force of gannet-20`; a certificate is named as `C-7 of R1`. */
export function supersededWords(kind: Superseded['kind'], what: string): string {
  const [variant = '', quantity = ''] = what.split(' ');
  const [certificate, instrument] = what.split(' of ');
  if (kind === 'calibration' && instrument !== undefined) return `${KINDS[kind]}: ${say`${certificate} of ${instrument}`}`;
  return `${KINDS[kind]}: ${kind === 'claim' ? say`${quantityWords(quantity)} of ${variant}` : what}`;
}

/** The same of the first part of a cell's name, as an erratum lists it; null where it is of something else. */
export function supersededCellWords(part: string): string | null {
  const [, kind, what] = /^([a-z]+) (.+)$/.exec(part) ?? [];
  return kind !== undefined && kind in KINDS ? supersededWords(kind as Superseded['kind'], what ?? '') : null;
}
