/** An invented maker and its habits. */
export interface DemoMaker {
  readonly slug: string;
  readonly name: string;
  /** Claimed over true strength: 1 is honest. */
  readonly labelOptimism: number;
  /** Unit on the label, and the step that numbers are printed in. */
  readonly printsIn: 'lbf' | 'kgf';
  /** Fibre and finish against the usual of the trade: 1 is usual. */
  readonly quality: number;
}

/** No maker of the trade bears one of these names. */
export const demoMakers = [
  { slug: 'ottervane', name: 'Ottervane', labelOptimism: 1.0, printsIn: 'kgf', quality: 1.01 },
  { slug: 'brackholm-cordage', name: 'Brackholm Cordage', labelOptimism: 1.12, printsIn: 'lbf', quality: 1.04 },
  { slug: 'selwyck-daughters', name: 'Selwyck & Daughters', labelOptimism: 0.93, printsIn: 'kgf', quality: 0.98 },
  { slug: 'marrowfleet', name: 'Marrowfleet', labelOptimism: 1.28, printsIn: 'lbf', quality: 0.97 },
  { slug: 'tarnequay', name: 'Tarnequay', labelOptimism: 1.06, printsIn: 'lbf', quality: 1.02 },
  { slug: 'ilverness', name: 'Ilverness Line Works', labelOptimism: 1.18, printsIn: 'kgf', quality: 1.03 },
  { slug: 'dunmarrick', name: 'Dunmarrick', labelOptimism: 1.03, printsIn: 'kgf', quality: 0.99 },
  { slug: 'hythelow', name: 'Hythelow', labelOptimism: 1.22, printsIn: 'lbf', quality: 1.0 },
  { slug: 'pellandor', name: 'Pellandor', labelOptimism: 0.97, printsIn: 'kgf', quality: 1.0 },
  { slug: 'quillhaven', name: 'Quillhaven', labelOptimism: 1.09, printsIn: 'kgf', quality: 0.96 },
  { slug: 'vossing-tide', name: 'Vossing Tide', labelOptimism: 1.15, printsIn: 'lbf', quality: 1.05 },
  { slug: 'ebbsworth-twine', name: 'Ebbsworth Twine', labelOptimism: 1.01, printsIn: 'kgf', quality: 0.98 },
] as const satisfies readonly DemoMaker[];

export type MakerSlug = (typeof demoMakers)[number]['slug'];
