/** Prints one invitation for the first admin of an empty installation. */
import { AccountsModule } from './accounts/accounts.module.js';
import { AccountsReadModel } from './accounts/accounts.read-model.js';
import { Invite } from './accounts/invite.js';
import { inProgram } from './in-program.js';

await inProgram(async (program) => {
  const accounts = program.select(AccountsModule);
  if (await accounts.get(AccountsReadModel).isEmpty()) {
    const invitation = await accounts.get(Invite).run(null, { roles: ['admin'], note: 'First admin of this installation' });
    console.log(invitation.address);
  } else {
    console.log('There are accounts already: ask an admin for an invitation.');
  }
});
