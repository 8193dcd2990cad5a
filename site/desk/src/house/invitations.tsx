import { useState } from 'preact/hooks';
import { z } from 'zod';
import { invitationRequest, invitationResponse, invitationsResponse } from '../../../../api/contract/endpoints/accounts.js';
import { ROLES } from '../../../../api/contract/roles.js';
import { ask } from '../http/ask.js';
import { Form } from '../parts/form.js';
import { Loading } from '../parts/loading.js';
import { ShownOnce } from '../parts/shown-once.js';
import { useAct } from '../parts/use-act.js';
import { useLoaded } from '../parts/use-loaded.js';
import { dayOf } from '../words/day-of.js';

/** Makes invitations, and takes back what nobody has taken up. */
export function Invitations() {
  const open = useLoaded(() => ask(invitationsResponse, 'GET', 'invitations'));
  const [address, setAddress] = useState('');
  const { said, act } = useAct(open.again);
  return (
    <>
      <Form
        schema={invitationRequest}
        submit="Make an invitation"
        keptAs="invitation"
        isRepeated
        fields={[
          { name: 'note', label: 'Who it is for' },
          { name: 'email', label: 'E-mail', kind: 'email', isOptional: true, hint: 'It is sent there where the house has a mail server.' },
          { name: 'roles', label: 'Roles', kind: 'several', options: ROLES.map((role) => [role, role] as const) },
        ]}
        prepare={({ email, ...entered }) => (email === null ? entered : { ...entered, email })}
        onSend={async (request) => {
          const made = await ask(invitationResponse, 'POST', 'invitations', { body: request });
          setAddress(made.address);
          open.again();
          const sent = made.isMailed
            ? `It is on its way to ${request.email ?? ''}. `
            : request.email
              ? 'It could not be sent; hand the address over yourself. '
              : '';
          return `${sent}It works once, until ${dayOf(made.expiresAt)}.`;
        }}
      />
      {address !== '' && <ShownOnce secret={address} words="Send this address." />}
      <Loading of={open} />
      <p role="status">{said}</p>
      {open.answer && open.answer.items.length > 0 && <h3>Not taken up yet</h3>}
      <ul class="rows">
        {open.answer?.items.map(({ id, note, roles, expiresAt }) => (
          <li key={id}>
            <p>
              {note}{' '}
              <span class="soft">
                ({roles.join(', ')}), until {dayOf(expiresAt)}
              </span>
            </p>
            <button
              type="button"
              onClick={() => act(() => ask(z.null(), 'DELETE', `invitations/${id}`), `The invitation for ${note} works no more.`)}
            >
              Take back<span class="only-heard"> the invitation for {note}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
