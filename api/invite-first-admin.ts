/** Prints one invitation for the first admin of an empty installation. */
import 'reflect-metadata';
import { NestFactory } from '@nestjs/core';
import { AccountsModule } from './accounts/accounts.module.js';
import { AccountsReadModel } from './accounts/accounts.read-model.js';
import { Invite } from './accounts/invite.js';
import { AppModule } from './app.module.js';
import { readConfig } from './config.js';

const context = await NestFactory.createApplicationContext(AppModule.with({ config: readConfig() }), { logger: false });
const accounts = context.select(AccountsModule);
if (await accounts.get(AccountsReadModel).isEmpty()) {
  const invitation = await accounts.get(Invite).run(null, { roles: ['admin'], note: 'First admin of this installation' });
  console.log(invitation.address);
} else {
  console.log('There are accounts already: ask an admin for an invitation.');
}
await context.close();
