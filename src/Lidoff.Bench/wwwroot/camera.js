// A live camera in the page: looked through, frozen, taken one by one or as a burst, recorded. A frame goes to the bench by plain HTTP like
// any other file. What was chosen is remembered on this machine.
import { send } from './send.js';
import { Recorder, endEarlier } from './recorder.js';

const SIZES = [[640, 480], [1280, 720], [1280, 960], [1600, 1200], [1920, 1080], [2048, 1536], [2592, 1944], [3840, 2160], [4000, 3000]];
const REASONS = {
  NotAllowedError: 'The browser was not allowed to use the camera; allow it in its address line, then try again.',
  NotFoundError: 'No camera was found on this machine; pictures come in by drop, choice or a watched folder all the same.',
  NotReadableError: 'The camera is there but another program holds it; close that one, then try again.',
  OverconstrainedError: 'The camera cannot do this size; choose another one.',
};
const VOICE = {
  NotAllowedError: 'The browser was not allowed to use the microphone. Nothing is recorded; V records without voice.',
  NotFoundError: 'No microphone was found. Nothing is recorded; V records without voice.',
};
const remembered = () => { try { return JSON.parse(localStorage.getItem('camera')) ?? {}; } catch { return {}; } };
const remember = (more) => { try { localStorage.setItem('camera', JSON.stringify({ ...remembered(), ...more })); } catch { /* refused: it then lasts as long as the page */ } };
const two = (n) => String(n).padStart(2, '0');

/** Works the panel; `page` hears Taking(), Taken(sha256, name, camera), Burst(hashes, camera), Moment(recording, second). Returns what closes it. */
export function open(panel, page, dossier) {
  if (!panel?.isConnected) return null;
  const get = (name) => panel.querySelector(`[data-camera="${name}"]`);
  const [video, device, size, count, start, freeze, take, burst, voice, silent, moment, stop, said, running] =
    ['video', 'device', 'size', 'count', 'start', 'freeze', 'take', 'burst', 'voice', 'silent', 'moment', 'stop', 'said', 'running'].map(get);
  const live = [video, freeze, take, burst, stop, ...[device, size, count].map((field) => field.parentElement), ...(Recorder.able ? [voice, silent] : [])];
  const files = `${dossier}/files`;
  const tag = (name) => document.querySelector(`[data-tag="${name}"]`)?.value.trim() ?? '';
  let [stream, still, busy, recorder] = [null, null, false, null];
  const say = (text) => { said.textContent = text; };
  count.value = remembered().count ?? 8;
  endEarlier();

  const off = () => {
    recorder?.stop();
    for (const track of stream?.getTracks() ?? []) track.stop();
    stream = null;
    thaw();
    video.srcObject = null;
    for (const each of live) each.hidden = true;
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
    freeze.setAttribute('aria-pressed', 'false');
    if (!still) return;
    still.remove();
    still = null;
    video.hidden = false;
  }

  // What the device says it can do, largest first; where it does not say, what is usual.
  function sizes(track) {
    const can = track.getCapabilities?.() ?? {};
    const [most, tall] = [can.width?.max ?? 3840, can.height?.max ?? 2160];
    const now = track.getSettings();
    const all = [...SIZES.filter(([w, h]) => w <= most && h <= tall), ...(can.width?.max ? [[most, tall]] : []), [now.width, now.height]];
    const words = [...new Set(all.sort((a, b) => b[0] * b[1] - a[0] * a[1]).map((each) => each.join('x')))];
    size.replaceChildren(...words.map((each) => new Option(each.replace('x', ' × '), each, false, each === `${now.width}x${now.height}`)));
  }

  async function on(chosen) {
    if (!navigator.mediaDevices?.getUserMedia) { say('This browser gives no page a camera; pictures come in by drop, choice or a watched folder all the same.'); return; }
    if (recorder) { say('The camera stays as it is while it records.'); return; }
    const [width, height] = (chosen.size ?? '1920x1080').split('x').map(Number);
    const asked = (id) => navigator.mediaDevices.getUserMedia({ audio: false, video: { width: { ideal: width }, height: { ideal: height }, ...(id ? { deviceId: { exact: id } } : {}) } });
    try {
      for (const track of stream?.getTracks() ?? []) track.stop();
      // The camera used last may be unplugged today.
      stream = await asked(chosen.device).catch((e) => { if (chosen.device && ['OverconstrainedError', 'NotFoundError'].includes(e.name)) return asked(''); throw e; });
    } catch (e) {
      off();
      say(REASONS[e.name] ?? `The camera did not start: ${e.message}`);
      return;
    }
    if (!panel.isConnected) { off(); return; }
    for (const each of live) each.hidden = false;
    start.hidden = true;
    video.srcObject = stream;
    thaw();
    await video.play();
    const track = stream.getVideoTracks()[0];
    track.onended = () => { off(); say('The camera went away.'); };
    // Names are known only once the camera was allowed.
    const cameras = (await navigator.mediaDevices.enumerateDevices()).filter((d) => d.kind === 'videoinput');
    device.replaceChildren(...cameras.map((d, i) => new Option(d.label || `Camera ${i + 1}`, d.deviceId, false, d.deviceId === track.getSettings().deviceId)));
    sizes(track);
    say(`${video.videoWidth} × ${video.videoHeight} px`);
  }

  const camera = () => device.selectedOptions[0]?.text ?? '';
  const blob = (canvas) => new Promise((resolve) => { canvas.toBlob(resolve, 'image/png'); });
  function named(more = '') {
    const now = new Date();
    return `camera-${now.getFullYear()}${two(now.getMonth() + 1)}${two(now.getDate())}-${two(now.getHours())}${two(now.getMinutes())}${two(now.getSeconds())}-${String(now.getMilliseconds()).padStart(3, '0')}${more}.png`;
  }

  async function frame() {
    if (!stream || busy) return;
    busy = true;
    try {
      const canvas = still ?? drawn();
      const takenBy = camera();
      page.invokeMethodAsync('Taking');
      const picture = await blob(canvas);
      if (!picture) { say('The camera gave no picture yet; try again.'); return; }
      const name = named();
      const end = await send(files, picture, name, 'camera', say, () => {});
      say(end.fault ?? `${name} taken.`);
      if (end.stored) page.invokeMethodAsync('Taken', end.stored.sha256, name, takenBy);
    } finally { busy = false; }
  }

  const next = () => new Promise((resolve) => { if (video.requestVideoFrameCallback) video.requestVideoFrameCallback(resolve); else setTimeout(resolve, 50); });

  async function frames() {
    if (!stream || busy) return;
    busy = true;
    try {
      thaw();
      await video.play();
      const many = Math.min(50, Math.max(2, Math.round(Number(count.value)) || 8));
      count.value = many;
      remember({ count: many });
      page.invokeMethodAsync('Taking');
      const [taken, takenBy, base] = [[], camera(), named('-')];
      // All are taken before one is sent: the time between them is the camera's.
      for (let i = 0; i < many && stream; i += 1) {
        await next();
        const picture = await blob(drawn());
        if (picture) taken.push(picture);
        say(`${taken.length} of ${many} taken`);
      }
      const hashes = [];
      for (const [i, picture] of taken.entries()) {
        const name = base.replace('-.png', `-${two(i + 1)}.png`);
        const end = await send(files, picture, name, 'camera', (text) => say(`${i + 1} of ${taken.length} · ${text}`), () => {});
        if (end.fault) { say(end.fault); break; }
        // A camera that gives the same frame twice gives one file.
        if (!hashes.includes(end.stored.sha256)) hashes.push(end.stored.sha256);
      }
      if (hashes.length) await page.invokeMethodAsync('Burst', hashes, takenBy);
      if (hashes.length === taken.length) say(`${hashes.length} frames taken.`);
      else if (hashes.length) say(`${hashes.length} different frames of ${taken.length} taken.`);
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
      freeze.setAttribute('aria-pressed', 'true');
    }
  };

  async function record(withVoice) {
    if (recorder) { recorder.stop(); return; }
    if (!stream) return;
    const mine = new Recorder(`${dossier}/recordings`, (text) => { running.textContent = text; }, (text, sha256) => {
      if (recorder === mine) recorder = null;
      shown();
      running.textContent = '';
      running.append(text, ...(sha256 ? [' ', Object.assign(document.createElement('a'), { href: `${dossier}/see/video/${sha256}`, textContent: `Look at ${mine.name}` })] : []));
    });
    recorder = mine;
    shown(withVoice);
    try {
      await mine.start(stream, withVoice, { zoom: tag('zoom'), light: tag('light'), camera: camera() });
    } catch (e) {
      if (recorder === mine) recorder = null;
      shown();
      running.textContent = (withVoice && VOICE[e.name]) || `Nothing is recorded: ${e.message}`;
    }
  }

  function shown(withVoice = null) {
    for (const [button, mine, words] of [[voice, true, 'Record with voice'], [silent, false, 'Record without voice']]) {
      button.setAttribute('aria-pressed', String(withVoice === mine));
      button.textContent = withVoice === mine ? 'End the recording' : words;
      button.disabled = withVoice !== null && withVoice !== mine;
    }
    moment.hidden = withVoice === null;
    device.disabled = size.disabled = withVoice !== null;
  }

  start.onclick = () => on(remembered());
  freeze.onclick = held;
  take.onclick = frame;
  burst.onclick = frames;
  voice.onclick = () => record(true);
  silent.onclick = () => record(false);
  moment.onclick = () => { if (recorder?.name) page.invokeMethodAsync('Moment', recorder.name, recorder.second); };
  stop.onclick = () => { off(); say(''); };
  const changed = () => { remember({ device: device.value, size: size.value }); on({ device: device.value, size: size.value }); };
  device.onchange = changed;
  size.onchange = changed;
  // Till here a press would have been lost.
  start.disabled = false;
  return { close: off };
}
