/**
 * The rigs and gauges of the bench, with their range, resolution and certificates.
 * States: in use, retired; a certificate is corrected while no submission names it, then superseded with a reason.
 * Editors write; anybody signed in reads.
 */
import { Module } from '@nestjs/common';
import { EditionsModule } from '../editions/editions.module.js';
import { AddCalibration } from './add-calibration.js';
import { AddInstrument } from './add-instrument.js';
import { CorrectCalibration } from './correct-calibration.js';
import { InstrumentsController } from './instruments.controller.js';
import { InstrumentsReadModel } from './instruments.read-model.js';
import { RetireInstrument } from './retire-instrument.js';
import { InstrumentsStore } from './instruments.store.js';

@Module({
  imports: [EditionsModule],
  controllers: [InstrumentsController],
  providers: [AddCalibration, AddInstrument, CorrectCalibration, InstrumentsReadModel, InstrumentsStore, RetireInstrument],
  exports: [InstrumentsReadModel],
})
export class InstrumentsModule {}
