import { demoAccounts, demoAdmin, demoEditor, demoReviewers, demoTesters } from '../demo-accounts.js';
import type { DemoAccount } from '../demo-accounts.js';
import { HouseClient } from './house-client.js';

/** Everybody who works a winter, signed in. */
export interface People {
  readonly admin: HouseClient;
  readonly editor: HouseClient;
  readonly reviewers: readonly HouseClient[];
  readonly testers: readonly HouseClient[];
}

/** The first admin takes the house's invitation and invites the others. */
export async function makeAccounts(url: string, firstInvitation: string): Promise<void> {
  const stranger = HouseClient.stranger(url);
  const accept = (secret: string, { email, displayName, password }: DemoAccount) =>
    stranger.post(`/v1/invitations/${secret}/acceptance`, { body: { email, displayName, password } });
  await accept(firstInvitation, demoAdmin);
  const admin = await HouseClient.signedIn(url, demoAdmin);
  const others = demoAccounts.filter((account) => account !== demoAdmin);
  for (const account of others) {
    const { secret } = await admin.post<{ secret: string }>('/v1/invitations', {
      body: { roles: account.roles, note: account.displayName },
    });
    await accept(secret, account);
  }
  await admin.signOut();
}

/** Tokens last a year at most, so everybody signs in anew each winter. */
export async function signEverybodyIn(url: string): Promise<People> {
  const signIn = (account: DemoAccount) => HouseClient.signedIn(url, account);
  const [admin, editor] = await Promise.all([signIn(demoAdmin), signIn(demoEditor)]);
  const [reviewers, testers] = [await Promise.all(demoReviewers.map(signIn)), await Promise.all(demoTesters.map(signIn))];
  return { admin, editor, reviewers, testers };
}

/** Takes the winter's tokens away again. */
export async function signEverybodyOut({ admin, editor, reviewers, testers }: People): Promise<void> {
  await Promise.all([admin, editor, ...reviewers, ...testers].map((person) => person.signOut()));
}
