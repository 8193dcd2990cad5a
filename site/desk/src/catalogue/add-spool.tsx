import { z } from 'zod';
import { CLAIM_BASES } from '../../../../api/contract/claims.js';
import { CONSTRUCTIONS } from '../../../../api/contract/constructions.js';
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
import { SPOOL_SOURCES } from '../../../../api/contract/spool-sources.js';
import { ask } from '../http/ask.js';
import { Refusal } from '../http/problem.js';
import { Form } from '../parts/form.js';
import { BASIS_WORDS, CONSTRUCTION_WORDS, optionsOf, SOURCE_WORDS } from '../words/kind-words.js';
import { toSlug } from '../words/to-slug.js';

const request = z.strictObject({
  maker: makerRequest.omit({ slug: true }),
  line: lineRequest.omit({ slug: true, maker: true }),
  variant: variantRequest.omit({ slug: true, line: true }),
  claim: claimRequest.nullable(),
  spool: spoolRequest.omit({ variant: true }),
});
type Added = z.infer<typeof request>;

const choices = (values: readonly string[]) => values.map((value) => [value, value] as const);

/** One row from the maker to the code; what is on record already is taken as it is. */
export function AddSpool({ onAdded }: { onAdded: () => void }) {
  return (
    <Form
      schema={request}
      submit="Add the spool"
      fields={[
        { name: 'maker/name', label: 'Maker' },
        { name: 'line/name', label: 'Line' },
        { name: 'line/material', label: 'Material', value: 'UHMWPE' },
        { name: 'line/construction', label: 'Construction', kind: 'choice', options: optionsOf(CONSTRUCTIONS, CONSTRUCTION_WORDS) },
        { name: 'line/carriers', label: 'Ends braided', kind: 'number', isOptional: true },
        { name: 'line/densityGPerCm3', label: 'Density of the solid, g/cm³', value: '0.97' },
        { name: 'variant/size', label: 'Size on the label' },
        { name: 'variant/colour', label: 'Colour on the label' },
        { name: 'claim/printed/text', label: 'Breaking force on the label', isOptional: true },
        { name: 'claim/printed/unit', label: 'Unit on the label', kind: 'choice', options: choices(['lbf', 'kgf', 'N']) },
        { name: 'claim/basis', label: 'The label says it is', kind: 'choice', options: optionsOf(CLAIM_BASES, BASIS_WORDS) },
        { name: 'spool/source', label: 'How it came', kind: 'choice', options: optionsOf(SPOOL_SOURCES, SOURCE_WORDS) },
        { name: 'spool/obtainedOn', label: 'When', kind: 'date' },
        { name: 'spool/place', label: 'Where' },
        { name: 'spool/lot', label: 'Lot on the label', isOptional: true },
        { name: 'spool/lengthM', label: 'Length, m', isOptional: true },
      ]}
      prepare={withClaim}
      onSend={async (added) => {
        const { blindCode, variant } = await add(added);
        onAdded();
        return `${variant} has a spool with the code ${blindCode}. Change what differs and add the next.`;
      }}
    />
  );
}

function withClaim(entered: Record<string, unknown>): unknown {
  const claim = entered['claim'] as { printed: { text: string | null } };
  const { obtainedOn } = entered['spool'] as { obtainedOn: string };
  return {
    ...entered,
    claim: claim.printed.text === null ? null : { ...claim, quantity: 'breakingForce', seenOn: obtainedOn, source: 'label' },
  };
}

async function add({ maker, line, variant, claim, spool }: Added): Promise<z.infer<typeof spoolResponse>> {
  const makerSlug = toSlug(maker.name);
  const lineSlug = toSlug(line.name.startsWith(maker.name) ? line.name : `${maker.name} ${line.name}`);
  const variantSlug = toSlug(`${lineSlug} ${variant.size} ${variant.colour}`);
  await unlessThere('maker', () => ask(makerResponse, 'POST', 'catalogue/makers', { body: { slug: makerSlug, ...maker } }));
  await unlessThere('line', () => ask(lineResponse, 'POST', 'catalogue/lines', { body: { slug: lineSlug, maker: makerSlug, ...line } }));
  await unlessThere('variant', () =>
    ask(variantResponse, 'POST', 'catalogue/variants', { body: { slug: variantSlug, line: lineSlug, ...variant } }),
  );
  if (claim) await unlessThere('claim', () => ask(z.unknown(), 'POST', `catalogue/variants/${variantSlug}/claims`, { body: claim }));
  return at('spool', () => ask(spoolResponse, 'POST', 'catalogue/spools', { body: { variant: variantSlug, ...spool } }));
}

async function unlessThere(place: string, send: () => Promise<unknown>): Promise<void> {
  await at(place, send).catch((error: unknown) => {
    if (!(error instanceof Refusal) || error.status !== 409) throw error;
  });
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
