import type { OpenAPIObject } from '@nestjs/swagger';
import { readFileSync } from 'node:fs';

type Operation = NonNullable<OpenAPIObject['paths'][string]['get']>;
interface Example {
  readonly body?: unknown;
  readonly answer?: unknown;
}

/** What was really sent and answered, by the name of the operation; taken by .config/take-examples.ts. */
const EXAMPLES = JSON.parse(readFileSync(new URL('examples.json', import.meta.url), 'utf8')) as Readonly<Record<string, Example>>;
const HAND_IN = [
  'edition,spool,method,method version,bench day,instruments,temperature [°C],humidity,specimen,force [N]',
  '2027,7KQ2MX4,straight-pull,1,2026-11-20,R1,20.5,55,1,162.4',
  '',
].join('\r\n');
const TRACE = ['Time [s],Force [N]', '0.0,0.4', '0.5,21.7', ''].join('\r\n');

const RESULTS = [
  'edition,revision,division,category,variant,maker,line,size,colour,material,construction,carriers,peNumber,place,placeIfIncluded,group,placeLow,placeHigh,value,low95,high95,unit,specimens,submissions,testers,rigs,diameter,diameterLow95,diameterHigh95,diameterUnit',
  '2026,1,braided,apparent-stress,skerrygrip-12-pe-2-0,Brackholm Cordage,Skerrygrip 12,PE 2.0,smoke,UHMWPE,braided,12,2.0,1,,1,1,3,2832,2745,2920,MPa,15,2,2,2,0.249,0.245,0.253,mm',
  '',
].join('\r\n');
const PICTURE = 'the bytes of a photograph';

/** Examples of what is no JSON, by media type. */
const TEXTS: Readonly<Record<string, string>> = {
  'text/csv': RESULTS,
  'image/jpeg': PICTURE,
  'image/png': PICTURE,
  'image/webp': PICTURE,
  'text/html': '<!doctype html><title>Labels</title>',
  'image/svg+xml': '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"/>',
  'application/octet-stream': 'place,variant,score\r\n1,harbourline-8-pe-1-2,4\r\n',
  'application/vnd.apache.parquet': 'PAR1',
  'text/plain': 'http_server_request_duration_seconds_count{http_route="/v1/editions"} 12\n',
};

/** Puts an example beside every body and every answer. */
export function addExamples(document: OpenAPIObject): void {
  for (const [path, item] of Object.entries(document.paths))
    for (const operation of Object.values(item) as Operation[]) {
      const { body, answer } = EXAMPLES[operation.operationId ?? ''] ?? {};
      const { requestBody, responses } = operation;
      if (requestBody && 'content' in requestBody) fill(requestBody.content, body, path.endsWith('/traces') ? TRACE : HAND_IN);
      for (const [status, response] of Object.entries(responses))
        if (status.startsWith('2') && response && 'content' in response) fill(response.content ?? {}, answer, undefined);
    }
}

type Content = Record<string, { schema?: unknown; example?: unknown }>;

function fill(content: Content, json: unknown, csv: string | undefined): void {
  const file = ('text/csv' in content ? csv : undefined) ?? PICTURE;
  for (const [type, media] of Object.entries(content)) {
    const texts: Readonly<Record<string, unknown>> = { ...TEXTS, ...(csv !== undefined && { 'text/csv': csv }) };
    const example = type === 'application/json' ? json : type === 'multipart/form-data' ? { file } : texts[type];
    if (example !== undefined) media.example ??= example;
  }
}
