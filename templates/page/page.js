// Shows one part of the page at a time, follows addresses such as #run/KIT-01, searches, and makes
// ready for the printer. Everything said to the reader stands in the page; nothing is set as markup.
(function () {
  'use strict';
  const root = document.documentElement;
  const FIND = 'find/';
  const MOST = 100;
  const EXACT = 9;
  const FEW = 10;
  const LOW = 480; // of a lower window the head of the page takes too much
  root.classList.add('js');

  // Text reduced to what somebody reads out: no accents, no capitals.
  function plain(text) {
    return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  }

  // A label reduced further: letters and digits only, no zeros before a number.
  function bare(text) {
    return plain(text).replace(/[^\p{L}\p{N}]+/gu, '').replace(/(^|[^0-9])0+(?=[0-9])/g, '$1');
  }

  function words(text) {
    return plain(text).split(/[^\p{L}\p{N}]+/u).filter(Boolean);
  }

  function start() {
    const main = document.getElementById('main');
    const query = document.getElementById('query');
    let waiting = 0; // the timer of what was typed and not yet looked for
    const clear = document.getElementById('clear');
    const count = document.getElementById('count');
    const hits = document.getElementById('hits');
    const unfound = document.getElementById('unfound');
    const views = Array.from(main.querySelectorAll('[data-view]'));
    const parts = Array.from(document.querySelectorAll('[data-part]'));
    const title = document.title;
    let begun = false; // whether the search has a place of its own in what "back" goes through
    let marked = []; // what is marked at present
    const entries = JSON.parse(document.getElementById('entries').textContent).map(
      function (cells) {
        const allWords = words(cells.slice(1).join(' '));
        return {
          anchor: cells[0],
          kind: cells[2],
          title: cells[3],
          detail: cells[4],
          label: bare(cells[1]),
          name: bare(cells[3]),
          titleWords: words(cells[3]),
          allWords: allWords,
          said: ' ' + allWords.join(' ') + ' ',
          all: bare(cells.slice(1).join(' '))
        };
      });

    // How well an entry answers, 0 for not at all.
    function answers(entry, key, asked) {
      if (entry.label && entry.label === key) {
        return EXACT;
      }
      if (entry.name === key) {
        return 8;
      }
      if (entry.label && entry.label.startsWith(key)) {
        return 7;
      }
      if (entry.name.startsWith(key)) {
        return 6;
      }
      function begin(list) {
        return asked.every(function (word) {
          return list.some(function (other) { return other.startsWith(word); });
        });
      }
      if (begin(entry.titleWords)) {
        return 5;
      }
      // Several words that stand there just so, as in "port 12".
      if (asked.length > 1 && entry.said.includes(' ' + asked.join(' ') + ' ')) {
        return 4;
      }
      if (begin(entry.allWords)) {
        return 3;
      }
      if (key.length > 2 && entry.name.includes(key)) {
        return 2;
      }
      return key.length > 2 && entry.all.includes(key) ? 1 : 0;
    }

    function find(text) {
      const key = bare(text);
      const asked = words(text);
      if (!key) {
        return [];
      }
      return entries
        .map(function (entry, place) {
          return {entry: entry, place: place, worth: answers(entry, key, asked)};
        })
        .filter(function (hit) { return hit.worth > 0; })
        .sort(function (a, b) { return b.worth - a.worth || a.place - b.place; });
    }

    // How many letters apart two texts are: one more, one less, another one, or two in turn.
    function apart(one, other) {
      let above = [];
      let row = Array.from({length: other.length + 1}, function (unused, at) { return at; });
      for (let i = 1; i <= one.length; i++) {
        const next = [i];
        for (let j = 1; j <= other.length; j++) {
          const same = one[i - 1] === other[j - 1];
          next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + (same ? 0 : 1));
          if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
            next[j] = Math.min(next[j], above[j - 2] + 1);
          }
        }
        above = row;
        row = next;
      }
      return row[other.length];
    }

    // What is written much like a text that nothing is called: one letter apart, of six letters on two.
    function near(text) {
      const key = bare(text);
      if (key.length < 3) {
        return [];
      }
      return entries
        .map(function (entry, place) {
          const other = entry.label || entry.name;
          const most = key.length < 6 ? 1 : 2;
          const far = Math.abs(other.length - key.length) > most ? most + 1 : apart(key, other);
          return {entry: entry, place: place, far: far, most: most};
        })
        .filter(function (hit) { return hit.far <= hit.most; })
        .sort(function (a, b) { return a.far - b.far || a.place - b.place; })
        .slice(0, FEW);
    }

    function cell(name, text) {
      const made = document.createElement('span');
      made.className = name;
      made.textContent = text;
      return made;
    }

    function tell(found) {
      const say = found === 0 ? count.dataset.none
        : found === 1 ? count.dataset.one
        : found > MOST ? count.dataset.first
        : count.dataset.other;
      count.textContent = say.replace('{count}', found).replace('{shown}', MOST);
    }

    function list(found, alike) {
      hits.replaceChildren.apply(hits, found.slice(0, MOST).map(function (hit) {
        const item = document.createElement('li');
        const link = document.createElement('a');
        link.href = '#' + hit.entry.anchor;
        link.append(
          cell('title', hit.entry.title), ' ', cell('kind', hit.entry.kind), ' ',
          cell('detail', hit.entry.detail));
        item.append(link);
        return item;
      }));
      unfound.hidden = found.length > 0 && !alike;
      if (alike) {
        count.textContent = count.dataset.near;
      } else {
        tell(found.length);
      }
    }

    // Shows the view and no other.
    function show(view) {
      views.forEach(function (other) { other.classList.toggle('current', other === view); });
      root.classList.toggle('inside', view.id !== 'start');
      parts.forEach(function (part) {
        if (part.dataset.part === view.dataset.view) {
          part.setAttribute('aria-current', 'page');
          const row = part.closest('ul');
          row.scrollLeft = part.offsetLeft - (row.clientWidth - part.offsetWidth) / 2;
        } else {
          part.removeAttribute('aria-current');
        }
      });
      const heading = view.querySelector('h2');
      document.title = view.id === 'start' ? title : heading.textContent.trim() + ' – ' + title;
      return heading;
    }

    function focus(target) {
      if (!target.matches('[tabindex], a')) {
        target.setAttribute('tabindex', '-1');
      }
      target.focus({preventScroll: true});
    }

    // Marks what an address names, in the list and on the drawings.
    function mark(target) {
      marked.forEach(function (old) { old.classList.remove('here'); });
      marked = !target ? [] : [target].concat(
        Array.from(main.querySelectorAll('svg a[href="#' + CSS.escape(target.id) + '"]')));
      marked.forEach(function (it) { it.classList.add('here'); });
    }

    function address() {
      try {
        return decodeURIComponent(location.hash.slice(1));
      } catch (broken) {
        return location.hash.slice(1);
      }
    }

    // The part an address names: by its id, else by its label, however that is written.
    function named(wanted) {
      const exact = document.getElementById(wanted);
      if (exact) {
        return exact;
      }
      const key = bare(wanted.replace(/^[a-z]+\//, ''));
      const entry = key && entries.find(function (e) { return e.label === key; });
      return entry ? document.getElementById(entry.anchor) : null;
    }

    function search(text) {
      const view = document.getElementById('found');
      const arrives = !view.classList.contains('current');
      // What is being typed is ahead of the address, and a blank at its end belongs to it.
      if (!waiting && query.value.trim() !== text) {
        query.value = text;
      }
      clear.hidden = !text;
      mark(null);
      show(view);
      const found = find(text);
      const alike = found.length ? [] : near(text);
      list(found.length ? found : alike, alike.length > 0);
      if (arrives && window.scrollY > 0) {
        window.scrollTo(0, 0);
      }
    }

    // Goes where the address says. At the beginning the focus stays where it is, unless there is an
    // address to go to.
    function go(first) {
      const wanted = address();
      if (wanted.startsWith(FIND)) {
        search(wanted.slice(FIND.length));
        return;
      }
      const target = named(wanted || 'start');
      if (!target) {
        search(wanted.replace(/^[a-z]+\//, ''));
        return;
      }
      const view = target.closest('[data-view]');
      if (!view) {
        if (!first) {
          focus(target);
        }
        if (!main.querySelector('.current')) {
          show(document.getElementById('start'));
        }
        return;
      }
      query.value = '';
      clear.hidden = true;
      count.textContent = '';
      const heading = show(view);
      const drawn = target.closest('svg');
      mark(target === view ? null : drawn ? document.getElementById(hrefOf(target)) : target);
      if (!first || wanted) {
        settle(target, view, heading);
      }
      if (first && wanted) {
        // The browser goes to the address once more when all is loaded, and takes the focus away.
        window.addEventListener('load', function () {
          setTimeout(function () { settle(target, view, heading); });
        });
      }
    }

    function hrefOf(link) {
      return link.getAttribute('href').slice(1);
    }

    function settle(target, view, heading) {
      focus(target === view ? heading : target);
      if (target === view && window.innerHeight > LOW) {
        window.scrollTo(0, 0);
      } else if (target.closest('svg')) {
        target.closest('.plan').scrollIntoView({block: 'nearest'});
        target.scrollIntoView({block: 'center', inline: 'center'});
      } else {
        target.scrollIntoView({block: 'start'});
      }
    }

    query.addEventListener('input', function () {
      clearTimeout(waiting);
      waiting = setTimeout(function () {
        waiting = 0;
        const text = query.value.trim();
        const before = address();
        if (!text && begun && before.startsWith(FIND)) {
          begun = false;
          history.back();
        } else if (!text && main.querySelector('#found.current')) {
          location.replace('#start');
        } else if (before.startsWith(FIND)) {
          location.replace('#' + FIND + encodeURIComponent(text));
        } else if (text) {
          begun = true;
          location.hash = FIND + encodeURIComponent(text);
        }
      }, 60);
    });

    // Return goes to the only or the exact answer, else into the list.
    document.getElementById('search').addEventListener('submit', function (event) {
      event.preventDefault();
      clearTimeout(waiting);
      waiting = 0;
      const found = find(query.value);
      if (found.length === 1 || (found.length > 1 && found[0].worth === EXACT)) {
        location.hash = found[0].entry.anchor;
      } else {
        search(query.value.trim());
        (hits.querySelector('a') || query).focus();
      }
    });

    clear.addEventListener('click', function () {
      query.value = '';
      query.dispatchEvent(new Event('input'));
      query.focus();
    });

    // Enlarges a drawing, with what is marked on it in the middle of its frame.
    main.addEventListener('click', function (event) {
      const button = event.target.closest('.plan button');
      if (!button) {
        return;
      }
      const figure = button.closest('.plan');
      const sheet = figure.querySelector('.sheet');
      const large = figure.classList.toggle('large');
      const said = button.textContent;
      button.textContent = button.dataset.other;
      button.dataset.other = said;
      sheet.removeAttribute('tabindex');
      if (large) {
        sheet.tabIndex = 0;
        const at = figure.querySelector('.here') || figure.querySelector('svg');
        const it = at.getBoundingClientRect();
        const frame = sheet.getBoundingClientRect();
        sheet.scrollBy(
          it.left + it.width / 2 - frame.left - frame.width / 2,
          it.top + it.height / 2 - frame.top - frame.height / 2);
      }
      figure.scrollIntoView({block: 'nearest'});
    });

    query.addEventListener('focus', function () { query.select(); });

    // Arrows walk from the field into the list and through it.
    document.addEventListener('keydown', function (event) {
      const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
      const links = Array.from(hits.querySelectorAll('a'));
      const at = event.target === query ? -1 : links.indexOf(event.target);
      const inSearch = event.target === query || at >= 0;
      if (inSearch && event.key === 'Escape' && query.value) {
        event.preventDefault();
        clear.click();
      } else if (inSearch && step && document.getElementById('found').matches('.current')) {
        const next = at + step;
        if (next < 0) {
          query.focus();
        } else if (links[next]) {
          links[next].focus();
        }
        event.preventDefault();
      }
    });

    // The notes of a result stand as numbers; they are spelt out when the result is opened.
    document.addEventListener('toggle', function (event) {
      if (event.target.open) {
        spell(event.target);
      }
    }, true);

    function spell(result) {
      const notes = result.querySelector('p > small');
      if (!notes) {
        return;
      }
      const rows = new Map();
      (notes.textContent.match(/[0-9]+/g) || []).forEach(function (number) {
        const note = document.getElementById('note/' + number);
        const term = note.parentNode.dataset.term;
        const said = note.lastChild.textContent.trim();
        rows.set(term, rows.has(term) ? rows.get(term) + '; ' + said : said);
      });
      const list = document.createElement('dl');
      list.className = 'facts';
      rows.forEach(function (said, term) {
        const row = document.createElement('div');
        const name = document.createElement('dt');
        const value = document.createElement('dd');
        name.textContent = term;
        value.textContent = said;
        row.append(name, value);
        list.append(row);
      });
      notes.remove();
      result.append(list);
    }

    let closed = [];
    window.addEventListener('beforeprint', function () {
      closed = Array.from(main.querySelectorAll('.current details:not([open])'));
      closed.forEach(function (details) {
        details.open = true;
        spell(details);
      });
    });
    window.addEventListener('afterprint', function () {
      closed.forEach(function (details) { details.open = false; });
    });
    document.getElementById('print').addEventListener('click', function () { window.print(); });

    window.addEventListener('hashchange', function () { go(false); });
    go(true);
  }

  document.addEventListener('DOMContentLoaded', function () {
    try {
      start();
    } catch (broken) {
      // Better the whole page, unsorted, than none.
      root.classList.remove('js');
      throw broken;
    }
  });
})();
