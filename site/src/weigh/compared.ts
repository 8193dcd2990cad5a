/** What the page of comparisons shows of a division, or of an edition with one: published figures. */
export interface ComparedTables {
  readonly name: string;
  readonly categories: readonly ComparedCategory[];
  readonly variants: readonly ComparedVariant[];
  readonly pairs: { readonly variants: readonly string[]; readonly aheadPercent: readonly (readonly number[])[] };
  /** Words beside figures, with the slugs that they touch. */
  readonly remarks: readonly {
    readonly words: string;
    readonly signedBy: string;
    readonly on: string;
    readonly variants: readonly string[];
  }[];
}

export interface ComparedCategory {
  readonly name: string;
  readonly direction: 'more' | 'less';
  readonly unit: string;
  readonly tradeUnit: string | null;
  readonly href: string;
}

export interface ComparedVariant {
  readonly slug: string;
  readonly name: string;
  readonly href: string | null;
  readonly overall: {
    readonly place: number | null;
    readonly placeInterval: { readonly low: number; readonly high: number } | null;
    readonly group: number | null;
  };
  /** In the order of the categories; undefined without a result. */
  readonly categories: readonly (ComparedRow | undefined | null)[];
}

export interface ComparedFigure {
  readonly value: string;
  readonly low: string | null;
  readonly high: string | null;
}

export interface ComparedRow extends ComparedFigure {
  readonly place: number | null;
  readonly group: number | null;
  readonly trade: ComparedFigure | null;
  /** Variant of the next placed row, with the published chance of being ahead of it [%]. */
  readonly next: { readonly slug: string; readonly percent: string } | null;
}
