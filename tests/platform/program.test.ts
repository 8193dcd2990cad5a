import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { commitOf } from '../../api/platform/program/commit-of.js';
import { digestOfSources } from '../../api/platform/program/digest-of-sources.js';

const ONE = 'a'.repeat(40);
const OTHER = 'b'.repeat(40);

describe('the commit of a folder', () => {
  let folder: string;
  const write = async (path: string, text: string) => {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  };
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'fairpull-commit-'));
  });
  afterEach(() => rm(folder, { recursive: true }));

  test('is none where nothing tells it', () => {
    expect(commitOf(folder)).toBeNull();
  });

  test('is told by the file that an image bears', async () => {
    await write('COMMIT', `${ONE}\n`);
    await write('.git/HEAD', OTHER);
    expect(commitOf(folder)).toBe(ONE);
  });

  test.each([
    ['its branch', { '.git/HEAD': 'ref: refs/heads/main\n', '.git/refs/heads/main': `${ONE}\n` }],
    [
      'a packed branch',
      { '.git/HEAD': 'ref: refs/heads/main\n', '.git/packed-refs': `# pack-refs\n${OTHER} refs/heads/old-main\n${ONE} refs/heads/main\n` },
    ],
    ['no branch', { '.git/HEAD': `${ONE}\n` }],
    [
      'a second working tree',
      {
        '.git': 'gitdir: main/worktrees/two\n',
        'main/worktrees/two/HEAD': 'ref: refs/heads/two\n',
        'main/worktrees/two/commondir': '../..\n',
        'main/refs/heads/two': `${ONE}\n`,
      },
    ],
  ])('is read from a checkout with %s', async (_, files) => {
    for (const [path, text] of Object.entries(files)) await write(path, text);
    expect(commitOf(folder)).toBe(ONE);
  });

  test('is what git says of this checkout, where there is one', () => {
    const said = (): string | null => {
      try {
        return execFileSync('git', ['rev-parse', 'HEAD'], { encoding: 'utf8' }).trim();
      } catch {
        return null;
      }
    };
    expect(commitOf(process.cwd())).toBe(said());
  });
});

test('a digest of sources changes with a file and its name, and leaves out what it is told to', async () => {
  const all = await digestOfSources(['site/look', '.swcrc']);
  expect(await digestOfSources(['site/look', '.swcrc'])).toBe(all);
  expect(await digestOfSources(['site/look'])).not.toBe(all);
  expect(await digestOfSources(['site/look', '.swcrc'], 'site/look')).toBe(await digestOfSources(['.swcrc']));
});
