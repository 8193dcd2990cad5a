import { hash, verify } from '@node-rs/argon2';

/** argon2id with the settings of the OWASP cheat sheet: 19 MiB, 2 passes, 1 lane. */
const SETTINGS = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

let decoy: Promise<string> | undefined;

export const hashPassword = (password: string): Promise<string> => hash(password, SETTINGS);

/** Whether the password fits; for an unknown account (null) it takes as long and says no. */
export async function passwordFits(passwordHash: string | null, password: string): Promise<boolean> {
  const fits = await verify(passwordHash ?? (await (decoy ??= hashPassword('nobody has this password'))), password);
  return fits && passwordHash !== null;
}
