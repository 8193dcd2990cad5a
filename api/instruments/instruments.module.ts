/**
 * The rigs and gauges of the bench, with their range, resolution and certificates.
 * States: none; a certificate is added and never changed.
 * Editors write; anybody signed in reads.
 */
import { Module } from '@nestjs/common';
import { InstrumentsReadModel } from './instruments.read-model.js';

@Module({ providers: [InstrumentsReadModel], exports: [InstrumentsReadModel] })
export class InstrumentsModule {}
