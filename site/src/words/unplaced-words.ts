import { say } from './say.js';

/** Why a table has values and no places. */
export const UNPLACED = say`Values without places: too few lines were pulled twice, and neither the method nor a round robin, control pulls or an edition before tell what rigs and testers differ by. So nobody can say how far two values must lie apart to be told apart.`;
