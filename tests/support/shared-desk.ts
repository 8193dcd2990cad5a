import { existsSync } from 'node:fs';
import { mkdir, symlink } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { buildDesk, currentDesk } from '../../api/build-desk.js';

/** The desk for a house of a test: built once by each of the run's workers, whatever the number of houses; a house that has it keeps it. */
export async function shareDesk(dataFolder: string): Promise<void> {
  const shared = join(process.env['TEST_RUN_FOLDER'] ?? dataFolder, `desk-${process.env['JEST_WORKER_ID'] ?? '1'}`);
  const current = currentDesk(dataFolder);
  if (existsSync(current)) return;
  await buildDesk(shared, process.env['PATH'] ?? '');
  await mkdir(dirname(current), { recursive: true });
  await symlink(currentDesk(shared), current, 'junction');
}
