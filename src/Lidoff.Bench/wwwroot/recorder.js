// Records a camera's stream piece by piece, a second each, straight to the bench by plain HTTP. A piece that does not get through waits here and
// is sent again; what got through is on the disk whatever happens to this page.
import { token } from './send.js';

const EVERY = 1000, MOST_WAITING = 256 * 2 ** 20, TYPES = ['video/webm;codecs=vp8,opus', 'video/webm', 'video/mp4'];
const mb = (bytes) => `${(bytes / 1e6).toFixed(1)} MB`;
const wait = (ms) => new Promise((resolve) => { setTimeout(resolve, ms); });
const post = (address, body) => fetch(address, { method: 'POST', body, headers: { 'X-Lidoff-Token': token(), 'Content-Type': 'application/octet-stream' } });
const KEPT = 'recording';

/** Ends what an earlier load of the page was recording; it is kept. */
export async function endEarlier() {
  const id = sessionStorage.getItem(KEPT);
  if (!id) return;
  sessionStorage.removeItem(KEPT);
  await post(`/recordings/${id}/end`).catch(() => { /* the bench ends it by itself after a while */ });
}

/** One recording. `address` begins one; `say` hears how far it is; `over` hears a sentence once all of it is kept, or why not. */
export class Recorder {
  constructor(address, say, over) {
    Object.assign(this, { address, say, over });
    [this.waiting, this.sent, this.size, this.name] = [[], 0, 0, ''];
  }

  /** Whether this browser can. */
  static get able() { return typeof MediaRecorder === 'function'; }

  /** Seconds since it began. */
  get second() { return this.began ? (performance.now() - this.began) / 1000 : 0; }

  /** Begins with the picture of `stream`; with `voice`, the microphone is asked for, here and nowhere else. */
  async start(stream, voice, tags) {
    try {
      await this.begin(stream, voice, tags);
    } catch (trouble) {
      this.drop();
      // Who ended it has been told so already.
      if (!this.stopped) throw trouble;
    }
  }

  async begin(stream, voice, tags) {
    const type = TYPES.find((each) => MediaRecorder.isTypeSupported(each));
    if (!type) throw new Error('This browser records no video.');
    // Leave for the microphone may come long after: what was ended meanwhile lets go of it at once.
    this.sound = voice ? await navigator.mediaDevices.getUserMedia({ audio: true }) : null;
    if (this.stopped) { this.drop(); return; }
    const answer = await post(`${this.address}?${new URLSearchParams({ ...tags, type, voice: voice ? '1' : '0' })}`);
    if (!answer.ok) throw new Error((await answer.text()).trim());
    ({ id: this.id, recording: this.name } = await answer.json());
    sessionStorage.setItem(KEPT, this.id);
    if (this.stopped) { this.drop(); return; }
    this.media = new MediaRecorder(new MediaStream([...stream.getVideoTracks(), ...(this.sound?.getAudioTracks() ?? [])]), { mimeType: type, videoBitsPerSecond: 8e6 });
    // The video's own time begins with the first frame that was recorded, on a busy machine up to a second after the key: moments count from there.
    this.media.onstart = () => { this.began = performance.now(); };
    this.media.ondataavailable = ({ data }) => {
      if (!data.size) return;
      this.waiting.push(data);
      this.size += data.size;
      if (this.size > MOST_WAITING) this.stop('The workbench takes no more of the recording; it was ended here.');
      this.pump();
    };
    this.media.onstop = () => { this.ended = true; this.silence(); this.pump(); };
    this.media.onerror = ({ error }) => this.stop(`The browser broke off the recording: ${error?.message ?? 'no reason given'}.`);
    this.media.start(EVERY);
    this.began = performance.now();
    this.ticking = setInterval(() => this.tell(), 500);
    this.tell();
  }

  tell() {
    const s = Math.floor(this.second);
    this.say(`Recording ${this.name} ${this.sound ? 'with voice' : 'without voice'} · ${Math.floor(s / 60)}:${String(s % 60).padStart(2, '0')} · ${mb(this.sent)} kept${this.away ? ` · the workbench does not answer, ${mb(this.size)} wait here` : ''}`);
  }

  /** Ends it; what is still waiting is sent first. */
  stop(why = '') {
    this.why ??= why;
    clearInterval(this.ticking);
    if (!this.began) {
      if (!this.stopped) this.over('Nothing is recorded: it was ended before it began.', '');
      this.stopped = true;
      return;
    }
    if (this.media?.state !== 'inactive') this.media?.stop();
  }

  // Lets go of all that was opened for a recording that does not come about.
  drop() {
    this.silence();
    clearInterval(this.ticking);
    this.began = undefined;
    this.media = undefined;
    if (!this.id) return;
    sessionStorage.removeItem(KEPT);
    post(`/recordings/${this.id}/end`).catch(() => { /* the bench ends it by itself after a while */ });
  }

  silence() { for (const track of this.sound?.getTracks() ?? []) track.stop(); }

  async pump() {
    if (this.pumping) return;
    this.pumping = true;
    while (this.waiting.length) {
      let answer;
      try { answer = await post(`/recordings/${this.id}?at=${this.sent}`, this.waiting[0]); } catch { answer = null; }
      if (!answer) {
        // The connection is away; the page stays and tries again.
        this.away = true;
        if (!this.ended) this.tell();
        await wait(1000);
        continue;
      }
      this.away = false;
      if (!answer.ok) {
        this.why = (await answer.text()).trim() || 'The workbench ended the recording.';
        this.waiting = [];
        this.stop();
        break;
      }
      const piece = this.waiting.shift();
      this.sent += piece.size;
      this.size -= piece.size;
    }
    this.pumping = false;
    if (this.ended && !this.done) await this.finish();
  }

  async finish() {
    this.done = true;
    sessionStorage.removeItem(KEPT);
    for (let tries = 0; tries < 30; tries += 1) {
      try {
        const answer = await post(`/recordings/${this.id}/end`);
        const told = answer.ok ? await answer.json() : null;
        this.over(this.why || (told ? `${this.name} is kept.` : (await answer.text()).trim()), told?.sha256 ?? '');
        return;
      } catch { await wait(1000); }
    }
    this.over(`${this.name}: the workbench does not answer. What it had until then is kept.`, '');
  }
}
