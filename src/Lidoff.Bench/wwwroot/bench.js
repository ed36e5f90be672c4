// Keys, looks and drafts: what every page needs and no room owns. Loaded once.

// ---- keys: whatever carries data-key is pressed or focused by it; the list is read off the page itself.
const shown = (el) => el.getClientRects().length > 0 && !el.disabled;
const typing = (el) => el?.closest?.('input:not([type=checkbox]):not([type=radio]):not([type=file]):not([type=range]), textarea, select, [contenteditable]');
const name = (event) => {
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key.toLowerCase();
  const ctrl = event.ctrlKey || event.metaKey ? 'ctrl+' : '';
  const shift = event.shiftKey && (ctrl || event.key.length > 1) ? 'shift+' : '';
  return `${ctrl}${event.altKey ? 'alt+' : ''}${shift}${key}`;
};
// A page's own keys go before those of the frame around it.
const carriers = () => [...document.querySelectorAll('main [data-key]'), ...[...document.querySelectorAll('[data-key]')].filter((el) => !el.closest('main'))];
const keyed = (key) => carriers().filter((el) => el.dataset.key.split(' ').includes(key) && shown(el));

function press(el) {
  if (el.matches('input:not([type=checkbox]):not([type=radio]):not([type=button]), textarea, select')) {
    el.focus();
    el.select?.();
  } else {
    // What others may trust their fingers to is not said by one stray key: the key leads there, Enter says it.
    if ('keyLeads' in el.dataset) { el.focus(); return; }
    el.focus({ preventScroll: true });
    el.click();
  }
}

document.addEventListener('keydown', (event) => {
  if (event.defaultPrevented || event.isComposing) return;
  const key = name(event);
  // While typing, a letter is a letter, and Ctrl+Z belongs to the text as long as there is some.
  const field = typing(event.target);
  if (field && key === 'escape') { field.blur(); return; }
  if (field && (!/^(ctrl\+|alt\+|f\d)/.test(key) || (/^ctrl\+(shift\+)?z$/.test(key) && field.value))) return;
  if (document.querySelector('dialog[open]') && key !== '?') return;
  const [el] = keyed(key);
  if (!el) return;
  event.preventDefault();
  press(el);
});

// A label's words without what its fields hold.
const bare = (label) => { const copy = label.cloneNode(true); for (const field of copy.querySelectorAll('select, input, textarea, kbd, datalist')) field.remove(); return copy.textContent; };
const words = (el) => (el.dataset.says || el.getAttribute('aria-label') || el.title || (el.labels?.[0] ? bare(el.labels[0]) : el.querySelector('b')?.textContent ?? el.textContent)).trim().replace(/\s+/g, ' ');

function list() {
  const dialog = document.getElementById('keys');
  if (dialog.open) { dialog.close(); return; }
  const dl = dialog.querySelector('dl');
  dl.replaceChildren();
  const said = new Set();
  for (const el of carriers()) {
    if (!shown(el)) continue;
    for (const key of el.dataset.key.split(' ')) {
      if (said.has(key)) continue;
      said.add(key);
      const dt = document.createElement('dt');
      dt.append(Object.assign(document.createElement('kbd'), { textContent: key.replace('arrow', '').replaceAll('+', ' + ') }));
      dl.append(dt, Object.assign(document.createElement('dd'), { textContent: words(el) }));
    }
  }
  // Keys that mean something only inside a control of their own: listed, never pressed from outside.
  for (const el of document.querySelectorAll('[data-key-here]')) {
    if (!shown(el)) continue;
    const dt = document.createElement('dt');
    for (const key of el.dataset.keyHere.split(' ')) dt.append(Object.assign(document.createElement('kbd'), { textContent: key.replace('arrow', '').replaceAll('+', ' + ') }), ' ');
    dl.append(dt, Object.assign(document.createElement('dd'), { textContent: words(el) }));
  }
  dialog.showModal();
  // Close, at its end, takes the focus and would have it begin in the middle.
  dialog.scrollTop = 0;
}

// ---- what is offered for a line is put in at its cursor, in place of a reference that was begun; the keys go on behind it.
document.addEventListener('click', (event) => {
  const chip = event.target.closest?.('[data-insert]');
  const field = chip && document.getElementById(chip.dataset.into);
  if (!field) return;
  const before = field.value.slice(0, field.selectionStart);
  const open = before.lastIndexOf('{');
  const from = open >= 0 && !before.slice(open).includes('}') ? open : before.length;
  field.setRangeText(chip.dataset.insert, from, field.selectionEnd, 'end');
  field.focus();
  field.dispatchEvent(new Event('input', { bubbles: true }));
});

// ---- looks
const root = document.documentElement;
function look(which) {
  const next = which === 'theme' ? { '': 'dark', dark: 'light', light: '' }[root.dataset.theme ?? ''] : root.dataset.far ? '' : 'on';
  if (next) root.dataset[which] = next; else delete root.dataset[which];
  try { localStorage.setItem(`look-${which}`, next); } catch { /* private windows may refuse; the look then lasts as long as the page */ }
}

document.addEventListener('click', (event) => {
  const button = event.target.closest?.('[data-look], [data-keys], [data-close]');
  if (!button) return;
  if (button.dataset.look) look(button.dataset.look);
  else if ('keys' in button.dataset) list();
  else button.closest('dialog')?.close();
});

// ---- drafts: what was typed and not yet stored outlives a dropped connection, a reload and a closed tab.
const held = new Map();
const hold = (el) => {
  if (!held.has(el)) held.set(el, `draft:${location.pathname}:${el.dataset.draft}`);
  return held.get(el);
};
// A field is as the page made it when it is empty; a choice, when it is the one the page began with.
const began = new WeakMap();
const asMade = (el) => (el.matches('select') ? el.value === began.get(el) : !el.value);
const keep = (el) => {
  try { if (!asMade(el)) localStorage.setItem(hold(el), el.value); else localStorage.removeItem(hold(el)); } catch { /* full or refused: the text still stands in the field */ }
};
document.addEventListener('input', (event) => {
  sent.delete(event.target);
  if (!event.target.dataset?.draft) return;
  keep(event.target);
  // Who types on gives the sweep no pause: what a form is about is kept with what is typed into it.
  if (event.target.type !== 'hidden') for (const el of document.querySelectorAll('input[type=hidden][data-draft]')) { sent.delete(el); if (el.value) keep(el); }
});
// A field that goes away with the form it was sent by is stored; a slow page takes it away without emptying it first.
const sent = new WeakSet();
document.addEventListener('submit', (event) => {
  for (const el of event.target.elements) {
    if (!el.dataset.draft) continue;
    sent.add(el);
    // What a form is about goes with it at once: whoever leaves the page on the next key is not to find the form open again.
    if (el.type === 'hidden') try { localStorage.removeItem(hold(el)); } catch { /* no storage in this browser */ }
  }
}, true);
const stored = (el) => asMade(el) || (el.matches('select') && sent.has(el)) || (!el.isConnected && sent.has(el) && el.getAttribute('aria-invalid') !== 'true');

function sweep() {
  for (const [el, place] of held) {
    // What the page itself wrote into a hidden field was never heard as typed.
    if (el.type === 'hidden' && el.isConnected && el.value && !sent.has(el)) localStorage.setItem(place, el.value);
    // Emptied by the page after it was stored; a page that was left for the next at once was emptied on the way out.
    if (stored(el)) localStorage.removeItem(place);
    if (!el.isConnected) held.delete(el);
  }
  for (const el of document.querySelectorAll('[data-draft]')) {
    if (held.has(el)) continue;
    if (el.matches('select') && !began.has(el)) began.set(el, el.value);
    // Only once the page is live would it hear what is put back; until then Blazor has not marked the document.
    if (!document.querySelector('[data-live]')) continue;
    const text = localStorage.getItem(hold(el));
    if (text === null || !asMade(el)) continue;
    if (el.matches('select') && ![...el.options].some((each) => each.value === text)) continue;
    el.value = text;
    // Whoever is about to type there types over it, not behind it.
    if (document.activeElement === el) el.select?.();
    el.dispatchEvent(new Event('input', { bubbles: true }));
    el.dispatchEvent(new Event('change', { bubbles: true }));
  }
}
// What was typed while the connection was away never reached the page's other end: say it again once it is back.
document.getElementById('components-reconnect-modal')?.addEventListener('components-reconnect-state-changed', (event) => {
  if (event.detail?.state !== 'hide') return;
  for (const el of held.keys()) {
    if (!el.isConnected || (!el.value && !el.matches('select'))) continue;
    el.dispatchEvent(new Event('input', { bubbles: true }));
    el.dispatchEvent(new Event('change', { bubbles: true }));
  }
});
// ---- marks place by place: their script is fetched with the first of them and finds the next by itself, so that no page waits for one.
function lattices() {
  if (!document.querySelector('[data-live]')) return;
  for (const el of document.querySelectorAll('[data-lattice]')) if (!el.lattice) import('./lattice.js').then(({ open }) => open(el));
}

let due = 0;
const sweeps = () => { clearTimeout(due); due = 0; try { sweep(); } catch { /* no storage in this browser */ } };
const soon = () => { clearTimeout(due); due = setTimeout(sweeps, 50); };
// A field that has just come gets its draft back before it is painted: half a tenth of a second later, whoever steps from spot to spot would see it come empty first.
const fresh = () => [...document.querySelectorAll('[data-draft]')].some((el) => !held.has(el));
new MutationObserver(() => { if (fresh() && document.querySelector('[data-live]')) sweeps(); else soon(); lattices(); }).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ['data-live'] });
document.addEventListener('keyup', soon);
document.addEventListener('click', soon);
soon();
lattices();
