import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import type { Naming, SoughtSubject } from './subject.js';

/** Looks up what submissions name; each name once, however many submissions share it. */
@Injectable()
export class FindSubjects {
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  /** @returns what was found, in the order of the namings */
  async run(namings: readonly Naming[]): Promise<SoughtSubject[]> {
    const editions = onlyOnce((slug: string) => this.editions.openEdition(slug));
    const spools = onlyOnce((code: string) => this.catalogue.spoolByCode(code));
    const methods = onlyOnce((name: string) => {
      const [slug = '', number] = name.split('\n');
      return this.methods.version(slug, Number(number));
    });
    return Promise.all(
      namings.map(async ({ edition, spool, method, methodVersion }) => ({
        edition: await editions(edition),
        spool: await spools(spool),
        method: await methods(`${method}\n${methodVersion}`),
      })),
    );
  }
}

function onlyOnce<Answer>(ask: (name: string) => Promise<Answer>): (name: string) => Promise<Answer> {
  const asked = new Map<string, Promise<Answer>>();
  return (name) => {
    const answer = asked.get(name) ?? ask(name);
    asked.set(name, answer);
    return answer;
  };
}
