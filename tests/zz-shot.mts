import { chromium } from 'playwright-core';
const b = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const [, , path, w, scheme = 'light', full = ''] = process.argv;
const pg = await b.newPage({ viewport: { width: +w, height: +w > 1000 ? 900 : 740 }, colorScheme: scheme as any });
await pg.goto('http://127.0.0.1:3918' + path);
await pg.waitForTimeout(400);
await pg.screenshot({ path: '/tmp/readers-shot.png', fullPage: full === 'full' });
await b.close();
