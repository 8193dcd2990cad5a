import { render } from 'preact';
import type { ComponentType } from 'preact';
import { Foot } from './foot.js';
import { Masthead } from './masthead.js';

/** Puts a screen into its page for whoever holds the secret behind the # of its address; nobody needs to be signed in. */
export function openAlone(Screen: ComponentType<{ secret: string }>): void {
  const place = document.getElementById('desk');
  if (!place) return;
  render(
    <>
      <Masthead account={null} />
      <main id="content" tabIndex={-1}>
        <Screen secret={window.location.hash.slice(1)} />
      </main>
      <Foot />
    </>,
    place,
  );
}
