import { expectReference } from './reference-cases.js';
import type { ReferenceCase } from './reference-cases.js';

const one: ReferenceCase = {
  id: 'X',
  source: 'own',
  provenance: 'recomputed',
  inputs: {},
  expected: { a: 10, b: { c: [1, 2] }, word: 'yes' },
  tolerance: { default: { rel: 0.01 }, b: { abs: 0.5 } },
};

test('what is close enough passes, by the nearest tolerance', () => {
  expectReference(one, { a: 10.09, b: { c: [1.4, 1.6] }, word: 'yes' });
});

test.each([
  ['a number too far off', { a: 10.2 }],
  ['an element too far off', { b: { c: [1, 2.6] } }],
  ['NaN', { a: NaN }],
  ['another length', { b: { c: [1] } }],
  ['another word', { word: 'no' }],
  ['a null for a number', { a: null }],
  ['a key that is not expected', { z: 1 }],
])('%s fails', (_name, found) => {
  expect(() => expectReference(one, found)).toThrow();
});
