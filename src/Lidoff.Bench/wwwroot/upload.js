// Sends files one after the other by plain HTTP, so that a large one never passes through the page's connection. The page itself
// shows what arrived: it follows the store. Files come by choice, by drop anywhere on the page, or pasted.
import { send } from './send.js';

// Files still to be sent while some are; more may come meanwhile. Null: none.
let queue = null;
// What was said last. A page that is redrawn, or one that comes alive, brings a form of its own, without a word in it.
let told = [];
const target = () => document.querySelector('form[data-upload]');
function tell(lines, sending = false) {
  told = lines;
  repeat();
  const stop = target()?.querySelector('[data-stop]');
  if (stop) stop.hidden = !sending;
}
const repeat = () => {
  const said = target()?.querySelector('output');
  if (!said || said.textContent === told.map((line) => line.text + (line.link ?? '')).join('\n')) return;
  said.replaceChildren(...told.flatMap(({ text, link, to }, i) => [`${i ? '\n' : ''}${text}`, ...(link ? [Object.assign(document.createElement('a'), { href: to, textContent: link })] : [])]));
};
let abort = () => {};
new MutationObserver(() => { if (told.length) { repeat(); const stop = target()?.querySelector('[data-stop]'); if (stop) stop.hidden = !queue; } }).observe(document.body, { childList: true, subtree: true });
// The next page that is gone to begins without it.
document.addEventListener('click', (event) => { if (!queue && event.target.closest?.('a[href]')) told = []; });

async function sendAll(form, files, from) {
  const more = files.map((file) => ({ file, name: file.name || `${from}.png`, from }));
  if (queue) { queue.push(...more); return; }
  if (!more.length) return;
  queue = more;
  const [lines, then] = [[], form.dataset.then];
  let [last, address, count] = [null, form.dataset.upload, 0];
  for (const [i, { file, name, from: way }] of queue.entries()) {
    const end = await send(address, file, name, way, (text) => tell([{ text: queue.length > 1 ? `${i + 1} of ${queue.length} · ${text}` : text }], true), (stop) => { abort = stop; });
    if (end.fault) lines.push({ text: end.fault });
    else {
      last = end.stored;
      // One thing of each file: that it is there already, that something is wrong with it, or that it was added.
      if (last.already) lines.push({ text: `${last.already} `, link: 'Show it', to: last.kind.startsWith('image/') || last.kind.startsWith('video/') ? `/dossiers/${encodeURIComponent(last.dossier)}/see/${last.kind.startsWith('video/') ? 'video/' : ''}${last.sha256}` : `/files/${last.sha256}` });
      else if (last.trouble) lines.push({ text: last.trouble });
      else count += 1;
      // The first file of an empty bench began a dossier; the others belong to it.
      address = `/dossiers/${encodeURIComponent(last.dossier)}/files`;
    }
    if (end.stopped) break;
  }
  const clean = !lines.length;
  queue = null;
  tell([...lines, ...(count ? [{ text: `${count} added.` }] : [])]);
  target()?.reset();
  if (then && last && clean) location.assign(then.replace('/{sha256}', last.kind.startsWith('video/') ? '/video/{sha256}' : '/{sha256}').replace('{dossier}', encodeURIComponent(last.dossier)).replace('{sha256}', last.sha256));
}

document.addEventListener('click', (event) => { if (event.target.closest?.('[data-stop]')) abort(); });
document.addEventListener('submit', (event) => {
  const form = event.target.closest('form[data-upload]');
  if (!form) return;
  event.preventDefault();
  sendAll(form, [...form.querySelector('input[type=file]').files], 'drop');
});
document.addEventListener('change', (event) => {
  const form = event.target.closest?.('form[data-upload]');
  if (form && event.target.type === 'file') sendAll(form, [...event.target.files], 'drop');
});
document.addEventListener('dragover', (event) => {
  if (!target() || ![...(event.dataTransfer?.types ?? [])].includes('Files')) return;
  event.preventDefault();
  document.documentElement.dataset.dropping = 'on';
});
for (const over of ['dragleave', 'drop', 'dragend']) document.addEventListener(over, (event) => { if (over !== 'dragleave' || !event.relatedTarget) delete document.documentElement.dataset.dropping; });
document.addEventListener('drop', (event) => {
  const files = [...(event.dataTransfer?.files ?? [])];
  if (!target() || !files.length) return;
  event.preventDefault();
  sendAll(target(), files, 'drop');
});
document.addEventListener('paste', (event) => {
  const files = [...(event.clipboardData?.files ?? [])];
  if (!target() || !files.length) return;
  event.preventDefault();
  sendAll(target(), files, 'paste');
});
