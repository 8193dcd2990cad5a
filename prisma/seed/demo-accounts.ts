import type { Role } from '../../api/contract/roles.js';

/** An account of the demo; its password is no secret, so a real installation never gets one. */
export interface DemoAccount {
  readonly email: string;
  readonly password: string;
  readonly roles: readonly Role[];
  readonly displayName: string;
}

const account = (name: string, displayName: string, ...roles: Role[]): DemoAccount => ({
  email: `${name}@northquay.example`,
  password: `north-quay-${name}`,
  roles,
  displayName,
});

export const demoAdmin = account('admin', 'Sten Keyholder', 'admin');
export const demoEditor = account('editor', 'Marit Lanternway', 'editor');
export const demoReviewers = [
  account('reviewer-1', 'Ines Plumbline', 'reviewer'),
  account('reviewer-2', 'Hugh Tidemark', 'reviewer'),
] as const;
export const demoTesters = [
  account('tester-1', 'Wren Tollgate', 'tester'),
  account('tester-2', 'Odo Marlspike', 'tester'),
  account('tester-3', 'Petra Capstan', 'tester'),
  account('tester-4', 'Basil Fathomly', 'tester'),
  account('tester-5', 'Nell Bowlinette', 'tester'),
] as const;

/** Everybody at the North Quay Line Trials; all invented. */
export const demoAccounts: readonly DemoAccount[] = [demoAdmin, demoEditor, ...demoReviewers, ...demoTesters];
