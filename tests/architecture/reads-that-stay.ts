/** Tables of other features that are read past their read models, each with its reason; the test holds the list exactly. */
export const READS_THAT_STAY: readonly { readonly file: string; readonly tables: readonly string[]; readonly why: string }[] = [
  {
    file: 'api/catalogue/spools/spools.read-model.ts',
    tables: ['assignment', 'submission'],
    why: 'What a tester sees of the shelf is cut in the statement that reads it: no row of another spool leaves the database.',
  },
  {
    file: 'api/catalogue/spools/spools.store.ts',
    tables: ['edition'],
    why: 'Editions lean on the catalogue, which asks in its own transaction whether a sealed key names a spool.',
  },
  {
    file: 'api/catalogue/what-rests.read-model.ts',
    tables: ['edition', 'submission'],
    why: 'Editions and submissions lean on the catalogue, which asks in its own transaction what rests on a row before it changes.',
  },
  {
    file: 'api/control-pulls/control-pulls.store.ts',
    tables: ['finding', 'method_version', 'submission', 'submission_instrument', 'submission_revision'],
    why: 'Submissions lean on control pulls; a pull that puts a rig out finds and locks in one statement what it casts doubt on.',
  },
  {
    file: 'api/decisions/decisions.read-model.ts',
    tables: ['submission'],
    why: 'Submissions lean on decisions; a page of the questions to one tester is cut in one statement.',
  },
  {
    file: 'api/instruments/instruments.read-model.ts',
    tables: ['submission', 'submission_instrument', 'submission_revision'],
    why: 'Submissions lean on instruments, which ask in their own transaction what rests on a certificate before it changes.',
  },
  {
    file: 'api/interests/interests.read-model.ts',
    tables: ['line', 'spool', 'submission', 'variant'],
    why: 'Before every decision it is asked for a tie to the maker of what was tested; from row to row that took six statements.',
  },
  {
    file: 'api/methods/methods.store.ts',
    tables: ['submission'],
    why: 'Submissions lean on methods, which ask in their own transaction for the last bench day before a version ends.',
  },
  {
    file: 'api/audit/key-readings.store.ts',
    tables: ['spool', 'submission'],
    why: 'That somebody reads a key is written in one statement before the key is told, so that nothing can come between the two.',
  },
  {
    file: 'api/proposals/proposals.read-model.ts',
    tables: ['spool_reidentification', 'withdrawal'],
    why: 'A proposal is carried out when a withdrawal or a re-identification names it; a page of those that are not is cut in one statement.',
  },
  {
    file: 'api/releases/published-releases.read-model.ts',
    tables: ['edition'],
    why: 'What is published is listed in one statement on the connection that listens for it, once a second.',
  },
  {
    file: 'api/submissions/views/beside-submissions.read-model.ts',
    tables: ['account', 'review'],
    why: 'Who decided what of a revision is told with every submission; from row to row that took three statements.',
  },
  {
    file: 'api/submissions/views/submission-names.read-model.ts',
    tables: ['account', 'edition', 'method', 'method_version', 'spool'],
    why: 'What a submission is about is told with every submission and list of them; a statement for each kind of name took five.',
  },
  {
    file: 'api/submissions/views/submission-views.read-model.ts',
    tables: ['finding', 'review'],
    why: 'Whether an accepted submission is in doubt depends on both; a page of those that are is cut in one statement.',
  },
];
