import { falseDiscoveryAdjusted } from '../../../api/measurement/comparison/false-discovery.js';
import { errorCode } from '../support/error-code.js';

/** Benjamini & Hochberg 1995, section 4: the fifteen probabilities of the myocardial infarction study; at 0.05 the first four are found. Adjusted values: R 4.2.2, p.adjust(p, "BH"). */
const P = [0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1];
const ADJUSTED = [
  0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.06385714, 0.06385714, 0.0645, 0.0765, 0.486, 0.5811818, 0.714875, 0.7532308, 0.8132143, 1,
];

test('the published example finds four of fifteen', () => {
  const found = falseDiscoveryAdjusted(P);
  found.forEach((p, i) => expect(p).toBeCloseTo(ADJUSTED[i]!, 7));
  expect(found.filter((p) => p <= 0.05)).toHaveLength(4);
  expect(falseDiscoveryAdjusted([...P].reverse())).toEqual([...found].reverse());
});

test('what is no probability is refused', () => {
  for (const p of [-0.1, 1.1, NaN]) expect(errorCode(() => falseDiscoveryAdjusted([0.5, p]))).toBe('distributions/out-of-domain');
});
