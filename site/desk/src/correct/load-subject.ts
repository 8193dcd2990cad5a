import type { z } from 'zod';
import {
  claimCorrection,
  lineChange,
  lineResponse,
  makerChange,
  makerResponse,
  variantChange,
  variantResponse,
} from '../../../../api/contract/endpoints/catalogue.js';
import { calibrationCorrection, instrumentResponse } from '../../../../api/contract/endpoints/instruments.js';
import { spoolChange, spoolResponse } from '../../../../api/contract/endpoints/spools.js';
import { CLAIM_BASES } from '../../../../api/contract/claims.js';
import { CONSTRUCTIONS } from '../../../../api/contract/constructions.js';
import { lineName } from '../../../../api/contract/line-name.js';
import { SPOOL_SOURCES } from '../../../../api/contract/spool-sources.js';
import { ask } from '../http/ask.js';
import { BASIS_WORDS, CLAIMED_WORDS, CONSTRUCTION_WORDS, KIND_WORDS, optionsOf, SOURCE_WORDS } from '../words/kind-words.js';
import type { SubjectKind } from './correction-at.js';
import type { Subject } from './subject.js';

const row = (kind: 'makers' | 'lines' | 'variants', slug: string) => `catalogue/${kind}/${encodeURIComponent(slug)}`;
const retirementAt = (path: string, since: { on: string; reason: string } | null) => ({ path: `${path}/retirement`, since });

async function maker(slug: string): Promise<Subject> {
  const path = row('makers', slug);
  const { name, version, former = [], retired } = await ask(makerResponse, 'GET', path);
  return {
    title: name,
    told: 'maker',
    version,
    former,
    retirement: retirementAt(path, retired),
    corrections: [
      {
        heading: 'The maker',
        schema: makerChange,
        isPartial: true,
        method: 'PATCH',
        path,
        fields: [{ name: 'name', label: 'Name of the company', value: name }],
      },
    ],
  };
}

async function line(slug: string): Promise<Subject> {
  const path = row('lines', slug);
  const one = await ask(lineResponse, 'GET', path);
  const { name: maker } = await ask(makerResponse, 'GET', row('makers', one.maker));
  return {
    title: one.name,
    told: `line of ${maker}`,
    version: one.version,
    former: one.former ?? [],
    retirement: retirementAt(path, one.retired),
    corrections: [
      {
        heading: 'The line',
        schema: lineChange,
        isPartial: true,
        method: 'PATCH',
        path,
        fields: [
          { name: 'name', label: 'Name that it is sold under', value: one.name },
          { name: 'material', label: 'Material', value: one.material },
          {
            name: 'construction',
            label: 'Construction',
            kind: 'choice',
            value: one.construction,
            options: optionsOf(CONSTRUCTIONS, CONSTRUCTION_WORDS),
          },
          { name: 'carriers', label: 'Ends braided', kind: 'number', value: String(one.carriers ?? ''), isOptional: true },
          { name: 'densityGPerCm3', label: 'Density of the solid, g/cm³', kind: 'decimal', value: one.densityGPerCm3 },
        ],
      },
    ],
  };
}

async function variant(slug: string): Promise<Subject> {
  const path = row('variants', slug);
  const one = await ask(variantResponse, 'GET', path);
  return {
    title: await variantTitle(one),
    told: 'variant',
    version: one.version,
    former: one.former ?? [],
    retirement: retirementAt(path, one.retired),
    corrections: [
      {
        heading: 'Size and colour',
        schema: variantChange,
        isPartial: true,
        method: 'PATCH',
        path,
        fields: [
          { name: 'size', label: 'Size as on the label', value: one.size },
          { name: 'colour', label: 'Colour as on the label', value: one.colour },
        ],
      },
      ...one.claims.map(({ quantity, basis, printed, seenOn, source }) => ({
        heading: `What the label says of ${CLAIMED_WORDS[quantity]}`,
        schema: claimCorrection,
        isPartial: false,
        method: 'PUT' as const,
        path: `${path}/claims/${quantity}`,
        fields: [
          { name: 'printed/text', label: 'Number as printed', kind: 'decimal' as const, value: printed.text },
          { name: 'printed/unit', label: 'Unit as printed', value: printed.unit },
          {
            name: 'basis',
            label: 'The label says it is',
            kind: 'choice' as const,
            value: basis,
            options: optionsOf(CLAIM_BASES, BASIS_WORDS),
          },
          { name: 'seenOn', label: 'Seen on', kind: 'date' as const, value: seenOn },
          { name: 'source', label: 'Seen where', value: source },
        ],
      })),
    ],
  };
}

async function variantTitle({ maker, line, size, colour }: z.infer<typeof variantResponse>): Promise<string> {
  const of = await Promise.all([ask(makerResponse, 'GET', row('makers', maker)), ask(lineResponse, 'GET', row('lines', line))]);
  return `${lineName(...of)} ${size}, ${colour}`;
}

async function spool(code: string): Promise<Subject> {
  const path = `catalogue/spools/${encodeURIComponent(code)}`;
  const one = await ask(spoolResponse, 'GET', path);
  const variant = await ask(variantResponse, 'GET', row('variants', one.variant));
  return {
    title: one.blindCode,
    told: `spool of ${await variantTitle(variant)}`,
    version: one.version,
    former: one.former ?? [],
    retirement: retirementAt(path, one.retired),
    corrections: [
      {
        heading: 'The spool',
        schema: spoolChange,
        isPartial: true,
        method: 'PATCH',
        path,
        fields: [
          { name: 'source', label: 'How it came', kind: 'choice', value: one.source, options: optionsOf(SPOOL_SOURCES, SOURCE_WORDS) },
          { name: 'obtainedOn', label: 'When', kind: 'date', value: one.obtainedOn },
          { name: 'place', label: 'Where', value: one.place },
          { name: 'lot', label: 'Lot on the label', value: one.lot ?? '', isOptional: true },
          { name: 'lengthM', label: 'Length, m', kind: 'decimal', value: one.lengthM ?? '', isOptional: true },
        ],
      },
    ],
  };
}

async function instrument(code: string): Promise<Subject> {
  const path = `instruments/${encodeURIComponent(code)}`;
  const one = await ask(instrumentResponse, 'GET', path);
  return {
    title: `${one.code}, ${one.name}`,
    told: KIND_WORDS[one.kind],
    version: one.version,
    former: one.former ?? [],
    retirement: retirementAt(path, one.retired),
    // The newest first: it is the one that was just typed.
    corrections: one.calibrations.toReversed().map((calibration) => ({
      heading: `Certificate ${calibration.certificate}`,
      schema: calibrationCorrection,
      isPartial: false,
      method: 'PUT' as const,
      path: `${path}/calibrations/${encodeURIComponent(calibration.certificate)}`,
      fields: [
        { name: 'certificate', label: 'Number of the certificate', value: calibration.certificate },
        { name: 'validFrom', label: 'First day', kind: 'date' as const, value: calibration.validFrom },
        { name: 'validUntil', label: 'Last day', kind: 'date' as const, value: calibration.validUntil },
        { name: 'correctionPercent', label: 'Correction, %', kind: 'decimal' as const, value: calibration.correctionPercent },
        {
          name: 'expandedUncertaintyPercent',
          label: 'Expanded uncertainty U, %',
          kind: 'decimal' as const,
          value: calibration.expandedUncertaintyPercent,
        },
        { name: 'coverageFactor', label: 'Coverage factor k', kind: 'decimal' as const, value: calibration.coverageFactor },
      ],
    })),
  };
}

const LOADS: Readonly<Record<SubjectKind, (key: string) => Promise<Subject>>> = { maker, line, variant, spool, instrument };

export const loadSubject = (kind: SubjectKind, key: string): Promise<Subject> => LOADS[kind](key);
