import { say } from './say.js';
/** A chance in whole per cent; one that rounds to certainty is not called certain. */
export function chanceWords(percent: number | undefined): string {
  if (percent === undefined) return say`not stated`;
  if (percent >= 100) return '>99 %';
  return percent <= 0 ? '<1 %' : `${percent} %`;
}
