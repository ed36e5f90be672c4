// A mark place by place: a field a place, drawn from the mark's one line of text and written back into it. All of it happens in the
// browser; the page hears of it through the line, as if it had been typed there. How the line is read stands in MarkTyped.cs; a test
// holds the two together.
const NOTHING = '', UNREAD = '?', ANY = '*';
const signs = new Intl.Segmenter(undefined, { granularity: 'grapheme' });
const split = (text) => [...signs.segment(text)].map((each) => each.segment);

/** Lines of places of alternatives, '' for nothing; a place nobody could read has none. An empty last line is kept to type on. */
export function read(text) {
  const lines = [[]];
  let joins = false;
  const all = split(text);
  for (let i = 0; i < all.length; i += 1) {
    let one = all[i];
    const doubled = '/|_'.includes(one) && all[i + 1] === one;
    if (doubled) i += 1;
    const line = lines.at(-1);
    if (one === '|' && !doubled) { joins = line.length > 0; continue; }
    if (one === '/' && !doubled) { if (line.length) lines.push([]); joins = false; continue; }
    if (one === '_' && !doubled) one = NOTHING;
    const place = one === UNREAD || one === ' ' ? [] : [one];
    if (!joins) line.push(place);
    else if (place.length && !line.at(-1).includes(one)) line.at(-1).push(one);
    joins = false;
  }
  return lines;
}

const sign = (one) => (one === NOTHING ? '_' : '/|_'.includes(one) ? one + one : one);
const put = (place) => (place.length === 0 ? UNREAD : place.length === 1 && place[0] === NOTHING ? '?|_' : place.map(sign).join('|'));

/** The line of text for such lines; what was left empty in between falls away. */
export function write(lines) {
  return lines.filter((line, i) => line.length || (i > 0 && i === lines.length - 1)).map((line) => line.map(put).join('')).join('/');
}

const word = (one) => (one === NOTHING ? 'nothing' : one === ANY ? 'any number of places' : one);
const said = (place) => (place.length === 0 ? 'not read' : place.length === 1 && place[0] === NOTHING ? 'not read, or nothing' : place.map(word).join(' or '));
const shown = (place) => (place.length === 0 ? UNREAD : place[0] === NOTHING ? '∅' : place[0]);

/** Draws the places of one lattice and listens to them. */
export function open(root) {
  const field = root?.querySelector('.entry input:not([type=checkbox])');
  if (field && !root.lattice) root.lattice = new Lattice(root, field);
  // From here on its keys are heard; whoever drives the page can wait for it.
  if (root?.lattice) root.dataset.opened = '';
}

class Lattice {
  constructor(root, field) {
    Object.assign(this, { root, field, grid: root.querySelector('[data-grid]'), aloud: root.querySelector('[data-said]') });
    this.alike = new Map(root.dataset.alike.split(' ').map((each) => [each[0], each.slice(1)]));
    [this.line, this.place, this.joins, this.past] = [0, 0, false, []];
    field.addEventListener('input', () => { if (!this.writing) this.draw(); });
    // The page has taken what stood there, put a draft back, or weighs the alternatives otherwise.
    new MutationObserver(() => { if (!field.value) [this.line, this.place, this.past] = [0, 0, []]; this.draw(); }).observe(root, { attributes: true, attributeFilter: ['data-text', 'data-by-order'] });
    // Beside the places is meant as behind the last of them; nobody's typing is to become keys of the page.
    this.grid.addEventListener('pointerdown', (e) => {
      if (e.target.closest('.cell')) return;
      e.preventDefault();
      const row = [...this.grid.children].indexOf(e.target.closest('.cells'));
      this.go(row < 0 ? this.lines.length - 1 : row, Infinity);
    });
    this.grid.addEventListener('focusin', (e) => this.at(e.target));
    this.grid.addEventListener('keydown', (e) => this.key(e));
    this.grid.addEventListener('beforeinput', (e) => this.typed(e));
    // A keyboard that composes cannot be held back: what it put in is taken from the field.
    this.grid.addEventListener('input', (e) => { e.stopPropagation(); this.composed(e); });
    for (const button of root.querySelectorAll('[data-act]')) {
      button.addEventListener('pointerdown', (e) => e.preventDefault());
      button.addEventListener('click', () => { this.act(button.dataset.act); this.focus(); });
    }
    this.draw();
  }

  // ---- drawing
  draw() {
    const had = this.grid.contains(document.activeElement);
    this.lines = read(this.field.value);
    this.line = Math.min(this.line, this.lines.length - 1);
    this.place = Math.min(this.place, this.lines[this.line].length);
    this.fit(this.grid, this.lines.length, () => Object.assign(document.createElement('div'), { className: 'cells', role: 'row' }));
    this.lines.forEach((line, at) => {
      const row = this.grid.children[at];
      this.fit(row, line.length + 1, cell);
      for (let i = 0; i <= line.length; i += 1) this.cell(row.children[i], line[i], at, i);
    });
    // The place that held the keys may be gone with its mark: they go on at the one that is left.
    if (had && document.activeElement !== this.input()) this.focus();
  }

  fit(parent, count, make) {
    while (parent.children.length > count) parent.lastChild.remove();
    while (parent.children.length < count) parent.append(make());
  }

  cell(box, place, line, at) {
    const [others, input] = box.children;
    const here = line === this.line && at === this.place;
    const where = `${this.lines.length > 1 ? `line ${line + 1}, ` : ''}position ${at + 1}: `;
    box.className = !place ? 'cell end' : place.length === 1 && place[0] !== NOTHING ? 'cell' : 'cell open';
    set(input, 'aria-label', where + (place ? said(place) : 'free'));
    input.value = place ? shown(place) : '';
    input.tabIndex = here ? 0 : -1;
    if (here) {
      set(input, 'data-key', this.root.dataset.starts);
      set(input, 'data-says', this.root.dataset.startsSays);
    } else input.removeAttribute('data-key');
    const shares = place && place.length > 1 ? this.shares(place.length) : [];
    this.fit(others, shares.length, () => document.createElement('span'));
    shares.forEach((share, i) => { others.children[i].textContent = `${place[i] === NOTHING ? '∅' : place[i]} ${share.toFixed(2)}`; });
  }

  shares(count) {
    const weights = Array.from({ length: count }, (_, i) => (this.root.dataset.byOrder ? 0.5 ** i : 1));
    const all = weights.reduce((sum, each) => sum + each);
    return weights.map((each) => ((1 - Number(this.root.dataset.rest)) * each) / all);
  }

  // ---- where the keys go
  at(input) {
    const box = input.closest('.cell');
    if (!box) return;
    const row = box.parentElement;
    const before = this.input();
    [this.line, this.place] = [[...this.grid.children].indexOf(row), [...row.children].indexOf(box)];
    if (before !== input) this.draw();
    input.setSelectionRange(input.value.length, input.value.length);
  }

  input() { return this.grid.children[this.line]?.children[this.place]?.lastChild; }

  focus() { this.input()?.focus(); }

  go(line, place) {
    if (line < 0 || line >= this.lines.length) return;
    [this.line, this.place, this.joins] = [line, Math.max(0, Math.min(place, this.lines[line].length)), false];
    this.draw();
    this.focus();
  }

  // ---- what is done
  key(e) {
    if (e.isComposing) return;
    // As long as something was done here, it is what is taken back.
    if ((e.ctrlKey || e.metaKey) && e.key === 'z' && this.past.length) {
      e.preventDefault();
      [this.field.value, this.line, this.place] = this.past.pop();
      this.tell();
    }
    if (e.ctrlKey || e.metaKey) return;
    const here = this.lines[this.line];
    const act = {
      ArrowLeft: () => (this.place > 0 ? this.go(this.line, this.place - 1) : this.go(this.line - 1, Infinity)),
      ArrowRight: () => (this.place < here.length ? this.go(this.line, this.place + 1) : this.go(this.line + 1, 0)),
      Home: () => this.go(this.line, 0),
      End: () => this.go(this.line, Infinity),
      PageUp: () => this.go(this.line - 1, this.place),
      PageDown: () => this.go(this.line + 1, this.place),
      ArrowUp: () => this.act('first'),
      ArrowDown: () => this.act('other'),
      Insert: () => this.act('insert'),
      Backspace: () => this.act('back'),
      Delete: () => this.act('delete'),
      Enter: () => this.field.form.requestSubmit(),
    }[e.key];
    // The key's own letter, since Alt turns it into another sign on some keyboards.
    const alternative = e.altKey && /^(Key|Digit)/.test(e.code) ? e.code.at(-1) : null;
    if (!act && !alternative) return;
    if (e.altKey && !alternative) return;
    e.preventDefault();
    if (alternative) this.type('|' + alternative); else act();
  }

  typed(e) {
    if (e.isComposing || e.inputType === 'insertCompositionText') return;
    e.preventDefault();
    if (e.inputType.startsWith('insert') && e.data) this.type(e.data);
    else if (e.inputType === 'deleteContentBackward') this.act('back');
    else if (e.inputType === 'deleteContentForward') this.act('delete');
  }

  composed(e) {
    const place = this.lines[this.line][this.place];
    const had = place ? shown(place) : '';
    const text = e.target.value.startsWith(had) ? e.target.value.slice(had.length) : e.target.value;
    if (text) this.type(text); else this.draw();
  }

  // As the line reads: a sign into a free or unread place and on to the next; into a place that holds one, as an alternative, foremost where
  // it is one already.
  type(text) {
    const from = [this.line, this.place];
    for (const one of split(text)) {
      const line = this.lines[this.line];
      if (one === '/') { this.act('line'); continue; }
      if (one === '_') { this.act('nothing'); continue; }
      if (one === '|') { this.joins = true; continue; }
      const joined = this.joins && this.place > 0 && !line[this.place]?.length ? this.place - 1 : this.place;
      this.joins = false;
      this.changed = [this.line, joined];
      const place = line[joined];
      if (one === UNREAD || one === ' ') {
        line.splice(joined, 1, []);
        if (joined === this.place) this.place += 1;
      } else if (!place?.length) {
        line.splice(joined, 1, [one]);
        this.place += 1;
      } else if (place.includes(one)) {
        place.unshift(...place.splice(place.indexOf(one), 1));
      } else {
        place.push(one);
      }
    }
    this.store(from);
  }

  act(which) {
    const lines = this.lines;
    const line = lines[this.line];
    const place = line[this.place];
    const from = [this.line, this.place];
    this.changed = null;
    if (which === 'unread') { this.type(UNREAD); return; }
    if (which === 'nothing') {
      const meant = this.joins && !place && this.place > 0 ? line[this.place - 1] : place;
      this.joins = false;
      if (!meant) { line.push([NOTHING]); this.place += 1; }
      else if (meant.includes(NOTHING)) meant.splice(meant.indexOf(NOTHING), 1);
      else meant.push(NOTHING);
    } else if ((which === 'first' || which === 'other') && (place?.length || (!place && this.place > 0))) {
      // Right after a sign the cursor stands behind it, and the sign is meant.
      const meant = place?.length ? place : line[this.place - 1];
      if (!meant?.length) return;
      // The next of what the first is usually taken for; with all of them there, round again from the front.
      const next = which === 'other' ? [...(this.alike.get(meant[0].toUpperCase()) ?? '')].find((each) => !meant.includes(each)) : null;
      if (next) meant.push(next); else if (meant.length > 1) { if (which === 'first') meant.push(meant.shift()); else meant.unshift(meant.pop()); }
    } else if (which === 'insert') line.splice(this.place, 0, []);
    else if (which === 'delete' && place) line.splice(this.place, 1);
    else if (which === 'line') {
      if (!line.length) return;
      lines.splice(this.line + 1, 0, line.splice(this.place));
      if (line.length) [this.line, this.place] = [this.line + 1, 0];
    } else if (which === 'back') this.back(line, place);
    this.store(from);
  }

  // The last alternative goes; with the last one the place; from a free place, of the one before; at the beginning of a line, the line.
  back(line, place) {
    const at = place ? this.place : this.place - 1;
    if (at < 0) {
      if (this.line > 0) {
        const before = this.lines[this.line - 1];
        [this.line, this.place] = [this.line - 1, before.length];
        before.push(...this.lines.splice(this.line + 1, 1)[0]);
      }
    } else if (line[at].length > 1) line[at].pop();
    else {
      line.splice(at, 1);
      this.place = place ? Math.max(0, at - 1) : at;
    }
  }

  // The line is what counts: it is written, and the places are drawn from it again.
  store(from) {
    const text = write(this.lines);
    if (text !== this.field.value) this.past.push([this.field.value, ...from]);
    this.field.value = text;
    this.tell();
  }

  tell() {
    const [line, place] = [this.line, this.place];
    this.writing = true;
    this.field.dispatchEvent(new Event('input', { bubbles: true }));
    this.writing = false;
    [this.line, this.place] = [line, place];
    this.draw();
    if (this.grid.contains(document.activeElement)) this.focus();
    // Where the keys went on from it, the place itself is said; the one they are at now is said by being gone to.
    const [row, at] = this.changed ?? [this.line, this.place];
    this.aloud.textContent = this.grid.children[row]?.children[at]?.lastChild.getAttribute('aria-label') ?? '';
    this.changed = null;
  }
}

function cell() {
  const box = Object.assign(document.createElement('span'), { className: 'cell', role: 'gridcell' });
  const others = Object.assign(document.createElement('span'), { className: 'others' });
  others.setAttribute('aria-hidden', 'true');
  const input = document.createElement('input');
  for (const [name, value] of [['autocomplete', 'off'], ['autocapitalize', 'characters'], ['spellcheck', 'false'], ['enterkeyhint', 'done']]) input.setAttribute(name, value);
  box.append(others, input);
  return box;
}

function set(el, name, value) { if (el.getAttribute(name) !== value) el.setAttribute(name, value); }
