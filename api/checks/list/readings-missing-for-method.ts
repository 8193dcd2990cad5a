import { observe } from '../check.js';
import type { SpecimenInSi } from '../../submissions/readings-si.js';
import type { Check } from '../check.js';
import { specimenWords } from '../specimen-words.js';

interface Need {
  readonly condition: 'untreated' | 'treated';
  readonly roles: readonly string[];
}

const NEEDS: Readonly<Record<string, readonly Need[]>> = {
  'straight-pull': [{ condition: 'untreated', roles: ['breakingForce'] }],
  'named-knot': [
    { condition: 'untreated', roles: ['breakingForce'] },
    { condition: 'treated', roles: ['breakingForce'] },
  ],
  abrasion: [
    { condition: 'untreated', roles: ['breakingForce'] },
    { condition: 'treated', roles: ['breakingForce'] },
  ],
  diameter: [{ condition: 'untreated', roles: ['wideDiameter', 'narrowDiameter'] }],
  'linear-density': [{ condition: 'untreated', roles: ['mass', 'length'] }],
};

export const readingsMissingForMethod: Check = {
  code: 'readings/missing-for-method',
  title: 'Readings that the method needs are missing',
  severity: 'blocks',
  looksAt: ['content', 'method', 'specimens'],
  explains:
    'Each valid specimen carries the readings that its method is about, at each of its stations, and a knot or abrasion submission has straight pulls of the same spool to compare with.',
  limit:
    'Straight pull: breaking force. Knot, abrasion: breaking force, untreated and treated. Diameter: widest and narrowest. Linear density: mass and length.',
  source: 'common practice',
  example: 'A knot submission without straight pulls of the same spool.',
  run({ content, specimens, method }) {
    return (NEEDS[method.slug] ?? []).flatMap(({ condition, roles }) => {
      const tested = specimens.filter((specimen) => specimen.condition === condition);
      const counted = tested.filter(({ state }) => state === 'valid');
      // A day on which nothing came out well is on record with its reason.
      if (counted.length === 0 && tested.length > 0 && content.fewerBecause !== undefined) return [];
      const lacking = counted.filter((specimen) => isLacking(specimen, roles));
      if (counted.length > 0 && lacking.length === 0) return [];
      const numbers = lacking.map(({ number }) => number);
      const where = counted.length === 0 ? `no ${condition} specimen` : `specimens ${specimenWords(numbers)}`;
      return [
        observe(`The method ${method.slug} needs ${roles.join(' and ')} on ${condition} specimens; missing on ${where}.`, {
          actual: where,
          expected: roles.join(' and '),
          specimens: numbers,
        }),
      ];
    });
  },
};

/** Whether a role is missing, on the whole or at a station where another one was read. */
function isLacking({ readings }: SpecimenInSi, roles: readonly string[]): boolean {
  const stations = new Set(readings.filter(({ role }) => roles.includes(role)).map(({ station }) => station));
  return (
    stations.size === 0 ||
    [...stations].some((station) => roles.some((role) => !readings.some((reading) => reading.role === role && reading.station === station)))
  );
}
