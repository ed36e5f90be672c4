// A video by the browser's own decoder: played, stepped frame by frame, stills taken of it. A still goes to the bench like any other file.
import { send } from './send.js';

/** Works the panel; `page` hears Still(sha256, name, second), Moment(second). Returns what closes it and goes to a second. */
export function open(panel, page, files, name, begin) {
  if (!panel?.isConnected) return null;
  const get = (each) => panel.querySelector(`[data-video="${each}"]`);
  const [video, play, at, where, still, moment, said] = ['video', 'play', 'at', 'where', 'still', 'moment', 'said'].map(get);
  const say = (text) => { said.textContent = text; };
  // Time of the frame in view, and the usual time between two frames as far as it was seen.
  let [shown, gap, gone] = [0, 1 / 30, false];
  const gaps = [];
  // One thing after the other: whoever presses a key five times goes five frames on.
  let turn = Promise.resolve();
  const inTurn = (work) => { turn = turn.then(() => (gone ? null : work())).catch((trouble) => say(trouble.message)); return turn; };
  const time = (s) => `${Math.floor(s / 60)}:${(s % 60).toFixed(3).padStart(6, '0')}`;
  const tell = () => {
    where.textContent = Number.isFinite(video.duration) ? `${time(shown)} of ${time(video.duration)}` : time(shown);
    if (Number.isFinite(video.duration)) at.max = video.duration;
    if (document.activeElement !== at || video.paused === false) at.value = shown;
    at.setAttribute('aria-valuetext', where.textContent);
    panel.dataset.at = shown.toFixed(3);
  };
  const seen = (_, frame) => {
    if (gone) return;
    const passed = frame.mediaTime - shown;
    // While it plays, the next frame is one frame on, or a few where the machine is busy.
    if (!video.paused && passed > 0.004 && passed < 0.5 && gaps.length < 60) {
      gaps.push(passed);
      gap = [...gaps].sort((a, b) => a - b)[gaps.length >> 1];
    }
    shown = frame.mediaTime;
    tell();
    video.requestVideoFrameCallback(seen);
  };
  if (video.requestVideoFrameCallback) video.requestVideoFrameCallback(seen);
  else video.ontimeupdate = () => { shown = video.currentTime; tell(); };

  // What a browser records carries no length; going far beyond its end makes the browser find it.
  video.onloadedmetadata = async () => {
    if (!Number.isFinite(video.duration)) {
      await to(1e7);
      await to(0);
    }
    if (begin > 0) await frame(begin);
    panel.dataset.ready = 'yes';
    tell();
  };
  video.onerror = () => say('The browser cannot decode this video; its file is kept as it is. Save it once more as WebM or MP4 (H.264).');
  video.onplay = video.onpause = () => { play.setAttribute('aria-pressed', String(!video.paused)); play.textContent = video.paused ? 'Play' : 'Pause'; };

  // Goes there and waits until its frame is in view: the browser says that it has gone there before it shows it, on a busy machine long before.
  function to(second) {
    return new Promise((resolve) => {
      let [there, framed, limit] = [false, !video.requestVideoFrameCallback, 0];
      const over = () => { video.removeEventListener('seeked', come); clearTimeout(limit); resolve(); };
      const check = () => { if (there && framed) over(); };
      const come = () => {
        there = true;
        clearTimeout(limit);
        // Where the same frame stays in view, none may be told of.
        limit = setTimeout(over, 1500);
        check();
      };
      limit = setTimeout(over, 10000);
      video.addEventListener('seeked', come);
      video.currentTime = Math.max(0, second);
      video.requestVideoFrameCallback?.((_, frame) => { shown = frame.mediaTime; framed = true; check(); });
    });
  }

  // To the very frame of a time that was noted, to a thousandth: decoders may show the one before the place they are sent to.
  async function frame(second) {
    await to(second + 0.0005);
    for (let reach = 0.004; reach < 0.2 && second - shown > 0.0015; reach *= 1.6) await to(second + reach);
    tell();
  }

  // A frame on or back: by the distance of frames, and a little further as long as the same frame stays in view.
  async function step(way) {
    video.pause();
    const from = shown;
    // Frames may lie unevenly, and decoders show one before the place they are sent to: further each time until it is another frame on that side.
    for (let reach = way > 0 ? gap : gap / 2; reach < 2; reach *= 1.6) {
      const wanted = from + way * reach + 0.0005;
      if (wanted < -gap || (Number.isFinite(video.duration) && wanted > video.duration + gap)) break;
      await to(wanted);
      if (way * (shown - from) > 0.0015) break;
    }
    tell();
  }

  async function taken() {
    if (!video.videoWidth) return;
    video.pause();
    const second = shown;
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [video.videoWidth, video.videoHeight];
    canvas.getContext('2d').drawImage(video, 0, 0);
    const picture = await new Promise((resolve) => { canvas.toBlob(resolve, 'image/png'); });
    if (!picture) { say('The video gave no picture yet; try again.'); return; }
    const file = `${name}-${second.toFixed(3)}s.png`;
    const end = await send(files, picture, file, 'recording', say, () => {});
    say(end.fault ?? `${file} taken.`);
    if (end.stored) await page.invokeMethodAsync('Still', end.stored.sha256, file, second);
  }

  play.onclick = () => { if (video.paused) video.play(); else video.pause(); };
  at.oninput = () => { video.pause(); video.currentTime = Number(at.value); };
  still.onclick = () => inTurn(taken);
  moment.onclick = () => page.invokeMethodAsync('Moment', shown);
  for (const [button, way] of [['back', -1], ['on', 1]]) get(button).onclick = () => inTurn(() => step(way));
  for (const [button, way] of [['less', -1], ['more', 1]]) get(button).onclick = () => inTurn(() => { video.pause(); return to(shown + way); });
  // The video may have come before this script.
  if (video.error) video.onerror(); else if (video.readyState >= 1) video.onloadedmetadata();
  return {
    to: (second) => inTurn(() => { video.pause(); return frame(second); }),
    close: () => { gone = true; video.pause(); video.removeAttribute('src'); video.load(); },
  };
}
