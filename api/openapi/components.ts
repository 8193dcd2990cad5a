import { z } from 'zod';
import type { ZodType } from 'zod';
import * as amendment from '../contract/amendment.js';
import * as benchCode from '../contract/bench-code.js';
import * as cellGroups from '../contract/cell-groups.js';
import * as division from '../contract/division.js';
import * as changes from '../contract/documents/changes.js';
import * as claimsDocument from '../contract/documents/claims-document.js';
import * as provenance from '../contract/documents/provenance.js';
import * as releaseDocuments from '../contract/documents/release-documents.js';
import * as retestsDocument from '../contract/documents/retests-document.js';
import * as rigsDocument from '../contract/documents/rigs-document.js';
import * as roundRobinsDocument from '../contract/documents/round-robins-document.js';
import * as trace from '../contract/documents/trace.js';
import * as accounts from '../contract/endpoints/accounts.js';
import * as assignments from '../contract/endpoints/assignments.js';
import * as audit from '../contract/endpoints/audit.js';
import * as board from '../contract/endpoints/board.js';
import * as catalogue from '../contract/endpoints/catalogue.js';
import * as controlPulls from '../contract/endpoints/control-pulls.js';
import * as drafts from '../contract/endpoints/drafts.js';
import * as editions from '../contract/endpoints/editions.js';
import * as inbox from '../contract/endpoints/inbox.js';
import * as instruments from '../contract/endpoints/instruments.js';
import * as methods from '../contract/endpoints/methods.js';
import * as photos from '../contract/endpoints/photos.js';
import * as planning from '../contract/endpoints/planning.js';
import * as previews from '../contract/endpoints/previews.js';
import * as proposals from '../contract/endpoints/proposals.js';
import * as publicApi from '../contract/endpoints/public-api.js';
import * as releases from '../contract/endpoints/releases.js';
import * as retests from '../contract/endpoints/retests.js';
import * as reviews from '../contract/endpoints/reviews.js';
import * as roundRobins from '../contract/endpoints/round-robins.js';
import * as schemes from '../contract/endpoints/schemes.js';
import * as schemas from '../contract/endpoints/document-schemas.js';
import * as spools from '../contract/endpoints/spools.js';
import * as houseDocument from '../contract/documents/house-document.js';
import * as remarksDocument from '../contract/documents/remarks-document.js';
import * as statements from '../contract/endpoints/statements.js';
import * as submissions from '../contract/endpoints/submissions.js';
import * as traces from '../contract/endpoints/traces.js';
import * as webhooks from '../contract/endpoints/webhooks.js';
import * as former from '../contract/former.js';
import * as instrumentKinds from '../contract/instrument-kinds.js';
import * as methodSeries from '../contract/method-series.js';
import * as obstacle from '../contract/obstacle.js';
import * as orderState from '../contract/order-state.js';
import * as problem from '../contract/problem.js';
import * as submissionContent from '../contract/submission-content.js';

export type Json = Record<string, unknown>;

const ROOMS: readonly object[] = [
  amendment,
  benchCode,
  cellGroups,
  division,
  changes,
  claimsDocument,
  provenance,
  releaseDocuments,
  retestsDocument,
  rigsDocument,
  roundRobinsDocument,
  trace,
  accounts,
  assignments,
  audit,
  board,
  catalogue,
  controlPulls,
  drafts,
  editions,
  inbox,
  instruments,
  methods,
  photos,
  planning,
  previews,
  proposals,
  publicApi,
  releases,
  retests,
  reviews,
  roundRobins,
  schemas,
  schemes,
  spools,
  houseDocument,
  remarksDocument,
  statements,
  submissions,
  traces,
  webhooks,
  former,
  instrumentKinds,
  methodSeries,
  obstacle,
  orderState,
  problem,
  submissionContent,
];
/** Kinds of schema that are worth a name; texts and numbers stand where they are used. */
const NAMED_KINDS: readonly string[] = ['object', 'union', 'enum'];

/** figureSchema → Figure, releasesResponse → ReleasesResponse. */
const nameOf = (constant: string): string => (constant.charAt(0).toUpperCase() + constant.slice(1)).replace(/Schema$/, '');

const isNamed = (name: string, value: unknown): value is ZodType =>
  value instanceof z.ZodType && NAMED_KINDS.includes(value.def.type) && !/(Query|Parameter)$/.test(name);

const taken = new Map<string, ZodType>();
const names = new Map<unknown, string>();
for (const [constant, schema] of ROOMS.flatMap((room) => Object.entries(room))) {
  if (!isNamed(constant, schema)) continue;
  const name = nameOf(constant);
  if ((taken.get(name) ?? schema) !== schema) throw new Error(`Two schemas of the contract are called ${constant}.`);
  taken.set(name, schema);
  if (!names.has(schema)) names.set(schema, name);
}

/** What a schema says of itself, and the name that it has in the code. */
class Named extends z.core.$ZodRegistry<Json> {
  override get(schema: z.core.$ZodType) {
    const id = names.get(schema);
    return { ...z.globalRegistry.get(schema), ...(id === undefined ? {} : { id }) } as never;
  }
}

type Parts = Readonly<Record<string, Json>>;

const referred = /"\$ref":"#\/\$defs\/(\w+)"/g;
const namesIn = (json: unknown): string[] => [...JSON.stringify(json).matchAll(referred)].map(([, name = '']) => name);
const withReferences = (json: unknown, called: (name: string) => string): Json =>
  JSON.parse(JSON.stringify(json).replace(referred, (_, name: string) => `"$ref":"#/components/schemas/${called(name)}"`)) as Json;

/** Names of parts that take other texts than they give, or are made of such. */
function readOtherwise(taken: Parts, given: Parts): Set<string> {
  const isSame = (name: string) => JSON.stringify(taken[name]) === JSON.stringify(given[name]);
  const found = new Set(Object.keys(taken).filter((name) => !isSame(name)));
  for (let before = -1; before < found.size;) {
    before = found.size;
    for (const [name, part] of Object.entries(taken)) if (namesIn(part).some((one) => found.has(one))) found.add(name);
  }
  return found;
}

/** Schemas as JSON Schema; what has a name in the code is a component of that name, or of that name and "Input" where it takes otherwise than it gives. */
export class Components {
  readonly schemas: Record<string, Json> = {};
  private readonly registry = new Named() as unknown as typeof z.globalRegistry;

  /** @throws Error when two components would have one name */
  convert(schema: ZodType, io: 'input' | 'output'): Json {
    const { parts, json } = this.made(schema, io);
    const other = io === 'output' ? new Set<string>() : readOtherwise(parts, this.made(schema, 'output').parts);
    const called = (name: string) => (other.has(name) && !/(Request|Change|Correction)$/.test(name) ? `${name}Input` : name);
    for (const [name, part] of Object.entries(parts)) this.keep(called(name), withReferences(part, called));
    return withReferences(json, called);
  }

  private made(schema: ZodType, io: 'input' | 'output'): { parts: Parts; json: Json } {
    const made = z.toJSONSchema(schema, { io, unrepresentable: 'any', metadata: this.registry }) as Json;
    const { $schema: _, $defs = {}, ...json } = made;
    return { parts: $defs as Parts, json };
  }

  private keep(name: string, json: Json): void {
    const known = (this.schemas[name] ??= json);
    if (JSON.stringify(known) !== JSON.stringify(json)) throw new Error(`Two components are called ${name}.`);
  }
}
