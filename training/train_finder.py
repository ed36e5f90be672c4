"""Trains the finder on made-up package tops for a given time and writes its weights.

    python3 train_finder.py ATLAS SECONDS OUT [--from WEIGHTS] [--seed N] [--marks N] [--rate R]
"""
import argparse
import math
import time

import numpy as np
import torch
import torch.nn.functional as F

import lines
import marks
import nets
import tops


def overlap(score, truth, valid):
    p = score.sigmoid() * valid
    return 1 - (2 * (p * truth).sum((1, 2)) + 1) / (p.sum((1, 2)) + truth.sum((1, 2)) + 1)


def losses(maps, truth, valid):
    v = valid[:, 0, ::tops.STRIDE, ::tops.STRIDE]
    area = v.sum()
    out = {}
    for name, channel, weight in (("core", tops.CORE, 2.0), ("line", tops.LINE, 1.0), ("dot", tops.DOT, 1.0), ("body", tops.BODY, 0.5), ("logo", tops.LOGO, 0.7)):
        cross = (F.binary_cross_entropy_with_logits(maps[:, channel], truth[:, channel], reduction="none") * v).sum() / area
        out[name] = weight * (cross * 2 + overlap(maps[:, channel], truth[:, channel], v).mean())
    on = truth[:, tops.LINE]
    much = on.sum() + 1
    out["way"] = 2 * (((maps[:, tops.COSINE] - truth[:, tops.COSINE]) ** 2 + (maps[:, tops.SINE] - truth[:, tops.SINE]) ** 2) * on).sum() / much
    out["axis"] = 2 * (((maps[:, tops.COSINE2] - truth[:, tops.COSINE2]) ** 2 + (maps[:, tops.SINE2] - truth[:, tops.SINE2]) ** 2) * on).sum() / much
    out["height"] = 2 * ((maps[:, tops.HEIGHT] - truth[:, tops.HEIGHT]).abs() * on).sum() / much
    return out


def pieces(batches, count):
    """What is drawn at once is learnt from in pieces: drawing waits for its commands, not for the GPU."""
    for batch in batches:
        yield from zip(*(t.split(count) for t in batch))


def lost(network, x, truth, valid):
    device = x.device.type
    with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
        maps = network(x.contiguous(memory_format=torch.channels_last))
    return losses(maps.float(), truth, valid)


@torch.no_grad()
def judged(model, source, batches):
    """Shares of the core's cells found and of those said to be core that are; of pictures whose way up is right."""
    found = said = there = right = pictures = 0
    off = []
    for _, (x, truth, valid) in zip(range(batches), source):
        maps = model(x)
        core = (maps[:, tops.CORE] > 0) & (valid[:, 0, ::tops.STRIDE, ::tops.STRIDE] > 0)
        t = truth[:, tops.CORE] > 0.5
        found, said, there = found + (core & t).sum().item(), said + core.sum().item(), there + t.sum().item()
        has = t.sum((1, 2)) > 0
        c = (maps[:, tops.COSINE] * t).sum((1, 2)), (maps[:, tops.SINE] * t).sum((1, 2))
        w = (truth[:, tops.COSINE] * t).sum((1, 2)), (truth[:, tops.SINE] * t).sum((1, 2))
        angle = torch.atan2(c[0] * w[1] - c[1] * w[0], c[0] * w[0] + c[1] * w[1])[has].abs()
        right, pictures = right + (angle < math.pi / 4).sum().item(), pictures + len(angle)
        off.append(angle[angle < math.pi / 4])
    return found / there, found / max(1, said), right / pictures, math.degrees(torch.cat(off).median().item())


def main():
    p = argparse.ArgumentParser()
    p.add_argument("atlas"), p.add_argument("seconds", type=float), p.add_argument("out")
    p.add_argument("--from", dest="start"), p.add_argument("--seed", type=int, default=2)
    p.add_argument("--marks", type=int, default=1_000_000), p.add_argument("--rate", type=float, default=2e-3)
    p.add_argument("--device", default="cuda"), p.add_argument("--count", type=int, default=64)
    p.add_argument("--drawn", type=int, default=256)
    a = p.parse_args()
    device = a.device
    torch.manual_seed(a.seed)
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = torch.backends.cudnn.benchmark = True
    loaded = dict(np.load(a.atlas))
    bank = torch.from_numpy(marks.bank(a.marks, a.seed)).to(device)
    source = tops.Tops(lines.Atlas(loaded, device), bank, device, a.drawn)
    model = nets.Finder()
    if a.start:
        nets.restored(model, a.start)
    model = model.to(device).to(memory_format=torch.channels_last)
    network = nets.compiled(model, device)
    optimiser = torch.optim.AdamW(model.parameters(), a.rate, weight_decay=0.02, betas=(0.9, 0.98))
    mean = {k: v.detach().clone().float() for k, v in model.state_dict().items()}
    step, first, shown = 0, time.time(), {}
    for x, truth, valid in pieces(source.batches(), a.count):
        passed = (time.time() - first) / a.seconds
        if passed >= 1:
            break
        for group in optimiser.param_groups:
            group["lr"] = a.rate * min(1, (step + 1) / 300) * (0.5 + 0.5 * math.cos(math.pi * passed)) + 1e-6
        parts = lost(network, x, truth, valid)
        loss = sum(parts.values())
        optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(model.parameters(), 2.0)
        optimiser.step()
        step += 1
        if step % 4 == 0:
            weight = 0.006 if step > 2000 else 0.03 if step > 500 else 0.1
            with torch.no_grad():
                for k, v in model.state_dict().items():
                    if v.is_floating_point():
                        mean[k].lerp_(v.float(), weight)
        if step % 20 == 0:
            for k, v in parts.items():
                shown[k] = v.item() if k not in shown else 0.9 * shown[k] + 0.1 * v.item()
        if step % 400 == 0:
            print(step, "steps", round(time.time() - first), "s", {k: round(v, 3) for k, v in shown.items()}, "pictures a second", round(step * a.count / (time.time() - first)), flush=True)
    model.load_state_dict({k: (mean[k].to(v.dtype) if v.is_floating_point() else v) for k, v in model.state_dict().items()})
    model.eval()
    torch.save({k: v.half().cpu() if v.is_floating_point() else v.cpu() for k, v in model.state_dict().items()}, a.out)
    torch.manual_seed(7)
    held = tops.Tops(lines.Atlas(loaded, device, held=True), bank[:100000], device, a.count)
    print("faces never seen: core found %.4f, core said right %.4f, way up right %.4f, off by %.2f degrees (median)" % judged(model, held.batches(), 20), flush=True)


if __name__ == "__main__":
    main()
