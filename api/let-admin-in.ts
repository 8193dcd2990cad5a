/** `npm run let-admin-in -- <address>`: prints a one-time address at which an admin who is locked out sets a new password. */
import { AccountsModule } from './accounts/accounts.module.js';
import { AccountsReadModel } from './accounts/accounts.read-model.js';
import { MakePasswordReset } from './accounts/make-password-reset.js';
import { inProgram } from './in-program.js';

await inProgram(async (program) => {
  const accounts = program.select(AccountsModule);
  const email = process.argv[2]?.toLowerCase();
  const admins = (await accounts.get(AccountsReadModel).all()).filter(({ roles, isDisabled }) => roles.includes('admin') && !isDisabled);
  const admin = admins.find((account) => account.email === email);
  if (!admin)
    throw new Error(
      `Found "${email ?? ''}"; expected the address of an admin: ${admins.map((account) => account.email).join(', ') || 'there is none'}.`,
    );
  const { address, expiresAt } = await accounts.get(MakePasswordReset).run(null, admin.id);
  console.log(`Open ${address} and set a new password; it serves once, until ${expiresAt}.`);
});
