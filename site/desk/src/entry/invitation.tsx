import { render } from 'preact';
import { Foot } from '../frame/foot.js';
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
      <Foot />
    </>,
    place,
  );
