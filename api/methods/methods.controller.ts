import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { AddMethodVersion } from './add-method-version.js';
import { AddMethod } from './add-method.js';
import { MethodsReadModel } from './methods.read-model.js';
import * as schemas from '../contract/endpoints/methods.js';

const NUMBER = { schema: schemas.versionParameter };

@Controller('v1/catalogue/methods')
export class MethodsController {
  constructor(
    private readonly add: AddMethod,
    private readonly word: AddMethodVersion,
    private readonly methods: MethodsReadModel,
  ) {}

  @Post()
  @Endpoint({ summary: 'Put a method on record.', allow: ['editor'], status: 201, answer: schemas.methodResponse })
  async postMethod(@CurrentActor() actor: Actor, @Body({ schema: schemas.methodRequest }) input: schemas.MethodRequest) {
    await this.add.run(actor, input);
    return this.getCatalogueMethod(input.slug);
  }

  @Get()
  @Endpoint({ summary: 'Methods with the dates of their versions, by slug.', allow: 'signedIn', answer: schemas.methodsResponse })
  async getCatalogueMethods() {
    return { items: await this.methods.all(), nextCursor: null };
  }

  @Get(':slug')
  @Endpoint({ summary: 'One method with the dates of its versions.', allow: 'signedIn', answer: schemas.methodResponse })
  async getCatalogueMethod(@Param('slug') slug: string) {
    const method = await this.methods.bySlug(slug);
    if (!method) throw new Problem(platformProblems['request/not-found'], `No method "${slug}" is on record.`);
    return method;
  }

  @Post(':slug/versions')
  @Endpoint({
    summary: 'Add the next wording of a method; it is never changed after.',
    allow: ['editor'],
    status: 201,
    answer: schemas.methodVersionResponse,
  })
  async postMethodVersion(
    @CurrentActor() actor: Actor,
    @Param('slug') slug: string,
    @Body({ schema: schemas.methodVersionRequest }) version: schemas.MethodVersionRequest,
  ) {
    await this.word.run(actor, { slug, version });
    return this.getCatalogueMethodVersion(slug, version.number);
  }

  @Get(':slug/versions/:number')
  @Endpoint({ summary: 'One version of a method.', allow: 'signedIn', answer: schemas.methodVersionResponse })
  async getCatalogueMethodVersion(@Param('slug') slug: string, @Param('number', NUMBER) number: number) {
    const version = await this.methods.version(slug, number);
    if (!version) throw new Problem(platformProblems['request/not-found'], `No version ${number} of a method "${slug}" is on record.`);
    return version;
  }
}
