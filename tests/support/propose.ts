import type { Caller } from './test-application.js';

/** A proposal that another person carries out. @returns its id */
export async function proposeWithdrawal(by: Caller, submission: string, reason = 'The rig was bent.'): Promise<string> {
  return (await by.call('post', '/v1/proposals').send({ kind: 'withdrawal', submission, reason }).expect(201)).body.id as string;
}

export async function proposeReidentification(by: Caller, spool: string, variant: string, reason: string): Promise<string> {
  return (await by.call('post', '/v1/proposals').send({ kind: 'reidentification', spool, variant, reason }).expect(201)).body.id as string;
}
