import type { ReadingRole } from '../contract/submission-content.js';
import { READING_ROLES, READING_WORDS } from '../contract/submission-content.js';
import { observe } from './check.js';
import type { Observation } from './check.js';
import type { CheckedInstrument, CheckInput } from './check-input.js';
import { instrumentsFor } from './instruments-for.js';
import { namedSpecimens } from './specimen-words.js';

/** How readings are held against one property of the instruments named. */
export interface Measure {
  /** The property as words, e.g. "beyond the capacity". */
  readonly words: string;
  readonly limitSi: (instruments: readonly CheckedInstrument[]) => number;
  readonly isAgainst: (valueSi: number, limitSi: number) => boolean;
}

/** One observation for each role with readings against the limit of every instrument that can have read it. */
export function readingsAgainst({ specimens, instruments }: CheckInput, { words, limitSi, isAgainst }: Measure): Observation[] {
  return (Object.keys(READING_ROLES) as ReadingRole[]).flatMap((role) => {
    const candidates = instrumentsFor(role, instruments);
    if (candidates.length === 0) return [];
    const limit = limitSi(candidates);
    const against = specimens.flatMap(({ number, readings }) =>
      readings
        .filter((reading) => reading.role === role && isAgainst(Number(reading.valueSi), limit))
        .map((reading) => ({ number, ...reading })),
    );
    const [first] = against;
    if (!first) return [];
    const numbers = [...new Set(against.map(({ number }) => number))];
    const sample = `${first.enteredText} ${first.enteredUnit}`;
    const where = `${namedSpecimens(numbers)} (${numbers.length === 1 ? '' : 'first '}${sample})`;
    return [
      observe(`The ${READING_WORDS[role]} of ${where} is ${words} of every instrument named. Check number, unit and instrument.`, {
        actual: sample,
        expected: `${limit} ${first.siUnit}`,
        specimens: numbers,
      }),
    ];
  });
}
