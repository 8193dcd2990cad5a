import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { DocumentBuilder, SwaggerModule } from '@nestjs/swagger';
import type { OpenAPIObject } from '@nestjs/swagger';
import { z } from 'zod';
import type { ZodType } from 'zod';
import type { Config } from './config.js';
import { describeConventions } from './describe-conventions.js';
import { problemSchema } from './contract/problem.js';

const converted = (schema: ZodType, io: 'input' | 'output') => {
  const { $schema: _, ...json } = z.toJSONSchema(schema, { io, unrepresentable: 'any' });
  return json as Record<string, unknown>;
};

/** The OpenAPI 3.1 document, made from the schemas that validate and serialise. */
export function describeApi(app: NestFastifyApplication, config: Config): OpenAPIObject {
  const heading = new DocumentBuilder()
    .setOpenAPIVersion('3.1.0')
    .setTitle('Fairpull')
    .setDescription(
      'Bench record and published results of independent fishing-line tests. Figures describe the spools tested and are no basis for lifting, climbing, towing or rescue.',
    )
    .setVersion('1')
    .setLicense('MIT', 'https://opensource.org/license/mit')
    .addServer(config.PUBLIC_URL)
    .addBearerAuth({ type: 'http', scheme: 'bearer', bearerFormat: 'opaque' }, 'token')
    .build();
  const document = SwaggerModule.createDocument(app, heading, {
    operationIdFactory: (_controller, method) => method,
    standardSchemaConverter: (schema, { schemaType }) => ({ schema: converted(schema as ZodType, schemaType) }),
  });
  document.components = {
    ...document.components,
    schemas: { ...document.components?.schemas, Problem: converted(problemSchema, 'output') },
  };
  describeConventions(document);
  return document;
}
/** Serves the document at /v1/openapi.json and a page to read it at /docs. */
export function serveOpenApi(app: NestFastifyApplication, config: Config): void {
  SwaggerModule.setup('docs', app, () => describeApi(app, config), { jsonDocumentUrl: 'v1/openapi.json', customSiteTitle: 'Fairpull API' });
}
