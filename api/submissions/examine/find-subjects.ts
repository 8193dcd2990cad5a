import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../../catalogue/catalogue.read-model.js';
import { EditionsReadModel } from '../../editions/editions.read-model.js';
import { MethodsReadModel } from '../../methods/methods.read-model.js';
import type { Naming, SoughtSubject } from './subject.js';

/** What was looked up, by name; null where there is no such thing. */
export interface KnownNames {
  readonly edition: Map<string, SoughtSubject['edition']>;
  readonly method: Map<string, SoughtSubject['method']>;
  readonly spool: Map<string, SoughtSubject['spool']>;
}

export const noNames = (): KnownNames => ({ edition: new Map(), method: new Map(), spool: new Map() });

const methodKey = ({ method, methodVersion }: Naming): string => `${method}\n${methodVersion}`;

/** Looks up what submissions name: editions and method versions, of which a file has few, each once; spools all at once. */
@Injectable()
export class FindSubjects {
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  /**
   * @param known what was looked up before; it takes in what is looked up now
   * @returns what was found of each naming, in their order
   */
  async run(namings: readonly Naming[], known: KnownNames = noNames()): Promise<SoughtSubject[]> {
    for (const naming of namings) {
      const { edition, method, methodVersion } = naming;
      if (!known.edition.has(edition)) known.edition.set(edition, await this.editions.openEdition(edition));
      const key = methodKey(naming);
      if (!known.method.has(key)) known.method.set(key, await this.methods.version(method, methodVersion));
    }
    const codes = namings.map(({ spool }) => spool).filter((code) => !known.spool.has(code));
    const spools = codes.length === 0 ? new Map<string, never>() : await this.catalogue.spoolsByCodes(codes);
    for (const code of codes) known.spool.set(code, spools.get(code) ?? null);
    return namings.map((naming) => ({
      edition: known.edition.get(naming.edition) ?? null,
      spool: known.spool.get(naming.spool) ?? null,
      method: known.method.get(methodKey(naming)) ?? null,
    }));
  }
}
