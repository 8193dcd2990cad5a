import { Ajv2020 } from 'ajv/dist/2020.js';
import type { House } from './house.js';

/** Holds every public document of a published house against its JSON Schema. */
export function documentsFitTheirSchemas(house: () => House): void {
  test('every public document is as its JSON Schema says, which stands at an address of its own; later fields do no harm', async () => {
    const ajv = new Ajv2020({ strict: false, validateFormats: false });
    const { body } = await house().t.call('get', '/v1/schemas').expect(200);
    const ofEdition = ['records', 'pairs', 'withdrawn', 'catalogue', 'claims', 'rigs', 'round-robins', 'house', 'remarks'];
    const of: Record<string, string> = {
      releases: '/v1/releases',
      'signing-keys': '/v1/signing-keys',
      changes: '/v1/changes',
      manifest: '/v1/releases/2026/1/manifest.json',
      signature: '/v1/releases/2026/1/signature.json',
      edition: '/v1/editions/2026',
      category: '/v1/editions/2026/standings/stress',
      variant: '/v1/variants/gannet-20',
      method: '/v1/methods/straight-pull/versions/1',
      provenance: '/v1/editions/2026/variants/gannet-20/provenance',
      retests: '/v1/editions/2026/retest-results',
      sensitivity: '/v1/releases/2026/1/documents/sensitivity.json',
      ...Object.fromEntries(ofEdition.map((one) => [one, `/v1/editions/2026/${one}`])),
    };
    expect(body.items.map(({ name }: any) => name).sort()).toEqual([...Object.keys(of), 'event'].sort());
    for (const { name, address } of body.items) {
      const schema = (await house().t.call('get', address).expect(200)).body;
      expect(schema.$id).toMatch(new RegExp(`${address}$`));
      const check = ajv.compile(schema);
      expect(check({})).toBe(false);
      if (!of[name]) continue;
      const document = (await house().t.call('get', of[name]).expect(200)).body;
      expect([name, check(document), check.errors]).toEqual([name, true, null]);
      expect([name, check({ ...document, laterField: 1 })]).toEqual([name, true]);
    }
    await house().t.call('get', '/v1/schemas/2/edition').expect(404);
  });
}
