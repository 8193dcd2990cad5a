/** One row from the maker to the code: what it asks for, and how it goes on record. */
import { z } from 'zod';
import {
  claimRequest,
  lineRequest,
  lineResponse,
  makerRequest,
  makerResponse,
  variantRequest,
  variantResponse,
} from '../../../../api/contract/endpoints/catalogue.js';
import { spoolRequest, spoolResponse } from '../../../../api/contract/endpoints/spools.js';
import { lineName } from '../../../../api/contract/line-name.js';
import { ask } from '../http/ask.js';
import { Refusal } from '../http/problem.js';
import { toSlug } from '../words/to-slug.js';

export const rowRequest = z.strictObject({
  maker: makerRequest.omit({ slug: true }),
  line: lineRequest.omit({ slug: true, maker: true }),
  variant: variantRequest.omit({ slug: true, line: true }),
  claim: claimRequest.nullable(),
  spool: spoolRequest.omit({ variant: true }),
});

/** A claim is there where its number is; it was seen when the spool came. */
export function withClaim(entered: Record<string, unknown>): unknown {
  const claim = entered['claim'] as { printed: { text: string | null } };
  const { obtainedOn } = entered['spool'] as { obtainedOn: string };
  return {
    ...entered,
    claim: claim.printed.text === null ? null : { ...claim, quantity: 'breakingForce', seenOn: obtainedOn, source: 'label' },
  };
}

/**
 * What is on record already is taken as it is.
 * @returns the code of the spool, and what the row put on record for the first time: a name that was mistyped is another maker or line
 */
export async function addRow({
  maker,
  line,
  variant,
  claim,
  spool,
}: z.infer<typeof rowRequest>): Promise<{ readonly blindCode: string; readonly first: readonly string[] }> {
  const makerSlug = toSlug(maker.name);
  const lineSlug = toSlug(lineName(maker, line));
  const variantSlug = toSlug(`${lineSlug} ${variant.size} ${variant.colour}`);
  const isNewMaker = await unlessThere('maker', () =>
    ask(makerResponse, 'POST', 'catalogue/makers', { body: { slug: makerSlug, ...maker } }),
  );
  const isNewLine = await unlessThere('line', () =>
    ask(lineResponse, 'POST', 'catalogue/lines', { body: { slug: lineSlug, maker: makerSlug, ...line } }),
  );
  await unlessThere('variant', () =>
    ask(variantResponse, 'POST', 'catalogue/variants', { body: { slug: variantSlug, line: lineSlug, ...variant } }),
  );
  if (claim) await unlessThere('claim', () => ask(z.unknown(), 'POST', `catalogue/variants/${variantSlug}/claims`, { body: claim }));
  const { blindCode } = await at('spool', () =>
    ask(spoolResponse, 'POST', 'catalogue/spools', { body: { variant: variantSlug, ...spool } }),
  );
  return { blindCode, first: [...(isNewMaker ? [`maker ${maker.name}`] : []), ...(isNewLine ? [`line ${line.name}`] : [])] };
}

/** @returns whether it is there only now */
async function unlessThere(place: string, send: () => Promise<unknown>): Promise<boolean> {
  return at(place, send).then(
    () => true,
    (error: unknown) => {
      if (!(error instanceof Refusal) || error.status !== 409) throw error;
      return false;
    },
  );
}

/** A fault of one request shows at its part of the form. */
async function at<Answer>(place: string, send: () => Promise<Answer>): Promise<Answer> {
  try {
    return await send();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new Refusal(error.status, {
      detail: error.message,
      code: error.code,
      errors: error.faults.map((fault) => ({ ...fault, pointer: `/${place}${fault.pointer}` })),
    });
  }
}
