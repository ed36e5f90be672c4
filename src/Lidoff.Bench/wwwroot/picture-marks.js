// What lies over a picture, drawn as SVG on the screen's own pixels: lines, landmarks, labels, the scale bar. Nothing is kept here.
const SVG = 'http://www.w3.org/2000/svg';

/** An SVG element. */
export const el = (name, attributes = {}, text = '') => {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text) made.textContent = text;
  return made;
};

/** A measured line with its end strokes (a side of a box or of a line of text that was read has none) and its words; `worded` are the places of words that stand already, `box` what they stay in as long as their line's middle is in it. */
export function measure(x1, y1, x2, y2, sort, words, on, worded = [], box = null) {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [nx, ny] = [(-(y2 - y1) / long) * 6, ((x2 - x1) / long) * 6];
  const d = sort === 'read' || sort.endsWith('box') ? `M${x1} ${y1}L${x2} ${y2}` : `M${x1} ${y1}L${x2} ${y2}M${x1 - nx} ${y1 - ny}L${x1 + nx} ${y1 + ny}M${x2 - nx} ${y2 - ny}L${x2 + nx} ${y2 + ny}`;
  const made = [el('path', { d, class: 'under' }), el('path', { d, class: `line ${sort}${on ? ' on' : ''}` })];
  if (words) {
    // Beside an upright line, above or below a level one, and not over the words of another.
    const anchor = nx > 3 ? 'start' : nx < -3 ? 'end' : 'middle';
    const wide = words.length * 7;
    let x = (x1 + x2) / 2 + nx * 2;
    let left = anchor === 'start' ? x : anchor === 'end' ? x - wide : x - wide / 2;
    if (box && (x1 + x2) / 2 >= 0 && (x1 + x2) / 2 <= box.width) {
      const kept = Math.max(4, Math.min(box.width - wide - 4, left));
      [x, left] = [x + kept - left, kept];
    }
    let y = (y1 + y2) / 2 + ny * 2 + 4;
    while (worded.some(([l, r, at]) => left < r && left + wide > l && Math.abs(y - at) < 15)) y += 15;
    worded.push([left, left + wide, y]);
    made.push(el('text', { x, y, class: 'words', 'text-anchor': anchor }, words));
  }
  return made;
}

/** A bar of a round length, at most 0.35 of the part of the picture that is seen, `wide` px of the screen: as in the picture taken home (BarLength.cs). */
export function bar(box, px, doubt, wide) {
  const most = (0.35 * Math.min(box.width, wide)) / px;
  if (!(most > 0 && Number.isFinite(most))) return [];
  const ten = 10 ** Math.floor(Math.log10(most));
  const mm = [5, 2, 1].map((times) => times * ten).find((length) => length <= most * 1.000001) ?? ten;
  const words = mm < 0.9995 ? `${Number((mm * 1000).toPrecision(6))} µm` : mm < 999.5 ? `${Number(mm.toPrecision(6))} mm` : `${Number((mm / 1000).toPrecision(6))} m`;
  const [long, x, y] = [mm * px, (box.width - mm * px) / 2, box.height - 18];
  const d = `M${x} ${y - 7}V${y + 7}M${x} ${y}H${x + long}M${x + long} ${y - 7}V${y + 7}`;
  return [el('path', { d, class: 'bar under' }), el('path', { d, class: 'bar' }), el('text', { x: x + long / 2, y: y - 12, class: 'words scalebar', 'text-anchor': 'middle' }, words + (doubt ?? ''))];
}

/** A landmark is a small square on its corner; what was carried over is a dashed ring as wide as its doubt, a place of a target a small cross. */
export function landmark(x, y, sort, name, reach) {
  if (sort === 'found') {
    const d = `M${x - 4} ${y}H${x + 4}M${x} ${y - 4}V${y + 4}`;
    return [el('path', { d, class: 'under' }), el('path', { d, class: 'line found' })];
  }
  const r = Math.max(7, reach);
  const made = sort === 'ghost'
    ? [el('circle', { cx: x, cy: y, r, class: 'under' }), el('circle', { cx: x, cy: y, r, class: 'line ghost' })]
    : ['under', `line ${sort}`].map((named) => el('path', { d: `M${x - r} ${y}L${x} ${y - r}L${x + r} ${y}L${x} ${y + r}Z`, class: named }));
  return [...made, el('text', { x: x + r + 3, y: y - 3, class: 'words' }, name)];
}

/** A cross with an open middle. */
export function target(x, y, sort) {
  const d = `M${x - 14} ${y}H${x - 4}M${x + 4} ${y}H${x + 14}M${x} ${y - 14}V${y - 4}M${x} ${y + 4}V${y + 14}`;
  return [el('path', { d, class: 'under' }), el('path', { d, class: `line ${sort}` }), el('circle', { cx: x, cy: y, r: 1.5, class: `dot ${sort}` })];
}

// As see.css sets them: names and words at the bench, and larger ones for those who look on from afar; half heights of a name alone, and with words.
const AT_BENCH = { name: '700 16px system-ui, "DejaVu Sans", sans-serif', words: '12px system-ui, "DejaVu Sans", sans-serif', drop: 5, below: 13, bare: 11, worded: 17 };
const PRESENTED = { name: '700 24px system-ui, "DejaVu Sans", sans-serif', words: '16px system-ui, "DejaVu Sans", sans-serif', drop: 8, below: 17, bare: 16, worded: 24 };
// Longest words beside a name, px: about 26 letters at the bench.
const MOST_WORDS = 170;

const pen = document.createElement('canvas').getContext('2d');
const wideAs = (text, font) => { pen.font = font; return pen.measureText(text).width; };

/** The words cut to a width; nothing where not even a few letters fit. */
function fitted(text, font, most) {
  if (wideAs(text, font) <= most) return text;
  let cut = text.slice(0, 60);
  while (cut.length > 4 && wideAs(`${cut}…`, font) > most) cut = cut.slice(0, -1);
  return cut.length > 4 ? `${cut.trimEnd()}…` : '';
}

/** Letters in two columns at the edges, joined to their spots by leaders that do not cross. `placed` are { s: spot, at: [x, y] }; `tall` is the height of a label with its words. */
export function labels({ width, height }, placed, tall) {
  const seen = placed.filter(({ at }) => at[0] >= 0 && at[0] <= width && at[1] >= 0 && at[1] <= height);
  const out = [];
  const wide = width > 560;
  const fonts = tall > 34 ? PRESENTED : AT_BENCH;
  const sides = [[], []];
  for (const each of seen.sort((a, b) => a.at[0] - b.at[0])) sides[each.at[0] * 2 < width ? 0 : 1].push(each);
  const room = Math.max(1, Math.floor(height / 18));
  // A column that is too full gives to the other the ones nearest to it.
  while (sides[0].length > room && sides[1].length < room) sides[1].unshift(sides[0].pop());
  while (sides[1].length > room && sides[0].length < room) sides[0].push(sides[1].shift());
  for (const [i, column] of sides.entries()) {
    const x = i ? width - 8 : 8;
    const inward = i ? -1 : 1;
    const slot = Math.min(tall, (height - 8) / Math.max(1, column.length));
    // Words give way to the spots they would lie over; the names stand.
    const free = Math.min(...column.map(({ at }) => Math.abs(at[0] - x))) - 14;
    const set = new Map(column.map(({ s }) => {
      const words = wide && slot >= 28 && s.words ? fitted(s.words, fonts.words, Math.min(MOST_WORDS, free)) : '';
      return [s, { words, long: Math.max(wideAs(s.name, fonts.name), words ? wideAs(words, fonts.words) : 0) + 5 }];
    }));
    // Every leader runs level out of its label to the edge of the column and only from there to its spot, so that it crosses no label.
    const edge = x + inward * Math.max(0, ...[...set.values()].map((each) => each.long));
    const beyond = ({ at }) => (at[0] - edge) * inward >= 0;
    // A label whose spot lies under the column stands below it, or above it near the foot of the window.
    const wanted = (each) => (beyond(each) ? each.at[1] : each.at[1] + (each.at[1] + slot * 1.5 < height ? slot : -slot));
    column.sort((a, b) => wanted(a) - wanted(b) || a.at[0] - b.at[0]);
    const ports = [];
    for (const each of column) ports.push(Math.max(wanted(each), (ports.at(-1) ?? -slot) + slot, slot / 2 + 4));
    for (let k = ports.length - 1, most = height - slot / 2 - 4; k >= 0; k -= 1, most = ports[k + 1] - slot) ports[k] = Math.min(ports[k], most);
    const turn = (a, b, c) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    // Swapping two leaders that cross makes them shorter together, so this ends.
    for (let swapped = true, rounds = 0; swapped && rounds < 50; rounds += 1) {
      swapped = false;
      for (let a = 0; a < column.length; a += 1) for (let b = a + 1; b < column.length; b += 1) {
        const [p, q, r, s] = [[edge, ports[a]], column[a].at, [edge, ports[b]], column[b].at];
        if (turn(p, q, r) * turn(p, q, s) < 0 && turn(r, s, p) * turn(r, s, q) < 0) { [column[a], column[b]] = [column[b], column[a]]; swapped = true; }
      }
    }
    for (const [k, { s, at }] of column.entries()) {
      const { words, long } = set.get(s);
      const [least, most] = [Math.min(x, x + inward * long), Math.max(x, x + inward * long)];
      const half = words ? fonts.worded : fonts.bare;
      const d = beyond({ at })
        ? `M${x + inward * long} ${ports[k]}H${edge}L${at[0]} ${at[1]}`
        : `M${Math.min(Math.max(at[0], least), most)} ${ports[k] + (at[1] < ports[k] ? -half : half)}L${at[0]} ${at[1]}`;
      const on = s.on ? ' on' : '';
      out.push(el('path', { d, class: 'under' }), el('path', { d, class: `leader${on}` }), el('circle', { cx: at[0], cy: at[1], r: s.on ? 5 : 3.5, class: `spot${on}` }));
      out.push(el('text', { x, y: ports[k] + (words ? -1 : fonts.drop), class: `name${on}`, 'text-anchor': i ? 'end' : 'start' }, s.name));
      if (words) out.push(el('text', { x, y: ports[k] + fonts.below, class: 'words', 'text-anchor': i ? 'end' : 'start' }, words));
    }
  }
  return out;
}
