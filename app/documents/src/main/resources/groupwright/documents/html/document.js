'use strict';
// What the reader can do with a document; without it the page is complete, in the document's order.
//
// The address keeps the state of the table that was touched last, so that a view of it can be linked to:
//   #TABLE?filter=WORDS&sort=COLUMN
// TABLE is the name of the table (table-3), WORDS are what each row shown must hold (percent-encoded), COLUMN counts
// from 1, with a minus behind it for the order from large to small. Either part may be left out.
(() => {
  const words = document.documentElement.dataset;
  const collator = new Intl.Collator(document.documentElement.lang, {numeric: true});
  const fill = (text, ...parts) => text.replace(/\{(\d)\}/g, (all, index) => parts[index]);
  const make = (name, properties, ...children) => {
    const element = Object.assign(document.createElement(name), properties);
    element.append(...children);
    return element;
  };

  // Typed text finds printed text: thin spaces in thousands, true minus, accents and capitals make no difference.
  const fold = text => text
    .replace(/(\d)[\u2009\u202f\u00a0](?=\d)/g, '$1').replace(/[\u2009\u202f\u00a0]/g, ' ').replace(/\u2212/g, '-')
    .normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

  // The first number of a text, whatever words stand before it; NaN where there is none.
  const numberIn = text => {
    const plain = words.decimal === ',' ? fold(text).replace(/,/g, '.') : fold(text);
    const found = plain.match(/(?<![\p{L}\d])[-+]?\d+(?:\.\d+)?/u);
    return found ? Number(found[0]) : NaN;
  };
  const onlyNumber = /^[^\p{L}\d]*\d+(?:[.,]\d+)?\P{N}*$/u;

  // What a cell is sorted by, and whether as a number: verdicts and bars carry a rank.
  const keysOf = (rows, column) => {
    const cells = rows.map(row => row.element.cells[column]);
    const filled = cells.filter(cell => cell && cell.textContent.trim());
    const ranked = cells.some(cell => cell?.querySelector('[data-rank]'));
    const numeric = filled.some(cell => cell.matches('.end') && !Number.isNaN(numberIn(cell.textContent)))
      || filled.length > 0 && filled.every(cell => onlyNumber.test(fold(cell.textContent)));
    return cells.map(cell => {
      if (ranked) return parseFloat(cell?.querySelector('[data-rank]')?.dataset.rank);
      const text = cell ? cell.textContent.trim() : '';
      return numeric ? numberIn(text) : text || NaN;
    });
  };

  // What has no key stands last in both directions; equal keys stay in the document's order.
  const ordered = (rows, column, direction) => {
    const keys = new Map(keysOf(rows, column).map((key, index) => [rows[index], key]));
    const compare = (one, other) => {
      const [a, b] = [keys.get(one), keys.get(other)];
      if (Number.isNaN(a) || Number.isNaN(b)) return Number.isNaN(a) - Number.isNaN(b);
      return direction * (typeof a === 'number' ? a - b : collator.compare(a, b));
    };
    return [...rows].sort(compare);
  };

  class Table {
    constructor(figure) {
      this.figure = figure;
      this.body = figure.querySelector('tbody');
      this.heads = [...figure.querySelector('thead tr').cells];
      this.rows = [...this.body.rows].map(element => ({
        element, text: fold([...element.cells].map(cell => cell.textContent).join(' ')),
      }));
      this.sort = {column: -1, direction: 1};
      const name = figure.querySelector('figcaption b')?.textContent;
      this.input = make('input', {type: 'search', autocomplete: 'off', spellcheck: false});
      this.input.setAttribute('aria-label', name ? fill(words.filterOf, name) : words.filter);
      this.input.addEventListener('input', () => this.changed());
      this.count = make('output', {});
      this.count.setAttribute('aria-live', 'polite');
      this.bar = make('div', {className: 'filter'}, make('label', {}, words.filter + ' ', this.input), this.count);
      figure.querySelector('.scroll').before(this.bar);
      this.heads.filter(head => head.textContent.trim()).forEach(head => {
        const button = make('button', {type: 'button', className: 'sorts'}, ...head.childNodes);
        button.addEventListener('click', () => this.sortBy(head.cellIndex));
        head.append(button);
      });
      this.show();
    }

    // Up, down, and back to the document's order.
    sortBy(column) {
      const {column: before, direction} = this.sort;
      if (before !== column) this.sort = {column, direction: 1};
      else this.sort = direction > 0 ? {column, direction: -1} : {column: -1, direction: 1};
      this.changed();
    }

    changed() {
      this.show();
      const state = [];
      if (this.input.value.trim()) state.push('filter=' + encodeURIComponent(this.input.value.trim()));
      if (this.sort.column >= 0) state.push('sort=' + (this.sort.column + 1) + (this.sort.direction < 0 ? '-' : ''));
      history.replaceState(null, '', '#' + this.figure.id + (state.length ? '?' + state.join('&') : ''));
    }

    restore(state) {
      this.input.value = state.get('filter') ?? '';
      const [, column, minus] = /^(\d+)(-?)$/.exec(state.get('sort') ?? '') ?? [];
      const known = this.heads[column - 1]?.querySelector('button');
      this.sort = {column: known ? column - 1 : -1, direction: minus ? -1 : 1};
      this.show();
    }

    show() {
      const wanted = fold(this.input.value).split(/\s+/).filter(word => word);
      const {column, direction} = this.sort;
      this.rows.forEach(row => { row.element.hidden = !wanted.every(word => row.text.includes(word)); });
      this.body.append(...(column < 0 ? this.rows : ordered(this.rows, column, direction)).map(row => row.element));
      this.heads.forEach((head, index) => {
        if (index !== column) head.removeAttribute('aria-sort');
        else head.setAttribute('aria-sort', direction > 0 ? 'ascending' : 'descending');
      });
      const shown = this.rows.filter(row => !row.element.hidden).length;
      this.count.textContent = fill(words.shown, shown, this.rows.length);
      this.bar.toggleAttribute('data-active', wanted.length > 0); // printed only then
    }
  }

  const tables = new Map([...document.querySelectorAll('[data-many]')].map(figure => [figure.id, new Table(figure)]));

  // Goes where the address points: into closed parts, into filtered tables.
  const follow = () => {
    const [, name, state] = /^#([^?]*)(?:\?(.*))?$/.exec(location.hash) ?? [];
    const target = name && document.getElementById(decodeURIComponent(name));
    if (!target) return;
    for (let part = target; part; part = part.parentElement) {
      if (part.matches('details')) part.open = true;
      if (part.matches('tr') && part.hidden) tables.get(part.closest('[data-many]').id).restore(new URLSearchParams());
    }
    if (state !== undefined) tables.get(target.id)?.restore(new URLSearchParams(state));
    target.scrollIntoView();
  };
  addEventListener('hashchange', follow);

  // A number says what it is while the pointer or the keyboard is on it; Escape puts the note away.
  const note = make('div', {id: 'note', hidden: true});
  note.setAttribute('role', 'tooltip');
  document.body.append(note);
  let noted = null;
  const hide = () => {
    noted?.removeAttribute('aria-describedby');
    noted = null;
    note.hidden = true;
  };
  const tell = number => {
    const entry = document.getElementById('n' + number.dataset.entry);
    if (!entry || noted === number) return;
    hide();
    noted = number;
    const texts = ['.title', '.value', '.band'].map(part => entry.querySelector(part)?.textContent).filter(text => text);
    note.replaceChildren(...texts.map((text, index) => make(index ? 'span' : 'b', {textContent: text})));
    note.hidden = false;
    number.setAttribute('aria-describedby', 'note');
    const at = number.getBoundingClientRect();
    const left = Math.max(8, Math.min(at.left, document.documentElement.clientWidth - note.offsetWidth - 8));
    const above = at.bottom + note.offsetHeight + 8 > innerHeight && at.top > note.offsetHeight + 8;
    Object.assign(note.style, {
      left: left + scrollX + 'px',
      top: scrollY + (above ? at.top - note.offsetHeight - 4 : at.bottom + 4) + 'px',
    });
  };
  const numberAt = event => event.target.closest?.('.number');
  document.addEventListener('pointerover', event => {
    if (numberAt(event)) tell(numberAt(event));
    else if (noted && !note.contains(event.target) && noted !== document.activeElement) hide();
  });
  document.addEventListener('focusin', event => numberAt(event) ? tell(numberAt(event)) : hide());
  document.addEventListener('focusout', hide);
  document.addEventListener('keydown', event => event.key === 'Escape' && hide());

  // The table of contents stands open beside the text and closed above it.
  const contents = document.querySelector('nav details');
  const narrow = matchMedia('(max-width: 70rem)');
  const settle = () => { contents.open = !narrow.matches; };
  narrow.addEventListener('change', settle);
  settle();

  // Paper shows every entry; afterwards those are closed again that were.
  let closed = [];
  addEventListener('beforeprint', () => {
    closed = [...document.querySelectorAll('.entry:not([open])')];
    closed.forEach(entry => { entry.open = true; });
  });
  addEventListener('afterprint', () => closed.forEach(entry => { entry.open = false; }));

  follow();
})();
