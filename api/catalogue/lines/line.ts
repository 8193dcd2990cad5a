import type { Construction } from '../../contract/constructions.js';
import type { InputFault } from '../../platform/errors/problem.js';

/** Only what is braided has ends that were braided. */
export function carriersFaults(construction: Construction, carriers: number | null): InputFault[] {
  if (carriers === null || construction === 'braided' || construction === 'hollowCore') return [];
  return [
    {
      pointer: '/carriers',
      detail: `Found ${carriers} carriers on a ${construction} line, which is not braided; expected none. Correct the construction or leave carriers out.`,
      code: 'not_braided',
    },
  ];
}
