import type { JobWithMetadata } from 'pg-boss';

/** An order that fails is tried again so often, the first time after so many seconds, then after longer and longer. */
export const RETRIES = { retryLimit: 5, retryDelay: 2, retryBackoff: true } as const;

export function attemptInWords({ retryCount, retryLimit }: Pick<JobWithMetadata, 'retryCount' | 'retryLimit'>): string {
  const next = retryCount < retryLimit ? 'it is tried again' : 'it is not tried again by itself';
  return `attempt ${retryCount + 1} of ${retryLimit + 1}; ${next}`;
}
