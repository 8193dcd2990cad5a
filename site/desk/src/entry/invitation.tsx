import { render } from 'preact';
import { Masthead } from '../frame/masthead.js';
import { Invitation } from '../screens/invitation.js';

const place = document.getElementById('desk');
if (place)
  render(
    <>
      <Masthead account={null} />
      <main id="content" tabIndex={-1}>
        <Invitation secret={window.location.hash.slice(1)} />
      </main>
    </>,
    place,
  );
