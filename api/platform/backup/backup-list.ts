import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';

/** Name of the list in a backup's folder; it is written last, so a folder without it is no backup. */
export const LIST_FILE = 'backup.json';

const sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** What a backup holds, with the digest of each part. */
export const backupListSchema = z.strictObject({
  format: z.literal(1),
  madeAt: z.iso.datetime(),
  program: z.strictObject({ version: z.string(), commit: z.string().nullable() }),
  /** Version of the server, e.g. 18.4. */
  postgres: z.string(),
  /** The history of the schema, oldest first; a restore applies the same migrations before it loads the rows. */
  migrations: z.array(z.strictObject({ name: z.string(), checksum: sha256 })),
  tables: z.array(
    z.strictObject({
      name: z.string(),
      columns: z.array(z.string()),
      rows: z.number().int(),
      /** Of the rows in the text form of COPY, in the order of the key, before they are packed. */
      sha256,
      /** Place in the backup. */
      file: z.string(),
    }),
  ),
  /** Path in the data folder, size and digest of each file. */
  files: z.array(z.strictObject({ path: z.string(), sizeBytes: z.number().int(), sha256 })),
});

export type BackupList = z.infer<typeof backupListSchema>;
export type TableBackup = BackupList['tables'][number];
export type FileBackup = BackupList['files'][number];

/** Where the files of the data folder stand in a backup. */
export const DATA = 'data';

/**
 * Reads the list of a backup.
 * @throws Error when the folder is no finished backup, or of a form that this program does not read
 */
export async function readBackupList(folder: string): Promise<BackupList> {
  const text = await readFile(join(folder, LIST_FILE), 'utf8').catch(() => null);
  if (text === null) {
    throw new Error(`${folder} is no finished backup: it has no ${LIST_FILE}. Name a folder that \`npm run backup\` made.`);
  }
  const parsed = backupListSchema.safeParse(asJson(text));
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new Error(
    `${join(folder, LIST_FILE)} cannot be read: at ${issue?.path.join('.') || 'its beginning'}: ${issue?.message ?? ''}. ` +
      'It is damaged, or of a newer version of the program.',
  );
}

function asJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
