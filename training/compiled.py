"""Compiles once, side by side, what draws batches and trains on them, into the compiler's own cache; training then starts at once.

    python3 compiled.py ATLAS
"""
import subprocess
import sys
import time

import numpy as np
import torch

import lines
import marks
import nets
import strips
import tops
import train_finder
import train_reader


def timed(what, f, times=8):
    begun = time.time()
    f()
    torch.cuda.synchronize()
    ready = time.time()
    for _ in range(times):
        f()
    torch.cuda.synchronize()
    print(f"{what}: ready after {ready - begun:.1f} s, then {(time.time() - ready) / times * 1e3:.1f} ms", flush=True)


def one(atlas, what):
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = torch.backends.cudnn.benchmark = True
    bank = torch.from_numpy(marks.bank(20000, 1)).cuda()
    faces = lines.Atlas(dict(np.load(atlas)), "cuda")
    if what == "finder":
        source, model, lost = tops.Tops(faces, bank, "cuda", 64), nets.Finder(), train_finder.lost
        draw = source.batch
    else:
        width = int(what)
        source, model, lost = strips.Strips(faces, bank, train_reader.table("cuda"), "cuda", 1024 * 224), nets.Reader(), train_reader.lost
        draw = lambda: source.batch(lines.Plan(faces, bank, source.columns // width, "cuda"), width)
    model = model.cuda().to(memory_format=torch.channels_last)
    network = nets.compiled(model, "cuda")
    timed(f"{what}, drawing", draw)
    batch = draw()

    def step():
        loss = lost(network, *batch)
        (sum(loss.values()) if isinstance(loss, dict) else loss).backward()
    timed(f"{what}, forward and backward", step)


if __name__ == "__main__":
    if len(sys.argv) > 2:
        one(sys.argv[1], sys.argv[2])
    else:
        jobs = [subprocess.Popen([sys.executable, __file__, sys.argv[1], str(w)]) for w in (*lines.WIDTHS, "finder")]
        sys.exit(max(j.wait() for j in jobs))
