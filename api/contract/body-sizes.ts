/** Most that a body of each kind may have, in bytes. Every text that names a size is made from these. */
const KIB = 1024;
const MIB = 1024 * KIB;

export const LARGEST_FILE_BYTES = 50 * MIB;
export const LARGEST_PHOTO_BYTES = 15 * MIB;
/** JSON with readings: the largest submission that is taken, and a draft of it. */
export const LARGEST_READINGS_BYTES = 8 * MIB;
export const LARGEST_JSON_BYTES = 64 * KIB;

/** `50 MB`, `64 KB`; what is more than a whole number is rounded up. */
export const sizeWords = (bytes: number): string => (bytes < MIB ? `${Math.ceil(bytes / KIB)} KB` : `${Math.ceil(bytes / MIB)} MB`);
