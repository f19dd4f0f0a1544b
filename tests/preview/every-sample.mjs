// Each exported function is one check that every sample's page must pass: it throws when the page is not as it should be. They share
// one page of the sample, because to open one costs seconds; each sets the size that it looks at and leaves the view as it was.
import assert from 'node:assert/strict';
import { stat } from 'node:fs/promises';
import { open, pixels, SIZES } from './browser.mjs';
import { checkOf, wordsOf } from './words.mjs';

export async function size({ preview }) {
  assert.ok((await stat(preview)).size < 3e6, 'the page is 3 MB or more');
}

export async function quiet({ page, faults }) {
  for (const width of [...SIZES].reverse()) {
    await page.setViewportSize({ width, height: 800 });
    await drawn(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(wide <= width, `at ${width} px the page is ${wide} px wide`);
  }

  for (const view of ['side', 'above', 'along', 'walk', 'measure', 'apart', 'corner']) {
    await page.click(`[data-view=${view}]`);
    await drawn(page);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    assert.ok(wide <= SIZES[0], `in view ${view} the page is ${wide} px wide`);
  }

  assert.deepEqual(faults, []);
}

export async function figuresOnLoad({ page, report }) {
  await page.setViewportSize({ width: 360, height: 640 });
  const words = await wordsOf(page);
  for (const text of [words.length(report.nodes.at(-1).x), words.least(checkOf(report, 'guard-height'))]) {
    const box = await page.locator('#key dd').getByText(text, { exact: true }).boundingBox();
    assert.ok(box !== null && box.y >= 0 && box.y + box.height <= 640 && box.x + box.width <= 360, `${text} is not in sight`);
  }
}

/** What nobody may overlook is seen without scrolling, on a desk and on a telephone, and so is the bridge. */
export async function firstScreen({ page }) {
  for (const [width, height] of [[1280, 800], [390, 844]]) {
    await page.setViewportSize({ width, height });
    for (const dark of [true, false]) {
      await page.emulateMedia({ colorScheme: dark ? 'dark' : 'light' });
      const at = `at ${width} by ${height} px, ${dark ? 'dark' : 'light'}`;
      const caution = page.locator('#caution-short');
      assert.equal(await caution.textContent(), 'Geometry, quantities and check values for preliminary work only.');
      const lines = await caution.evaluate((e) => e.getBoundingClientRect().height / parseFloat(getComputedStyle(e).lineHeight));
      assert.ok(lines < 2.1, `the caution takes ${lines} lines ${at}`);
      const verdict = await page.locator('#verdict').evaluate((e) => e.getBoundingClientRect().height / parseFloat(getComputedStyle(e).lineHeight));
      assert.ok(verdict < 1.1, `the verdict takes ${verdict} lines ${at}`);
      assert.ok(await page.locator('#headlines li').count() > 0, 'no headline');
      // One line names them all; where people fall, all of them lie open.
      const labels = (await page.locator('#headlines strong').allTextContents()).map((t) => t.replace(':', '').toLowerCase());
      const named = page.locator('#headlines summary');
      assert.equal(await named.textContent(), `Read first: ${labels.join(', ')}`);
      const danger = await page.locator('#headlines .danger').count() > 0;
      assert.equal(await page.locator('#headlines').evaluate((d) => d.open), danger);
      for (const line of [caution, named, ...(danger ? await page.locator('#headlines li').all() : [])]) {
        const box = await line.boundingBox();
        assert.ok(box !== null && box.y >= 0 && box.y + box.height <= height && box.x + box.width <= width, `"${await line.textContent()}" is not in sight ${at}`);
      }

      const stage = await page.locator('#stage').boundingBox();
      const seen = Math.min(height, stage.y + stage.height) - stage.y;
      assert.ok(seen >= 0.9 * stage.height, `of ${stage.height} px of the picture ${seen} are seen ${at}`);
    }
  }
}

export async function notBlank({ page }) {
  for (const [name, width, height] of [['dark', 640, 600], ['light', 1280, 800]]) {
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ colorScheme: name });
    await drawn(page);
    const seen = await pixels(page);
    assert.ok(seen.opaque > 0.99 && seen.colours > 300, `hardly any colours, ${name}: ${JSON.stringify(seen)}`);
    assert.ok(seen.brown > 0.01 && seen.green > 0.1, `no wood or no meadow, ${name}: ${JSON.stringify(seen)}`);
    await page.check('[name=finish][value="1"]');
    const silver = await pixels(page);
    assert.ok(silver.brown < seen.brown / 3, `silver wood is as brown as before, ${name}: ${silver.brown} of ${seen.brown}`);
    await page.check('[name=finish][value="0"]');
  }
}

export async function sizesOfParts({ page, report }) {
  await page.setViewportSize({ width: 360, height: 800 });
  const { size: words } = await wordsOf(page);
  for (const piece of report.pieces) {
    await page.selectOption('#piece', piece.mark);
    const text = await page.locator('#part-card').innerText();
    const thick = piece.taper ? `${words(piece.taper.thick)} thick at one edge, ${words(piece.taper.thin)} at the other` : `${words(piece.thickness)} thick`;
    const wanted = [piece.mark, piece.role, thick, `${words(piece.blank_length)} long`];
    for (const end of piece.ends) {
      for (const angle of [end.mitre_deg, end.bevel_deg].map((a) => Math.abs(a).toFixed(1))) {
        if (angle !== '0.0') wanted.push(`${angle}°`);
      }
    }

    wanted.forEach((w) => assert.ok(text.includes(w), `${piece.mark}: no "${w}" in "${text}"`));
  }

  await page.click('[data-do=part-none]');
}

/** Facts of the page that a check works out too are the check's. */
export async function factsAreTheChecks({ page, report }) {
  const words = await wordsOf(page);
  const facts = await page.locator('#facts').innerText();
  const steepest = (Math.atan(checkOf(report, 'deck-slope')) * 180 / Math.PI).toFixed(1);
  assert.match(facts, new RegExp(`Steepest part of the deck\\s+${steepest}° from level`));
  assert.match(facts, new RegExp(`Rail height above the deck\\s+${words.least(checkOf(report, 'guard-height'))}`));
}

/** The full scene, as a graphics chip draws it, drawn here in software: within its limits, nothing asked for, and the bridge in it. */
export async function fullScene({ browser, page, preview }) {
  assert.equal(await page.evaluate(() => bridgeForm.app.stage.plain), true, 'software draws the full scene unasked');
  const faults = [];
  const full = await open(browser, preview, { width: 480, height: 600, faults, query: '?scene=full' });
  // All in one go: each picture takes this processor a second or two.
  const { empty, crowded, colours } = await full.evaluate(() => {
    const { stage } = bridgeForm.app;
    const drawnAs = () => {
      stage.renderer.shadowMap.needsUpdate = true;
      stage.draw();
      const { calls, triangles } = stage.renderer.info.render;
      return { plain: stage.plain, calls, triangles, fault: stage.renderer.getContext().getError() };
    };
    const empty = drawnAs();
    const choice = document.getElementById('case');
    choice.value = 'live-full';
    choice.dispatchEvent(new Event('change'));
    const crowded = drawnAs();
    const copy = document.createElement('canvas');
    [copy.width, copy.height] = [160, 120];
    const ink = copy.getContext('2d');
    ink.drawImage(document.getElementById('canvas'), 0, 0, 160, 120);
    const { data } = ink.getImageData(0, 0, 160, 120);
    const colours = new Set();
    for (let i = 0; i < data.length; i += 4) colours.add((data[i] >> 3) * 1024 + (data[i + 1] >> 3) * 32 + (data[i + 2] >> 3));
    return { empty, crowded, colours: colours.size };
  });
  for (const { plain, calls, triangles, fault } of [empty, crowded]) {
    assert.equal(plain, false);
    assert.ok(calls > 5 && calls < 80, `${calls} draw calls`);
    assert.ok(triangles > 100000 && triangles < 600000, `${triangles} triangles`);
    assert.equal(fault, 0, 'a WebGL error');
  }

  assert.ok(crowded.triangles > empty.triangles + 5000, 'nobody stands on the bridge under a load of people');
  assert.ok(colours > 400, `hardly any colours: ${colours}`);
  assert.deepEqual(faults, []);
  await full.close();
}

/** Words stand on no part where the picture is wide enough for both. */
export async function takenApartWords({ page }) {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.click('[data-view=apart]');
  await page.evaluate(() => bridgeForm.app.stage.draw());
  const covered = await page.evaluate(() => [...document.querySelectorAll('#overlay rect')].flatMap((r) => {
    const [x, y, w, h] = ['x', 'y', 'width', 'height'].map((k) => Number(r.getAttribute(k)));
    return [0, 0.25, 0.5, 0.75, 1].flatMap((u) => [0, 0.5, 1].map((v) => bridgeForm.app.partAt(x + u * w, y + v * h))).filter((i) => i !== null)
      .map((i) => bridgeForm.app.shown.parts[i].id);
  }));
  assert.deepEqual(covered, []);
  // Each line ends on a part of the mark that its words tell.
  const astray = await page.evaluate(() => [...document.querySelectorAll('#overlay circle')].flatMap((dot) => {
    const { app } = bridgeForm;
    const part = app.shown.parts[app.partAt(Number(dot.getAttribute('cx')), Number(dot.getAttribute('cy')))];
    const words = dot.nextElementSibling.nextElementSibling.textContent;
    const marks = words.includes(' to ') ? [part?.mark] : words.split(', ');
    return part !== undefined && marks.includes(part.mark) ? [] : [`${words} ends on ${part?.mark}`];
  }));
  assert.deepEqual(astray, []);
  assert.ok(await page.locator('#overlay circle').count() > 3, 'no lines to parts');
  await page.click('[data-view=corner]');
}

export async function loaded({ page, report }) {
  await page.setViewportSize({ width: 360, height: 800 });
  const all = report.cases.filter((c) => c.nodes.length > 0);
  const solved = all.filter((c) => c.id !== 'dead');
  assert.equal(await page.locator('#case').isVisible(), all.length > 0);
  const empty = (await page.locator('#case option').allTextContents()).filter((t) => /^(bridge )?empty$/i.test(t));
  assert.deepEqual(empty, ['Bridge empty']);
  await page.check('[name=times][value=large]');
  assert.doesNotMatch(await page.locator('#load-text').textContent(), /Drawn/);
  const centers = report.pieces.find((p) => p.role === 'base').channels.map((c) => c.center);
  // Height of a base where the more heavily loaded rope passes: the left one when the deck rises from left to right.
  const heights = (c) => page.evaluate(([left, right, slope]) => {
    const { shown } = bridgeForm.app;
    return shown.view.frames.map((f) => {
      const m = shown.matrixOf(shown.parts.findIndex((p) => p.id === `${f.name}/base`)).elements;
      return m[13] + m[1] * (slope >= 0 ? left : right);
    });
  }, [...centers, c.cross_slope_deg]);
  // At the frame next to the middle: a base goes with its node, which on a slope moves along as well as down.
  const mid = Math.round((report.nodes.length - 1) / 2);
  // One case of each kind: all of it, half of it, to one side, half built, warm.
  const kinds = ['live-full', 'live-half-a', 'point-edge-mid', 'erect-half', 'hot'];
  for (const c of solved.filter((c) => kinds.includes(c.id))) {
    await page.selectOption('#case', '');
    const still = await heights(c);
    await page.selectOption('#case', c.id);
    await page.check('[name=times][value=true]');
    const tilt = Math.abs(c.cross_slope_deg).toFixed(1);
    assert.ok((await page.locator('#load-text').textContent()).includes(tilt === '0.0' ? 'It does not tilt' : `It tilts to one side by up to ${tilt}°.`), `${c.id}: no ${tilt}°`);
    const down = still[mid] - (await heights(c))[mid];
    const told = report.nodes[mid].y - c.nodes[mid][1];
    assert.ok(Math.abs(down - told) < 0.002, `${c.id}: frame ${mid} moves ${down} m down, the report says ${told}`);
    await page.check('[name=times][value=large]');
    const times = Number(/Drawn (\d+) times/.exec(await page.locator('#load-text').textContent())?.[1] ?? 1);
    const large = still[mid] - (await heights(c))[mid];
    assert.ok(Math.abs(large - times * down) < 0.002 * times, `${c.id}: enlarged ${times} times, frame ${mid} moves ${large} m`);
  }
}

/** As readers of mail attachments show it, which run no script: key figures, a picture, and no button that does nothing. */
export async function withoutScript({ browser, preview, report }) {
  const context = await browser.newContext({ javaScriptEnabled: false, viewport: { width: 360, height: 740 }, colorScheme: 'dark' });
  const page = await context.newPage();
  await page.goto(`file://${preview}`);
  const words = await wordsOf(page);
  const text = await page.locator('body').innerText();
  for (const wanted of [words.length(report.nodes.at(-1).x), words.least(checkOf(report, 'guard-height')), 'Where scripts are allowed', report.caution]) {
    assert.ok(text.includes(wanted), `no "${wanted}"`);
  }

  const { x, width, height } = await page.locator('#unscripted svg').boundingBox();
  assert.ok(x >= 0 && x + width <= 360 && height > 150, `picture ${width} by ${height} at ${x}`);
  assert.ok(await page.locator('#unscripted svg path').count() > 1000, 'nothing is drawn');
  assert.equal(await page.locator('button:visible, select:visible, input:visible').count(), 0);
  await context.close();
}

function drawn(page) {
  return page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}
