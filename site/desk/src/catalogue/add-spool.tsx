import { CLAIM_BASES } from '../../../../api/contract/claims.js';
import { CONSTRUCTIONS } from '../../../../api/contract/constructions.js';
import { lineName } from '../../../../api/contract/line-name.js';
import { SPOOL_SOURCES } from '../../../../api/contract/spool-sources.js';
import { Form } from '../parts/form.js';
import { BASIS_WORDS, CONSTRUCTION_WORDS, optionsOf, SOURCE_WORDS } from '../words/kind-words.js';
import type { CatalogueRows } from '../parts/variant-names.js';
import { addRow, rowRequest, withClaim } from './add-row.js';

const choices = (values: readonly string[]) => values.map((value) => [value, value] as const);

const namesOf = (rows: readonly { readonly name: string }[] = []) => rows.map(({ name }) => name);

const firstWords = (first: readonly string[]) => (first.length === 0 ? '' : ` New here: ${first.join(', ')}.`);

/** One row from the maker to the code; what is on record already is taken as it is. */
export function AddSpool({ onAdded, known }: { onAdded: () => void; known: CatalogueRows | null }) {
  return (
    <Form
      schema={rowRequest}
      submit="Add the spool"
      keptAs="spool"
      fields={[
        { name: 'maker/name', label: 'Maker', known: namesOf(known?.makers) },
        { name: 'line/name', label: 'Line', known: namesOf(known?.lines) },
        { name: 'line/material', label: 'Material', value: 'UHMWPE' },
        { name: 'line/construction', label: 'Construction', kind: 'choice', options: optionsOf(CONSTRUCTIONS, CONSTRUCTION_WORDS) },
        { name: 'line/carriers', label: 'Ends braided', kind: 'number', isOptional: true },
        { name: 'line/densityGPerCm3', label: 'Density of the solid, g/cm³', kind: 'decimal', value: '0.97' },
        { name: 'variant/size', label: 'Size on the label' },
        { name: 'variant/colour', label: 'Colour on the label' },
        { name: 'claim/printed/text', label: 'Breaking force on the label', kind: 'decimal', isOptional: true },
        { name: 'claim/printed/unit', label: 'Unit on the label', kind: 'choice', options: choices(['lbf', 'kgf', 'N']) },
        { name: 'claim/basis', label: 'The label says it is', kind: 'choice', options: optionsOf(CLAIM_BASES, BASIS_WORDS) },
        { name: 'spool/source', label: 'How it came', kind: 'choice', options: optionsOf(SPOOL_SOURCES, SOURCE_WORDS) },
        { name: 'spool/obtainedOn', label: 'When', kind: 'date' },
        { name: 'spool/place', label: 'Where' },
        { name: 'spool/lot', label: 'Lot on the label', isOptional: true },
        { name: 'spool/lengthM', label: 'Length, m', kind: 'decimal', isOptional: true },
      ]}
      prepare={withClaim}
      onSend={async (added) => {
        const { blindCode, first } = await addRow(added);
        onAdded();
        const { maker, line, variant } = added;
        return `${lineName(maker, line)} ${variant.size}, ${variant.colour} has a spool with the code ${blindCode}.${firstWords(first)} Change what differs and add the next.`;
      }}
    />
  );
}
