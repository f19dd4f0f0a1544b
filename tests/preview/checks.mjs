// Each exported function is one check: it throws when the page is not as it should be.
import assert from 'node:assert/strict';
import { readFile, stat } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { launch, open, pixels } from './browser.mjs';

const axe = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const SIZES = [360, 768, 1440];

/** Two places closer than this are one, metres: the page's matrices hold single precision. */
const SAME = 1e-5;

/** Sixteenths of an inch as a carpenter writes them, worked out anew here. */
const inches = (metres) => inSixteenths(Math.round(metres / 0.0254 * 16));

/** What a guard or a width has at the least, rounded down. */
const least = (metres) => inSixteenths(Math.floor((metres / 0.0254 * 16) + 1e-6));

function inSixteenths(sixteenths) {
  const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
  const divisor = [8, 4, 2, 1].find((d) => rest % d === 0);
  return rest === 0 ? `${whole} in` : `${whole > 0 ? `${whole}-` : ''}${rest / divisor}/${16 / divisor} in`;
}

function feet(metres) {
  const whole = Math.floor(Math.round(metres / 0.0254 * 16) / 192);
  return `${whole} ft ${inches(metres - whole * 0.3048)}`;
}

const checkOf = (report, id) => report.checks.find((c) => c.id === id).demand;

/** Occurrence id → mark, from the report. */
const marks = (report) => new Map(report.pieces.flatMap((p) => p.occurrences.map((o) => [o, p.mark])));

export async function size({ preview }) {
  assert.ok((await stat(preview)).size < 3e6, 'the page is 3 MB or more');
}

export async function quiet({ browser, preview }) {
  for (const width of SIZES) {
    const faults = [];
    const page = await open(browser, preview, { width, faults });
    for (const view of ['side', 'above', 'along', 'walk', 'measure', 'apart', 'corner']) {
      await page.click(`[data-view=${view}]`);
    }

    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    await page.close();
    assert.deepEqual(faults, []);
    assert.ok(wide <= width, `at ${width} px the page is ${wide} px wide`);
  }
}

export async function speed({ browser, preview }) {
  await fast(browser, preview, 3000);
}

export async function speedLong({ browser, long }) {
  await fast(browser, long, 6000);
}

/** From opening the page to the answer of a pick; the best of six, because other programs share the machine. */
async function fast(browser, file, limit) {
  let best = Infinity;
  for (let k = 0; k < 6 && best > limit; k++) {
    const start = performance.now();
    const page = await open(browser, file, { width: 1280, still: false });
    await page.evaluate(() => bridgeForm.app.stage.draw());
    const at = await page.evaluate(() => {
      for (const { id } of bridgeForm.app.shown.parts) {
        const place = bridgeForm.app.placeOf(id);
        if (place !== null) return place;
      }
    });
    const box = await page.locator('#stage').boundingBox();
    await page.mouse.click(box.x + at.x, box.y + at.y);
    await page.waitForSelector('#part-mark');
    best = Math.min(best, performance.now() - start);
    await page.close();
  }

  assert.ok(best <= limit, `first picture and a pick took ${Math.round(best)} ms`);
}

export async function figuresOnLoad({ browser, preview, report }) {
  const page = await open(browser, preview, { width: 360, height: 640 });
  for (const text of [feet(report.nodes.at(-1).x), least(checkOf(report, 'guard-height'))]) {
    const box = await page.locator('#key dd', { hasText: text }).boundingBox();
    assert.ok(box !== null && box.y >= 0 && box.y + box.height <= 640 && box.x + box.width <= 360, `${text} is not in sight`);
  }

  await page.close();
}

export async function notBlank({ browser, preview }) {
  for (const dark of [false, true]) {
    const page = await open(browser, preview, { width: 1280, dark });
    const seen = await pixels(page);
    assert.ok(seen.opaque > 0.99 && seen.colours > 300, `hardly any colours: ${JSON.stringify(seen)}`);
    assert.ok(seen.brown > 0.01 && seen.green > 0.1, `no wood or no meadow: ${JSON.stringify(seen)}`);
    await page.check('[name=finish][value="1"]');
    const silver = await pixels(page);
    assert.ok(silver.brown < seen.brown / 3, `silver wood is as brown as before: ${silver.brown} of ${seen.brown}`);
    await page.close();
  }
}

export async function picking({ browser, preview, report }) {
  const page = await open(browser, preview, { width: 1280 });
  const box = await page.locator('#stage').boundingBox();
  const known = marks(report);
  let tried = 0;
  for (const view of ['corner', 'side', 'apart']) {
    await page.click(`[data-view=${view}]`);
    for (const end of ['/post-right', '/base', '/brace-right', '/cap-right', '/board-2', '/rail-right-3']) {
      for (const id of [...known.keys()].filter((o) => o.endsWith(end)).slice(4, 8)) {
        const at = await page.evaluate((i) => bridgeForm.app.placeOf(i), id);
        if (at === null) continue;
        const before = (await pixels(page)).blue;
        await page.mouse.click(box.x + at.x, box.y + at.y);
        const told = await page.locator('#part-mark').evaluate((e) => [e.dataset.id, e.dataset.mark, e.textContent]);
        assert.deepEqual(told.slice(0, 2), [id, known.get(id)]);
        assert.ok(told[2].includes(known.get(id)));
        assert.ok((await pixels(page)).blue > before, `${id} does not light up`);
        await page.keyboard.press('Escape');
        await page.evaluate(() => bridgeForm.app.choose(null));
        tried++;
        break;
      }
    }
  }

  await page.close();
  assert.ok(tried >= 12, `only ${tried} parts could be tried`);
}

export async function sizesOfParts({ browser, preview, report }) {
  const page = await open(browser, preview, { width: 360 });
  for (const piece of report.pieces) {
    await page.selectOption('#piece', piece.mark);
    const text = await page.locator('#part-card').innerText();
    const thick = piece.taper ? `${inches(piece.taper.thick)} thick at one edge, ${inches(piece.taper.thin)} at the other` : `${inches(piece.thickness)} thick`;
    const wanted = [piece.mark, piece.role, thick, `${inches(piece.blank_length)} long`];
    for (const end of piece.ends) {
      for (const angle of [end.mitre_deg, end.bevel_deg].map((a) => Math.abs(a).toFixed(1))) {
        if (angle !== '0.0') wanted.push(`${angle}°`);
      }
    }

    wanted.forEach((w) => assert.ok(text.includes(w), `${piece.mark}: no "${w}" in "${text}"`));
  }

  await page.close();
}

export async function keyboard({ browser, preview }) {
  const page = await open(browser, preview, { width: 1280 });
  const eye = () => page.evaluate(() => bridgeForm.app.stage.eye.position.toArray());
  await page.keyboard.press('Tab');
  assert.equal(await page.evaluate(() => document.activeElement.id), 'stage');
  for (const key of ['ArrowLeft', 'ArrowUp', 'Shift+ArrowRight', '+', '-', 'Home']) {
    const before = await eye();
    await page.keyboard.press(key);
    assert.notDeepEqual(await eye(), before, `${key} does nothing`);
  }

  await page.keyboard.press('n');
  const first = await page.locator('#part-mark').textContent();
  await page.keyboard.press('n');
  assert.notEqual(await page.locator('#part-mark').textContent(), first);
  await page.keyboard.press('Escape');
  assert.equal(await page.locator('#part-mark').count(), 0);
  await page.keyboard.press('5');
  assert.equal(await page.locator('[data-view=walk]').getAttribute('aria-pressed'), 'true');
  const start = await eye();
  await page.keyboard.press('ArrowUp');
  assert.ok((await eye())[0] > start[0] + 0.2, 'walking forward does not move on');
  const reached = new Set();
  for (let i = 0; i < 60; i++) {
    await page.keyboard.press('Tab');
    reached.add(await page.evaluate(() => { const e = document.activeElement; return e.dataset.view ?? e.dataset.do ?? e.id ?? e.name; }));
  }

  for (const wanted of ['corner', 'measure', 'apart', 'forward', 'piece', 'print', 'save', 'person']) {
    assert.ok(reached.has(wanted), `Tab does not reach ${wanted}`);
  }

  await page.focus('[data-view=apart]');
  await page.keyboard.press('Enter');
  assert.equal(await page.locator('[data-view=apart]').getAttribute('aria-pressed'), 'true');
  await page.close();
}

export async function standing({ browser, preview, report }) {
  const page = await open(browser, preview, { width: 1280 });
  await page.click('[data-view=walk]');
  for (let i = 0; i < 8; i++) await page.click('[data-do=forward]');
  const [x, y, z] = await page.evaluate(() => bridgeForm.app.stage.eye.position.toArray());
  const i = report.nodes.findIndex((n) => n.x > x);
  const [p, q] = [report.nodes[i - 1], report.nodes[i]];
  const rope = p.y + (q.y - p.y) * (x - p.x) / (q.x - p.x);
  assert.ok(z === 0 && y - rope > 1.6 && y - rope < 2, `eyes ${y - rope} m above the ropes`);
  await page.close();
}

export async function measured({ browser, preview, steep, report }) {
  await measuredEmpty(browser, preview, report);
  for (const [file, width] of [...SIZES.map((w) => [preview, w]), ...SIZES.map((w) => [steep, w])]) {
    const page = await open(browser, file, { width });
    await page.click('[data-view=measure]');
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
    await page.evaluate(() => bridgeForm.app.stage.draw());
    const { texts, lines, dimensions } = await page.evaluate(() => {
      const { view } = bridgeForm.app.shown;
      return {
        texts: [...document.querySelectorAll('#overlay text')].map((t) => {
          const box = t.getBoundingClientRect();
          return { text: t.textContent, x: box.x, y: box.y, width: box.width, height: box.height };
        }),
        lines: [...document.querySelectorAll('#overlay line')].map((l) => ['x1', 'y1', 'x2', 'y2'].map((k) => Number(l.getAttribute(k)))),
        dimensions: [...view.section, ...view.dimensions.filter((d) => d.label !== 'length')],
      };
    });
    const words = texts.map((t) => t.text);
    const wanted = [...dimensions.map((d) => d.text), ...(file === preview
      ? [feet(report.nodes.at(-1).x), inches(report.ropes.design_sag), least(checkOf(report, 'clear-width'))] : [])];
    wanted.forEach((text) => assert.ok(words.includes(text), `no ${text} among ${words.join(', ')}`));
    for (const { label, text, from, to } of dimensions) {
      const spanned = label.startsWith('B ') ? Math.abs(to[1] - from[1]) : Math.hypot(...to.map((c, k) => c - from[k]));
      assert.ok([inches(spanned), feet(spanned), ...(/^(least|clear)/.test(label) ? [least(spanned)] : [])].includes(text), `${label}: ${text} on an arrow of ${inches(spanned)}`);
    }

    const stage = await page.locator('#stage').boundingBox();
    const [, divider] = lines.find(([x1, , x2]) => x1 === 0 && x2 === stage.width);
    const across = lines.filter(([, y1, , y2]) => Math.min(y1, y2) < divider && Math.max(y1, y2) > divider);
    assert.deepEqual(across, [], `lines over the divider at ${width} px`);
    assert.equal(await plainRows(page, divider + 2, 3), true, `wood at the upper edge of the lower picture at ${width} px`);
    texts.forEach((a, i) => {
      assert.ok(a.x >= stage.x - 1 && a.x + a.width <= stage.x + stage.width + 1, `"${a.text}" runs out of the picture at ${width} px`);
      assert.ok(a.y >= stage.y - 1 && a.y + a.height <= stage.y + stage.height + 1, `"${a.text}" runs out of the picture at ${width} px`);
      assert.ok(a.y + a.height < stage.y + divider + 3 || a.y > stage.y + divider - 3, `"${a.text}" lies over the divider at ${width} px`);
      texts.slice(i + 1).forEach((b) => assert.ok(
        a.x + a.width < b.x + 1 || b.x + b.width < a.x + 1 || a.y + a.height < b.y + 3 || b.y + b.height < a.y + 3,
        `"${a.text}" lies over "${b.text}" at ${width} px`));
    });
    await page.close();
  }
}

/** The measured view draws the empty bridge, to which its dimensions belong, whenever a load is chosen; other views draw the load. */
async function measuredEmpty(browser, preview, report) {
  const page = await open(browser, preview, { width: 1280 });
  const most = report.cases.filter((c) => c.nodes.length > 0 && c.id !== 'dead')
    .reduce((a, b) => (Math.abs(b.move_down_mid) > Math.abs(a.move_down_mid) ? b : a));
  // What is drawn: height of the base at mid-span, and the canvas.
  const drawn = () => page.evaluate(() => {
    const { shown, stage } = bridgeForm.app;
    stage.draw();
    const picture = document.getElementById('canvas').toDataURL();
    const { name } = shown.view.frames[Math.floor(shown.view.frames.length / 2)];
    return { height: shown.matrixOf(shown.parts.findIndex((p) => p.id === `${name}/base`)).elements[13], picture };
  });
  const text = () => page.locator('#load-text').textContent();
  const isEmpty = async (when) => {
    const { height, picture } = await drawn();
    assert.ok(Math.abs(height - empty.height) < SAME, `${when}: mid-span is drawn at ${height} m, the empty bridge's at ${empty.height} m`);
    assert.ok(picture === empty.picture, `${when}: the picture is not that of the empty bridge`);
    assert.match(await text(), /measured view shows the bridge empty/);
    assert.doesNotMatch(await text(), /Drawn/);
    assert.equal(await page.locator('#case').inputValue(), most.id);
  };
  const isLoaded = async (when) => {
    const { height } = await drawn();
    assert.ok(Math.abs(height - empty.height) > Math.abs(most.move_down_mid) / 2, `${when}: mid-span has not moved`);
    assert.match(await text(), /Drawn/);
  };
  await page.click('[data-view=measure]');
  const empty = await drawn();
  assert.doesNotMatch(await text(), /measured view/);
  await page.selectOption('#case', most.id);
  await isEmpty('load chosen while measured');
  await page.check('[name=times][value=large]');
  await isEmpty('enlarged while measured');
  await page.click('[data-view=side]');
  await isLoaded('measured view left');
  await page.click('[data-view=measure]');
  await isEmpty('measured after the load');
  await page.selectOption('#case', '');
  assert.doesNotMatch(await text(), /measured view/);
  await page.close();
}

/** Some rows of the picture, counted in the stage's pixels, have one colour. */
function plainRows(page, from, count) {
  return page.evaluate(([y, rows]) => {
    const source = document.getElementById('canvas');
    const ratio = source.height / document.getElementById('stage').clientHeight;
    const copy = document.createElement('canvas');
    [copy.width, copy.height] = [source.width, source.height];
    const ink = copy.getContext('2d');
    ink.drawImage(source, 0, 0);
    const { data } = ink.getImageData(0, Math.round(y * ratio), copy.width, Math.ceil(rows * ratio));
    return data.every((value, i) => Math.abs(value - data[i % 4]) < 3);
  }, [from, count]);
}

/** Facts of the page that a check works out too are the check's. */
export async function factsAreTheChecks({ browser, preview, steep, report, steepReport }) {
  for (const [file, judged] of [[preview, report], [steep, steepReport]]) {
    const page = await open(browser, file, { width: 1280 });
    const facts = await page.locator('#facts').innerText();
    const steepest = (Math.atan(checkOf(judged, 'deck-slope')) * 180 / Math.PI).toFixed(1);
    assert.match(facts, new RegExp(`Steepest part of the deck\\s+${steepest}° from level`));
    assert.match(facts, new RegExp(`Least guard height above deck\\s+${least(checkOf(judged, 'guard-height'))}`));
    await page.close();
  }
}

export async function takenApart({ browser, preview, report }) {
  const page = await open(browser, preview, { width: 1280 });
  await page.click('[data-view=apart]');
  const frame = await page.evaluate(() => bridgeForm.app.shown.view.frames[bridgeForm.app.shown.state.apart.frame].name);
  const place = (id) => page.evaluate((i) => {
    const { shown } = bridgeForm.app;
    return shown.matrixOf(shown.parts.findIndex((p) => p.id === i)).elements.slice(12, 15);
  }, id);
  const apart = await place(`${frame}/post-right`);
  await page.locator('#apart-amount').fill('0');
  const whole = await place(`${frame}/post-right`);
  assert.ok(apart[2] - whole[2] > 0.2, 'the right post does not move outwards');
  await page.evaluate(() => bridgeForm.app.stage.draw());
  const words = await page.locator('#overlay').textContent();
  for (const part of ['post-right', 'base', 'brace-right']) {
    assert.ok(words.includes(marks(report).get(`${frame}/${part}`)), `no mark of ${part} in "${words}"`);
  }

  await page.close();
}

/** Words stand on no part where the picture is wide enough for both. */
export async function takenApartWords({ browser, preview, steep }) {
  for (const file of [preview, steep]) {
    const page = await open(browser, file, { width: 1440, height: 900 });
    await page.click('[data-view=apart]');
    await page.evaluate(() => bridgeForm.app.stage.draw());
    const covered = await page.evaluate(() => [...document.querySelectorAll('#overlay rect')].flatMap((r) => {
      const [x, y, w, h] = ['x', 'y', 'width', 'height'].map((k) => Number(r.getAttribute(k)));
      return [0, 0.25, 0.5, 0.75, 1].flatMap((u) => [0, 0.5, 1].map((v) => bridgeForm.app.partAt(x + u * w, y + v * h))).filter((i) => i !== null)
        .map((i) => bridgeForm.app.shown.parts[i].id);
    }));
    assert.deepEqual(covered, []);
    await page.close();
  }
}

export async function loaded({ browser, preview, report }) {
  const page = await open(browser, preview, { width: 1280 });
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
  const middle = (h) => {
    const at = report.nodes.at(-1).x / 2;
    const i = report.nodes.findIndex((n) => n.x >= at);
    const [p, q] = [report.nodes[i - 1].x, report.nodes[i].x];
    return h[i - 1] + (h[i] - h[i - 1]) * (at - p) / (q - p);
  };
  for (const c of solved) {
    await page.selectOption('#case', '');
    const still = await heights(c);
    await page.selectOption('#case', c.id);
    await page.check('[name=times][value=true]');
    const down = middle(still) - middle(await heights(c));
    // Between two frames the rope hangs as a curve: its middle moves a little otherwise than the straight line between them.
    assert.ok(Math.abs(down - c.move_down_mid) < 0.002, `${c.id}: mid-span moves ${down} m, the report says ${c.move_down_mid}`);
    await page.check('[name=times][value=large]');
    const times = Number(/Drawn (\d+) times/.exec(await page.locator('#load-text').textContent())?.[1] ?? 1);
    const large = middle(still) - middle(await heights(c));
    assert.ok(Math.abs(large - times * down) < 0.002 * times, `${c.id}: enlarged ${times} times, mid-span moves ${large} m`);
  }

  await page.close();
}

export async function accessible({ browser, preview }) {
  for (const width of [360, 1440]) {
    for (const dark of [false, true]) {
      const page = await open(browser, preview, { width, dark });
      for (const view of ['corner', 'apart', 'walk']) {
        await page.click(`[data-view=${view}]`);
        await page.evaluate(() => bridgeForm.app.choose(0));
        await page.evaluate(axe);
        const { violations } = await page.evaluate(() => axe.run());
        const grave = violations.filter((v) => ['serious', 'critical'].includes(v.impact));
        assert.deepEqual(grave.map((v) => `${v.id}: ${v.nodes.map((n) => n.html).join(' ')}`), [], `${width} px, ${dark ? 'dark' : 'light'}, ${view}`);
      }

      await page.close();
    }
  }
}

export async function printed({ browser, preview }) {
  const page = await open(browser, preview, { width: 1280 });
  await page.evaluate(() => { globalThis.print = () => { globalThis.printed = true; }; });
  await page.click('[data-do=print]');
  await page.waitForFunction(() => globalThis.printed === true);
  await page.emulateMedia({ media: 'print' });
  const picture = await page.locator('#sheet-picture').evaluate((i) => [i.naturalWidth, i.src.slice(0, 22)]);
  assert.ok(picture[0] >= 2000 && picture[1] === 'data:image/png;base64,', `the picture is ${picture}`);
  assert.ok(await page.locator('#sheet-picture').isVisible() && await page.locator('#caution').isVisible() && !await page.locator('#stage').isVisible());
  await page.close();
}

export async function anotherBridge({ browser, preview }) {
  const faults = [];
  const page = await open(browser, preview, { width: 1280, faults });
  const seen = await page.evaluate(async () => {
    const view = JSON.parse(document.getElementById('view').textContent);
    const glb = Uint8Array.from(atob(document.getElementById('model').textContent), (c) => c.charCodeAt(0)).buffer;
    const mark = {};
    globalThis.stillHere = mark;
    await bridgeForm.show({ view: { ...view, name: 'Another one' }, glb });
    return [document.querySelector('h1').textContent, globalThis.stillHere === mark, bridgeForm.app.stage.scene.children.filter((c) => c.type === 'Group').length];
  });
  assert.deepEqual(seen, ['Another one', true, 1]);
  assert.ok((await pixels(page)).brown > 0.01);
  assert.deepEqual(faults, []);
  await page.close();
}

export async function withoutWebgl({ preview, report }) {
  const browser = await launch(false);
  try {
    const faults = [];
    const page = await open(browser, preview, { width: 768, faults });
    const seen = await pixels(page);
    assert.ok(seen.colours > 10 && seen.opaque > 0.02, `no still picture: ${JSON.stringify(seen)}`);
    const text = await page.locator('body').innerText();
    for (const wanted of ['WebGL is off', feet(report.nodes.at(-1).x), least(checkOf(report, 'guard-height')), report.caution]) {
      assert.ok(text.includes(wanted), `no "${wanted}"`);
    }

    assert.deepEqual(faults, []);
  } finally {
    await browser.close();
  }
}

/** As readers of mail attachments show it, which run no script: key figures, a picture, and no button that does nothing. */
export async function withoutScript({ browser, preview, report }) {
  const context = await browser.newContext({ javaScriptEnabled: false, viewport: { width: 360, height: 740 }, colorScheme: 'dark' });
  const page = await context.newPage();
  await page.goto(`file://${preview}`);
  const text = await page.locator('body').innerText();
  for (const wanted of [feet(report.nodes.at(-1).x), least(checkOf(report, 'guard-height')), 'Where scripts are allowed', report.caution]) {
    assert.ok(text.includes(wanted), `no "${wanted}"`);
  }

  const { x, width, height } = await page.locator('#unscripted svg').boundingBox();
  assert.ok(x >= 0 && x + width <= 360 && height > 150, `picture ${width} by ${height} at ${x}`);
  assert.ok(await page.locator('#unscripted svg path').count() > 1000, 'nothing is drawn');
  assert.equal(await page.locator('button:visible, select:visible, input:visible').count(), 0);
  await context.close();
}
