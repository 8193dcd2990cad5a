import type { Response } from 'supertest';
import type { Caller } from './test-application.js';

export const MAKER = { slug: 'north-bay', name: 'North Bay Cordage' };
export const LINE = {
  slug: 'north-bay-tern',
  maker: MAKER.slug,
  name: 'Tern Eight',
  material: 'UHMWPE',
  construction: 'braided',
  carriers: 8,
  densityGPerCm3: '0.97',
};
export const VARIANT = { slug: 'tern-20-moss', line: LINE.slug, size: 'gauge twenty', colour: 'moss' };
export const OTHER_VARIANT = { ...VARIANT, slug: 'tern-30-moss', size: 'gauge thirty' };
export const CLAIM = {
  quantity: 'breakingForce',
  basis: 'average',
  printed: { text: '20.0', unit: 'lbf' },
  seenOn: '2026-02-01',
  source: 'label on the box',
};
export const SPOOL = {
  variant: VARIANT.slug,
  source: 'bought',
  obtainedOn: '2026-02-03',
  place: 'shop at the quay',
  lot: 'L-77',
  lengthM: '150',
};

/** Puts one maker with one line in two sizes on record. */
export async function fillCatalogue(editor: Caller): Promise<void> {
  await editor.call('post', '/v1/catalogue/makers').send(MAKER).expect(201);
  await editor.call('post', '/v1/catalogue/lines').send(LINE).expect(201);
  await editor.call('post', '/v1/catalogue/variants').send(VARIANT).expect(201);
  await editor.call('post', '/v1/catalogue/variants').send(OTHER_VARIANT).expect(201);
}

/** Where a refused input is at fault, in order. */
export const pointersOf = (answer: Response): string[] =>
  (answer.body as { errors: { pointer: string }[] }).errors.map((fault) => fault.pointer).sort();

/** One field of each row of a list. */
export const eachOf = (answer: Response, field: string): unknown[] =>
  (answer.body as { items: Record<string, unknown>[] }).items.map((row) => row[field]);
