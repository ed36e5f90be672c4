"""Writes the two networks as ONNX files with half-precision weights, and a card beside each.

    python3 export.py FINDER_WEIGHTS READER_WEIGHTS FOLDER --version V [--temperature T] [--line-temperature T] [--figures FILE]

Weights are kept as half floats and widened when the file is loaded: half the size, the same arithmetic. The cards hold
what the program needs (hash, symbols, temperatures) and what people want to know (data, figures).
"""
import argparse
import hashlib
import json
import os

import numpy as np
import onnx
import torch
from onnx import TensorProto, helper, numpy_helper

import nets
import symbols

DATA = ("Made-up marks alone, drawn by training/ of this repository in 605 general typefaces from Debian packages and four "
        "single-stroke engraving faces. No photograph was trained on.")


def halved(path):
    """Large weights as half floats with a cast behind each."""
    model = onnx.load(path)
    kept, casts = [], []
    for tensor in model.graph.initializer:
        values = numpy_helper.to_array(tensor)
        if tensor.data_type != TensorProto.FLOAT or values.size < 256:
            kept.append(tensor)
            continue
        half = numpy_helper.from_array(values.astype(np.float16), tensor.name + "_half")
        kept.append(half)
        casts.append(helper.make_node("Cast", [half.name], [tensor.name], to=TensorProto.FLOAT, name="widen_" + tensor.name))
    del model.graph.initializer[:]
    model.graph.initializer.extend(kept)
    nodes = list(model.graph.node)
    del model.graph.node[:]
    model.graph.node.extend(casts + nodes)
    model.doc_string = ""
    model.producer_version = ""
    onnx.checker.check_model(model)
    onnx.save(model, path)


def exported(model, example, path, inputs, outputs, axes):
    model.eval()
    torch.onnx.export(model, (example,), path, input_names=[inputs], output_names=[outputs], dynamic_axes=axes, opset_version=16)
    halved(path)


def card(folder, name, told):
    path = os.path.join(folder, name + ".onnx")
    told = {"name": name, **told, "sha256": hashlib.sha256(open(path, "rb").read()).hexdigest(), "bytes": os.path.getsize(path)}
    with open(os.path.join(folder, name + ".json"), "w", newline="\n") as f:
        json.dump(told, f, indent=2, ensure_ascii=False)
        f.write("\n")


def main():
    p = argparse.ArgumentParser()
    p.add_argument("finder"), p.add_argument("reader"), p.add_argument("folder"), p.add_argument("--version", required=True)
    p.add_argument("--temperature", type=float, default=1.0), p.add_argument("--line-temperature", type=float, default=1.0)
    p.add_argument("--figures")
    a = p.parse_args()
    os.makedirs(a.folder, exist_ok=True)
    figures = json.load(open(a.figures)) if a.figures else {}
    finder, reader = nets.restored(nets.Finder(), a.finder), nets.restored(nets.Reader(), a.reader)
    exported(finder, torch.randn(1, 1, 384, 320), os.path.join(a.folder, "finder.onnx"), "picture", "maps",
             {"picture": {2: "h", 3: "w"}, "maps": {2: "h4", 3: "w4"}})
    exported(reader, torch.randn(2, 1, 48, 224), os.path.join(a.folder, "reader.onnx"), "lines", "scores",
             {"lines": {0: "n", 3: "w"}, "scores": {0: "n", 1: "t"}})
    card(a.folder, "finder", {"version": a.version, "data": DATA, "parameters": sum(q.numel() for q in finder.parameters()),
                              "maps": ["core", "line", "cosine", "sine", "log height / 16", "pin-1 dot", "body", "logo", "cosine of twice", "sine of twice"],
                              **figures.get("finder", {})})
    card(a.folder, "reader", {"version": a.version, "alphabet": symbols.READ, "temperature": a.temperature, "line_temperature": a.line_temperature,
                              "data": DATA, "parameters": sum(q.numel() for q in reader.parameters()), **figures.get("reader", {})})


if __name__ == "__main__":
    main()
