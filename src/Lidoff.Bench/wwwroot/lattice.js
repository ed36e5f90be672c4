// Keys of a mark's line: a blank is an unread place, Alt with a key adds it as an alternative to the place before the cursor. The place
// at the cursor is shown.
const field = (target) => target?.closest?.('[data-lattice] .entry input:not([type=checkbox])');

function put(input, text) {
  input.setRangeText(text, input.selectionStart, input.selectionEnd, 'end');
  input.dispatchEvent(new Event('input', { bubbles: true }));
}

document.addEventListener('keydown', (event) => {
  const input = field(event.target);
  if (!input || event.isComposing || event.ctrlKey || event.metaKey) return;
  if (event.key === ' ') put(input, '?');
  // The key's own letter, since Alt turns it into another sign on some keyboards.
  else if (event.altKey && /^(Key|Digit)/.test(event.code) && input.selectionStart > 0) put(input, `|${event.code.at(-1)}`);
  else return;
  event.preventDefault();
  event.stopPropagation();
}, { capture: true });

// Places of the text before the cursor, as the page counts them: doubled signs are one, what follows a bar belongs to the place before.
function at(text) {
  let [line, place, joins] = [0, -1, false];
  const all = [...text];
  for (let i = 0; i < all.length; i += 1) {
    const doubled = '/|'.includes(all[i]) && all[i + 1] === all[i];
    if (doubled) i += 1;
    if (all[i] === '|' && !doubled) { joins = true; continue; }
    if (all[i] === '/' && !doubled) { [line, place, joins] = [line + 1, -1, false]; continue; }
    if (!joins) place += 1;
    joins = false;
  }
  return [line, Math.max(0, place)];
}

function mark(input) {
  const lattice = input.closest('[data-lattice]');
  const [line, place] = at(input.value.slice(0, input.selectionStart));
  for (const old of lattice.querySelectorAll('[data-now]')) delete old.dataset.now;
  const now = lattice.querySelectorAll('.cells')[line]?.children[place];
  if (now) now.dataset.now = '';
}

for (const name of ['keyup', 'click', 'input']) document.addEventListener(name, (event) => { const input = field(event.target); if (input) setTimeout(() => mark(input), name === 'input' ? 60 : 0); });
