/** A key that nobody else has. Drawn from random bytes, as a browser gives UUIDs to secure pages alone and a bench may be reached by plain HTTP. */
export const newKey = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
