// Sends chosen files one after the other by plain HTTP, so that a large one never passes through the page's connection.
// The page itself shows what arrived: it follows the store.
const token = () => document.querySelector('input[name="__RequestVerificationToken"]')?.value ?? '';

function send(address, file, say, stop) {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    request.open('POST', `${address}?name=${encodeURIComponent(file.name)}`);
    request.setRequestHeader('X-Lidoff-Token', token());
    request.setRequestHeader('Content-Type', 'application/octet-stream');
    request.upload.onprogress = (e) => say(`${file.name}: ${Math.floor((100 * e.loaded) / Math.max(1, e.total))} %`);
    request.onload = () => resolve(request.status === 201 ? '' : `${file.name}: ${request.responseText.trim()}`);
    request.onerror = () => resolve(`${file.name}: the workbench broke off; nothing of it was kept.`);
    request.onabort = () => resolve(`${file.name}: stopped; nothing of it was kept.`);
    stop.onclick = () => request.abort();
    request.send(file);
  });
}

document.addEventListener('submit', async (event) => {
  const form = event.target.closest('form[data-upload]');
  if (!form) return;
  event.preventDefault();
  const [input, said, stop, add] = ['input[type=file]', 'output', '[data-stop]', '[type=submit]'].map((s) => form.querySelector(s));
  let stopped = false;
  const faults = [];
  const files = [...input.files];
  stop.hidden = false;
  add.disabled = true;
  for (const file of files) {
    if (stopped) break;
    const fault = await send(form.dataset.upload, file, (text) => { said.textContent = text; }, stop);
    stopped = fault.endsWith('stopped; nothing of it was kept.');
    if (fault) faults.push(fault);
  }
  stop.hidden = true;
  add.disabled = false;
  said.textContent = faults.length ? faults.join('\n') : `${files.length} added.`;
  if (!faults.length) form.reset();
});
