import { FetchingJSONSchemaStore, InputData, JSONSchemaInput, quicktype } from 'quicktype-core';

/** Texts stay texts: a decimal or a day that looks like something else is none of it. */
const AS_STATED = {
  inferMaps: false,
  inferEnums: false,
  inferDateTimes: false,
  inferUuids: false,
  inferIntegerStrings: false,
  inferBooleanStrings: false,
};

/** Names of the schemas that anybody's reads are answered with. */
const publicAnswers = (described: any): string[] => {
  const reads = Object.values<any>(described.paths).flatMap(({ get }) => (get && JSON.stringify(get.security) === '[]' ? [get] : []));
  const references = reads.map(({ responses }) => responses['200']?.content?.['application/json']?.schema.$ref as string | undefined);
  return [...new Set(references.flatMap((one) => one?.split('/').at(-1) ?? []))];
};

/** A Python module with a class for every public document of a description, by a generator that knows nothing of this program. */
export async function pythonClient(described: any): Promise<string> {
  const input = new JSONSchemaInput(new FetchingJSONSchemaStore());
  for (const name of publicAnswers(described)) {
    const schema = JSON.stringify({ $ref: `#/components/schemas/${name}`, components: described.components });
    await input.addSource({ name, schema });
  }
  const inputData = new InputData();
  inputData.addInput(input);
  const { lines } = await quicktype({ inputData, lang: 'python', rendererOptions: { 'python-version': '3.7' }, ...AS_STATED });
  return lines.join('\n');
}
