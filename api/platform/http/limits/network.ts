import { isIPv6 } from 'node:net';

const HEXTETS = 8;
const OF_NETWORK = 4;

/**
 * Who counts as one caller: an IPv4 address, or the /64 of an IPv6 one, within which a single line may choose freely.
 * @param address as the socket or a trusted proxy tells it
 */
export function networkOf(address: string): string {
  if (!isIPv6(address)) return address;
  const mapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(address)?.[1];
  if (mapped !== undefined) return mapped;
  const [head = '', tail] = address.replace(/%.*/, '').toLowerCase().split('::');
  const before = head === '' ? [] : head.split(':');
  const after = tail === undefined || tail === '' ? [] : tail.split(':');
  const zeros = tail === undefined ? 0 : HEXTETS - before.length - after.length;
  const hextets = [...before, ...Array.from({ length: zeros }, () => '0'), ...after].map((part) => part.replace(/^0+(?=.)/, ''));
  return `${hextets.slice(0, OF_NETWORK).join(':')}::/64`;
}
