/** Rounding of what is published: ISO 80000-1 annex B, rule A, from the readings as entered. */
import { mean } from '../../api/measurement/summary/mean.js';
import { parseQuantity } from '../../api/measurement/units/parse-quantity.js';
import { shownFigure, USUAL } from '../../api/reckoning/documents/figure.js';

const BEHIND = { specimens: 2, submissions: 1, testers: 1, rigs: 1, note: null };
const OF = { key: 'breakingForce/straight-pull/untreated', name: 'Breaking force' };
const meanOf = (...texts: string[]): number => mean(texts.map((text) => Number(parseQuantity(text, 'lbf').si)));
const shown = (value: number) => shownFigure(OF, value, null, BEHIND, USUAL.breakingForce);

test('the mean of readings in pounds that lies on a tie goes to the even neighbour, every time', () => {
  const found: [string, string][] = [];
  const expected: [string, string][] = [];
  for (let hundredths = 2301; hundredths < 2401; hundredths++) {
    const [low, high] = [hundredths, hundredths + 1].map((one) => (one / 100).toFixed(2)) as [string, string];
    const tie = `${low}5`;
    const even = hundredths % 2 === 0 ? low : high;
    found.push([tie, shown(meanOf(low, high)).trade!.value], [tie, shown(meanOf(low, high, low, high, low, high)).trade!.value]);
    expected.push([tie, even], [tie, even]);
  }
  expect(found).toEqual(expected);
  expect(shown(meanOf('23.77', '23.78')).trade!.value).toBe('23.78');
});

test('a figure in the unit of the trade has two digits of its uncertainty, as in SI', () => {
  const stress = shownFigure(OF, 2895.52, { low: 2820.38, high: 2970.65 }, BEHIND, USUAL.apparentStress);
  expect(stress).toMatchObject({ value: '2896', low: '2820', high: '2971' });
  expect(stress.trade).toEqual({ unit: 'psi', value: '420000', low: '409000', high: '431000' });
});
