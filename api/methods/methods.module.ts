/**
 * Written protocols and their dated wordings, with limits, parameters and formulae.
 * States: none; a version is never changed, the next one takes over from it.
 * Editors write; anybody signed in reads.
 */
import { Module } from '@nestjs/common';
import { MethodsReadModel } from './methods.read-model.js';

@Module({ providers: [MethodsReadModel], exports: [MethodsReadModel] })
export class MethodsModule {}
