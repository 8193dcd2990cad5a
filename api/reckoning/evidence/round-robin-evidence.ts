/** A round robin as its report and releases take it: plain JSON, testers by number. */
export interface RoundRobinEvidence {
  readonly slug: string;
  readonly name: string;
  readonly words: string;
  /** Slug. */
  readonly method: string;
  readonly levels: readonly string[];
  readonly specimens: number;
  readonly state: 'planned' | 'open' | 'closed';
  readonly closedOn: string | null;
  /** How many take part. */
  readonly testers: number;
  readonly cells: readonly {
    readonly tester: number;
    readonly level: string;
    readonly instrument: string;
    readonly readings: readonly { readonly text: string; readonly unit: string; readonly valueN: string }[];
  }[];
}
