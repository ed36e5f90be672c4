"""Weights read back from a shipped ONNX file, so that a round can go on from what the repository holds and nothing else need be kept.

The exporter folds each normalisation into the convolution before it. Read back, every normalisation lets its input pass and adds
the folded bias; `steadied` then measures what passes through it and writes the same arithmetic with that mean and spread, as
training wants it.
"""
import numpy as np
import onnx
import torch
import torch.nn as nn
from onnx import numpy_helper


def met(model, example):
    """The 2-D convolutions in the order in which they are met, which is the order of the file, each with its normalisation or None."""
    order, hooks = [], []
    for module in model.modules():
        if isinstance(module, (nn.Conv2d, nn.BatchNorm2d)):
            hooks.append(module.register_forward_hook(lambda m, x, y: order.append(m)))
    model.eval()
    with torch.no_grad():
        model(example)
    for hook in hooks:
        hook.remove()
    return [(a, b if isinstance(b, nn.BatchNorm2d) else None) for a, b in zip(order, order[1:] + [None]) if isinstance(a, nn.Conv2d)]


def restored(model, path, example):
    """`model` with the weights of the ONNX file at `path`; reads as the file does, to the rounding of half floats."""
    held = {t.name.removesuffix("_half"): torch.from_numpy(np.array(numpy_helper.to_array(t), np.float32)) for t in onnx.load(path).graph.initializer}
    number = lambda name: int(name.rsplit("_", 1)[1])
    folded = sorted((n for n in held if n.startswith("onnx::Conv_")), key=number)
    products = sorted((n for n in held if n.startswith("onnx::MatMul_")), key=number)
    state = dict(model.named_parameters())
    with torch.no_grad():
        for convolution, norm in met(model, example):
            if norm is None:
                continue
            weight, bias = held[folded.pop(0)], held[folded.pop(0)]
            convolution.weight.copy_(weight)
            norm.running_mean.zero_(), norm.running_var.fill_(1 - norm.eps)
            norm.weight.fill_(1), norm.bias.copy_(bias)
        for module in model.modules():
            if isinstance(module, nn.Linear):
                module.weight.copy_(held[products.pop(0)].T)
        for name, value in state.items():
            if name in held:
                value.copy_(held[name].view_as(value))
    left = folded + products + [n for n in held if not n.startswith("onnx::") and n not in state]
    if left:
        raise ValueError("the file holds weights that the network does not have: " + ", ".join(left))
    return model


@torch.no_grad()
def steadied(model, pictures):
    """The same function with each normalisation's own mean and spread over `pictures` (a list of batches)."""
    sums, hooks = {}, []

    def note(module, inputs, output):
        x = inputs[0].double().transpose(0, 1).flatten(1)
        count, one, two = sums.get(module, (0, 0, 0))
        sums[module] = (count + x.shape[1], one + x.sum(1), two + (x * x).sum(1))

    for module in model.modules():
        if isinstance(module, nn.BatchNorm2d):
            hooks.append(module.register_forward_hook(note))
    model.eval()
    for picture in pictures:
        model(picture)
    for hook in hooks:
        hook.remove()
    for norm, (count, one, two) in sums.items():
        mean = one / count
        spread = (two / count - mean * mean).clamp(min=1e-8)
        # What it did before: x ↦ scale · x + shift.
        scale = norm.weight.double() / (norm.running_var.double() + norm.eps).sqrt()
        shift = norm.bias.double() - norm.running_mean.double() * scale
        norm.running_mean.copy_(mean), norm.running_var.copy_(spread)
        norm.weight.copy_(scale * (spread + norm.eps).sqrt()), norm.bias.copy_(shift + mean * scale)
    return model
