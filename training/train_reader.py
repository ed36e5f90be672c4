"""Trains the reader on made-up strips for a given time and writes its weights.

    python3 train_reader.py ATLAS SECONDS OUT [--from WEIGHTS] [--seed N] [--marks N] [--rate R] [--compile]     (compiles what draws)
    torchrun --nproc_per_node N train_reader.py …      the same on N GPUs of one host

WEIGHTS is a file of an earlier round or a shipped ONNX file. The weights kept are a running average, written every five minutes.
Several GPUs draw strips of their own and share the mean of their weights every eight steps. Prints the loss and, at the end,
errors on strips in faces it never saw.
"""
import argparse
import math
import os
import time

import numpy as np
import torch
import torch.distributed as dist
import torch.nn.functional as F

import lines
import marks
import nets
import shipped
import strips
import symbols


def table(device):
    codes = [symbols.class_of(c) for c in range(len(symbols.DRAWN))]
    return torch.tensor(codes + [0] * (256 - len(codes)), device=device)


def steps_of(valid):
    return ((valid + 3) / 4).long()


def distance(a, b):
    row = list(range(len(b) + 1))
    for i, x in enumerate(a):
        held, row[0] = row[0], i + 1
        for j, y in enumerate(b):
            held, row[j + 1] = row[j + 1], min(row[j + 1] + 1, row[j] + 1, held + (x != y))
    return row[-1]


def lost(network, x, classes, counts, valid):
    device = x.device.type
    with torch.autocast(device, torch.bfloat16, enabled=device == "cuda"):
        scores = network(x.contiguous(memory_format=torch.channels_last))
    return F.ctc_loss(scores.float().log_softmax(2).transpose(0, 1), classes, steps_of(valid), counts, zero_infinity=True)


@torch.no_grad()
def judged(model, source, batches):
    """Mean character error and share of lines right by the plainest reading (best class of each step)."""
    errors, right, total = 0.0, 0, 0
    for _, (x, classes, counts, valid) in zip(range(batches), source):
        best = model(x).argmax(2).tolist()
        for b, c, n, t in zip(best, classes.tolist(), counts.tolist(), steps_of(valid).tolist()):
            if n == 0:
                continue
            read = [s for k, s in enumerate(b[:t]) if s and (k == 0 or b[k - 1] != s)]
            wrong = distance(read, c[:n])
            errors, right, total = errors + min(1.0, wrong / n), right + (wrong == 0), total + 1
    return errors / total, right / total, total


@torch.no_grad()
def shared(model):
    """Every process's weights and running figures become the mean of all."""
    held = [v for v in model.state_dict().values() if v.is_floating_point()]
    flat = torch.cat([v.reshape(-1).float() for v in held])
    dist.all_reduce(flat, op=dist.ReduceOp.AVG)
    for v, part in zip(held, flat.split([v.numel() for v in held])):
        v.copy_(part.view_as(v))


def kept(mean, path):
    torch.save({k: v.half().cpu() if v.is_floating_point() else v.cpu() for k, v in mean.items()}, path + ".part")
    os.replace(path + ".part", path)


def main():
    p = argparse.ArgumentParser()
    p.add_argument("atlas"), p.add_argument("seconds", type=float), p.add_argument("out")
    p.add_argument("--from", dest="start"), p.add_argument("--seed", type=int, default=1)
    p.add_argument("--marks", type=int, default=4_000_000), p.add_argument("--rate", type=float, default=1.5e-3)
    p.add_argument("--device", default="cuda"), p.add_argument("--columns", type=int, default=1024 * 224)
    p.add_argument("--compile", action="store_true")
    a = p.parse_args()
    device, begun = a.device, time.time()
    rank, world = int(os.environ.get("RANK", 0)), int(os.environ.get("WORLD_SIZE", 1))
    if world > 1:
        device = f"cuda:{rank}"
        torch.cuda.set_device(rank)
        dist.init_process_group("nccl")
    torch.manual_seed(a.seed * 1000 + rank)
    torch.backends.cuda.matmul.allow_tf32 = torch.backends.cudnn.allow_tf32 = torch.backends.cudnn.benchmark = True
    loaded = dict(np.load(a.atlas))
    bank = torch.from_numpy(marks.bank(a.marks, a.seed)).to(device)
    source = strips.Strips(lines.Atlas(loaded, device), bank, table(device), device, a.columns, a.compile)
    model = nets.Reader()
    if a.start and a.start.endswith(".onnx"):
        shipped.restored(model, a.start, torch.zeros(1, 1, lines.ROWS, lines.WIDTHS[0]))
    elif a.start:
        nets.restored(model, a.start)
    model = model.to(device).to(memory_format=torch.channels_last)
    if a.start and a.start.endswith(".onnx"):
        shipped.steadied(model, [x for _, (x, *_) in zip(range(12), source.batches())])
    if world > 1:
        shared(model)
    model.train()
    decayed = [q for q in model.parameters() if q.dim() > 1]
    plain = [q for q in model.parameters() if q.dim() <= 1]
    optimiser = torch.optim.AdamW([{"params": decayed, "weight_decay": 0.05}, {"params": plain, "weight_decay": 0.0}], a.rate, betas=(0.9, 0.98))
    mean = {k: v.detach().clone().float() for k, v in model.state_dict().items()}
    print("parameters", sum(q.numel() for q in model.parameters()), "faces", len(source.atlas.names), "ready after", round(time.time() - begun), flush=True)
    step, shown, seen, first, written = 0, None, 0, time.time(), 0
    clock, passed = torch.zeros(1, device=device), 0.0
    for x, classes, counts, valid in source.batches():
        # One clock for all: they stop at the same step.
        if step % 8 == 0:
            passed = (time.time() - first) / a.seconds
            if world > 1:
                shared(model)
                dist.broadcast(clock.fill_(passed), 0)
                passed = clock.item()
        if passed >= 1:
            break
        rate = a.rate * min(1, (step + 1) / 400) * (0.5 + 0.5 * math.cos(math.pi * passed)) + 1e-6
        for group in optimiser.param_groups:
            group["lr"] = rate
        loss = lost(model, x, classes, counts, valid)
        optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(model.parameters(), 2.0)
        optimiser.step()
        step, seen = step + 1, seen + len(x)
        if step % 4 == 0:
            weight = 0.004 if step > 3000 else 0.02 if step > 800 else 0.1
            with torch.no_grad():
                for k, v in model.state_dict().items():
                    if v.is_floating_point():
                        mean[k].lerp_(v.float(), weight)
        if step % 50 == 0:
            shown = loss.item() if shown is None else 0.9 * shown + 0.1 * loss.item()
        if step % 500 == 0 and rank == 0:
            print(step, "steps", round(time.time() - first), "s loss", round(shown, 4), "lines", seen * world, "a second", round(seen * world / (time.time() - first)), flush=True)
            if time.time() - first > written + 300:
                written = time.time() - first
                kept(mean, a.out)
    if world > 1:
        dist.destroy_process_group()
    if rank > 0:
        return
    model.load_state_dict({k: (mean[k].to(v.dtype) if v.is_floating_point() else v) for k, v in model.state_dict().items()})
    model.eval()
    kept(model.state_dict(), a.out)
    held = strips.Strips(lines.Atlas(loaded, device, held=True), bank[:200000], table(device), device, a.columns)
    same = strips.Strips(lines.Atlas(loaded, device), bank[:200000], table(device), device, a.columns)
    torch.manual_seed(7)
    print("known faces: character error %.4f, lines right %.4f of %d" % judged(model, same.batches(), 6))
    print("faces never seen: character error %.4f, lines right %.4f of %d" % judged(model, held.batches(), 6))


if __name__ == "__main__":
    main()
