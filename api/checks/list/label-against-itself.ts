import { labelPlausibility } from '../../measurement/claims/pe-number.js';
import { observe } from '../check.js';
import type { Check } from '../check.js';

export const labelAgainstItself: Check<'tolerancePercent'> = {
  code: 'label/against-itself',
  title: 'Label that contradicts itself',
  severity: 'note',
  looksAt: ['variant'],
  explains:
    'A PE number states a linear density, and no line is thinner than a solid rod of it. The tester does not see this finding: it is about the label of a coded spool, not about the readings.',
  limit: 'Claimed diameter against the solid diameter of the claimed PE number at the density of the fibre.',
  limits: {
    tolerancePercent: { words: 'Claimed diameter below the solid one, at most', value: 5, unit: '%', atLeast: 0, atMost: 50 },
  },
  source: 'PE 1 is 200 denier (trade table, from memory); its printed 0.165 mm already lies 3.4 % below the solid diameter',
  example: 'A box that prints PE 1.5 and 0.16 mm: the fibre alone would be 0.209 mm thick.',
  run({ variant }, { tolerancePercent }) {
    const claimed = (quantity: string) =>
      variant.claims.filter((claim) => claim.quantity === quantity).map(({ valueSi }) => Number(valueSi));
    return claimed('peNumber').flatMap((peNumber) =>
      claimed('diameter')
        .map((diameterM) => {
          const diameterMm = 1000 * diameterM;
          return { diameterMm, ...labelPlausibility(diameterMm, peNumber, variant.densityGPerCm3) };
        })
        .filter(({ diameterMm, solidDiameterMm }) => diameterMm < solidDiameterMm * (1 - tolerancePercent / 100))
        .map(({ diameterMm, solidDiameterMm }) => {
          const [claimedMm, solidMm] = [diameterMm.toFixed(3), solidDiameterMm.toFixed(3)];
          return observe(
            `The label says PE ${peNumber} and ${claimedMm} mm, but the fibre of PE ${peNumber} alone is ${solidMm} mm thick.`,
            {
              actual: `${claimedMm} mm`,
              expected: `${solidMm} mm or more, less ${tolerancePercent} %`,
            },
          );
        }),
    );
  },
};
