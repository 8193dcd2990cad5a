import { CatalogueModule } from '../../api/catalogue/catalogue.module.js';
import { CatalogueReadModel } from '../../api/catalogue/catalogue.read-model.js';
import { CLAIM, fillCatalogue, LINE, MAKER, OTHER_VARIANT, VARIANT } from '../support/catalogue-fixtures.js';
import { runSql } from '../support/run-sql.js';
import { createTestApplication } from '../support/test-application.js';
import type { Caller, TestApplication } from '../support/test-application.js';

let t: TestApplication;
let editor: Caller;
let reviewer: Caller;
beforeAll(async () => {
  t = await createTestApplication();
  editor = await t.caller(['editor']);
  reviewer = await t.caller(['reviewer']);
  await fillCatalogue(editor);
});
afterAll(() => t.close());

const claims = `/v1/catalogue/variants/${OTHER_VARIANT.slug}/claims`;

test('a claim keeps what is printed beside the exact value in SI', async () => {
  const { headers: before } = await editor.call('get', `/v1/catalogue/variants/${OTHER_VARIANT.slug}`);
  const force = await editor.call('post', claims).send(CLAIM).expect(201);
  // 1 lbf = 4.4482216152605 N exactly (NIST SP 811, appendix B).
  expect(force.body).toEqual({ ...CLAIM, value: '88.96443230521', unit: 'N' });
  const diameter = await editor
    .call('post', claims)
    .send({ ...CLAIM, quantity: 'diameter', printed: { text: '0.235', unit: 'mm' } })
    .expect(201);
  expect(diameter.body).toMatchObject({ printed: { text: '0.235', unit: 'mm' }, value: '0.000235', unit: 'm' });
  // 1 den = 1/9 tex (ISO 1144); 40 significant digits are kept.
  const density = await editor
    .call('post', claims)
    .send({ ...CLAIM, quantity: 'linearDensity', printed: { text: '400', unit: 'den' } })
    .expect(201);
  expect(density.body.value).toBe('0.00004444444444444444444444444444444444444444');
  const pe = await editor
    .call('post', claims)
    .send({ ...CLAIM, quantity: 'peNumber', printed: { text: '1.2', unit: 'PE' } })
    .expect(201);
  expect(pe.body).toMatchObject({ value: '1.2', unit: 'PE' });
  const after = await editor.call('get', `/v1/catalogue/variants/${OTHER_VARIANT.slug}`);
  expect(after.body).toMatchObject({
    claims: ['breakingForce', 'diameter', 'linearDensity', 'peNumber'].map((quantity) => ({ quantity })),
  });
  expect(after.headers['etag']).not.toBe(before['etag']);
});

test.each([
  ['breakingForce', '20', 'mm', '/printed/unit', 'units/wrong-dimension'],
  ['diameter', '20', 'lbf', '/printed/unit', 'units/wrong-dimension'],
  ['breakingForce', '20', 'lb', '/printed/unit', 'units/unknown-symbol'],
  ['breakingForce', '20', 'PE', '/printed/unit', 'units/unknown-symbol'],
  ['peNumber', '1.2', 'den', '/printed/unit', 'units/wrong-dimension'],
  ['peNumber', '0', 'PE', '/printed/text', 'units/not-positive'],
  ['breakingForce', '0.0', 'N', '/printed/text', 'units/not-positive'],
  ['breakingForce', '20,5', 'N', '/printed/text', 'invalid_format'],
  ['breakingForce', '2'.repeat(31), 'N', '/printed/text', 'units/too-many-digits'],
])('a %s of %s %s is refused at %s', async (quantity, text, unit, pointer, code) => {
  const answer = await editor
    .call('post', `/v1/catalogue/variants/${VARIANT.slug}/claims`)
    .send({ ...CLAIM, quantity, printed: { text, unit } })
    .expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ pointer, code })]);
});

test('a claim is not seen tomorrow', async () => {
  const answer = await editor
    .call('post', `/v1/catalogue/variants/${VARIANT.slug}/claims`)
    .send({ ...CLAIM, seenOn: '2026-03-18' })
    .expect(422);
  expect(answer.body.errors).toEqual([expect.objectContaining({ pointer: '/seenOn', code: 'in_the_future' })]);
});

test('one claim of a quantity; another is a correction on the version that was seen', async () => {
  expect((await editor.call('post', claims).send(CLAIM).expect(409)).body.errors[0].pointer).toBe('/quantity');
  const words = { basis: CLAIM.basis, printed: { text: '22', unit: 'lbf' }, seenOn: CLAIM.seenOn, source: CLAIM.source };
  const one = `${claims}/breakingForce`;
  const { headers } = await editor.call('get', `/v1/catalogue/variants/${OTHER_VARIANT.slug}`);
  const etag = headers['etag'] ?? '';
  await editor.call('put', one).send(words).expect(428);
  await reviewer.call('put', one).set('If-Match', etag).send(words).expect(403);
  await editor.call('put', `${claims}/weight`).set('If-Match', etag).send(words).expect(404);
  await editor
    .call('put', one)
    .set('If-Match', etag)
    .send({ ...words, printed: { text: '22', unit: 'mm' } })
    .expect(422);
  const corrected = await editor.call('put', one).set('If-Match', etag).send(words).expect(200);
  expect(corrected.body.claims[0]).toMatchObject({ printed: { text: '22', unit: 'lbf' }, value: '97.860875535731' });
  await editor.call('put', one).set('If-Match', etag).send(words).expect(412);
  const [event] = await runSql(t.databaseUrl, "SELECT before, after FROM audit_event WHERE action = 'claim.corrected'");
  expect(event).toMatchObject({ before: { printed: { text: '20.0' } }, after: { printed: { text: '22' } } });
});

test('only editors claim, and only for a variant on record', async () => {
  await reviewer.call('post', claims).send(CLAIM).expect(403);
  await editor.call('post', '/v1/catalogue/variants/nowhere/claims').send(CLAIM).expect(404);
  await editor
    .call('put', `/v1/catalogue/variants/${VARIANT.slug}/claims/diameter`)
    .set('If-Match', '"1"')
    .send({ basis: 'average', printed: { text: '1', unit: 'mm' }, seenOn: '2026-01-01', source: 'x' })
    .expect(404);
});

test('other features read names, claims and the maker', async () => {
  const catalogue = t.app.select(CatalogueModule).get(CatalogueReadModel);
  const variant = await catalogue.variantBySlug(OTHER_VARIANT.slug);
  expect(variant?.name).toMatchObject({
    slug: OTHER_VARIANT.slug,
    maker: { slug: MAKER.slug },
    line: { slug: LINE.slug },
    peNumber: '1.2',
    ratedStrength: { value: '22', unit: 'lbf' },
  });
  const id = variant?.id ?? '';
  expect((await catalogue.variantNames([id])).get(id)).toEqual(variant?.name);
  expect((await catalogue.claimsOf([id])).find((claim) => claim.quantity === 'diameter')).toEqual({
    variant: variant?.name.slug,
    quantity: 'diameter',
    basis: 'average',
    printed: { text: '0.235', unit: 'mm' },
    valueSi: '0.000235',
    seenOn: '2026-02-01',
    source: 'label on the box',
  });
  expect(await catalogue.variantBySlug('nowhere')).toBeNull();
});
