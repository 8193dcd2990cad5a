import type { Finding } from '../../checks/finding.js';
import type { InstrumentOnRecord } from '../../instruments/instruments.read-model.js';
import type { InputFault } from '../../platform/errors/problem.js';
import type { HandIn } from '../intake/intake.js';
import type { SpecimenInSi } from '../../readings/readings-si.js';
import { certificateOn } from './subject.js';
import type { Subject } from './subject.js';
import type { SubmissionFigures } from '../../readings/submission-figures.js';

/** What was handed in, its names found on record, its readings in SI, its figures computed. */
export interface ReadSubmission extends HandIn {
  readonly subject: Subject;
  readonly instruments: readonly InstrumentOnRecord[];
  readonly temperatureC: string;
  readonly specimens: readonly SpecimenInSi[];
  readonly figures: SubmissionFigures;
  readonly readingsDigest: string;
  readonly contentDigest: string;
}

/** The same after the checks: ready to be stored or shown. */
export interface ExaminedSubmission extends ReadSubmission {
  readonly findings: readonly Finding[];
  /** Code of each rig of the hand-in → how many control pulls and strikes of it the checks saw. */
  readonly rigRecords: ReadonlyMap<string, number>;
  /** Whether its tester has neither seen the label nor read what tells of the spool. */
  readonly isBlind: boolean;
}

/** Whether a check blocks it. */
export const isBlocked = ({ findings }: ExaminedSubmission): boolean => findings.some(({ severity }) => severity === 'blocks');

/** What was examined, or every fault that stands in the way, each with its place. */
export type Examination = ExaminedSubmission | { readonly faults: readonly InputFault[] };

/** Columns of the submission's own row; a draft has no more than these. */
export const toSubmissionColumns = ({
  content,
  subject: { spool, method },
}: {
  content: { readonly benchDay: string };
  subject: Subject;
}) => ({
  spoolId: spool.id,
  methodVersionId: method.id,
  benchDay: content.benchDay,
});

/** What of it goes on record. */
export const toRecord = (examined: ExaminedSubmission) => ({
  editionId: examined.subject.edition.id,
  submission: { ...toSubmissionColumns(examined), contentDigest: examined.contentDigest },
  revision: { ...toRevisionColumns(examined), figures: examined.figures },
  instruments: toInstrumentColumns(examined),
  findings: examined.findings,
  specimens: examined.specimens,
});
export type SubmissionRecord = ReturnType<typeof toRecord>;

const toRevisionColumns = ({ content, temperatureC, readingsDigest, isBlind }: ExaminedSubmission) => ({
  zone: content.zone,
  temperatureText: content.ambient.temperature.value,
  temperatureUnit: content.ambient.temperature.unit,
  temperatureC,
  humidityPercent: content.ambient.humidityPercent,
  hasSeenLabel: content.seenLabel,
  isBlind,
  note: content.note ?? null,
  fewerBecause: content.fewerBecause ?? null,
  readingsDigest,
});

/** Instruments used, each with the certificate that was valid on the bench day. */
const toInstrumentColumns = ({ content, instruments }: ExaminedSubmission) =>
  instruments.map((instrument) => ({ instrumentId: instrument.id, certificate: certificateOn(content.benchDay, instrument) }));
