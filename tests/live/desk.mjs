// What a builder does at the desk.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';
import { openLive, figure, put, rest, set, textOf } from './page.mjs';

export async function it_opens_from_disk_with_no_network_and_asks_for_nothing({ page, requests, faults, url }) {
  assert.deepEqual(requests, [url]);
  assert.deepEqual(faults, []);
  assert.equal(await figure(page, 'Span'), '30 ft 0 in');
  const refused = await page.evaluate(() => fetch('https://page.invalid/').then(() => 'fetched', () => 'refused'));
  assert.equal(refused, 'refused');
  faults.length = 0;
}

export async function a_control_and_the_text_agree_and_comments_stay({ page }) {
  const before = await textOf(page);
  await set(page, 'site.span', '36 ft');
  const after = await textOf(page);
  assert.equal(await figure(page, 'Span'), '36 ft 0 in');
  assert.deepEqual(
    before.split('\n').filter((l) => !l.includes('span:')), after.split('\n').filter((l) => !l.includes('span:')));
  await page.locator('#tab-file').click();
  assert.equal(await page.locator('#text').inputValue(), after);
  await page.locator('#text').fill(after.replace('span: 36 ft', 'span: 33 ft'));
  await page.waitForFunction(() => window.live.desk.text.includes('span: 33 ft'));
  await rest(page);
  await page.locator('#tab-decisions').click();
  assert.equal(await page.locator('#key-site-span').inputValue(), '33 ft');
  assert.equal(await figure(page, 'Span'), '33 ft 0 in');
}

export async function edits_that_nobody_waits_for_are_all_kept({ page }) {
  await page.evaluate(async () => {
    const { desk } = window.live;
    await Promise.all([desk.set('site.span', '34 ft', null), desk.set('ropes.sag', '7 %', null), desk.set('use', 'public', null)]);
  });
  await rest(page);
  const text = await textOf(page);
  for (const wanted of ['span: 34 ft', 'sag: 7 %', 'use: public']) assert.ok(text.includes(wanted), text);
  assert.equal(await figure(page, 'Span'), '34 ft 0 in');
}

/** Served by a program that only hands out one file: the link that the page makes opens the same bridge elsewhere. */
export async function a_link_carries_the_file_over_http({ browser, url }) {
  const bytes = await readFile(fileURLToPath(url));
  const server = createServer((_, response) => { response.setHeader('content-type', 'text/html'); response.end(bytes); });
  await new Promise((done) => { server.listen(0, '127.0.0.1', done); });
  const served = `http://127.0.0.1:${server.address().port}/live.html`;
  try {
    const first = await openLive(browser, served, { offline: false, permissions: ['clipboard-read', 'clipboard-write'] });
    await set(first.page, 'site.span', '27 ft 3 in');
    const text = await textOf(first.page);
    await first.page.evaluate(() => document.getElementById('share').click());
    await first.page.waitForFunction(() => document.getElementById('notice').textContent.includes('clipboard') || location.hash !== '');
    const link = await first.page.evaluate(async () => (location.hash === '' ? navigator.clipboard.readText() : location.href));
    assert.ok(link.startsWith(`${served}#file=`) && link.length < served.length + 8200, link.slice(0, 100));
    await first.context.close();
    const second = await openLive(browser, link, { offline: false });
    assert.equal(await textOf(second.page), text);
    assert.equal(await figure(second.page, 'Span'), '27 ft 3 in');
    assert.deepEqual(second.requests, [served]);
    await second.context.close();
    // To open a page takes seconds: of links that lead nowhere the first is always tried, the others where minutes are.
    for (const broken of ['#file=AAAA', '#file=!!', `#file=${'A'.repeat(9000)}`].slice(0, process.env.MINUTES ? 3 : 1)) {
      const third = await openLive(browser, served + broken, { offline: false });
      assert.equal(await figure(third.page, 'Span'), '30 ft 0 in');
      assert.deepEqual(third.faults, []);
      await third.context.close();
    }
  } finally {
    server.close();
  }
}

export async function fifty_undos_are_exact({ page }) {
  const texts = [await textOf(page)];
  // Nobody waits for an answer: the stale ones are dropped.
  const made = await page.evaluate(async () => {
    const { desk, engine } = window.live;
    const all = [];
    for (let i = 1; i <= 50; i++) {
      const { text } = await engine.edit(desk.text, 'site.span', `${30 + i / 10} ft`);
      void desk.put(text, 'test');
      all.push(text);
    }
    return all;
  });
  texts.push(...made);
  await rest(page);
  assert.equal(await figure(page, 'Span'), '35 ft 0 in');
  for (let i = 49; i >= 0; i--) {
    await page.evaluate(() => document.getElementById('undo').click());
    assert.equal(await textOf(page), texts[i]);
  }

  await page.evaluate(() => document.getElementById('redo').click());
  await rest(page);
  assert.equal(await textOf(page), texts[1]);
  assert.equal(await figure(page, 'Span'), '30 ft 1-3/16 in');
}

export async function a_fault_is_told_at_its_line_and_the_last_good_bridge_stays({ page, program }) {
  const good = await textOf(page);
  const parts = await page.evaluate(() => window.bridgeForm.app.shown.parts.length);
  const bad = good.replace(/span: .*/, 'span: 30 elephants');
  await put(page, bad);
  const said = program.make(bad).error.split('\n')[0];
  const [, line, message] = /^project\.yaml:(\d+):\d+: error: (.*) \[[a-z-]+\]$/.exec(said);
  const told = await page.locator('#file-faults').textContent();
  assert.ok(told.includes(`Line ${line}: ${message}`), `${told}\n${said}`);
  assert.equal(await page.evaluate(() => window.bridgeForm.app.shown.parts.length), parts);
  await put(page, good);
  assert.equal(await page.locator('#file-faults').isHidden(), true);
}

export async function hostile_files_do_nothing({ page, faults }) {
  const good = await textOf(page);
  const hostile = [
    'a: &a [x,x,x,x]\nb: &b [*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b]\n', '\u0000\u0001\u0002', '<script>window.hurt = 1</script>',
    good.replace(/name: .*/, 'name: "<img src=x onerror=window.hurt=1>"'), 'x: '.repeat(200000), '',
  ];
  for (const text of hostile) {
    await page.locator('#open').setInputFiles({ name: 'hostile.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) });
    await page.waitForTimeout(150);
    await rest(page);
  }

  assert.equal(await page.evaluate(() => window.hurt), undefined);
  await put(page, good);
  assert.deepEqual(faults, []);
}

export async function a_check_that_fails_has_ways_that_are_tried_and_kept({ page }) {
  const good = await textOf(page);
  await put(page, `name: Thin\nsite: { span: 30 ft }\nfreeze: 1\n`.replace('freeze: 1\n', 'frames:\n  post:\n    section: 2x4 # thin\n'));
  assert.ok(await page.locator('#answers .status.fails').count() > 0);
  await page.waitForSelector('.way', { timeout: 60000 });
  const mine = await textOf(page);
  await page.locator('.way button').first().click();
  await rest(page);
  assert.equal(await page.locator('#answers .status.fails').count(), 0);
  assert.ok((await textOf(page)).includes('# thin') || !(await textOf(page)).includes('2x4'));
  await page.locator('#trial-back').click();
  await rest(page);
  assert.equal(await textOf(page), mine);
  await page.waitForSelector('.way', { timeout: 60000 });
  await page.locator('.way button').first().click();
  await rest(page);
  await page.locator('#trial-keep').click();
  assert.equal(await page.locator('#trial').isHidden(), true);
  await put(page, good);
}

export async function three_questions_give_a_bridge_that_passes({ page, program }) {
  await page.locator('#new').click();
  await page.locator('#ask-span').fill('24 ft');
  await page.locator('#ask-rise').fill('12 in');
  await page.locator('#ask-go').click();
  await page.waitForFunction(() => !document.getElementById('ask').open, null, { timeout: 90000 });
  await rest(page);
  assert.equal(await figure(page, 'Span'), '24 ft 0 in');
  assert.equal(await page.locator('#answers .status.fails').count(), 0);
  assert.equal(program.make(await textOf(page), ['report']).code, 0);
}

export async function two_designs_stand_side_by_side({ page }) {
  await set(page, 'site.span', '24 ft');
  await page.locator('#keep-a').click();
  const a = await textOf(page);
  await set(page, 'site.span', '26 ft');
  await page.locator('#keep-b').click();
  const rows = await page.locator('#compared tr').allTextContents();
  assert.ok(rows.some((r) => r.includes('24 ft 0 in') && r.includes('26 ft 0 in')), rows.join('\n'));
  await page.locator('#show-a').click();
  await rest(page);
  assert.equal(await textOf(page), a);
}

export async function what_changed_is_told({ page }) {
  await page.locator('#accept').click();
  await set(page, 'ropes.sag', '7 %');
  const was = await page.locator('#figures .was').allTextContents();
  assert.ok(was.some((w) => /^was .*[+−]\d+ %$/.test(w)), was.join('; '));
  await page.locator('#undo').click();
  await rest(page);
}

export async function an_engine_that_throws_begins_anew_with_the_text_kept({ page }) {
  const before = await textOf(page);
  await page.evaluate(() => { window.live.desk.guarded(() => window.live.engine.file('no such file')); });
  await page.waitForFunction(() => document.getElementById('notice').textContent.includes('begun anew'), null, { timeout: 60000 });
  await rest(page);
  assert.equal(await textOf(page), before);
  await set(page, 'site.span', '25 ft');
  assert.equal(await figure(page, 'Span'), '25 ft 0 in');
}

export async function a_handle_is_dragged_on_the_bridge({ page }) {
  const before = await textOf(page);
  const handle = page.getByRole('slider', { name: 'Sag', exact: true });
  const box = await handle.boundingBox();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2 + 25, { steps: 5 });
  await page.waitForTimeout(600);
  await page.mouse.up();
  await rest(page);
  const after = await textOf(page);
  assert.notEqual(after, before);
  // One drag is one edit, undone at once and exactly.
  await page.locator('#undo').click();
  await rest(page);
  assert.equal(await textOf(page), before);
  await page.locator('#redo').click();
  await rest(page);
  assert.equal(await textOf(page), after);
  await handle.focus();
  const dragged = await handle.getAttribute('aria-valuetext');
  await page.keyboard.press('ArrowDown');
  await page.waitForTimeout(300);
  await rest(page);
  assert.notEqual(await handle.getAttribute('aria-valuetext'), dragged);
}

export async function what_the_browser_keeps_is_there_again_and_can_be_forgotten({ browser, url }) {
  const first = await openLive(browser, url);
  await set(first.page, 'site.span', '31 ft');
  await first.page.reload();
  await first.page.waitForFunction(() => document.body.dataset.live === 'ready', null, { timeout: 60000 });
  await rest(first.page);
  assert.equal(await figure(first.page, 'Span'), '31 ft 0 in');
  await first.page.evaluate(() => document.getElementById('forget').click());
  assert.equal(await first.page.evaluate(() => Object.keys(localStorage).length), 0);
  await first.context.close();
}
