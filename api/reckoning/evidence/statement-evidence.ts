/** What the house says, as a release takes it: plain JSON. */
import type { HouseDocument } from '../../contract/documents/house-document.js';
import type { PublishedRemark } from '../../contract/documents/remarks-document.js';

/** What the house said of itself when it published. */
export type HouseEvidence = Pick<HouseDocument, 'statement' | 'statedOn' | 'contact' | 'people' | 'funding' | 'interests' | 'rightOfReply'>;

/** A remark that stood when it was published, with the entries that it touches. */
export type RemarkEvidence = PublishedRemark;
