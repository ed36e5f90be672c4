// One picture: panned, zoomed, pointed at by mouse, finger or keyboard. Its pixels (picture-tiles.js) lie on a canvas; spots, scales and
// lengths (picture-marks.js) on an SVG above it. What is drawn comes from the page through show(); what is done here goes back as few
// calls. Nothing is stored here but the points of an unfinished act, which outlive a dropped connection.
import { el, measure, bar, landmark, target, labels } from './picture-marks.js';
import { Tiles } from './picture-tiles.js';

// Px of the screen: how near a press is meant for a handle, a step of the crosshair, the narrowest line that can be typed on.
const NEAR = 16, STEP = 8, NARROWEST = 240;

// Quarter turns clockwise, of a step from one place to another.
const turned = (x, y, quarters) => [[x, y], [-y, x], [-x, -y], [y, -x]][quarters & 3];

/** Opens a picture in `stage`. `page` hears Points(tool, numbers), Moved(id, x, y), Picked(id), Viewed(x, y, width). */
export function open(stage, page, options) {
  // The page may have taken the stage away before this was called: then there is nothing to open.
  if (!stage?.isConnected) return null;
  return new Viewer(stage, page, options);
}

class Viewer {
  constructor(stage, page, options) {
    // Height of a label with its words; the presenter's letters are larger.
    this.tall = stage.closest('.present') ? 48 : 34;
    Object.assign(this, { stage, page, ...options });
    this.canvas = stage.appendChild(document.createElement('canvas'));
    this.svg = stage.appendChild(el('svg', { 'aria-hidden': 'true' }));
    this.pin = stage.parentElement.querySelector('[data-pin]');
    this.said = stage.parentElement.querySelector('[data-where]');
    this.overlay = { spots: [], lines: [], marks: [] };
    [this.tool, this.most, this.points, this.grabbed] = ['look', 0, [], null];
    this.pointers = new Map();
    this.cross = null;
    this.gone = new AbortController();
    this.quarters = this.keptTurn();
    this.tiles = new Tiles(stage, this, this.gone.signal, () => this.draw());
    const on = (target, name, then, more = {}) => target.addEventListener(name, then, { signal: this.gone.signal, ...more });
    // Every window of the picture is turned with it, the presenter's too.
    on(window, 'storage', (e) => { if (e.key === this.turnName()) this.turnTo(this.keptTurn()); });
    if (!this.quiet) {
      on(stage, 'pointerdown', (e) => this.down(e));
      on(stage, 'pointermove', (e) => this.move(e));
      for (const end of ['pointerup', 'pointercancel']) on(stage, end, (e) => this.up(e));
      on(stage, 'pointerleave', () => { this.over = null; });
      on(stage, 'wheel', (e) => { e.preventDefault(); this.zoom(2 ** (-e.deltaY / (e.deltaMode ? 12 : 320)), ...this.place(e)); }, { passive: false });
      on(stage, 'keydown', (e) => this.key(e));
      on(this.pin, 'keydown', (e) => {
        if (e.key !== 'Escape') return;
        e.preventDefault();
        this.goOn();
        this.tellPoints();
      });
      on(stage.parentElement, 'click', (e) => { const act = e.target.closest?.('[data-view]')?.dataset.view; if (act) this[act](); });
    }
    this.sizes = new ResizeObserver(() => this.sized());
    this.sizes.observe(stage);
    this.sized();
    this.tiles.load();
    // The line to type on comes from the page after its point, and grows with what is wrong with it.
    if (this.pin) { this.lines = new ResizeObserver(() => this.box && this.placePin()); this.lines.observe(this.pin); }
  }

  // ---- what the page says
  sharpen() { this.tiles.sharpen(); }

  // What was found is asked about under the picture in a narrow window, above it in a wide one: whichever is first comes to the top where both are not in sight.
  stand() {
    const asks = this.stage.closest('.bench')?.querySelector('.found-scale');
    const [first, last] = matchMedia('(max-width: 62rem)').matches ? [this.stage, asks] : [asks, this.stage];
    if (last?.getBoundingClientRect().bottom > innerHeight - 64 || first?.getBoundingClientRect().bottom > last?.getBoundingClientRect().top) first?.scrollIntoView({ block: 'start' });
  }

  show(overlay) { this.overlay = overlay; this.draw(); }

  use(tool, most) {
    if (this.tool === tool && this.most === most) return;
    [this.tool, this.most, this.grabbed, this.points] = [tool, most, null, []];
    this.remember();
    this.stage.dataset.tool = tool;
    this.draw();
  }

  // What was begun before the page was loaded again: its tool and points, once.
  resume() {
    try {
      const [tool, points, coarse = 1] = JSON.parse(sessionStorage.getItem(this.held()) ?? '[]');
      const most = { point: 1, landmark: 1, scale: 2, length: 2, body: 3, box: 2, shape: 40 }[tool];
      if (!most || !Array.isArray(points) || points.length > most || !points.flat().every(Number.isFinite)) return null;
      [this.tool, this.most, this.points, this.coarse] = [tool, most, points, coarse];
      this.stage.dataset.tool = tool;
      this.draw();
      return { tool, numbers: points.flat(), coarse };
    } catch { return null; /* nothing kept */ }
  }

  type() {
    const field = this.pin?.querySelector('input');
    if (!field) return;
    // In its place first: whoever is led to a line that still stands under the picture has the page scroll there.
    this.placePin();
    // A browser by itself brings a line that was out of sight to the middle of the window, and leads the picture it is about out of it.
    field.focus({ preventScroll: true });
    for (const el of [this.pin, field]) el.scrollIntoView({ block: 'nearest' });
    if (this.early) { field.value = this.early + field.value; field.dispatchEvent(new Event('input', { bubbles: true })); }
    this.early = null;
  }

  // Once it is stored, the keys go on from there.
  goOn() {
    // Emptied before the page takes the line away, or it would come back as a draft at the next point.
    for (const field of this.pin?.querySelectorAll('[data-draft]') ?? []) field.value = '';
    this.clear();
    this.stage.focus({ preventScroll: true });
    // The next act begins in the picture: it comes back into sight where a line under it, or a long list beside it, led away.
    this.stage.scrollIntoView({ block: 'nearest' });
  }

  clear() { [this.points, this.grabbed, this.early] = [[], null, null]; this.remember(); this.draw(); }

  look(x, y, width) {
    if (!(width > 0) || !this.box) return;
    this.scale = this.box.width / width;
    [this.x, this.y, this.touched] = [x, y, true];
    this.draw();
  }

  // Brings a place into view when it is out of it.
  reach(x, y) {
    if (this.inView(x, y)) return;
    [this.x, this.y, this.touched] = [x, y, true];
    this.draw();
    this.tell();
  }

  // The page may go away while it is asked; then nobody is left to be told, and nothing is wrong.
  ask(what, ...about) {
    if (this.gone.signal.aborted) return;
    this.page.invokeMethodAsync(what, ...about).catch((trouble) => { if (this.stage.isConnected && !this.gone.signal.aborted) throw trouble; });
  }

  close() { this.gone.abort(); clearTimeout(this.telling); this.sizes.disconnect(); this.lines?.disconnect(); this.canvas.remove(); this.svg.remove(); }

  // ---- points of an unfinished act
  held() { return `points:${location.pathname}`; }

  remember() {
    try {
      if (this.points.length) sessionStorage.setItem(this.held(), JSON.stringify([this.tool, this.points, this.coarse ?? 1]));
      else sessionStorage.removeItem(this.held());
    } catch { /* refused: the points then last as long as the page */ }
  }

  tellPoints() { this.ask('Points', this.tool, this.points.flat(), this.coarse ?? 1); }

  set(x, y) {
    x = Math.min(this.width, Math.max(0, Math.round(x * 100) / 100));
    y = Math.min(this.height, Math.max(0, Math.round(y * 100) / 100));
    if (this.tool === 'move') {
      if (this.grabbed) { this.ask('Moved', this.grabbed.id, x, y); this.grabbed = null; }
      else {
        this.grabbed = this.near(x, y);
        this.ask('Grabbed', this.grabbed?.id ?? '');
      }
      this.draw();
      return;
    }
    const spot = this.most <= 1 && this.tool !== 'landmark' && !this.points.length ? this.near(x, y, true) : null;
    if (spot) { this.ask('Picked', spot.id); return; }
    if (!this.most) { this.ask('Picked', ''); return; }
    if (this.points.length >= this.most) this.points = [];
    this.points.push([x, y]);
    // A hand sets a point to the pixel of the screen, which seen from afar is several of the picture.
    this.coarse = Math.max(this.points.length > 1 ? this.coarse ?? 1 : 0, 1 / this.scale);
    // Who types at once should not press keys of the page while the line is still on its way.
    this.early = this.points.length >= (this.tool === 'shape' ? 3 : this.most) ? '' : null;
    this.remember();
    this.draw();
    this.tellPoints();
  }

  back() {
    if (this.grabbed) this.grabbed = null;
    else if (this.points.length) { this.points.pop(); this.early = null; this.remember(); this.tellPoints(); }
    this.draw();
  }

  // ---- where things are
  sized() {
    const box = this.stage.getBoundingClientRect();
    if (!box.width || !box.height) return;
    this.box = box;
    const ratio = window.devicePixelRatio || 1;
    this.canvas.width = Math.round(box.width * ratio);
    this.canvas.height = Math.round(box.height * ratio);
    this.svg.setAttribute('viewBox', `0 0 ${box.width} ${box.height}`);
    this.ratio = ratio;
    if (!this.touched) this.fit(); else this.draw();
  }

  fit() {
    if (!this.box) return;
    // Room for the labels at both sides where the window has it.
    const margin = this.box.width > 560 ? 110 : 8;
    const [wide, high] = this.quarters & 1 ? [this.height, this.width] : [this.width, this.height];
    this.least = Math.min((this.box.width - 2 * margin) / wide, (this.box.height - 16) / high);
    [this.scale, this.x, this.y, this.touched] = [this.least, this.width / 2, this.height / 2, false];
    this.draw();
    this.tell();
  }

  // A picture taken upside down is looked at the right way round: the view turns, its pixels and what was noted in them do not.
  turnName() { return `turn:${this.sha256}`; }

  keptTurn() {
    try { return Number(localStorage.getItem(this.turnName())) & 3; } catch { return 0; /* refused: it lies as it was taken */ }
  }

  quarter() {
    this.turnTo((this.quarters + 1) & 3);
    try { localStorage.setItem(this.turnName(), this.quarters); } catch { /* refused: as long as the page */ }
  }

  turnTo(quarters) {
    this.quarters = quarters;
    if (this.touched) this.draw(); else this.fit();
  }

  larger() { this.zoom(1.5); }
  smaller() { this.zoom(1 / 1.5); }

  // What one looks at stays where it is: under the mouse, at the crosshair, at the selected spot where that is in view, else the middle.
  about() {
    if (this.over) return this.place(this.over);
    if (this.cross) return this.cross;
    const chosen = this.overlay.spots.find((s) => s.on);
    return chosen && this.inView(chosen.x, chosen.y) ? [chosen.x, chosen.y] : [this.x, this.y];
  }

  inView(x, y) {
    const [sx, sy] = this.on(x, y);
    return sx >= 0 && sy >= 0 && sx <= this.box.width && sy <= this.box.height;
  }

  zoom(by, ...at) {
    const [x, y] = at.length ? at : this.about();
    const next = Math.min(40, Math.max(this.least / 2, this.scale * by));
    const keep = this.scale / next;
    [this.x, this.y, this.scale, this.touched] = [x + (this.x - x) * keep, y + (this.y - y) * keep, next, true];
    this.draw();
    this.tell();
  }

  tell() {
    clearTimeout(this.telling);
    if (this.quiet) return;
    this.telling = setTimeout(() => this.box && this.ask('Viewed', this.x, this.y, this.touched ? this.box.width / this.scale : 0), 200);
  }

  on(x, y) {
    const [dx, dy] = turned((x - this.x) * this.scale, (y - this.y) * this.scale, this.quarters);
    return [dx + this.box.width / 2, dy + this.box.height / 2];
  }

  // A step on the screen as one of the picture.
  step(dx, dy) { return turned(dx / this.scale, dy / this.scale, -this.quarters); }

  place(e) {
    const box = this.stage.getBoundingClientRect();
    const [dx, dy] = this.step(e.clientX - box.left - box.width / 2, e.clientY - box.top - box.height / 2);
    return [dx + this.x, dy + this.y];
  }

  near(x, y, spotsOnly = false) {
    const handles = this.overlay.spots.filter((s) => spotsOnly || !s.id.startsWith('outlined:')).map((s) => ({ id: s.id, x: s.x, y: s.y }));
    if (!spotsOnly) for (const m of this.overlay.marks) if (m.sort !== 'ghost' && m.sort !== 'found') handles.push({ id: m.id, x: m.x, y: m.y });
    if (!spotsOnly) for (const l of this.overlay.lines) if (l.sort !== 'read' && !l.sort.endsWith('box')) handles.push({ id: `${l.id}:from`, x: l.x1, y: l.y1 }, { id: `${l.id}:to`, x: l.x2, y: l.y2 });
    let [best, found] = [NEAR / this.scale, null];
    for (const h of handles) {
      const far = Math.hypot(h.x - x, h.y - y);
      if (far <= best) [best, found] = [far, h];
    }
    return found;
  }

  // ---- mouse and fingers
  down(e) {
    if (e.button) return;
    this.stage.setPointerCapture(e.pointerId);
    this.stage.focus({ preventScroll: true });
    this.cross = null;
    this.pointers.set(e.pointerId, e);
    this.still = this.pointers.size === 1;
    this.dragged = this.tool === 'move' && this.still ? this.near(...this.place(e)) : null;
  }

  move(e) {
    this.over = e.pointerType === 'touch' ? null : { clientX: e.clientX, clientY: e.clientY };
    // A box is seen before its second corner is set.
    if (this.tool === 'box' && this.points.length === 1) this.draw();
    const before = this.pointers.get(e.pointerId);
    if (!before) return;
    const others = [...this.pointers.values()].filter((p) => p.pointerId !== e.pointerId);
    if (this.still && Math.hypot(e.clientX - before.clientX, e.clientY - before.clientY) < 5) return;
    this.still = false;
    this.pointers.set(e.pointerId, e);
    if (this.dragged) { this.dragging = this.place(e); this.draw(); return; }
    if (others.length) {
      const gap = (a, b) => Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);
      const middle = { clientX: (e.clientX + others[0].clientX) / 2, clientY: (e.clientY + others[0].clientY) / 2 };
      this.zoom(gap(e, others[0]) / Math.max(1, gap(before, others[0])), ...this.place(middle));
    }
    const share = 1 / (1 + others.length);
    const [dx, dy] = this.step(e.clientX - before.clientX, e.clientY - before.clientY);
    [this.x, this.y] = [this.x - dx * share, this.y - dy * share];
    this.touched = true;
    this.draw();
    this.tell();
  }

  up(e) {
    if (!this.pointers.delete(e.pointerId)) return;
    if (e.type === 'pointerup') {
      if (this.dragged && this.dragging) {
        const [x, y] = this.dragging;
        this.ask('Moved', this.dragged.id, Math.min(this.width, Math.max(0, x)), Math.min(this.height, Math.max(0, y)));
      } else if (this.still) this.set(...this.place(e));
    }
    [this.dragged, this.dragging, this.still] = [null, null, false];
    this.draw();
  }

  // ---- keyboard: a crosshair stands for the pointer
  key(e) {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    if (typeof this.early === 'string' && (e.key.length === 1 || (e.key === 'Backspace' && this.early))) {
      this.early = e.key.length === 1 ? this.early + e.key : this.early.slice(0, -1);
      e.preventDefault();
      e.stopPropagation();
      return;
    }
    const far = e.shiftKey ? 1 : STEP;
    const go = { ArrowLeft: [-far, 0], ArrowRight: [far, 0], ArrowUp: [0, -far], ArrowDown: [0, far] }[e.key];
    if (go) {
      // From here the crosshair stands for the pointer, until the mouse moves again.
      this.over = null;
      this.cross ??= [Math.min(this.width, Math.max(0, this.x)), Math.min(this.height, Math.max(0, this.y))];
      const [dx, dy] = this.step(...go);
      this.cross = [Math.min(this.width, Math.max(0, this.cross[0] + dx)), Math.min(this.height, Math.max(0, this.cross[1] + dy))];
      this.follow();
    } else if (e.key === 'Enter' || e.key === ' ') {
      this.cross ??= [this.x, this.y];
      this.set(...this.cross);
    } else if (e.key === 'Escape' || e.key === 'Backspace') {
      if (!this.points.length && !this.grabbed) return;
      this.back();
    } else return;
    e.preventDefault();
    e.stopPropagation();
    this.draw();
  }

  // The view goes along when the crosshair nears its edge.
  follow() {
    const [cx, cy] = this.on(...this.cross);
    const edge = 24;
    const beyond = (at, size) => Math.min(0, at - edge) || Math.max(0, at - (size - edge));
    const [dx, dy] = [beyond(cx, this.box.width), beyond(cy, this.box.height)];
    const [px, py] = this.step(dx, dy);
    if (dx || dy) { this.x += px; this.y += py; this.touched = true; this.tell(); }
    clearTimeout(this.saying);
    this.saying = setTimeout(() => {
      if (!this.cross || !this.said) return;
      const spot = this.near(...this.cross, true);
      const name = spot && this.overlay.spots.find((s) => s.id === spot.id)?.name;
      this.said.textContent = `${Math.round(this.cross[0])}, ${Math.round(this.cross[1])} px${name ? `, at ${name}` : ''}`;
    }, 120);
  }

  // ---- drawing, at most once a frame
  draw() {
    if (this.drawing || !this.box) return;
    this.drawing = requestAnimationFrame(() => { this.drawing = 0; if (!this.gone.signal.aborted) { this.paint(); this.mark(); } });
  }

  paint() {
    const g = this.canvas.getContext('2d');
    g.setTransform(1, 0, 0, 1, 0, 0);
    g.clearRect(0, 0, this.canvas.width, this.canvas.height);
    g.setTransform(this.ratio, 0, 0, this.ratio, 0, 0);
    // The tiles know of no turn: they are laid out flat, and the pen is turned about the middle.
    const { x, y, scale, ratio, quarters } = this;
    const box = quarters & 1 ? { width: this.box.height, height: this.box.width } : this.box;
    g.translate(this.box.width / 2, this.box.height / 2);
    g.rotate((quarters * Math.PI) / 2);
    g.translate(-box.width / 2, -box.height / 2);
    this.tiles.paint(g, { x, y, scale, ratio, box, on: (px, py) => [(px - x) * scale + box.width / 2, (py - y) * scale + box.height / 2] });
  }

  mark() {
    const out = [];
    const worded = [];
    for (const l of this.overlay.lines) {
      const [[x1, y1], [x2, y2]] = [this.seen(`${l.id}:from`, l.x1, l.y1), this.seen(`${l.id}:to`, l.x2, l.y2)];
      out.push(...measure(x1, y1, x2, y2, l.sort, l.words, l.on, worded, this.box));
    }
    for (const m of this.overlay.marks) out.push(...landmark(...this.seen(m.id, m.x, m.y), m.sort, m.name, m.reach * this.scale));
    out.push(...labels(this.box, this.overlay.spots.map((s) => ({ s, at: this.seen(s.id, s.x, s.y) })), this.tall));
    out.push(...bar(this.box, this.overlay.pxPerMm * this.scale, this.overlay.doubt, (this.quarters & 1 ? this.height : this.width) * this.scale));
    const path = this.tool === 'box' ? this.corners() : this.points;
    for (let i = 1; i < path.length; i += 1) {
      const [a, b] = [this.on(...path[i - 1]), this.on(...path[i])];
      out.push(...measure(...a, ...b, this.tool === 'box' ? 'pending box' : 'pending', '', true));
    }
    for (const p of this.points) out.push(...target(...this.on(...p), 'pending'));
    if (this.grabbed) out.push(...target(...this.on(this.grabbed.x, this.grabbed.y), 'pending'));
    if (this.cross) out.push(...target(...this.on(...this.cross), 'cross'));
    this.svg.replaceChildren(...out);
    this.placePin();
  }

  // A box by two corners that lie across from one another, the second one where the pointer or the crosshair is as long as it is not set.
  corners() {
    const [a, b = this.cross ?? (this.over ? this.place(this.over) : null)] = this.points;
    return a && b ? [a, [b[0], a[1]], b, [a[0], b[1]], a] : [];
  }

  seen(id, x, y) { return this.dragging && this.dragged?.id === id ? this.on(...this.dragging) : this.on(x, y); }

  // The line to type on stands beside what was set, never over it; where there is no room for that, and on a narrow window, under the picture.
  placePin() {
    if (!this.pin || !this.box) return;
    this.pin.style.left = this.pin.style.top = this.pin.style.width = '';
    this.pin.classList.toggle('beside', this.points.length > 0 && this.box.width > 560);
    if (!this.pin.classList.contains('beside')) return;
    const set = this.points.map((p) => this.on(...p));
    // Three corners of a body stand for four.
    if (this.tool === 'body' && set.length === 3) set.push([set[0][0] + set[2][0] - set[1][0], set[0][1] + set[2][1] - set[1][1]]);
    const [xs, ys] = [set.map((p) => p[0]), set.map((p) => p[1])];
    const [left, top, right, bottom] = [Math.min(...xs) - 18, Math.min(...ys) - 18, Math.max(...xs) + 18, Math.max(...ys) + 18];
    const within = (at, size, most) => Math.max(4, Math.min(most - size - 4, at));
    const [x, y] = this.on(...this.points.at(-1));
    const free = () => {
      const [w, h] = [this.pin.offsetWidth, this.pin.offsetHeight];
      return [
        [right, within(y + 18, h, this.box.height)], [left - w, within(y + 18, h, this.box.height)],
        [within(x + 18, w, this.box.width), bottom], [within(x + 18, w, this.box.width), top - h],
      ].find(([px, py]) => px >= 4 && py >= 4 && px + w <= this.box.width - 4 && py + h <= this.box.height - 4);
    };
    let place = free();
    // Narrower beside it rather than under the picture, which makes the page jump.
    for (const room of [this.box.width - right - 4, left - 4].sort((a, b) => b - a)) {
      if (place || room < NARROWEST) break;
      this.pin.style.width = `${Math.min(room, this.pin.offsetWidth)}px`;
      place = free();
    }
    if (place) { [this.pin.style.left, this.pin.style.top] = place.map((at) => `${at}px`); return; }
    this.pin.style.width = '';
    this.pin.classList.remove('beside');
  }
}
