import type { Loaded } from './use-loaded.js';

/** While there is no answer yet: that it is being fetched, or what went wrong and how to go on. */
export function Loading({ of }: { of: Loaded<unknown> }) {
  if (of.fault === '') return of.answer === null ? <p class="soft">Fetching …</p> : null;
  return (
    <p role="alert" class="signal">
      {of.fault}{' '}
      <button type="button" onClick={of.again}>
        Try again
      </button>
    </p>
  );
}
