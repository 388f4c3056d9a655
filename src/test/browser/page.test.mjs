// Opens offline pages in a real browser, as a reader does: from the disk, without a network.
//
//   WALLBOOK_PAGES   folder with lakeside.html, owner.html, spanish.html and hostile.html; usual: target/page
//   CHROMIUM         the browser; usual: /usr/bin/chromium
//
// wallbook.page.BrowserTest writes the pages and runs this file.
import assert from 'node:assert/strict';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const here = path.dirname(fileURLToPath(import.meta.url));
const pages = process.env.WALLBOOK_PAGES ?? path.resolve(here, '../../../target/page');
const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
const PHONE = { width: 360, height: 740 };
const DESK = { width: 1100, height: 800 };

// One of each kind of part, by its address.
const PARTS = [
  '', '#cables', '#heads', '#conduits', '#systems', '#services', '#contacts', '#cautions', '#about',
  '#room/kitchen', '#place/kit-tv', '#run/KIT-02', '#head/rack', '#port/rack/P1/7', '#conduit/C-02',
  '#system/network', '#service/network-10g', '#plan/place/kit-tv', '#find/gtr-a', '#find/kitchen', '#find/nowhere%20at%20all',
];

let browser;

before(async () => {
  browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox', '--disable-gpu', '--disable-background-networking',
      '--disable-component-update', '--disable-default-apps', '--no-first-run',
    ],
  });
});

after(async () => browser?.close());

function address(name, hash = '') {
  const file = path.join(pages, name + '.html');
  assert.ok(existsSync(file), file + ' is missing');
  return pathToFileURL(file).href + hash;
}

// Loads a page, and notes whatever it asks the network for and whatever breaks in it.
async function load(name, hash, options) {
  const context = await browser.newContext({ viewport: DESK, ...options });
  const page = await context.newPage();
  const asked = [];
  const broken = [];
  await context.route('**/*', (route) => {
    const url = route.request().url();
    if (url.startsWith('file:')) {
      return route.continue();
    }
    asked.push(url);
    return route.abort();
  });
  page.on('pageerror', (error) => broken.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') {
      broken.push(message.text());
    }
  });
  page.on('dialog', (dialog) => {
    broken.push('dialog: ' + dialog.message());
    return dialog.dismiss();
  });
  await page.goto(address(name, hash));
  return { context, page, asked, broken };
}

function nothingAmiss({ asked, broken }) {
  assert.deepEqual(asked.filter((url) => !url.startsWith('data:')), []);
  assert.deepEqual(broken, []);
}

// Opens a page, hands it over, and fails if it asked the network for anything or broke.
async function open(name, hash, options, use) {
  const opened = await load(name, hash, options);
  try {
    await use(opened.page);
  } finally {
    await opened.context.close();
  }
  nothingAmiss(opened);
}

let searched;

// The same, for tests that type into a page that is open: one page, brought back to its start.
async function search(use) {
  searched ??= load('lakeside', '', {});
  const opened = await searched;
  await opened.page.fill('#query', '');
  await visit(opened.page, '');
  await opened.page.waitForSelector('#start.current');
  await use(opened.page);
  nothingAmiss(opened);
}

// Waits until the focus is on a part, by its id, or on the heading of a part shown alone.
function focusOn(page, id) {
  return page.waitForFunction((wanted) => {
    const on = document.activeElement;
    return (on.tagName === 'H2' ? on.closest('[data-view]').id : on.id) === wanted;
  }, id);
}

// Goes to an address within the page, and waits until it has been gone to.
function visit(page, hash) {
  return page.evaluate((wanted) => new Promise((done) => {
    if (location.hash === wanted) {
      done();
    }
    addEventListener('hashchange', () => requestAnimationFrame(done), { once: true });
    location.hash = wanted;
  }), hash);
}

function shown(page) {
  return page.evaluate(() =>
    [...document.querySelectorAll('[data-view]')]
      .filter((part) => getComputedStyle(part).display !== 'none')
      .map((part) => part.id));
}

async function type(page, text) {
  await page.fill('#query', '');
  await page.locator('#query').pressSequentially(text);
  // The page waits for a pause in typing before it looks.
  await page.waitForFunction(
    (wanted) => location.hash === '#find/' + encodeURIComponent(wanted), text.trim());
}

test('the page asks the network for nothing, whatever is shown', async () => {
  await open('lakeside', '', {}, async (page) => {
    for (const part of PARTS) {
      await visit(page, part);
    }
  });
});

test('the page lets no other script run', async () => {
  await open('lakeside', '', {}, async (page) => {
    const refused = await page.evaluate(() => new Promise((resolve) => {
      document.addEventListener('securitypolicyviolation', (event) =>
        resolve(event.effectiveDirective));
      const script = document.createElement('script');
      script.textContent = 'window.intruder = true';
      document.body.append(script);
    }));
    assert.equal(refused, 'script-src-elem');
    assert.equal(await page.evaluate(() => window.intruder), undefined);
  }).catch((error) => {
    // The browser also reports the refusal as an error on its console; that one is wanted.
    assert.match(error.message, /Content Security Policy/);
  });
});

for (const typed of ['KIT-02', 'kit-02', 'kit02', 'Kit 02', 'kit 2', 'KIT2', ' kit_02 ']) {
  test(`a label is found as "${typed}"`, async () => {
    await search(async (page) => {
      await type(page, typed);
      await page.keyboard.press('Enter');
      await page.waitForSelector('[id="run/KIT-02"].current');
      assert.deepEqual(await shown(page), ['run/KIT-02']);
    });
  });
}

for (const [typed, title] of [
  ['kitchen', 'Kitchen'], ['home network', 'Home network'], ['wi-fi', 'Wireless network'],
  ['10gbase-t', '10 Gb/s network (10GBASE-T)'], ['television plate', 'KIT-A, Television plate'],
  ['entrance box', 'Service entrance box'], ['patch panel 2', 'Patch panel 2'], ['c02', 'C-02'],
]) {
  test(`"${typed}" finds ${title}`, async () => {
    await search(async (page) => {
      await type(page, typed);
      // What was found for the first letters typed may still be there.
      await page.waitForFunction((beginning) =>
        [...document.querySelectorAll('#found.current #hits .title')]
          .some((hit) => hit.textContent.startsWith(beginning)), title);
      const titles = await page.locator('#hits .title').allTextContents();
      const count = await page.textContent('#count');
      assert.match(count, new RegExp('^' + titles.length + ' '));
      assert.equal(await page.getAttribute('#count', 'role'), 'status');
    });
  });
}

test('who pauses after a word keeps the blank', async () => {
  await search(async (page) => {
    await type(page, 'home ');
    await page.waitForSelector('#found.current');
    await page.locator('#query').pressSequentially('network');
    await page.waitForFunction(() => location.hash === '#find/home%20network');
    assert.equal(await page.inputValue('#query'), 'home network');
  });
});

test('a label that is exact comes before labels that begin with it', async () => {
  await open('lakeside', '#find/kitchen', {}, async (page) => {
    assert.equal(await page.locator('#hits .title').first().textContent(), 'Kitchen');
  });
});

test('what is not there is said not to be there', async () => {
  await search(async (page) => {
    await type(page, 'zzz');
    await page.waitForSelector('#unfound:not([hidden])');
    assert.equal(await page.locator('#hits li').count(), 0);
    assert.notEqual((await page.textContent('#count')).trim(), '');
  });
});

for (const typed of ['KTI-02', 'kit-o2', 'KITT 02', 'kit-02a']) {
  test(`"${typed}" is told to be nothing, and what is written much like it is offered`, async () => {
    await search(async (page) => {
      await type(page, typed);
      await page.waitForFunction(() =>
        [...document.querySelectorAll('#found.current #hits .title')]
          .some((hit) => hit.textContent === 'KIT-02'));
      assert.equal(await page.textContent('#count'), await page.getAttribute('#count', 'data-near'));
      assert.ok(await page.locator('#unfound').isVisible());
      await page.keyboard.press('Enter');
      assert.deepEqual(await shown(page), ['found'], 'a guess is not opened');
    });
  });
}

test('words that stand together come before the same words apart', async () => {
  await open('lakeside', '#find/port%2012', {}, async (page) => {
    const details = await page.locator('#hits .detail').allTextContents();
    const together = details.map((detail) => / port 12\b/.test(detail));
    assert.ok(together.includes(false), details.join());
    assert.deepEqual(together, [...together].sort().reverse(), details.join());
    assert.ok(details[1].includes('Patch panel 1: rooms, port 12'), details.join());
  });
});

for (const [typed, title] of [
  ['one more camera', 'Power, PoE class 3 (a camera)'], ['faster internet', '10 Gb/s network (10GBASE-T)'],
  ['drill', 'Before drilling into a wall'],
]) {
  test(`who asks for "${typed}" is led to ${title}`, async () => {
    await open('lakeside', '#find/' + encodeURIComponent(typed), {}, async (page) => {
      await page.locator('#hits a', { hasText: title }).click();
      await page.waitForFunction(() => !document.querySelector('#found.current'));
      assert.match(await page.locator('.current').textContent(), new RegExp(title.slice(0, 10)));
    });
  });
}

for (const hash of ['#find/office', '#run/KITCHEN']) {
  test(`a search that was opened by the address ${hash} is cleared without leaving the page`, async () => {
    await open('lakeside', hash, {}, async (page) => {
      await page.waitForSelector('#found.current');
      await page.click('#clear');
      await page.waitForSelector('#start.current');
      assert.equal(await page.inputValue('#query'), '');
    });
  });
}

test('going back from a find leads to the list it was found in, and back again', async () => {
  await open('lakeside', '#room/kitchen', {}, async (page) => {
    await type(page, 'office');
    await page.locator('#hits a', { hasText: 'OFF-01' }).first().click();
    await page.waitForFunction(() => location.hash === '#run/OFF-01');
    await page.goBack();
    await page.waitForSelector('#found.current');
    assert.equal(await page.inputValue('#query'), 'office');
    await page.goBack();
    await page.waitForSelector('[id="room/kitchen"].current');
    assert.deepEqual(await shown(page), ['room/kitchen']);
  });
});

for (const hash of ['#run/KIT-02', '#KIT-02', '#run/kit02', '#kit%202']) {
  test(`the address ${hash} opens the cable`, async () => {
    await open('lakeside', hash, {}, async (page) => {
      assert.deepEqual(await shown(page), ['run/KIT-02']);
      await focusOn(page, 'run/KIT-02');
      assert.equal(await page.evaluate(() => scrollY), 0);
      assert.match(await page.title(), /KIT-02/);
    });
  });
}

test('an address of nothing is searched for', async () => {
  await open('lakeside', '#run/KITCHEN', {}, async (page) => {
    assert.deepEqual(await shown(page), ['found']);
    assert.ok(await page.locator('#hits a').count() > 1);
  });
});

test('from a plate to its other end and back', async () => {
  await open('lakeside', '#place/kit-tv', {}, async (page) => {
    await focusOn(page, 'place/kit-tv');
    await page.locator('[id="place/kit-tv"] li', { hasText: 'KIT-02' }).locator('a.other').click();
    await focusOn(page, 'port/rack/P1/7');
    assert.deepEqual(await shown(page), ['head/rack']);
    await page.locator('[id="port/rack/P1/7"] a.other').click();
    await focusOn(page, 'place/kit-tv');
    assert.deepEqual(await shown(page), ['room/kitchen']);
  });
});

test('a touch of a mark on the plan leads to its place and is marked on the plan', async () => {
  await open('lakeside', '#room/kitchen', { viewport: PHONE, hasTouch: true }, async (page) => {
    await page.locator('.current .plan a[href="#place/kit-data"] polygon').first().tap();
    await page.waitForFunction(() => location.hash === '#place/kit-data');
    await focusOn(page, 'place/kit-data');
    assert.ok(await page.locator('.current .plan a.here').count() > 0);
  });
});

test('a touch of a room on the floor leads to the room', async () => {
  await open('lakeside', '', {}, async (page) => {
    await page.locator('#start .plan a[href="#room/office"] polygon').first().click();
    await page.waitForSelector('[id="room/office"].current');
    assert.deepEqual(await shown(page), ['room/office']);
  });
});

test('a result that is opened says what decides, what to add, who and by which source', async () => {
  await open('lakeside', '#run/KIT-02', {}, async (page) => {
    const result = page.locator('.current details', { hasText: '10GBASE-T' }).first();
    await result.locator('summary').click();
    await result.locator('dl').waitFor();
    const terms = await result.locator('dt').allTextContents();
    for (const term of ['What decides', 'To be added', 'Who', 'Source']) {
      assert.ok(terms.includes(term), terms.join());
    }
    assert.match(await result.textContent(), /limit .* margin /);
    assert.match(await result.textContent(), /IEEE 802\.3/);
  });
});

test('everything can be reached by keyboard alone', async () => {
  await open('lakeside', '', {}, async (page) => {
    await page.keyboard.press('Tab');
    assert.equal(await page.evaluate(() => document.activeElement.className), 'skip');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await focusOn(page, 'query');
    await page.keyboard.type('kitchen');
    await page.waitForSelector('#found.current #hits a');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => location.hash === '#room/kitchen');
    await focusOn(page, 'room/kitchen');
    const reached = new Set();
    for (let i = 0; i < 200; i++) {
      await page.keyboard.press('Tab');
      const on = await page.evaluate(() => {
        const it = document.activeElement;
        const seen = getComputedStyle(it).outlineStyle !== 'none' || it.closest('svg');
        return [it.getAttribute('href') ?? it.tagName, Boolean(seen)];
      });
      if (on[0] === 'BODY') {
        break;
      }
      assert.ok(on[1], 'the focus can be seen on ' + on[0]);
      reached.add(on[0]);
    }
    for (const wanted of ['#run/KIT-01', '#port/rack/P1/7', '#place/kit-tv', 'SUMMARY', 'BUTTON']) {
      assert.ok(reached.has(wanted), wanted + ' not among ' + [...reached].join(' '));
    }
  });
});

test('the skip link leads past search and navigation', async () => {
  await open('lakeside', '', {}, async (page) => {
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await focusOn(page, 'main');
    assert.deepEqual(await shown(page), ['start']);
  });
});

test('escape clears the search and leaves the reader in its field', async () => {
  await open('lakeside', '#room/kitchen', {}, async (page) => {
    await type(page, 'office');
    await page.waitForSelector('#found.current');
    await page.keyboard.press('Escape');
    await page.waitForSelector('[id="room/kitchen"].current');
    assert.equal(await page.inputValue('#query'), '');
  });
});

for (const name of ['lakeside', 'spanish', 'hostile']) {
  test(`at 320 pixels nothing needs sideways scrolling and all words can be read: ${name}`, async () => {
    await open(name, '', { viewport: { width: 320, height: 640 } }, async (page) => {
      const ids = await page.evaluate(() =>
        [...document.querySelectorAll('[data-view]')].map((part) => part.id));
      assert.ok(ids.includes('contacts'), ids.join());
      const amiss = await page.evaluate((all) => all.flatMap((id) => {
        const seen = new Set(); // one of each kind of words is enough
        document.querySelectorAll('[data-view]').forEach((part) =>
          part.classList.toggle('current', part.id === id));
        document.querySelectorAll('.current details').forEach((d) => { d.open = true; });
        const wide = document.documentElement.scrollWidth > innerWidth ? [id + ' is wide'] : [];
        const cut = [...document.querySelectorAll('.current .sheet')]
          .filter((sheet) => sheet.scrollWidth > sheet.clientWidth)
          .map(() => id + ' has a drawing that is cut');
        const small = [...document.querySelectorAll(
          'h1 a, .name p, form *, nav a, .current :not(svg, svg *), footer p')]
          .filter((it) => {
            const kind = it.tagName + it.className + it.parentNode.tagName + it.parentNode.className;
            return !seen.has(kind) && seen.add(kind) && it.checkVisibility() && it.textContent.trim()
              && parseFloat(getComputedStyle(it).fontSize) < 16;
          })
          .map((it) => id + ' has small words: ' + it.textContent.trim().slice(0, 30));
        return [...wide, ...cut, ...small];
      }), ids);
      assert.deepEqual(amiss, []);
    });
  });
}

test('what is touched is large enough for a finger', async () => {
  await open('lakeside', '', { viewport: { width: 320, height: 700 }, hasTouch: true }, async (page) => {
    for (const part of PARTS) {
      await visit(page, part);
      const small = await page.evaluate(() => {
        // How far up and down, or left and right, a touch still meets it.
        function reach(it, x, y, right, down) {
          let far = 0;
          while (far < 60 && document.elementFromPoint(x + right * far, y + down * far)?.closest('a, button, summary') === it) {
            far++;
          }
          return far;
        }
        return [...document.querySelectorAll('h1 a, nav a, form button, .current a, .current button, .current summary, #print')]
          .filter((it) => it.checkVisibility() && !it.closest('svg'))
          .slice(0, 40)
          .filter((it) => {
            it.scrollIntoView({ block: 'center', inline: 'center' });
            const box = it.getClientRects()[0];
            const x = box.left + box.width / 2;
            const y = box.top + box.height / 2;
            return reach(it, x, y, 0, 1) + reach(it, x, y, 0, -1) < 44
              || reach(it, x, y, 1, 0) + reach(it, x, y, -1, 0) < 44;
          })
          .map((it) => it.outerHTML.slice(0, 120));
      });
      assert.deepEqual(small, [], part);
    }
  });
});

test('a drawing is enlarged until it can be read, about what is marked on it, and made whole again', async () => {
  await open('lakeside', '#plan/place/kit-tv', { viewport: PHONE, hasTouch: true }, async (page) => {
    const figure = page.locator('.current .plan').first();
    const button = figure.locator('button');
    const whole = await button.textContent();
    const state = () => figure.evaluate((it) => {
      const sheet = it.querySelector('.sheet');
      const frame = sheet.getBoundingClientRect();
      const mark = it.querySelector('.here').getBoundingClientRect();
      const scale = it.querySelector('svg').getScreenCTM().a;
      return {
        cut: sheet.scrollWidth > sheet.clientWidth,
        smallest: Math.min(...[...it.querySelectorAll('text')]
          .map((text) => Number(text.getAttribute('font-size')) * scale)),
        marked: mark.left >= frame.left && mark.right <= frame.right
          && mark.top >= frame.top && mark.bottom <= frame.bottom,
        wide: document.documentElement.scrollWidth > innerWidth,
        stop: sheet.tabIndex,
      };
    });
    assert.equal((await state()).cut, false);
    await button.tap();
    const large = await state();
    assert.ok(large.smallest >= 16, large.smallest + ' pixels');
    assert.deepEqual({ ...large, smallest: 0 }, { cut: true, smallest: 0, marked: true, wide: false, stop: 0 });
    assert.notEqual(await button.textContent(), whole);
    assert.equal(await button.evaluate((it) => Math.floor(it.getBoundingClientRect().bottom) <= innerHeight), true);
    await button.tap();
    assert.equal((await state()).cut, false);
    assert.equal(await button.textContent(), whole);
  });
});

test('from a place to its mark on the plan, and back', async () => {
  await open('lakeside', '#place/kit-tv', { viewport: PHONE }, async (page) => {
    await page.locator('[id="place/kit-tv"] .lead a').click();
    await focusOn(page, 'plan/place/kit-tv');
    assert.deepEqual(await shown(page), ['room/kitchen']);
    const mark = page.locator('[id="plan/place/kit-tv"]');
    assert.match(await mark.getAttribute('class'), /here/);
    assert.equal(await mark.evaluate((it) => {
      const box = it.getBoundingClientRect();
      return box.top >= document.getElementById('search').getBoundingClientRect().bottom
        && box.bottom <= innerHeight;
    }), true);
    assert.equal(await mark.getAttribute('tabindex'), null);
    await page.goBack();
    await focusOn(page, 'place/kit-tv');
  });
});

test('the search stays at hand and covers nothing that was gone to', async () => {
  await open('lakeside', '#place/grt-tv', { viewport: PHONE }, async (page) => {
    await focusOn(page, 'place/grt-tv');
    const at = () => page.evaluate(() => [
      document.getElementById('search').getBoundingClientRect(),
      document.querySelector('.part.here').getBoundingClientRect(),
    ].map((box) => [Math.round(box.top), Math.round(box.bottom)]));
    const [[top, bottom], [place]] = await at();
    assert.equal(top, 0);
    assert.ok(place >= bottom, `${place} is under ${bottom}`);
    await visit(page, '#port/rack/P1/12');
    const [[, below], [port]] = await at();
    const name = await page.locator('[id="panel/rack/P1"] h3').boundingBox();
    assert.ok(name.y >= below - 1 && port >= name.y + name.height, 'the name of the panel is in sight');
  });
});

test('what is found begins in sight, however far down the search was begun', async () => {
  await open('lakeside', '#room/great-room', { viewport: PHONE }, async (page) => {
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    await page.locator('#query').pressSequentially('faster internet');
    await page.locator('#found.current li').first().waitFor();
    const below = await page.locator('#search').evaluate((form) => form.getBoundingClientRect().bottom);
    const count = await page.locator('#count').boundingBox();
    assert.ok(count.y >= below, `${count.y} is under ${below}`);
  });
});

test('on a phone a part begins high up, and the parts are a row that a finger moves', async () => {
  await open('lakeside', '#cautions', { viewport: PHONE }, async (page) => {
    const heading = await page.locator('#cautions h2').boundingBox();
    assert.ok(heading.y < 220, heading.y + ' pixels');
    const current = await page.locator('nav [aria-current]').boundingBox();
    assert.ok(current.x >= 0 && current.x + current.width <= PHONE.width, 'the current part is in sight');
    await visit(page, '#start');
    assert.ok(await page.locator('nav a').last().evaluate((it) =>
      it.getBoundingClientRect().right <= innerWidth), 'at first all parts are in sight');
  });
});

test('the search keeps its height while something is typed', async () => {
  await open('lakeside', '#room/kitchen', { viewport: PHONE }, async (page) => {
    const height = () => page.evaluate(() => document.getElementById('search').offsetHeight);
    const before = await height();
    await type(page, 'kit');
    await page.waitForSelector('#clear:not([hidden])');
    assert.equal(await height(), before);
  });
});

// Other colours change neither texts nor their order: there the rules about colour are enough.
const COLOURS = { runOnly: ['color-contrast', 'link-in-text-block'] };

for (const [name, options, rules] of [
  ['light', { colorScheme: 'light' }, {}],
  ['dark', { colorScheme: 'dark' }, COLOURS],
  // There the row of parts is moved, and a link moved out of sight is taken for a skip link.
  ['a phone', { viewport: PHONE }, { rules: { 'skip-link': { enabled: false } } }],
  ['forced colours', { forcedColors: 'active' }, COLOURS],
  ['more contrast', { contrast: 'more' }, COLOURS],
]) {
  test(`no rule of accessibility is broken: ${name}`, async () => {
    await open('lakeside', '', { ...options, bypassCSP: true }, async (page) => {
      await page.addScriptTag({ path: axe });
      for (const part of PARTS) {
        await visit(page, part);
        await page.evaluate(() =>
          document.querySelectorAll('.current details').forEach((d) => { d.open = true; }));
        await page.waitForFunction(() => !document.querySelector('.current details > p > small'));
        const found = await page.evaluate(async (wanted) => {
          // The other parts are hidden; taken out for a moment, they cost no time.
          const hidden = [...document.querySelectorAll('[data-view]:not(.current)')].map((part) => {
            const place = document.createComment('');
            part.replaceWith(place);
            return [place, part];
          });
          const result = await globalThis.axe.run(
            document, { ...wanted, resultTypes: ['violations'] });
          hidden.forEach(([place, part]) => place.replaceWith(part));
          return result.violations.map((v) =>
            v.id + ': ' + v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160)).join(' | '));
        }, rules);
        assert.deepEqual(found, [], part);
      }
    });
  });
}

test('a screen reader meets landmarks, one heading of the page and none skipped', async () => {
  await open('lakeside', '#run/KIT-02', {}, async (page) => {
    const landmarks = await page.evaluate(() =>
      ['header', 'nav', 'main', 'footer', '[role=search]'].filter((s) => !document.querySelector(s)));
    assert.deepEqual(landmarks, []);
    const levels = await page.evaluate(() =>
      [...document.querySelectorAll('h1, .current h2, .current h3, .current h4')]
        .map((h) => Number(h.tagName[1])));
    assert.equal(levels.filter((l) => l === 1).length, 1);
    levels.reduce((above, level) => {
      assert.ok(level <= above + 1, levels.join());
      return level;
    }, 0);
  });
});

test('print shows the part alone, with its results open, and closes them again', async () => {
  await open('lakeside', '#run/KIT-02', {}, async (page) => {
    await page.evaluate(() => {
      addEventListener('beforeprint', () => {
        window.closedInPrint = document.querySelectorAll('.current details:not([open])').length;
      });
    });
    const pdf = await page.pdf({ format: 'A4' });
    assert.equal(await page.evaluate(() => window.closedInPrint), 0);
    assert.equal(await page.locator('.current details[open]').count(), 0);
    const sheets = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g).length;
    assert.ok(sheets >= 1 && sheets <= 4, sheets + ' sheets');
    await page.emulateMedia({ media: 'print' });
    assert.deepEqual(await shown(page), ['run/KIT-02']);
    for (const gone of ['nav', '#search', '#print']) {
      assert.equal(await page.locator(gone).isVisible(), false, gone);
    }
    assert.equal(await page.locator('h1').isVisible(), true);
    await visit(page, '#head/rack');
    assert.equal(await page.locator('.current .jump').isVisible(), false);
    assert.equal(await page.locator('[id="panel/rack/P1"]').isVisible(), true);
  });
});

test('without its script the page is one long list with every cable', async () => {
  await open('lakeside', '', { javaScriptEnabled: false }, async (page) => {
    assert.equal(await page.locator('#search').isVisible(), false);
    assert.equal(await page.locator('[id="run/KIT-02"]').isVisible(), true);
    assert.equal(await page.locator('[id="room/office"]').isVisible(), true);
    await page.locator('[id="place/kit-tv"] a.other').first().click();
    assert.match(page.url(), /#port\/rack\/P1\/6$/);
  });
});

test('hostile text is shown as it stands and does nothing', async () => {
  await open('hostile', '', {}, async (page) => {
    await type(page, 'script');
    await page.waitForSelector('#hits a');
    const titles = await page.locator('#hits .title').allTextContents();
    assert.ok(titles.some((t) => t.includes('<script>window.hostile=1</script>')), titles.join());
    const parts = await page.evaluate(() =>
      [...document.querySelectorAll('[data-view]')].map((part) => part.id));
    for (const part of parts) {
      await visit(page, '#' + part);
    }
    assert.equal(await page.evaluate(() => window.hostile), undefined);
    assert.equal(await page.locator('script').count(), 2);
    assert.equal(await page.locator('img, iframe, object, embed, base').count(), 0);
  });
});

test('the owner\'s copy says so at its head and has the security system; the usual one has not', async () => {
  await open('owner', '', {}, async (page) => {
    assert.ok(await page.locator('#start .warning').isVisible());
    await type(page, 'keypad');
    await page.waitForSelector('#hits a');
  });
  await open('lakeside', '', {}, async (page) => {
    await type(page, 'keypad');
    await page.waitForSelector('#unfound:not([hidden])');
    assert.match(await page.textContent('#unfound'), /not in this copy/);
  });
});

test('the record that the page carries can be saved', async () => {
  await open('lakeside', '#about', {}, async (page) => {
    const address = await page.getAttribute('#record', 'href');
    const [saved] = await Promise.all([page.waitForEvent('download'), page.click('#record')]);
    assert.equal(saved.suggestedFilename(), 'job.yaml');
    assert.equal((await readFile(await saved.path())).toString('base64'), address.split(',')[1]);
  });
});

test('photographs are shown', async () => {
  await open('lakeside', '#head/rack', {}, async (page) => {
    const shown = page.locator('[id="head/rack"] figure.photo img');
    await shown.first().scrollIntoViewIfNeeded();
    await page.waitForFunction(
      () => document.querySelector('[id="head/rack"] figure.photo img').naturalWidth > 0,
    );
  });
});
