import type { ScreenProps } from '../frame/open-screen.js';
import { Remarks } from '../statements/remarks.js';
import { WhoWeAre } from '../statements/who-we-are.js';

/** What the house says in words: who it is, and what stands beside figures. */
export function Statements({ account }: ScreenProps) {
  return (
    <>
      <h1>Statements</h1>
      <h2>Who we are</h2>
      <WhoWeAre />
      {account.roles.includes('editor') && <Remarks />}
    </>
  );
}
