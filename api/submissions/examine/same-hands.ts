import type { SecondTime } from '../retested.read-model.js';

/** What is the same as the first time, or otherwise that should be the same, of a hand-in on a spool that is tested again; in words. Pure. */
export function sameHands(
  testerId: string,
  { method, instruments }: { readonly method: string; readonly instruments: readonly string[] },
  first: SecondTime | undefined,
): string[] {
  if (!first) return [];
  const rigs = instruments.filter((code) => first.instruments.includes(code));
  return [
    ...(first.testerId === testerId ? ['its tester pulled it the first time'] : []),
    ...(rigs.length > 0 ? [`${rigs.join(', ')} pulled it the first time`] : []),
    ...(first.method === method ? [] : [`the method was ${first.method} the first time`]),
  ];
}
