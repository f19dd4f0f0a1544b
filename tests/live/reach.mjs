// Who can reach what: small screens, keyboard, screen readers, dark rooms.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { openLive, put, rest, textOf } from './page.mjs';

const axe = createRequire(new URL('../preview/', import.meta.url)).resolve('axe-core/axe.min.js');

async function clean(page, state) {
  await page.addScriptTag({ path: axe }).catch(async () => { await page.evaluate(await (await import('node:fs/promises')).readFile(axe, 'utf8')); });
  const found = await page.evaluate(() => window.axe.run(document, { resultTypes: ['violations'] }));
  assert.deepEqual(found.violations.map((v) => `${state}: ${v.id} ${v.nodes.map((n) => n.target).join(' ')}`), []);
}

export async function axe_finds_nothing_in_any_state({ page }) {
  const good = await textOf(page);
  await clean(page, 'start');
  await page.locator('#new').click();
  await clean(page, 'third question');
  await page.locator('#ask-close').click();
  await page.locator('#tab-file').click();
  await put(page, 'name: x\nsite: { span: 30 elephants }\n');
  await clean(page, 'text with a fault');
  await page.locator('#tab-decisions').click();
  await put(page, 'name: Thin\nsite: { span: 30 ft }\nframes:\n  post:\n    section: 2x4\n');
  await page.locator('#answers .check summary').first().click();
  await clean(page, 'failing check open');
  await page.waitForSelector('.way', { timeout: 60000 });
  await page.locator('.way button').first().click();
  await rest(page);
  await clean(page, 'proposal shown');
  await page.locator('#keep-a').click();
  await page.locator('#keep-b').click();
  await clean(page, 'variants');
  await page.locator('#files details[data-kind="tables"] summary').click();
  await page.waitForSelector('#files li', { timeout: 60000 });
  await clean(page, 'downloads');
  await page.evaluate(() => { window.live.desk.guarded(() => window.live.engine.file('no such file')); });
  await page.waitForFunction(() => document.getElementById('notice').textContent.includes('begun anew'), null, { timeout: 60000 });
  await rest(page);
  await clean(page, 'engine restarted');
  await put(page, good);
}

export async function a_telephone_shows_all_of_it_dark_and_by_touch({ browser, url }) {
  const small = await openLive(browser, url, { viewport: { width: 360, height: 740 }, hasTouch: true, colorScheme: 'dark', reducedMotion: 'reduce' });
  const { page } = small;
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(wide <= 360, `${wide} pixels wide`);
  await clean(page, '360 px, dark');
  await page.locator('#tab-file').tap();
  assert.equal(await page.locator('#pane-file').isVisible(), true);
  await page.getByRole('slider', { name: 'Sag', exact: true }).focus();
  const before = await textOf(page);
  await page.keyboard.press('ArrowUp');
  await page.waitForTimeout(300);
  await rest(page);
  assert.notEqual(await textOf(page), before);
  assert.deepEqual(small.faults, []);
  await small.context.close();
}

export async function every_control_is_reached_by_keyboard({ page }) {
  await page.evaluate(() => { document.querySelectorAll('#pane-decisions details').forEach((d) => { d.open = true; }); document.activeElement?.blur(); });
  const wanted = await page.evaluate(() => [...document.querySelectorAll('button, select, input, textarea, summary')].filter(
    (e) => e.checkVisibility({ visibilityProperty: true }) && !e.disabled && e.tabIndex >= 0 && e.type !== 'radio').length);
  const seen = new Set();
  await page.locator('#new').focus();
  for (let i = 0; i < wanted * 2 + 40; i++) {
    seen.add(await page.evaluate(() => { const e = document.activeElement; e.dataset.seen ??= String(Math.random()); return e.dataset.seen; }));
    await page.keyboard.press('Tab');
  }

  const missed = await page.evaluate(() => [...document.querySelectorAll('button, select, input, textarea, summary')].filter(
    (e) => e.checkVisibility({ visibilityProperty: true }) && !e.disabled && e.tabIndex >= 0 && e.type !== 'radio' && e.dataset.seen === undefined).map((e) => e.id || e.textContent));
  assert.deepEqual(missed, []);
}
