/** `npm run let-admin-in -- <address>`: prints a one-time address at which an admin who is locked out sets a new password. */
import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AccountsModule } from './accounts/accounts.module.js';
import { AccountsReadModel } from './accounts/accounts.read-model.js';
import { MakePasswordReset } from './accounts/make-password-reset.js';
import { AppModule } from './app.module.js';
import { readConfig } from './config.js';

const context = await NestFactory.createApplicationContext(AppModule.with({ config: readConfig() }), { logger: false });
const accounts = context.select(AccountsModule);
const email = process.argv[2]?.toLowerCase();
const admins = (await accounts.get(AccountsReadModel).all()).filter(({ roles, isDisabled }) => roles.includes('admin') && !isDisabled);
const admin = admins.find((account) => account.email === email);
if (admin) {
  const { address, expiresAt } = await accounts.get(MakePasswordReset).run(null, admin.id);
  console.log(`Open ${address} and set a new password; it serves once, until ${expiresAt}.`);
} else {
  console.error(
    `Found "${email ?? ''}"; expected the address of an admin: ${admins.map((account) => account.email).join(', ') || 'there is none'}.`,
  );
  process.exitCode = 1;
}
await context.close();
