// One picture: panned, zoomed, pointed at by mouse, finger or keyboard. Tiles go on a canvas; spots, scales and lengths on an SVG above
// it. What is drawn comes from the page through show(); what is done here goes back as few calls. Nothing is stored here but the
// points of an unfinished act, which outlive a dropped connection.
const SVG = 'http://www.w3.org/2000/svg';
const NEAR = 16, STEP = 8, KEEP = 300;
const el = (name, attributes = {}, text = '') => {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text) made.textContent = text;
  return made;
};

/** Opens a picture in `stage`. `page` hears Points(tool, numbers), Moved(id, x, y), Picked(id), Viewed(x, y, width). */
export function open(stage, page, options) {
  // The page may have taken the stage away before this was called: then there is nothing to open.
  if (!stage?.isConnected) return null;
  const viewer = new Viewer(stage, page, options);
  viewer.load();
  return viewer;
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
    this.tiles = new Map();
    this.overlay = { spots: [], lines: [], marks: [] };
    [this.tool, this.most, this.points, this.grabbed] = ['look', 0, [], null];
    this.pointers = new Map();
    this.cross = null;
    this.gone = new AbortController();
    const on = (target, name, then, more = {}) => target.addEventListener(name, then, { signal: this.gone.signal, ...more });
    if (!this.quiet) {
      on(stage, 'pointerdown', (e) => this.down(e));
      on(stage, 'pointermove', (e) => this.move(e));
      for (const end of ['pointerup', 'pointercancel']) on(stage, end, (e) => this.up(e));
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
    // The line to type on comes from the page after its point, and grows with what is wrong with it.
    if (this.pin) { this.lines = new ResizeObserver(() => this.box && this.placePin()); this.lines.observe(this.pin); }
  }

  async load() {
    // A small whole picture at once; tiles when their pyramid stands, which takes seconds for a large one the first time.
    if (this.thumbs) this.picture(`/thumbs/${this.sha256}/1280`, (image) => { this.whole = image; });
    else this.picture(`/files/${this.sha256}`, (image) => { this.whole = image; });
    this.sized();
    if (!this.whole) {
      this.waits = this.stage.appendChild(document.createElement('p'));
      this.waits.className = 'waits';
      this.waits.textContent = 'Making the picture small enough to show; a large one takes a few seconds.';
    }
    if (!this.thumbs) return;
    try {
      const answer = await fetch(`/tiles/${this.sha256}`, { signal: this.gone.signal });
      if (answer.ok) this.levels = await answer.json();
    } catch { /* left before it was there, or no connection: the small picture stays */ }
    this.draw();
  }

  picture(address, then) {
    const image = new Image();
    image.onload = () => { this.waits?.remove(); then(image); this.draw(); };
    image.onerror = () => { if (this.waits) this.waits.textContent = 'The picture could not be shown. Load the page again.'; };
    image.src = address;
  }

  // ---- what the page says
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
      const most = { point: 1, landmark: 1, scale: 2, length: 2, body: 3 }[tool];
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
    field.focus();
    if (this.early) { field.value = this.early + field.value; field.dispatchEvent(new Event('input', { bubbles: true })); }
    this.early = null;
  }

  // Once it is stored, the keys go on from there.
  goOn() {
    // Emptied before the page takes the line away, or it would come back as a draft at the next point.
    for (const field of this.pin?.querySelectorAll('[data-draft]') ?? []) field.value = '';
    this.clear();
    this.stage.focus({ preventScroll: true });
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
    const [sx, sy] = this.on(x, y);
    if (sx >= 0 && sy >= 0 && sx <= this.box.width && sy <= this.box.height) return;
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
    this.early = this.points.length === this.most ? '' : null;
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
    this.least = Math.min((this.box.width - 2 * margin) / this.width, (this.box.height - 16) / this.height);
    [this.scale, this.x, this.y, this.touched] = [this.least, this.width / 2, this.height / 2, false];
    this.draw();
    this.tell();
  }

  larger() { this.zoom(1.5); }
  smaller() { this.zoom(1 / 1.5); }

  zoom(by, x = this.cross?.[0] ?? this.x, y = this.cross?.[1] ?? this.y) {
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

  on(x, y) { return [(x - this.x) * this.scale + this.box.width / 2, (y - this.y) * this.scale + this.box.height / 2]; }

  place(e) {
    const box = this.stage.getBoundingClientRect();
    return [(e.clientX - box.left - box.width / 2) / this.scale + this.x, (e.clientY - box.top - box.height / 2) / this.scale + this.y];
  }

  near(x, y, spotsOnly = false) {
    const handles = this.overlay.spots.map((s) => ({ id: s.id, x: s.x, y: s.y }));
    if (!spotsOnly) for (const m of this.overlay.marks) if (m.sort !== 'ghost') handles.push({ id: m.id, x: m.x, y: m.y });
    if (!spotsOnly) for (const l of this.overlay.lines) handles.push({ id: `${l.id}:from`, x: l.x1, y: l.y1 }, { id: `${l.id}:to`, x: l.x2, y: l.y2 });
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
    this.x -= ((e.clientX - before.clientX) / this.scale) * share;
    this.y -= ((e.clientY - before.clientY) / this.scale) * share;
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
    const step = (e.shiftKey ? 1 : STEP) / this.scale;
    const go = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[e.key];
    if (go) {
      this.cross ??= [Math.min(this.width, Math.max(0, this.x)), Math.min(this.height, Math.max(0, this.y))];
      this.cross = [Math.min(this.width, Math.max(0, this.cross[0] + go[0] * step)), Math.min(this.height, Math.max(0, this.cross[1] + go[1] * step))];
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
    if (dx || dy) { this.x += dx / this.scale; this.y += dy / this.scale; this.touched = true; this.tell(); }
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
    const [left, top] = this.on(0, 0);
    g.imageSmoothingEnabled = this.scale < 3;
    if (this.whole) g.drawImage(this.whole, left, top, this.width * this.scale, this.height * this.scale);
    if (!this.levels) return;
    const topLevel = this.levels.levels - 1;
    const level = Math.max(0, Math.min(topLevel, topLevel + Math.ceil(Math.log2(this.scale * this.ratio) - 0.3)));
    // The thumbnail is as good as the coarse levels.
    if (this.whole && this.width / 2 ** (topLevel - level) <= this.whole.naturalWidth && this.height / 2 ** (topLevel - level) <= this.whole.naturalHeight) return;
    const [size, overlap, shrink] = [this.levels.tileSize, this.levels.overlap, 2 ** (topLevel - level)];
    const across = Math.ceil(Math.ceil(this.width / shrink) / size), down = Math.ceil(Math.ceil(this.height / shrink) / size);
    const at = (px) => Math.floor(px / shrink / size);
    const [w, h] = [this.box.width / this.scale / 2, this.box.height / this.scale / 2];
    for (let ty = Math.max(0, at(this.y - h)); ty <= Math.min(down - 1, at(this.y + h)); ty += 1) {
      for (let tx = Math.max(0, at(this.x - w)); tx <= Math.min(across - 1, at(this.x + w)); tx += 1) {
        const image = this.tile(level, tx, ty);
        if (!image) continue;
        const [ox, oy] = [tx ? tx * size - overlap : 0, ty ? ty * size - overlap : 0];
        const s = shrink * this.scale;
        g.drawImage(image, left + ox * s, top + oy * s, image.naturalWidth * s, image.naturalHeight * s);
      }
    }
  }

  tile(level, x, y) {
    const key = `${level}/${x}/${y}`;
    const known = this.tiles.get(key);
    if (known !== undefined) {
      // Last used, last thrown away.
      this.tiles.delete(key);
      this.tiles.set(key, known);
      return known;
    }
    this.tiles.set(key, null);
    this.picture(`/tiles/${this.sha256}/${key}`, (image) => this.tiles.set(key, image));
    while (this.tiles.size > KEEP) this.tiles.delete(this.tiles.keys().next().value);
    return null;
  }

  mark() {
    const out = [];
    this.worded = [];
    for (const l of this.overlay.lines) {
      const [[x1, y1], [x2, y2]] = [this.seen(`${l.id}:from`, l.x1, l.y1), this.seen(`${l.id}:to`, l.x2, l.y2)];
      out.push(...this.measure(x1, y1, x2, y2, l.sort, l.words, l.on));
    }
    for (const m of this.overlay.marks) out.push(...this.landmark(...this.seen(m.id, m.x, m.y), m));
    out.push(...this.labels());
    out.push(...this.bar());
    for (let i = 1; i < this.points.length; i += 1) {
      const [a, b] = [this.on(...this.points[i - 1]), this.on(...this.points[i])];
      out.push(...this.measure(...a, ...b, 'pending', '', true));
    }
    for (const p of this.points) out.push(...this.target(...this.on(...p), 'pending'));
    if (this.grabbed) out.push(...this.target(...this.on(this.grabbed.x, this.grabbed.y), 'pending'));
    if (this.cross) out.push(...this.target(...this.on(...this.cross), 'cross'));
    this.svg.replaceChildren(...out);
    this.placePin();
  }

  seen(id, x, y) { return this.dragging && this.dragged?.id === id ? this.on(...this.dragging) : this.on(x, y); }

  measure(x1, y1, x2, y2, sort, words, on) {
    const long = Math.hypot(x2 - x1, y2 - y1) || 1;
    const [nx, ny] = [(-(y2 - y1) / long) * 6, ((x2 - x1) / long) * 6];
    const d = `M${x1} ${y1}L${x2} ${y2}M${x1 - nx} ${y1 - ny}L${x1 + nx} ${y1 + ny}M${x2 - nx} ${y2 - ny}L${x2 + nx} ${y2 + ny}`;
    const made = [el('path', { d, class: 'under' }), el('path', { d, class: `line ${sort}${on ? ' on' : ''}` })];
    if (words) {
      // Beside an upright line, above or below a level one, and not over the words of another.
      const anchor = nx > 3 ? 'start' : nx < -3 ? 'end' : 'middle';
      const [x, wide] = [(x1 + x2) / 2 + nx * 2, words.length * 7];
      const left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
      let y = (y1 + y2) / 2 + ny * 2 + 4;
      while (this.worded.some(([l, r, at]) => left < r && left + wide > l && Math.abs(y - at) < 15)) y += 15;
      this.worded.push([left, left + wide, y]);
      made.push(el('text', { x, y, class: 'words', 'text-anchor': anchor }, words));
    }
    return made;
  }

  // A bar of a round length, at most a quarter of the window.
  bar() {
    const px = this.overlay.pxPerMm * this.scale;
    const most = (0.25 * this.box.width) / px;
    if (!(most > 0 && Number.isFinite(most))) return [];
    const ten = 10 ** Math.floor(Math.log10(most));
    const mm = [5, 2, 1].map((times) => times * ten).find((length) => length <= most * 1.000001) ?? ten;
    const words = mm < 0.9995 ? `${Number((mm * 1000).toPrecision(6))} µm` : mm < 999.5 ? `${Number(mm.toPrecision(6))} mm` : `${Number((mm / 1000).toPrecision(6))} m`;
    const [long, x, y] = [mm * px, (this.box.width - mm * px) / 2, this.box.height - 18];
    const d = `M${x} ${y - 7}V${y + 7}M${x} ${y}H${x + long}M${x + long} ${y - 7}V${y + 7}`;
    return [el('path', { d, class: 'bar under' }), el('path', { d, class: 'bar' }), el('text', { x: x + long / 2, y: y - 12, class: 'words scalebar', 'text-anchor': 'middle' }, words + (this.overlay.doubt ?? ''))];
  }

  // A landmark is a small square on its corner; what was carried over is a dashed ring as wide as its doubt.
  landmark(x, y, { sort, name, reach }) {
    const r = Math.max(7, reach * this.scale);
    const made = sort === 'ghost'
      ? [el('circle', { cx: x, cy: y, r, class: 'under' }), el('circle', { cx: x, cy: y, r, class: 'line ghost' })]
      : ['under', `line ${sort}`].map((named) => el('path', { d: `M${x - r} ${y}L${x} ${y - r}L${x + r} ${y}L${x} ${y + r}Z`, class: named }));
    return [...made, el('text', { x: x + r + 3, y: y - 3, class: 'words' }, name)];
  }

  target(x, y, sort) {
    const d = `M${x - 14} ${y}H${x - 4}M${x + 4} ${y}H${x + 14}M${x} ${y - 14}V${y - 4}M${x} ${y + 4}V${y + 14}`;
    return [el('path', { d, class: 'under' }), el('path', { d, class: `line ${sort}` }), el('circle', { cx: x, cy: y, r: 1.5, class: `dot ${sort}` })];
  }

  // Letters in two columns at the edges, joined to their spots by leaders that do not cross.
  labels() {
    const { width, height } = this.box;
    const seen = this.overlay.spots.map((s) => ({ s, at: this.seen(s.id, s.x, s.y) })).filter(({ at }) => at[0] >= 0 && at[0] <= width && at[1] >= 0 && at[1] <= height);
    const out = [];
    const wide = width > 560;
    const sides = [[], []];
    for (const each of seen.sort((a, b) => a.at[0] - b.at[0])) sides[each.at[0] * 2 < width ? 0 : 1].push(each);
    const room = Math.max(1, Math.floor(height / 18));
    // A column that is too full gives to the other the ones nearest to it.
    while (sides[0].length > room && sides[1].length < room) sides[1].unshift(sides[0].pop());
    while (sides[1].length > room && sides[0].length < room) sides[0].push(sides[1].shift());
    for (const [i, column] of sides.entries()) {
      column.sort((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0]);
      const slot = Math.min(this.tall, (height - 8) / Math.max(1, column.length));
      const ports = [];
      for (const { at } of column) ports.push(Math.max(at[1], (ports.at(-1) ?? -slot) + slot, slot / 2 + 4));
      for (let k = ports.length - 1, most = height - slot / 2 - 4; k >= 0; k -= 1, most = ports[k + 1] - slot) ports[k] = Math.min(ports[k], most);
      const x = i ? width - 8 : 8;
      const turn = (a, b, c) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
      // Swapping two leaders that cross makes them shorter together, so this ends.
      for (let swapped = true, rounds = 0; swapped && rounds < 50; rounds += 1) {
        swapped = false;
        for (let a = 0; a < column.length; a += 1) for (let b = a + 1; b < column.length; b += 1) {
          const [p, q, r, s] = [[x, ports[a]], column[a].at, [x, ports[b]], column[b].at];
          if (turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0) { [column[a], column[b]] = [column[b], column[a]]; swapped = true; }
        }
      }
      for (const [k, { s, at }] of column.entries()) {
        const words = wide && slot >= 28 && s.words ? (s.words.length > 26 ? `${s.words.slice(0, 25)}…` : s.words) : '';
        // The presenter's letters are half as large again.
        const long = 10 + (this.tall > 34 ? 15 : 9) * s.name.length;
        const edge = i ? x - long : x + long;
        const d = `M${edge} ${ports[k]}L${at[0]} ${at[1]}`;
        const on = s.on ? ' on' : '';
        out.push(el('path', { d, class: 'under' }), el('path', { d, class: `leader${on}` }), el('circle', { cx: at[0], cy: at[1], r: s.on ? 5 : 3.5, class: `spot${on}` }));
        out.push(el('text', { x, y: ports[k] + (words ? -1 : 5), class: `name${on}`, 'text-anchor': i ? 'end' : 'start' }, s.name));
        if (words) out.push(el('text', { x, y: ports[k] + 13, class: 'words', 'text-anchor': i ? 'end' : 'start' }, words));
      }
    }
    return out;
  }

  // The line to type on stands at the last point; on a narrow window it stands under the picture.
  placePin() {
    if (!this.pin) return;
    const last = this.points.at(-1);
    const beside = last && this.box.width > 560;
    this.pin.classList.toggle('beside', Boolean(beside));
    if (!beside) { this.pin.style.left = this.pin.style.top = ''; return; }
    const [x, y] = this.on(...last);
    const [w, h] = [this.pin.offsetWidth, this.pin.offsetHeight];
    this.pin.style.left = `${Math.max(4, Math.min(this.box.width - w - 4, x + 18))}px`;
    this.pin.style.top = `${Math.max(4, y + 18 + h > this.box.height ? y - h - 18 : y + 18)}px`;
  }
}
