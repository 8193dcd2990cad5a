import { demoInstruments } from '../house/instruments.js';
import { demoMethods } from '../methods/demo-methods.js';
import type { HouseClient } from './house-client.js';

export async function enterInstruments(editor: HouseClient): Promise<void> {
  for (const { code, kind, name, capacity, resolution } of demoInstruments)
    await editor.post('/v1/instruments', { body: { code, kind, name, capacity, resolution } });
}

/** Enters each certificate on the first bench day after its date. */
export class Certificates {
  private readonly entered = new Set<string>();

  async enterUpTo(editor: HouseClient, day: string): Promise<void> {
    const due = demoInstruments.flatMap(({ code, calibrations }) => calibrations.map((calibration) => ({ code, calibration })));
    for (const { code, calibration } of due) {
      const { certificate, validFrom } = calibration;
      if (validFrom > day || this.entered.has(certificate)) continue;
      this.entered.add(certificate);
      await editor.post(`/v1/instruments/${code}/calibrations`, { body: calibration });
    }
  }
}

export async function enterMethods(editor: HouseClient): Promise<void> {
  for (const { slug, name } of demoMethods) await editor.post('/v1/catalogue/methods', { body: { slug, name } });
}

/** Enters the versions that are in force from a day in (after, until]. */
export async function enterMethodVersions(editor: HouseClient, after: string, until: string): Promise<void> {
  const due = demoMethods.flatMap(({ slug, versions }) => versions.map((version) => ({ slug, version })));
  for (const { slug, version } of due) {
    const { effectiveFrom } = version;
    if (after < effectiveFrom && effectiveFrom <= until) await editor.post(`/v1/catalogue/methods/${slug}/versions`, { body: version });
  }
}
