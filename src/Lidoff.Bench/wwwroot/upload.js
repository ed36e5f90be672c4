// Sends files one after the other by plain HTTP, so that a large one never passes through the page's connection. The page itself
// shows what arrived: it follows the store. Files come by choice, by drop anywhere on the page, or pasted.
import { send } from './send.js';

let busy = false;
async function sendAll(form, files, from) {
  const [said, stopButton] = ['output', '[data-stop]'].map((s) => form.querySelector(s));
  if (busy || !files.length) return;
  busy = true;
  stopButton.hidden = false;
  const faults = [];
  let [last, address, count] = [null, form.dataset.upload, 0];
  for (const [i, file] of files.entries()) {
    const name = file.name || `${from}.png`;
    const end = await send(address, file, name, from, (text) => { said.textContent = files.length > 1 ? `${i + 1} of ${files.length} · ${text}` : text; }, (abort) => { stopButton.onclick = abort; });
    if (end.fault) faults.push(end.fault);
    else {
      last = end.stored;
      if (last.trouble) faults.push(last.trouble);
      count += 1;
      // The first file of an empty bench began a dossier; the others belong to it.
      address = `/dossiers/${encodeURIComponent(last.dossier)}/files`;
    }
    if (end.stopped) break;
  }
  stopButton.hidden = true;
  busy = false;
  said.textContent = [...faults, ...(count ? [`${count} added.`] : [])].join('\n');
  form.reset();
  if (form.dataset.then && last && !faults.length) location.assign(form.dataset.then.replace('{dossier}', encodeURIComponent(last.dossier)).replace('{sha256}', last.sha256));
}

const target = () => document.querySelector('form[data-upload]');
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
