import { withinSentence } from './locale.js';
import { say } from './say.js';
import type { RetestsDocument } from '../../../api/contract/documents/retests-document.js';
import type { ControlChartDocument, RigsDocument } from '../../../api/contract/documents/rigs-document.js';
import type { RoundRobinReport } from '../../../api/contract/documents/round-robins-document.js';
import { formatDate } from './format-date.js';
import { listed } from './listed.js';
import { nameOf } from './quantity-words.js';

type Edition = { readonly openedOn: string; readonly closedOn: string };

/** Who tested how much: `Five people …`. */
export function whoWords({ testers }: RigsDocument): string {
  const counts = new Set(testers.map(({ specimens }) => specimens));
  const named = testers.map(({ name, specimens }) => (counts.size === 1 ? name : say`${name} (${specimens} specimens)`));
  const each = counts.size === 1 ? say`, ${[...counts].join('')} specimens each` : '';
  return say`${testers.length} ${testers.length === 1 ? say`person` : say`people`} tested${each}: ${listed(named)}.`;
}

/** How well they agree: quantity by quantity what another pair of hands on another rig makes of a result. */
export function agreementWords({ agreement }: RigsDocument): string {
  if (agreement.length === 0) return say`How well they agree was not stated.`;
  const ordered = agreement.toSorted((one, other) => Number(one.betweenSubmissionsPercent) - Number(other.betweenSubmissionsPercent));
  const [best, worst] = [ordered[0], ordered.at(-1)];
  const told = (one: typeof best) => (one ? `${withinSentence(nameOf(one))} (${one.betweenSubmissionsPercent} %)` : '');
  const both = ordered.length > 1 ? say`, and least in ${told(worst)}` : '';
  return say`Two of them, on two rigs, agree best in ${told(best)}${both}: so much do their results on one line differ beyond the scatter of its specimens.`;
}

/** What round robins and results that were tested again found of people. */
export function checkedWords(roundRobins: readonly RoundRobinReport[], retests: RetestsDocument | null): string {
  const apart = roundRobins.flatMap(({ levels }) => levels.flatMap(({ cells }) => cells.filter(({ isFar, isWide }) => isFar || isWide)));
  const tested = retests?.pairs.filter(({ again }) => again !== null).length ?? 0;
  const robin =
    roundRobins.length === 0
      ? ''
      : apart.length === 0
        ? say`In a round robin over the same spools nobody stood apart. `
        : say`In a round robin over the same spools ${apart.length} ${apart.length === 1 ? say`result stood` : say`results stood`} apart. `;
  return `${robin}${tested === 0 ? '' : say`${tested} results were tested again, blind, by somebody else.`}`.trim();
}

/** Days of an edition on which a chart found its rig out of control. */
export const outIn = ({ points }: ControlChartDocument, { openedOn, closedOn }: Edition): string[] =>
  points
    .filter(({ state, benchDay }) => state === 'outOfControl' && benchDay >= openedOn && benchDay <= closedOn)
    .map(({ benchDay }) => benchDay);

/** How often a chart ever found its rig out of control. */
export const outEver = ({ points }: ControlChartDocument): number => points.filter(({ state }) => state === 'outOfControl').length;

/** Which rig was out when, during the edition: a sentence for each rig that control pulls watched. */
export function outWords({ instruments }: RigsDocument, edition: Edition): string[] {
  return instruments
    .filter(({ charts }) => charts.length > 0)
    .map(({ code, name, charts }) => {
      const days = [...new Set(charts.flatMap((chart) => outIn(chart, edition)))].sort();
      const end = charts.every(({ points }) => points.findLast(({ state }) => state !== null)?.state !== 'outOfControl');
      return `${code}, ${name}: ${
        days.length === 0 ? say`never out of control` : say`out of control on ${listed(days.map(formatDate))}`
      }${end ? '' : say`, and still at the end`}.`;
    });
}
