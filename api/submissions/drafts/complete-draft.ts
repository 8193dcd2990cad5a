import { Injectable } from '@nestjs/common';
import type { BegunDraft, DraftContent } from '../../contract/endpoints/drafts.js';
import { EditionsReadModel } from '../../editions/editions.read-model.js';
import { Clock } from '../../platform/clock/clock.js';
import type { InputFault } from '../../platform/errors/problem.js';
import { notValid } from '../../platform/http/validation.js';

/** Says for a draft what its beginner left to the house: edition, version and day. */
@Injectable()
export class CompleteDraft {
  constructor(
    private readonly editions: EditionsReadModel,
    private readonly clock: Clock,
  ) {}

  async run(begun: BegunDraft): Promise<DraftContent> {
    const benchDay = begun.benchDay ?? this.clock.now().toISOString().slice(0, 10);
    if (begun.edition !== undefined && begun.methodVersion !== undefined)
      return { ...begun, edition: begun.edition, methodVersion: begun.methodVersion, benchDay };
    const open = (await this.editions.editions()).filter(({ state, slug }) => state === 'open' && (begun.edition ?? slug) === slug);
    const [edition] = open;
    if (!edition || open.length > 1)
      throw notValid([
        whichEdition(
          open.map(({ slug }) => slug),
          begun.edition,
        ),
      ]);
    const methodVersion = begun.methodVersion ?? edition.methods.find(({ slug }) => slug === begun.method)?.number;
    if (methodVersion === undefined) throw notValid([notPinned(edition.slug, begun.method, edition.methods)]);
    return { ...begun, edition: edition.slug, methodVersion, benchDay };
  }
}

function whichEdition(open: readonly string[], named: string | undefined): InputFault {
  const why =
    named !== undefined
      ? `The edition "${named}" is not open`
      : open.length === 0
        ? 'No edition is open'
        : `Several editions are open: ${open.join(', ')}`;
  const remedy = named === undefined && open.length > 1 ? 'name one' : 'name methodVersion too, or ask an editor which edition is open';
  return { pointer: '/content/edition', code: 'which_edition', detail: `${why}; ${remedy}.` };
}

const notPinned = (edition: string, method: string, pinned: readonly { readonly slug: string }[]): InputFault => ({
  pointer: '/content/method',
  code: 'not_pinned',
  detail: `Edition ${edition} is not tested by "${method}"; expected one of: ${pinned.map(({ slug }) => slug).join(', ')}.`,
});
