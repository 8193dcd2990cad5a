import { Body, Controller, Get, Param, Post } from '@nestjs/common';
import { SI_UNITS } from '../measurement/units/unit-table.js';
import { platformProblems } from '../platform/errors/platform.errors.js';
import { Problem } from '../platform/errors/problem.js';
import { CurrentActor } from '../platform/http/access.js';
import type { Actor } from '../platform/http/access.js';
import { Endpoint } from '../platform/http/endpoint.js';
import { AddCalibration } from './add-calibration.js';
import { AddInstrument } from './add-instrument.js';
import { InstrumentsReadModel } from './instruments.read-model.js';
import type { InstrumentOnRecord } from './instruments.read-model.js';
import * as schemas from '../contract/endpoints/instruments.js';

@Controller('v1/instruments')
export class InstrumentsController {
  constructor(
    private readonly add: AddInstrument,
    private readonly calibrate: AddCalibration,
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
    if (!instrument) throw new Problem(platformProblems['request/not-found'], `No instrument "${code}" is on record.`);
    return toAnswer(instrument);
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
}

const toAnswer = ({
  code,
  kind,
  name,
  dimension,
  capacity,
  capacitySi,
  resolution,
  resolutionSi,
  calibrations,
}: InstrumentOnRecord): schemas.InstrumentResponse => ({
  code,
  kind,
  name,
  capacity: { ...capacity, value: capacitySi, siUnit: SI_UNITS[dimension] },
  resolution: { ...resolution, value: resolutionSi, siUnit: SI_UNITS[dimension] },
  calibrations,
});
