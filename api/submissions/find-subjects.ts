import { Injectable } from '@nestjs/common';
import { CatalogueReadModel } from '../catalogue/catalogue.read-model.js';
import { EditionsReadModel } from '../editions/editions.read-model.js';
import { MethodsReadModel } from '../methods/methods.read-model.js';
import type { Naming, SoughtSubject } from './subject.js';

export type KnownNames = { readonly [Name in keyof SoughtSubject]: (name: string) => Promise<SoughtSubject[Name]> };

/** Looks up what submissions name; each name once, however many submissions share it. */
@Injectable()
export class FindSubjects {
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly catalogue: CatalogueReadModel,
    private readonly methods: MethodsReadModel,
  ) {}

  /** Looks up each name once, however many submissions share it, for as long as it is kept. */
  keeping(): KnownNames {
    return {
      edition: onlyOnce((slug: string) => this.editions.openEdition(slug)),
      spool: onlyOnce((code: string) => this.catalogue.spoolByCode(code)),
      method: onlyOnce((name: string) => {
        const [slug = '', number] = name.split('\n');
        return this.methods.version(slug, Number(number));
      }),
    };
  }

  /**
   * One after the other, so that a file with thousands of names leaves connections to others.
   * @returns each naming with what was found under it
   */
  async run<N extends Naming>(namings: readonly N[], known = this.keeping()): Promise<{ naming: N; sought: SoughtSubject }[]> {
    const found = [];
    for (const naming of namings) {
      const [edition, spool] = [await known.edition(naming.edition), await known.spool(naming.spool)];
      const method = await known.method(`${naming.method}\n${naming.methodVersion}`);
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
