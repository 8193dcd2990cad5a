import { Identifiers } from '../../../api/platform/identifiers/identifiers.js';
import { Draws } from '../model/draws.js';

/** Blind codes of the demo come from its seed, so that they are the same in every demo; secrets stay secret. */
export class SeasonIdentifiers extends Identifiers {
  private readonly draws: Draws;

  constructor(seed: number) {
    super();
    this.draws = new Draws(seed, 'blind codes');
  }

  override below(limit: number): number {
    return this.draws.below(limit);
  }
}
