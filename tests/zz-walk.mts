import { chromium } from 'playwright-core';
import { readdirSync } from 'node:fs';
const b = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const V = '/variants/' + readdirSync('/tmp/readers-site/variants')[3] + '/';
const P = [
  '/',
  '/find/',
  '/weigh/',
  '/editions/',
  '/editions/2026/',
  '/editions/2026/braids/',
  '/compare/',
  '/editions/2026/labels/',
  '/editions/2026/rigs/',
  '/records/',
  '/methods/',
  '/data/',
  '/checks/',
  '/problems/',
  '/search/',
  '/lines/',
  V,
];
for (const m of readdirSync('/tmp/readers-site/methods')) if (!m.includes('.')) P.push(`/methods/${m}/1/`);
for (const d of readdirSync('/tmp/readers-site/editions/2026'))
  if (!/\./.test(d) && !['labels', 'rigs', 'variants'].includes(d)) {
    P.push(`/editions/2026/${d}/`);
    for (const c of readdirSync('/tmp/readers-site/editions/2026/' + d)) if (!/\./.test(c)) P.push(`/editions/2026/${d}/${c}/`);
  }
for (const m of readdirSync('/tmp/readers-site/read')) if (!m.includes('.')) P.push(`/read/${m}/`);
const pg = await b.newPage();
for (const p of [...new Set(P)]) {
  const out = [];
  for (const w of [1280, 360, 320]) {
    await pg.setViewportSize({ width: w, height: w > 1000 ? 900 : 740 });
    const r = await pg.goto('http://127.0.0.1:3918' + p);
    if (r!.status() !== 200) {
      out.push('404');
      break;
    }
    const [h, sw, hd, wide] = (await pg.evaluate(
      `[document.documentElement.scrollHeight, document.documentElement.scrollWidth, document.querySelector('body>header').offsetHeight, [...document.querySelectorAll('main *')].filter(e=>e.checkVisibility()&&e.getBoundingClientRect().right>innerWidth+1&&!e.closest('svg,.only-heard')).slice(0,2).map(e=>e.localName+'.'+e.className+' '+Math.round(e.getBoundingClientRect().right)).join('|')]`,
    )) as any;
    out.push(`${w}: ${(h / (w > 1000 ? 900 : 740)).toFixed(1)} head ${hd}${sw > w ? ' SCROLL ' + sw : ''}${wide ? ' WIDE ' + wide : ''}`);
  }
  console.log(p, out.join(' ; '));
}
await b.close();
