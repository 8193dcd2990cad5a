/**
 * Written protocols and their dated wordings, with limits, parameters and formulae.
 * States: none; a version is never changed, the next one takes over from it.
 * Editors write; anybody signed in reads.
 */
import { Module } from '@nestjs/common';
import { AddMethodVersion } from './add-method-version.js';
import { AddMethod } from './add-method.js';
import { MethodsController } from './methods.controller.js';
import { MethodsReadModel } from './methods.read-model.js';
import { MethodsStore } from './methods.store.js';

@Module({
  controllers: [MethodsController],
  providers: [AddMethod, AddMethodVersion, MethodsReadModel, MethodsStore],
  exports: [MethodsReadModel],
})
export class MethodsModule {}
