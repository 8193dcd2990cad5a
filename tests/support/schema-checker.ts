import { Ajv2020 } from 'ajv/dist/2020.js';

/** Whether a value is as a schema of the description says, by a validator that knows nothing of this program (JSON Schema 2020-12). */
export function schemaChecker(document: any): (schema: any, value: unknown) => boolean {
  const ajv = new Ajv2020({ strict: false, validateFormats: false, allErrors: false });
  ajv.addSchema({ $id: 'https://description.example/', components: document.components });
  const known = new Map<string, ReturnType<typeof ajv.compile>>();
  return (schema, value) => {
    const text = JSON.stringify(schema).replaceAll('"#/components', '"https://description.example/#/components');
    const check = known.get(text) ?? ajv.compile(JSON.parse(text));
    known.set(text, check);
    return check(value) === true;
  };
}
