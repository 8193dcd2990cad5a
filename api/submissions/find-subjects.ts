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

  /**
   * One after the other, so that a file with thousands of names leaves connections to others.
   * @returns each naming with what was found under it
   */
  async run<N extends Naming>(namings: readonly N[]): Promise<{ naming: N; sought: SoughtSubject }[]> {
    const editions = onlyOnce((slug: string) => this.editions.openEdition(slug));
    const spools = onlyOnce((code: string) => this.catalogue.spoolByCode(code));
    const methods = onlyOnce((name: string) => {
      const [slug = '', number] = name.split('\n');
      return this.methods.version(slug, Number(number));
    });
    const found = [];
    for (const naming of namings) {
      const [edition, spool] = [await editions(naming.edition), await spools(naming.spool)];
      const method = await methods(`${naming.method}\n${naming.methodVersion}`);
      found.push({ naming, sought: { edition, spool, method } });
    }
    return found;
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
