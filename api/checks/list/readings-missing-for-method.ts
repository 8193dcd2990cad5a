import type { ReadingRole } from '../../contract/submission-content.js';
import { READING_WORDS } from '../../contract/submission-content.js';
import { observe } from '../check.js';
import type { SpecimenInSi } from '../../readings/readings-si.js';
import type { Check } from '../check.js';
import { needOf } from '../../readings/series-needs.js';
import { namedSpecimens } from '../specimen-words.js';

export const readingsMissingForMethod: Check = {
  code: 'readings/missing-for-method',
  title: 'Readings that the method needs are missing',
  severity: 'blocks',
  looksAt: ['content', 'method', 'specimens'],
  explains:
    'A submission has specimens of each series that its method version states, and each valid one carries the readings of the series, at each of its stations: a method with a treated series has untreated pulls of the same spool to compare with.',
  limit:
    'Of a breaking force: the force, on treated specimens where the series is treated. Of a diameter: widest and narrowest, at as many stations as the version states. Of a linear density: mass and length.',
  source: 'common practice',
  example: 'A knot submission without straight pulls of the same spool.',
  run({ content, specimens, method }) {
    return method.series.map(needOf).flatMap(({ condition, roles, stations }) => {
      const tested = specimens.filter((specimen) => specimen.condition === condition);
      const counted = tested.filter(({ state }) => state === 'valid');
      // A day on which nothing came out well is on record with its reason.
      if (counted.length === 0 && tested.length > 0 && content.fewerBecause !== undefined) return [];
      const lacking = counted.filter((specimen) => isLacking(specimen, roles, stations));
      if (counted.length > 0 && lacking.length === 0) return [];
      const numbers = lacking.map(({ number }) => number);
      const where = counted.length === 0 ? `no ${condition} specimen` : namedSpecimens(numbers);
      const expected = `${roles.map((role) => READING_WORDS[role]).join(' and ')}${stations > 1 ? ` at ${stations} stations` : ''}`;
      return [
        observe(`The method ${method.slug} needs ${expected} on ${condition} specimens; missing on ${where}.`, {
          actual: where,
          expected,
          specimens: numbers,
        }),
      ];
    });
  },
};

/** Whether a station is missing, or a role at a station where another one was read. */
function isLacking({ readings }: SpecimenInSi, roles: readonly ReadingRole[], least: number): boolean {
  const stations = new Set(readings.filter(({ role }) => roles.includes(role)).map(({ station }) => station));
  return (
    stations.size < least ||
    [...stations].some((station) => roles.some((role) => !readings.some((reading) => reading.role === role && reading.station === station)))
  );
}
