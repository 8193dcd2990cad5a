/** What was handed in, read, computed and checked: ready to be stored or shown. */
export interface ExaminedSubmission {
  readonly editionId: string;
  readonly editionSlug: string;
  readonly spoolId: string;
  readonly methodVersionId: string;
  readonly benchDay: string;
  readonly revision: StorableRevision;
}

/** One revision as it goes on record. */
export interface StorableRevision {
  readonly zone: string;
  readonly temperatureText: string;
  readonly temperatureUnit: string;
  readonly temperatureC: string;
  readonly humidityPercent: string;
  readonly hasSeenLabel: boolean;
  readonly note: string | null;
  readonly readingsDigest: string;
  readonly checkSetVersion: number;
  readonly figures: object;
  readonly instruments: readonly { readonly instrumentId: string; readonly certificate: string | null }[];
  readonly specimens: readonly StorableSpecimen[];
  readonly findings: readonly StorableFinding[];
}

export interface StorableSpecimen {
  readonly number: number;
  readonly condition: string;
  readonly validity: string;
  readonly invalidReason: string | null;
  readonly readings: readonly StorableReading[];
}

export interface StorableReading {
  readonly role: string;
  readonly station: number | null;
  readonly enteredText: string;
  readonly enteredUnit: string;
  readonly valueSi: string;
}

export interface StorableFinding {
  readonly code: string;
  readonly severity: string;
  readonly detail: object;
}
