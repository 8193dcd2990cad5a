export interface PullAmbient {
  /** As displayed. */
  readonly temperature: { readonly text: string; readonly unit: string };
  readonly temperatureC: string;
  readonly humidityPercent: string;
}

/** Pulls on the control line of one bench day, as charts and releases take them: plain JSON, decimals as text. */
export interface ControlPullEvidence {
  readonly instrument: string;
  /** Slug. */
  readonly method: string;
  readonly controlLine: { readonly code: string; readonly name: string; readonly lot: string };
  readonly benchDay: string;
  /** Display name. */
  readonly tester: string;
  /** Breaking forces as entered, and in newtons. */
  readonly readings: readonly { readonly text: string; readonly unit: string; readonly valueN: string }[];
  /** Air at the bench; null where nobody looked, and for pulls from before it was asked. */
  readonly ambient?: PullAmbient | null | undefined;
  readonly note: string | null;
  /** Why it was taken out of the chart. */
  readonly strike: { readonly reason: string; readonly on: string } | null;
}
