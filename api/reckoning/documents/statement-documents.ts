import type { HouseDocument } from '../../contract/documents/house-document.js';
import type { RemarksDocument } from '../../contract/documents/remarks-document.js';
import { jsonFile } from '../release-files.js';
import type { ReleaseFile } from '../release-files.js';
import type { ReleaseInputs } from '../release-inputs.js';
import { headingOf } from './release-context.js';

/** Who publishes; null of a house that has not said so. */
export const houseDocument = (inputs: ReleaseInputs): HouseDocument | null =>
  inputs.statement ? { ...headingOf(inputs), ...inputs.statement, licence: { ...inputs.licence } } : null;

/** What stands beside the figures; null of a release from before there was such a thing. */
export const remarksDocument = (inputs: ReleaseInputs): RemarksDocument | null =>
  inputs.remarks ? { ...headingOf(inputs), items: [...inputs.remarks] } : null;

/** The files of both, where there are any. */
export function statementFiles(inputs: ReleaseInputs): ReleaseFile[] {
  const [house, remarks] = [houseDocument(inputs), remarksDocument(inputs)];
  return [...(house ? [jsonFile('documents/house.json', house)] : []), ...(remarks ? [jsonFile('documents/remarks.json', remarks)] : [])];
}
