import { unitFault } from '../../../../api/contract/reading-faults.js';
import { READING_ROLES, READING_WORDS } from '../../../../api/contract/submission-content.js';
import type { ReadingRole } from '../../../../api/contract/submission-content.js';

/** What somebody, or a gauge that types like a keyboard, put into a field. */
export type TypedReading =
  | { readonly is: 'empty' }
  | { readonly is: 'number'; readonly value: string; readonly unit: string }
  /** Probably meant, but nothing is guessed: it is asked. */
  | { readonly is: 'question'; readonly value: string; readonly unit: string; readonly words: string }
  | { readonly is: 'fault'; readonly words: string };

const FORM = /^(\d+(?:[.,]\d+)?)\s*([^\d\s.,].*)?$/;
/** Symbols that mean a mass or a force: what they stand for is asked, never guessed. */
const MASS_AS_FORCE: Readonly<Record<string, string>> = { lb: 'lbf', lbs: 'lbf', kg: 'kgf', g: 'gf', oz: 'ozf' };

/**
 * Reads a field: comma or point, with the gauge's unit or without.
 * @param chosen unit of the column
 */
export function readTyped(text: string, role: ReadingRole, chosen: string): TypedReading {
  const trimmed = text.trim();
  if (trimmed === '') return { is: 'empty' };
  const [, digits, sent] = FORM.exec(trimmed) ?? [];
  if (digits === undefined)
    return { is: 'fault', words: `“${trimmed}” is no reading; expected one number such as 161.4, with its unit or without.` };
  const value = digits.replace(',', '.');
  if (/^0+(\.0+)?$/.test(value)) return { is: 'fault', words: 'A reading is above zero. Was the gauge on peak?' };
  return sent === undefined || sent.trim() === chosen ? { is: 'number', value, unit: chosen } : withUnit(value, sent.trim(), role, chosen);
}

function withUnit(value: string, sent: string, role: ReadingRole, chosen: string): TypedReading {
  const dimension = READING_ROLES[role];
  const asForce = dimension === 'force' ? MASS_AS_FORCE[sent.toLowerCase()] : undefined;
  const unit = asForce ?? sent;
  const fault = unitFault(READING_WORDS[role], unit, dimension);
  if (fault !== null) return { is: 'fault', words: fault };
  if (unit === chosen) return { is: 'question', value, unit, words: `“${sent}” is a mass. Take ${value} as ${unit}?` };
  return { is: 'question', value, unit, words: `The gauge says ${sent}, the sheet is in ${chosen}. Take ${value} as ${unit}?` };
}
