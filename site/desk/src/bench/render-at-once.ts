import { options } from 'preact';

/** A gauge that types like a keyboard is faster than the next frame: the row must be there, and hold the cursor, before its next character. */
export const renderAtOnce = (): void => {
  options.debounceRendering = (render) => render();
};
