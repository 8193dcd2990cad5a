import { Body, Controller, Delete, Get, Param, Post, Put } from '@nestjs/common';
import { SI_UNITS } from '../measurement/units/unit-table.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { AddCalibration } from './add-calibration.js';
import { CorrectCalibration } from './correct-calibration.js';
import { IfMatch } from '../platform/http/headers/if-match.js';
import { AddInstrument } from './add-instrument.js';
import { retirementRequest } from '../contract/endpoints/catalogue.js';
import type { RetirementRequest } from '../contract/endpoints/catalogue.js';
import { instrumentNotOnRecord } from './instrument.js';
import { RetireInstrument } from './retire-instrument.js';
import { InstrumentsReadModel } from './instruments.read-model.js';
import type { InstrumentOnRecord } from './instruments.read-model.js';
import * as schemas from '../contract/endpoints/instruments.js';

@Controller('v1/instruments')
export class InstrumentsController {
  constructor(
    private readonly add: AddInstrument,
    private readonly calibrate: AddCalibration,
    private readonly correct: CorrectCalibration,
    private readonly retire: RetireInstrument,
    private readonly instruments: InstrumentsReadModel,
  ) {}

  @Post()
  @Endpoint({ summary: 'Put an instrument on record.', allow: ['editor'], status: 201, answer: schemas.instrumentResponse })
  async postInstrument(@CurrentActor() actor: Actor, @Body({ schema: schemas.instrumentRequest }) input: schemas.InstrumentRequest) {
    await this.add.run(actor, input);
    return this.getInstrument(input.code);
  }

  @Get()
  @Endpoint({ summary: 'Instruments with their certificates, by code.', allow: 'signedIn', answer: schemas.instrumentsResponse })
  async getInstruments() {
    return { items: (await this.instruments.all()).map(toAnswer), nextCursor: null };
  }

  @Get(':code')
  @Endpoint({ summary: 'One instrument with its certificates.', allow: 'signedIn', answer: schemas.instrumentResponse })
  async getInstrument(@Param('code') code: string) {
    const [instrument] = await this.instruments.byCodes([code]);
    if (!instrument) throw instrumentNotOnRecord(code);
    const former = await this.instruments.formerOf(code);
    return { ...toAnswer(instrument), ...(former.length > 0 ? { former } : {}) };
  }

  @Post(':code/retirement')
  @Endpoint({
    summary: 'Retire an instrument: later bench days with it are not taken, what was measured stands.',
    allow: ['editor'],
    status: 201,
    answer: schemas.instrumentResponse,
    needsIfMatch: true,
  })
  async postInstrumentRetirement(
    @CurrentActor() actor: Actor,
    @Param('code') code: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: retirementRequest }) { reason }: RetirementRequest,
  ) {
    await this.retire.run(actor, { code, expectedVersion, reason });
    return this.getInstrument(code);
  }

  @Delete(':code/retirement')
  @Endpoint({ summary: 'Take a retired instrument into use again.', allow: ['editor'], status: 204, answer: null, needsIfMatch: true })
  deleteInstrumentRetirement(@CurrentActor() actor: Actor, @Param('code') code: string, @IfMatch() expectedVersion: number): Promise<void> {
    return this.retire.run(actor, { code, expectedVersion, reason: null });
  }

  @Post(':code/calibrations')
  @Endpoint({ summary: 'Add a certificate to an instrument.', allow: ['editor'], status: 201, answer: schemas.instrumentResponse })
  async postCalibration(
    @CurrentActor() actor: Actor,
    @Param('code') code: string,
    @Body({ schema: schemas.calibrationRequest }) calibration: schemas.CalibrationRequest,
  ) {
    await this.calibrate.run(actor, { code, calibration });
    return this.getInstrument(code);
  }

  @Put(':code/calibrations/:certificate')
  @Endpoint({
    summary: 'Correct a certificate that was copied wrongly.',
    allow: ['editor'],
    answer: schemas.instrumentResponse,
    needsIfMatch: true,
  })
  async putCalibration(
    @CurrentActor() actor: Actor,
    @Param('code') code: string,
    @Param('certificate') certificate: string,
    @IfMatch() expectedVersion: number,
    @Body({ schema: schemas.calibrationCorrection }) correction: schemas.CalibrationCorrection,
  ) {
    await this.correct.run(actor, { code, certificate, expectedVersion, correction });
    return this.getInstrument(code);
  }
}

const toAnswer = ({
  code,
  version,
  kind,
  name,
  dimension,
  capacity,
  capacitySi,
  resolution,
  resolutionSi,
  calibrations,
  retired,
}: InstrumentOnRecord): schemas.InstrumentResponse => ({
  code,
  kind,
  name,
  capacity: { ...capacity, value: capacitySi, siUnit: SI_UNITS[dimension] },
  resolution: { ...resolution, value: resolutionSi, siUnit: SI_UNITS[dimension] },
  calibrations,
  retired,
  version,
});
