import { z } from 'zod';
import { ROLES } from '../roles.js';
import { shownName } from '../display-name.js';

const role = z.enum(ROLES).describe('Role');
const email = z
  .email()
  .max(254)
  .transform((text) => text.toLowerCase())
  .describe('E-mail address');
/** Fewest characters of a password. */
export const SHORTEST_PASSWORD = 12;
const password = z
  .string()
  .min(SHORTEST_PASSWORD, `A password has at least ${SHORTEST_PASSWORD} characters`)
  .max(200)
  .describe(`Password, at least ${SHORTEST_PASSWORD} characters`);
const displayName = shownName(80).describe('Name shown on published pages, in one script, without invisible characters');

const isMailed = z.boolean().describe('Whether the mail server has taken it; if not, hand the address over');

/** An id that is no UUID is nobody's. */
export const idParameter = z.uuid().describe('Id, a UUID');

export const signInRequest = z.strictObject({ email, password: z.string().max(200).describe('Password') });
export const accountResponse = z.strictObject({
  id: z.uuid(),
  email: z.string(),
  displayName: z.string(),
  roles: z.array(role),
  isDisabled: z.boolean(),
  version: z.int().describe('Number in the ETag'),
});
export const sessionResponse = z.strictObject({
  csrfToken: z.string().describe('Send it in X-CSRF-Token with every change'),
  account: accountResponse,
});
export const accountsResponse = z.strictObject({ items: z.array(accountResponse), nextCursor: z.string().nullable() });
export const testersResponse = z.strictObject({
  items: z.array(z.strictObject({ id: z.uuid(), displayName: z.string() })).describe('By name'),
  nextCursor: z.string().nullable(),
});
export const accountChange = z.strictObject({ roles: z.array(role).optional(), isDisabled: z.boolean().optional() });

export const invitationRequest = z.strictObject({
  roles: z.array(role).min(1),
  note: z.string().trim().min(1).max(200).describe('Who it is for'),
  email: email.optional().describe('Where to send it, if the house has a mail server'),
});
export const invitationResponse = z.strictObject({
  id: z.uuid(),
  secret: z.string().describe('Shown once'),
  address: z.string().describe('Page where the invitation is accepted'),
  isMailed,
  roles: z.array(role),
  expiresAt: z.iso.datetime(),
});
export const invitationsResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      id: z.uuid(),
      roles: z.array(role),
      note: z.string(),
      createdAt: z.iso.datetime(),
      expiresAt: z.iso.datetime(),
    }),
  ),
  nextCursor: z.string().nullable(),
});
export const acceptanceRequest = z.strictObject({ email, displayName, password });

export const passwordChange = z.strictObject({
  currentPassword: z.string().max(200).describe('Password until now'),
  newPassword: password,
});
export const newPassword = z.strictObject({ password });
export const passwordResetResponse = z.strictObject({
  secret: z.string().describe('Shown once'),
  address: z.string().describe('Page where the new password is set'),
  isMailed,
  expiresAt: z.iso.datetime(),
});
export const lostPasswordRequest = z.strictObject({ email });
export const sessionsResponse = z.strictObject({
  items: z.array(
    z.strictObject({
      id: z.uuid(),
      network: z.string().nullable().describe('Network address it was opened from'),
      createdAt: z.iso.datetime(),
      expiresAt: z.iso.datetime(),
      isCurrent: z.boolean().describe('Whether it is the one that asks'),
    }),
  ),
  nextCursor: z.string().nullable(),
});

export const tokenRequest = z.strictObject({
  name: z.string().trim().min(1).max(80).describe('What the token is for'),
  scopes: z.array(role).min(1).describe('Roles that the token may use'),
  expiresInDays: z.int().min(1).max(366).default(90),
});
const token = {
  id: z.uuid(),
  name: z.string(),
  scopes: z.array(role),
  expiresAt: z.iso.datetime(),
  lastUsedAt: z.iso.datetime().nullable(),
};
export const tokenResponse = z.strictObject({ ...token, token: z.string().describe('Shown once, stored hashed') });
export const tokensResponse = z.strictObject({ items: z.array(z.strictObject(token)), nextCursor: z.string().nullable() });

export const interestRequest = z.strictObject({
  maker: z.string().describe('Slug of the maker'),
  words: z.string().trim().min(1).max(400).describe('The tie, in words'),
});
export const interestResponse = z.strictObject({ maker: z.string(), words: z.string(), declaredAt: z.iso.datetime() });
export const interestsResponse = z.strictObject({ items: z.array(interestResponse), nextCursor: z.string().nullable() });

export type SignInRequest = z.infer<typeof signInRequest>;
export type AcceptanceRequest = z.infer<typeof acceptanceRequest>;
export type LostPasswordRequest = z.infer<typeof lostPasswordRequest>;
export type InvitationRequest = z.infer<typeof invitationRequest>;
export type PasswordChange = z.infer<typeof passwordChange>;
export type TokenRequest = z.infer<typeof tokenRequest>;
export type AccountChange = z.infer<typeof accountChange>;
export type InterestRequest = z.infer<typeof interestRequest>;
export type AccountResponse = z.infer<typeof accountResponse>;
