/** Which addresses events may go to: nobody is let into the operator's network through us. */
import { lookup } from 'node:dns/promises';
import ipaddr from 'ipaddr.js';

export interface Resolved {
  readonly address: string;
  readonly family: 4 | 6;
}

/** Finds the addresses of a host; a test has its own. */
export type Resolve = (host: string) => Promise<readonly Resolved[]>;

export const resolveHost: Resolve = async (host) =>
  (await lookup(host, { all: true })).map(({ address, family }) => ({ address, family: family === 6 ? 6 : 4 }));

/** All of IPv6 that was ever given to anybody (RFC 4291, 2.4; IANA's registry of global unicast addresses). */
const GIVEN_OUT = ipaddr.parseCIDR('2000::/3');

/** Whether an address is one of the public internet, by the registries of special-purpose addresses (RFC 6890); IPv4 inside IPv6 is looked at as such. */
export function isFar(address: string): boolean {
  if (!ipaddr.isValid(address)) return false;
  const found = ipaddr.process(address);
  return found.range() === 'unicast' && (found.kind() === 'ipv4' || found.match(GIVEN_OUT));
}

/** Why nothing is sent to an address. */
export class AddressRefused extends Error {}

/**
 * The one address that a connection to the URL must go to: resolved now and then used as it is, so that a name that points elsewhere a
 * moment later leads nobody in.
 * @param nearAllowed whether the operator allows private and loopback addresses, and plain http
 * @throws AddressRefused that says what was found
 */
export async function addressFor(url: URL, nearAllowed: boolean, resolve: Resolve = resolveHost): Promise<Resolved> {
  if (url.username !== '' || url.password !== '') throw new AddressRefused('The address carries a name or password; leave them out.');
  if (url.protocol !== 'https:' && !nearAllowed) throw new AddressRefused(`The address begins with ${url.protocol}//; expected https://.`);
  const host = url.hostname.replace(/^\[|\]$/g, '');
  const found = await resolve(host).catch(() => []);
  const [first] = found;
  if (!first) throw new AddressRefused(`No address is found for ${host}.`);
  const near = nearAllowed ? undefined : found.find(({ address }) => !isFar(address));
  if (near) throw new AddressRefused(`${host} leads to ${near.address}, which is no address of the public internet.`);
  return first;
}
