import { Identifiers } from '../../../api/platform/identifiers/identifiers.js';
import { Draws } from '../model/draws.js';

/**
 * Blind codes of the demo and the salts of their keys come from its seed, so that its releases are the same in every demo; what
 * lets anybody in stays secret.
 */
export class SeasonIdentifiers extends Identifiers {
  private readonly draws: Draws;
  private readonly salts: Draws;

  constructor(seed: number) {
    super();
    this.draws = new Draws(seed, 'blind codes');
    this.salts = new Draws(seed, 'salts');
  }

  override salt(): string {
    return Buffer.from(Array.from({ length: 32 }, () => this.salts.below(256))).toString('base64url');
  }

  override below(limit: number): number {
    return this.draws.below(limit);
  }
}
