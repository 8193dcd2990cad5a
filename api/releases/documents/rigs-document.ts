import { toChartDocument } from '../../control-pulls/chart-document.js';
import { chartsOf } from '../../control-pulls/control-charts.js';
import type { RigsDocument } from '../../public-api/rigs-document.schemas.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { headingOf } from './release-context.js';

/** What the edition was measured with: instruments, certificates, and the control charts of the rigs. */
export function rigsDocument(inputs: ReleaseInputs): RigsDocument {
  const { instruments, submissions } = inputs.evidence;
  const charts = chartsOf(inputs.controlPulls ?? []).map(toChartDocument);
  return {
    ...headingOf(inputs),
    instruments: instruments.map(({ code, kind, name, capacity, resolution, calibrations }) => ({
      code,
      kind,
      name,
      capacity,
      resolution,
      calibrations: calibrations.map((calibration) => ({ ...calibration })),
      submissions: submissions.filter((submission) => submission.instruments.some((used) => used.code === code)).length,
      charts: charts.filter(({ instrument }) => instrument === code),
    })),
  };
}
