// A live camera in the page: looked through, frozen, taken. A frame goes to the bench by plain HTTP like any other file.
import { send } from './send.js';

/** Works the panel; `page` hears Taking() when a frame is taken and Taken(sha256, name, camera) once it is stored. Returns what closes it. */
export function open(panel, page, address) {
  if (!panel?.isConnected) return null;
  const get = (name) => panel.querySelector(`[data-camera="${name}"]`);
  const [video, device, size, start, freeze, take, stop, said] = ['video', 'device', 'size', 'start', 'freeze', 'take', 'stop', 'said'].map(get);
  let stream = null;
  let still = null;
  let busy = false;
  const say = (text) => { said.textContent = text; };
  const off = () => {
    for (const track of stream?.getTracks() ?? []) track.stop();
    stream = null;
    thaw();
    video.srcObject = null;
    for (const each of [video, freeze, take, stop, device.parentElement, size.parentElement]) each.hidden = true;
    start.hidden = false;
  };

  // A paused video may still show one frame more; what is frozen, shown and taken is one and the same picture.
  function drawn() {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [video.videoWidth, video.videoHeight];
    canvas.getContext('2d').drawImage(video, 0, 0);
    return canvas;
  }

  function thaw() {
    if (!still) return;
    still.remove();
    still = null;
    video.hidden = false;
  }

  const reasons = {
    NotAllowedError: 'The browser was not allowed to use the camera; allow it in its address line, then try again.',
    NotFoundError: 'No camera was found on this machine; pictures come in by drop, choice or a watched folder all the same.',
    NotReadableError: 'The camera is there but another program holds it; close that one, then try again.',
    OverconstrainedError: 'The camera cannot do this size; choose another one.',
  };

  async function on() {
    if (!navigator.mediaDevices?.getUserMedia) { say('This browser gives no page a camera; pictures come in by drop, choice or a watched folder all the same.'); return; }
    const [width, height] = size.value.split('x').map(Number);
    try {
      for (const track of stream?.getTracks() ?? []) track.stop();
      stream = await navigator.mediaDevices.getUserMedia({ audio: false, video: { width: { ideal: width }, height: { ideal: height }, ...(device.value ? { deviceId: { exact: device.value } } : {}) } });
    } catch (e) {
      off();
      say(reasons[e.name] ?? `The camera did not start: ${e.message}`);
      return;
    }
    for (const each of [video, freeze, take, stop, device.parentElement, size.parentElement]) each.hidden = false;
    start.hidden = true;
    video.srcObject = stream;
    thaw();
    await video.play();
    freeze.setAttribute('aria-pressed', 'false');
    const track = stream.getVideoTracks()[0];
    track.onended = () => { off(); say('The camera went away.'); };
    // Names are known only once the camera was allowed.
    const cameras = (await navigator.mediaDevices.enumerateDevices()).filter((d) => d.kind === 'videoinput');
    device.replaceChildren(...cameras.map((d, i) => new Option(d.label || `Camera ${i + 1}`, d.deviceId, false, d.deviceId === track.getSettings().deviceId)));
    say(`${video.videoWidth} × ${video.videoHeight} px`);
  }

  async function frame() {
    if (!stream || busy) return;
    busy = true;
    try {
      const canvas = still ?? drawn();
      const takenBy = device.selectedOptions[0]?.text ?? '';
      page.invokeMethodAsync('Taking');
      const picture = await new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
      if (!picture) { say('The camera gave no picture yet; try again.'); return; }
      const now = new Date();
      const two = (n) => String(n).padStart(2, '0');
      const name = `camera-${now.getFullYear()}${two(now.getMonth() + 1)}${two(now.getDate())}-${two(now.getHours())}${two(now.getMinutes())}${two(now.getSeconds())}-${String(now.getMilliseconds()).padStart(3, '0')}.png`;
      const end = await send(address, picture, name, 'camera', say, () => {});
      say(end.fault ?? `${name} taken.`);
      if (end.stored) page.invokeMethodAsync('Taken', end.stored.sha256, name, takenBy);
    } finally { busy = false; }
  }

  const held = () => {
    if (!stream) return;
    if (still) { thaw(); video.play(); }
    else {
      still = drawn();
      still.setAttribute('role', 'img');
      still.setAttribute('aria-label', 'The frozen frame');
      video.after(still);
      video.hidden = true;
      video.pause();
    }
    freeze.setAttribute('aria-pressed', String(!!still));
  };

  start.onclick = on;
  freeze.onclick = held;
  take.onclick = frame;
  stop.onclick = () => { off(); say(''); };
  device.onchange = on;
  size.onchange = on;
  return { close: off };
}
