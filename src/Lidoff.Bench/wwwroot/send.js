// One file to the store by plain HTTP. Without side effects, since more than one script imports it.
/** What a form of this page proves itself with. */
export const token = () => document.querySelector('input[name="__RequestVerificationToken"]')?.value ?? '';

/** Sends one file; resolves to { fault } or { stored }. `say` hears how far it is, `stop` is given a way to break off. */
export function send(address, file, fileName, from, say, stop) {
  return new Promise((resolve) => {
    const request = new XMLHttpRequest();
    request.open('POST', `${address}?name=${encodeURIComponent(fileName)}&from=${from}`);
    request.setRequestHeader('X-Lidoff-Token', token());
    request.setRequestHeader('Content-Type', 'application/octet-stream');
    request.upload.onprogress = (e) => say(`${fileName}: ${Math.floor((100 * e.loaded) / Math.max(1, e.total))} %`);
    request.onload = () => resolve(request.status === 201 ? { stored: JSON.parse(request.responseText) } : { fault: `${fileName}: ${request.responseText.trim()}` });
    request.onerror = () => resolve({ fault: `${fileName}: the workbench broke off; nothing of it was kept.` });
    request.onabort = () => resolve({ fault: `${fileName}: stopped; nothing of it was kept.`, stopped: true });
    stop(() => request.abort());
    request.send(file);
  });
}
