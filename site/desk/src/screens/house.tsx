import { accountsResponse } from '../../../../api/contract/endpoints/accounts.js';
import { Accounts } from '../house/accounts.js';
import { AuditTrail } from '../house/audit-trail.js';
import { Invitations } from '../house/invitations.js';
import { MachineRoom } from '../house/machine-room.js';
import { Webhooks } from '../house/webhooks.js';
import { ask } from '../http/ask.js';
import { Folded } from '../parts/folded.js';
import { Loading } from '../parts/loading.js';
import { useLoaded } from '../parts/use-loaded.js';

export function House() {
  const accounts = useLoaded(() => ask(accountsResponse, 'GET', 'accounts'));
  return (
    <>
      <h1>House</h1>
      <h2>Invite somebody</h2>
      <Invitations />
      <Folded heading="Accounts" told={accounts.answer ? String(accounts.answer.items.length) : ''}>
        <Loading of={accounts} />
        {accounts.answer && <Accounts accounts={accounts.answer.items} onChanged={accounts.again} />}
      </Folded>
      <Webhooks />
      <MachineRoom />
      <Folded heading="Who changed what">
        <AuditTrail accounts={accounts.answer?.items ?? []} />
      </Folded>
    </>
  );
}
