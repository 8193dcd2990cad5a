import { withinList } from './locale.js';
import { say } from './say.js';
import type { ComparedTables, ComparedVariant } from '../weigh/compared.js';
import { aheadOverall, besideIn } from '../weigh/one-beside-another.js';
import { chanceWords } from './chance-words.js';
import { listed } from './listed.js';

/** From so many per cent on one of two is called ahead. */
const SURE = 95;

/** `Is A better than B?` in sentences: what is ahead, what is behind, what is open, and overall last. */
export function verdictWords(tables: ComparedTables, one: ComparedVariant, other: ComparedVariant): string {
  const found = tables.categories.flatMap(({ name }, at) => {
    const percent = besideIn(tables, at, one, other)?.percent;
    return percent === null || percent === undefined ? [] : [{ name: withinList(name), percent }];
  });
  const named = (which: (percent: number) => boolean) => found.filter(({ percent }) => which(percent)).map(({ name }) => name);
  const parts = [
    told(
      say`ahead in`,
      named((percent) => percent >= SURE),
    ),
    told(
      say`behind in`,
      named((percent) => percent <= 100 - SURE),
    ),
    told(
      say`too close to call in`,
      named((percent) => percent < SURE && percent > 100 - SURE),
    ),
  ].filter((part) => part !== '');
  const categories = parts.length === 0 ? say`no category tells them apart` : parts.join('; ');
  return say`${one.name} beside ${other.name}: ${categories}. ${overallWords(tables, one, other)}`;
}

const told = (what: string, names: readonly string[]): string => (names.length === 0 ? '' : `${what} ${listed(names)}`);

function overallWords(tables: ComparedTables, one: ComparedVariant, other: ComparedVariant): string {
  const percent = aheadOverall(tables, one, other);
  if (percent === null) return say`Overall nothing is stated of the two.`;
  const chance = say`the chance that it is ahead is ${chanceWords(percent)}`;
  if (percent < SURE && percent > 100 - SURE) return say`Overall it is too close to call: ${chance}.`;
  return say`Overall it is ${percent >= SURE ? say`ahead` : say`behind`}: ${chance}.`;
}
