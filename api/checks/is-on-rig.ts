import type { CheckedInstrument } from './check-input.js';
import { instrumentsFor } from './instruments-for.js';

/** Whether a rig was used: control pulls watch what pulls; a micrometer or a balance has none. */
export const isOnRig = (instruments: readonly CheckedInstrument[]): boolean => instrumentsFor('breakingForce', instruments).length > 0;
