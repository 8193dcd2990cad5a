import { Controller, Get, Inject, Param } from '@nestjs/common';
import { CONFIG } from '../config.js';
import type { Config } from '../config.js';
import { jsonSchemaSchema, schemaParameters, schemasResponse } from '../contract/endpoints/document-schemas.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { SCHEMA_NAMES, schemaOf, SCHEMAS_VERSION } from './document-schemas.js';

@Controller('v1/schemas')
export class SchemasController {
  constructor(@Inject(CONFIG) private readonly config: Config) {}

  @Get()
  @Endpoint({ summary: 'JSON Schemas of all public documents, by name, with their addresses.', allow: 'anyone', answer: schemasResponse })
  getSchemas() {
    const items = SCHEMA_NAMES.map((name) => ({ name, version: SCHEMAS_VERSION, address: `/v1/schemas/${SCHEMAS_VERSION}/${name}` }));
    return { items, nextCursor: null };
  }

  @Get(':version/:name')
  @Endpoint({ summary: 'JSON Schema (2020-12) of a public document; its address stays.', allow: 'anyone', answer: jsonSchemaSchema })
  getSchema(
    @Param('version', { schema: schemaParameters.version }) version: number,
    @Param('name', { schema: schemaParameters.name }) name: string,
  ) {
    const schema = version === SCHEMAS_VERSION ? schemaOf(name, this.config.PUBLIC_URL) : null;
    if (!schema)
      throw new Problem(platformProblems['request/not-found'], `There is no schema ${version}/${name}; GET /v1/schemas lists them.`);
    return schema;
  }
}
