/**
 * The documents that a release carries and that readers get, byte for byte as stored: a file each. One schema is the type, the
 * validator, the serialiser and the documentation.
 */
export { FORMAT_VERSION, divisionNameSchema, heading } from './published-fields.js';
export * from './figure.js';
export * from './variant-name.js';
export * from './standings.js';
export * from './category-document.js';
export * from './corrections.js';
export * from './sensitivity.js';
export * from './edition-document.js';
export * from './withdrawn-document.js';
export * from './records-document.js';
export * from './pairs-document.js';
export * from './published-submission.js';
export * from './variant-document.js';
export * from './method-document.js';
export * from './catalogue-document.js';
export * from './manifest.js';
