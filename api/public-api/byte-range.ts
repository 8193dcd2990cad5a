/** Which bytes of an answer are asked for. */
export interface ByteRange {
  readonly from: number;
  /** The last one, itself asked for. */
  readonly to: number;
}

/**
 * Reads a Range header of one part (RFC 9110, 14.1.2).
 * @param ifRange a part is wanted only of what the client began with: its ETag, a strong one (RFC 9110, 13.1.5)
 * @param sizeBytes of the whole
 * @returns "whole" where there is nothing to take a part of, more than one is asked for or it cannot be understood; "none" where it lies outside
 */
export function rangeOf(range: string, ifRange: string | undefined, etag: string, sizeBytes: number): ByteRange | 'whole' | 'none' {
  if (ifRange !== undefined && ifRange !== etag) return 'whole';
  const found = /^bytes=(\d{0,15})-(\d{0,15})$/.exec(range.trim());
  const [, first = '', last = ''] = found ?? [];
  if (!found || (first === '' && last === '')) return 'whole';
  if (first === '') return Number(last) === 0 ? 'none' : { from: Math.max(0, sizeBytes - Number(last)), to: sizeBytes - 1 };
  const from = Number(first);
  if (last !== '' && Number(last) < from) return 'whole';
  return from >= sizeBytes ? 'none' : { from, to: last === '' ? sizeBytes - 1 : Math.min(Number(last), sizeBytes - 1) };
}
