import { LARGEST_FILE_BYTES, LARGEST_JSON_BYTES, LARGEST_READINGS_BYTES, sizeWords } from '../../contract/body-sizes.js';
import { declareProblems } from './problem.js';

export const platformProblems = declareProblems({
  'request/malformed': {
    status: 400,
    title: 'The request cannot be read',
    explains: 'The body is not valid JSON, or the content type is not one that this address takes. Correct the body and send it again.',
  },
  'request/not-valid': {
    status: 422,
    title: 'The request is understood but not valid',
    explains: 'Each fault is listed with a pointer to its place. Nothing was stored. Correct all of them and send it again.',
  },
  'request/too-large': {
    status: 413,
    title: 'The body is too large',
    explains: `A file may have at most ${sizeWords(LARGEST_FILE_BYTES)} (${LARGEST_FILE_BYTES} bytes), JSON with long lists ${sizeWords(LARGEST_READINGS_BYTES)}, any other JSON ${sizeWords(LARGEST_JSON_BYTES)}. Split it and send the parts.`,
  },
  'request/address-too-long': {
    status: 414,
    title: 'The address is too long',
    explains: 'A part of an address has at most 100 characters. Correct it and send the request again.',
  },
  'request/headers-too-large': {
    status: 431,
    title: 'The headers are too large',
    explains: 'All headers together have at most 16 KB. Send fewer or shorter ones, cookies above all.',
  },
  'request/too-slow': {
    status: 408,
    title: 'The request took too long to arrive',
    explains: 'Headers arrive within 15 seconds, a body within 2 minutes. Send it again over a better connection, or split the file.',
  },
  'request/media-type': {
    status: 415,
    title: 'The content type is not taken here',
    explains: 'Send application/json, or text/csv or multipart/form-data where the address takes files; not packed by a Content-Encoding.',
  },
  'operations/no-backups': {
    status: 409,
    title: 'No backups are made here',
    explains: 'Name a folder for them in BACKUP_FOLDER, on another disk than the data, and start the worker again.',
  },
  'request/too-many': { status: 429, title: 'Too many requests', explains: 'Wait for the seconds in Retry-After, then go on.' },
  'request/not-found': {
    status: 404,
    title: 'Nothing is found at this address',
    explains:
      'The address is wrong, the thing does not exist, or it is not for you to see. Look its name up in the list that it belongs to, or ask an admin.',
  },
  'request/if-match-missing': {
    status: 428,
    title: 'If-Match is required',
    explains: 'Read the resource, send its ETag in If-Match with the change. So nobody overwrites what they have not seen.',
  },
  'request/if-match-stale': {
    status: 412,
    title: 'Somebody changed it in the meantime',
    explains: 'Read the resource again, look at what changed, and send your change with the new ETag.',
  },
  'request/key-reused': {
    status: 422,
    title: 'The Idempotency-Key was used for another request',
    explains: 'Use a new key for a new request.',
  },
  'request/key-malformed': {
    status: 400,
    title: 'The Idempotency-Key cannot be read',
    explains: 'A key has 1 to 200 visible characters of ASCII. Make one for each new request, a UUID for example.',
  },
  'request/secret-not-kept': {
    status: 409,
    title: 'It was done; its answer held a secret and is not kept',
    explains:
      'The first request with this Idempotency-Key was carried out. A secret is shown once: if its answer did not arrive, revoke what was made and make another with a new key.',
  },
  'request/key-busy': {
    status: 409,
    title: 'The first request with this Idempotency-Key is still running',
    explains:
      'Wait for the seconds in Retry-After and send it again: the stored answer will be replayed. If the server died at it, the key is free again within a minute.',
  },
  'record/already-exists': {
    status: 409,
    title: 'It exists already',
    explains: 'Something with the same name, slug or number is on record. Use it, or choose another.',
  },
  'record/rule-broken': {
    status: 409,
    title: 'A rule of the record forbids this',
    explains:
      'The database keeps the rules of the record. The detail names the rule. Read what you change again and do the step that the rule asks for first; if it is not plain which, tell an admin the request id.',
  },
  'record/busy': { status: 503, title: 'The record is busy', explains: 'Several changes met. Send the request again in a moment.' },
  'access/not-signed-in': { status: 401, title: 'Sign in first', explains: 'Send a session cookie or a bearer token.' },
  'access/forbidden': {
    status: 403,
    title: 'Not allowed for your role',
    explains: 'The detail names the role that may do this. Ask somebody who has it to do it, or an admin to give it to you.',
  },
  'access/session-needed': {
    status: 403,
    title: 'Not for tokens',
    explains: 'What makes or changes keys needs a person: sign in (POST /v1/sessions) and send the session cookie with its X-CSRF-Token.',
  },
  'access/csrf': {
    status: 403,
    title: 'The X-CSRF-Token does not fit the session',
    explains:
      'Send the csrfToken from the sign-in in the header X-CSRF-Token with every change, as the desk does; if it is lost, sign in again.',
  },
  'server/not-ready': {
    status: 503,
    title: 'The server is not ready',
    explains: 'Its database does not answer, or it is about to end. Ask again after the seconds in Retry-After.',
  },
  'server/failed': {
    status: 500,
    title: 'The server failed',
    explains:
      'This is our fault. Nothing was stored. Send it again; if it fails again, tell an admin the request id, by which the log tells more.',
  },
});
