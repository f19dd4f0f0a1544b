// The live page, opened and begun.
export async function openLive(browser, url, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1400, height: 900 }, deviceScaleFactor: 0.5, acceptDownloads: true, offline: true, ...options });
  const page = await context.newPage();
  const faults = [];
  const requests = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => { if (message.type() === 'error') faults.push(message.text()); });
  page.on('request', (request) => { if (!/^(blob|data):/.test(request.url())) requests.push(request.url()); });
  const start = performance.now();
  await page.goto(url);
  await page.waitForFunction(() => document.body.dataset.live === 'ready', null, { timeout: 60000 });
  await rest(page);
  return { context, page, faults, requests, ready: performance.now() - start };
}

/** Every check begins with the file that the page opens with. */
export async function anew({ page, faults }) {
  await page.evaluate(() => {
    document.getElementById('ask').close();
    document.getElementById('tab-decisions').click();
    document.activeElement?.blur();
  });
  await put(page, await page.evaluate(() => document.getElementById('first-file').textContent));
  faults.length = 0;
}

/** Waits until the present text is worked out. */
export async function rest(page) {
  await page.waitForFunction(() => document.getElementById('busy').textContent === '', null, { timeout: 60000 });
}

/** Puts a text on the desk and waits for its answer. */
export async function put(page, text) {
  await page.evaluate((t) => window.live.desk.put(t, 'test'), text);
  await rest(page);
}

export const textOf = (page) => page.evaluate(() => window.live.desk.text);

export const figure = (page, name) => page.evaluate(
  (n) => [...document.querySelectorAll('#figures > div')].find((d) => d.querySelector('dt').textContent === n)?.querySelector('dd').textContent ?? null, name);

/** Sets a control as a person does. */
export async function set(page, path, value) {
  const field = page.locator(`#key-${path.replaceAll('.', '-')}`);
  await field.evaluate((f) => { for (let d = f.closest('details'); d; d = d.parentElement.closest('details')) d.open = true; });
  if (await field.evaluate((f) => f.tagName === 'SELECT')) {
    await field.selectOption(value);
  } else {
    await field.fill(value);
    await field.press('Enter');
  }

  await page.waitForTimeout(50);
  await rest(page);
}
