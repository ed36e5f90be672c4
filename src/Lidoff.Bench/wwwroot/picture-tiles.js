// The pixels of one picture on a canvas: a small whole picture at once, then the tiles that are in view, the sharpest that are there. At
// most a few are asked for at a time, those in the middle first; what went out of view before it came is not waited for.
const KEEP = 300, AT_ONCE = 8, TRIES = 3;

/** The picture `of` ({ sha256, width, height, thumbs }) in `stage`; `draw` is called when there is more to see. */
export class Tiles {
  constructor(stage, { sha256, width, height, thumbs }, gone, draw) {
    Object.assign(this, { stage, sha256, width, height, thumbs, gone, draw });
    [this.known, this.coming, this.failed] = [new Map(), new Map(), new Map()];
    gone.addEventListener('abort', () => this.leave([]));
  }

  async load() {
    const waits = this.stage.appendChild(Object.assign(document.createElement('p'), { className: 'waits', textContent: 'Making the picture small enough to show; a large one takes a second or two.' }));
    const came = await new Promise((resolve) => {
      const image = new Image();
      image.onload = () => { this.whole = image; resolve(true); };
      image.onerror = () => resolve(false);
      image.src = this.thumbs ? `/thumbs/${this.sha256}/1280` : `/files/${this.sha256}`;
    });
    if (came) waits.remove(); else waits.textContent = 'The picture could not be shown. Load the page again.';
    this.draw();
    // Its tiles only now: making them would keep a large picture from being seen.
    if (this.thumbs) await this.sharpen();
  }

  /** Has the tiles made where they are not, and waits for them. */
  async sharpen() {
    try {
      const answer = await fetch(`/tiles/${this.sha256}`, { signal: this.gone });
      // No content: somebody stopped them.
      if (answer.status === 200) [this.levels, this.failed] = [await answer.json(), new Map()];
    } catch { /* left before it was there, or no connection: the small picture stays */ }
    this.draw();
  }

  /** Draws what is in view: `view` gives box, scale, ratio, the middle (x, y), and on(x, y) from the picture to the screen. */
  paint(g, view) {
    const [left, top] = view.on(0, 0);
    g.imageSmoothingEnabled = view.scale < 3;
    if (this.whole) g.drawImage(this.whole, left, top, this.width * view.scale, this.height * view.scale);
    if (!this.levels) return;
    const last = this.levels.levels - 1;
    const level = Math.max(0, Math.min(last, last + Math.ceil(Math.log2(view.scale * view.ratio) - 0.3)));
    // The small picture is as good as the coarse levels.
    if (this.whole && this.width / 2 ** (last - level) <= this.whole.naturalWidth && this.height / 2 ** (last - level) <= this.whole.naturalHeight) { this.leave([]); return; }
    const [size, shrink] = [this.levels.tileSize, 2 ** (last - level)];
    const across = Math.ceil(Math.ceil(this.width / shrink) / size), down = Math.ceil(Math.ceil(this.height / shrink) / size);
    const at = (px) => Math.floor(px / shrink / size);
    const [w, h] = [view.box.width / view.scale / 2, view.box.height / view.scale / 2];
    const missing = [];
    const there = [];
    for (let ty = Math.max(0, at(view.y - h)); ty <= Math.min(down - 1, at(view.y + h)); ty += 1) {
      for (let tx = Math.max(0, at(view.x - w)); tx <= Math.min(across - 1, at(view.x + w)); tx += 1) {
        const key = `${level}/${tx}/${ty}`;
        const image = this.known.get(key);
        if (image) there.push([key, image, tx, ty]);
        else missing.push([key, tx, ty, Math.hypot((tx + 0.5) * size * shrink - view.x, (ty + 0.5) * size * shrink - view.y)]);
      }
    }
    const place = (tx, ty, by) => [(tx ? tx * size - this.levels.overlap : 0) * by, (ty ? ty * size - this.levels.overlap : 0) * by];
    for (const [, tx, ty] of missing) this.coarser(g, view, level, tx, ty, size, shrink, place);
    for (const [key, image, tx, ty] of there) {
      // Last used, last thrown away.
      this.known.delete(key);
      this.known.set(key, image);
      const [x, y] = view.on(...place(tx, ty, shrink));
      g.drawImage(image, x, y, image.naturalWidth * shrink * view.scale, image.naturalHeight * shrink * view.scale);
    }
    this.ask(missing.sort((a, b) => a[3] - b[3]).map(([key]) => key));
  }

  // In the place of a tile that is still to come: its part of the nearest coarser one.
  coarser(g, view, level, tx, ty, size, shrink, place) {
    for (let up = 1; up <= Math.min(4, level); up += 1) {
      const [ax, ay, by] = [tx >> up, ty >> up, shrink * 2 ** up];
      const image = this.known.get(`${level - up}/${ax}/${ay}`);
      if (!image) continue;
      const [ox, oy] = place(ax, ay, by);
      const [sx, sy] = [(tx * size * shrink - ox) / by, (ty * size * shrink - oy) / by];
      const [sw, sh] = [Math.min(size / 2 ** up, image.naturalWidth - sx), Math.min(size / 2 ** up, image.naturalHeight - sy)];
      if (sw <= 0 || sh <= 0) return;
      const [x, y] = view.on(tx * size * shrink, ty * size * shrink);
      g.drawImage(image, sx, sy, sw, sh, x, y, sw * by * view.scale, sh * by * view.scale);
      return;
    }
  }

  // What is wanted now; what is no longer wanted makes room for it.
  ask(wanted) {
    this.leave(wanted);
    for (const key of wanted) {
      if (this.coming.size >= AT_ONCE) return;
      if (this.coming.has(key) || (this.failed.get(key) ?? 0) >= TRIES) continue;
      const image = new Image();
      this.coming.set(key, image);
      const over = (good) => {
        if (this.coming.get(key) !== image) return;
        this.coming.delete(key);
        if (good) this.known.set(key, image);
        else this.failed.set(key, (this.failed.get(key) ?? 0) + 1);
        while (this.known.size > KEEP) this.known.delete(this.known.keys().next().value);
        // The workbench may be busy, or the connection away for a moment.
        if (good) this.draw(); else setTimeout(() => this.draw(), 1000);
      };
      image.src = `/tiles/${this.sha256}/${key}`;
      // Decoded beside, so that drawing it does not hold up a movement.
      image.decode().then(() => over(true), () => over(false));
    }
  }

  leave(wanted) {
    for (const [key, image] of this.coming) {
      if (wanted.includes(key)) continue;
      this.coming.delete(key);
      image.src = '';
    }
  }
}
