"""Draws the validation set: whole package tops, drawn by another hand than the training's (a general drawing library, on the
CPU) in faces that no training line was drawn in, with what is known to be hard.

    python3 validation.py FOLDER [--count 240] [--seed 5]

Writes NNN.jpg and truth.jsonl: for each picture its lines (text, corners clockwise from the text's own top left), the turn
that makes it upright, which line holds the product number, and what is hard in it.
"""
import argparse
import json
import math
import os
import random

import numpy as np
from PIL import Image, ImageDraw, ImageFilter, ImageFont
from scipy.ndimage import gaussian_filter

import faces
import marks
import symbols

HARD = ("plain", "low contrast", "coarse grain", "small", "dots", "raster", "worn", "glare", "blurred", "gaps", "logo", "neighbours", "square face", "look-alikes")


def held_faces():
    files = [f for f in faces.font_files() if faces.HELD.search(os.path.basename(f))]
    good = []
    for f in files:
        font = faces.loaded(f)
        if font is not None and all(font.getbbox(c)[2] > 2 for c in symbols.LETTERS):
            good.append(f)
    return good


SQUARE = ("Jura", "Dosis")


def text_mask(r, text, path, cap, spacing, boldness):
    """Ink of one line at `cap` px of capital height times four, cropped to its ink."""
    font = ImageFont.truetype(path, 100)
    font = ImageFont.truetype(path, max(8, round(100 * 4 * cap / -font.getbbox("H", anchor="ls")[1])))
    x, out = 40.0, Image.new("L", (int(len(text) * 6 * cap + 300), int(8 * cap)))
    draw = ImageDraw.Draw(out)
    for c in text:
        if c == " ":
            x += 4 * cap * r.uniform(0.35, 1.0)
            continue
        draw.text((x, 6 * cap), c, fill=255, font=font, anchor="ls")
        x += font.getlength(c) + spacing * 4 * cap
    if boldness > 0:
        out = out.filter(ImageFilter.MaxFilter(2 * boldness + 1))
    return out.crop(out.getbbox())


def textured(r, g, kind, cap):
    """The pen: dots, raster lines, wear."""
    a = np.asarray(g, np.float32) / 255
    yy, xx = np.mgrid[:a.shape[0], :a.shape[1]].astype(np.float32)
    if kind == "dots":
        p = 4 * cap * r.uniform(0.09, 0.15)
        fx, fy = xx / p % 1 - 0.5, yy / p % 1 - 0.5
        a = a * (np.hypot(fx, fy) < r.uniform(0.36, 0.5))
    elif kind == "raster":
        p = 4 * cap * r.uniform(0.08, 0.16)
        a = a * ((yy / p % 1) < r.uniform(0.45, 0.75))
    elif kind == "worn":
        n = gaussian_filter(np.random.RandomState(r.randrange(1 << 30)).randn(*a.shape), 4 * cap * 0.25)
        n = (n - n.mean()) / n.std()
        a = a * np.clip(1.1 - 0.7 * np.clip(n, 0, 2), 0.12, 1)
    return a


def top(r, files):
    """One picture, 0 to 1, and what stands on it."""
    kind = r.choice(HARD)
    rng = np.random.RandomState(r.randrange(1 << 30))
    count = r.choice((1, 2, 2, 3, 3, 3, 4, 4, 5))
    cap = r.uniform(11, 15) if kind == "small" else math.exp(r.uniform(math.log(15), math.log(46)))
    path = r.choice([f for f in files if (any(s in f for s in SQUARE)) == (kind == "square face")] or files)
    texts = []
    number = None
    for k in range(count):
        if kind == "look-alikes":
            t = marks.confusing(r)
        else:
            t = r.choice((marks.part_number, marks.digits_first, marks.short_code, marks.date_code, marks.trace_code, marks.lot, marks.word))(r)
        if kind == "gaps" and len(t) > 4 and " " not in t:
            at = r.randint(2, len(t) - 2)
            t = t[:at] + " " + t[at:]
        texts.append(t[:13].strip(" -./"))
    number = max(range(count), key=lambda k: len(texts[k].replace(" ", "")))
    spacing, bold, gap = r.choice((0, 0, 0.04, 0.12)), r.choice((0, 0, 1, 2)), r.uniform(0.35, 1.1)
    masks = []
    for k, t in enumerate(texts):
        other = r.random() < 0.2
        masks.append(textured(r, text_mask(r, t, r.choice(files) if other else path, cap * (r.uniform(0.7, 1.3) if other else 1), spacing, bold), kind, cap))
    width = max(m.shape[1] for m in masks) / 4
    pad_x, pad_y = cap * r.uniform(0.5, 2.2), cap * r.uniform(0.5, 2.0)
    logo = kind == "logo" or r.random() < 0.15
    extra = cap * r.uniform(1.6, 2.6) if logo else 0
    h = sum(m.shape[0] / 4 for m in masks) + gap * cap * (count - 1) + 2 * pad_y + extra
    w = width + 2 * pad_x
    big = np.zeros((int(4 * h), int(4 * w)), np.float32)
    y, outlines = 4 * (pad_y + extra), []
    align = r.choice(("left", "centre"))
    for m in masks:
        x = 4 * pad_x if align == "left" else (big.shape[1] - m.shape[1]) / 2
        x0, y0 = int(x), int(y)
        part = big[y0:y0 + m.shape[0], x0:x0 + m.shape[1]]
        np.maximum(part, m[:part.shape[0], :part.shape[1]], out=part)
        outlines.append([(x0 / 4, y0 / 4), ((x0 + m.shape[1]) / 4, y0 / 4), ((x0 + m.shape[1]) / 4, (y0 + m.shape[0]) / 4), (x0 / 4, (y0 + m.shape[0]) / 4)])
        y += m.shape[0] + 4 * gap * cap
    image = Image.fromarray((big * 255).astype(np.uint8))
    draw = ImageDraw.Draw(image)
    if logo:
        s, cx, cy = 4 * cap * 0.7, 4 * (pad_x + cap), 4 * (pad_y + extra / 2 - cap * 0.2)
        for _ in range(r.randint(2, 4)):
            a, b = sorted((r.uniform(-1, 1), r.uniform(-1, 1)))
            shape = r.randrange(3)
            box = (cx + a * s - 6, cy - s * r.uniform(0.3, 1), cx + b * s + 6, cy + s * r.uniform(0.3, 1))
            if shape == 0:
                draw.ellipse(box, outline=230, width=int(cap * 0.4) + 1)
            elif shape == 1:
                draw.polygon([(cx + s * math.cos(t), cy + s * math.sin(t)) for t in (a * 3, a * 3 + 2, a * 3 + 4)], fill=230)
            else:
                draw.arc(box, r.uniform(0, 180), r.uniform(180, 360), fill=230, width=int(cap * 0.5) + 1)
    if r.random() < 0.4:
        q, m = 4 * cap * r.uniform(0.15, 0.4), 4 * cap * r.uniform(0.2, 0.5)
        cx, cy = m + q, (m + q if r.random() < 0.5 else image.height - m - q)
        if not any(4 * o[0][0] - q < cx < 4 * o[2][0] + q and 4 * o[0][1] - q < cy < 4 * o[2][1] + q for o in outlines):
            draw.ellipse((cx - q, cy - q, cx + q, cy + q), outline=220, fill=None if r.random() < 0.4 else 200, width=5)
    # Around the body: the board, perhaps with letters of its own.
    margin = int(4 * cap * (r.uniform(0.8, 1.8) if kind == "neighbours" else r.choice((0, 0, r.uniform(0.1, 0.8)))))
    ink = np.pad(np.asarray(image, np.float32) / 255, margin)
    board = np.zeros_like(ink, bool)
    if margin:
        board[:] = True
        board[margin:-margin, margin:-margin] = False
    base, surround = r.uniform(0.08, 0.5), r.uniform(0.05, 0.8)
    contrast = r.uniform(0.03, 0.07) if kind == "low contrast" else math.exp(r.uniform(math.log(0.1), math.log(0.5)))
    sign = 1 if base < 0.35 or r.random() < 0.7 else -1
    ground = np.where(board, surround, base)
    if kind == "neighbours":
        beside = Image.new("L", (ink.shape[1], ink.shape[0]))
        font = ImageFont.truetype(r.choice(files), max(10, int(margin * 0.75)))
        ImageDraw.Draw(beside).text((r.uniform(0, 0.4) * ink.shape[1], 0), marks.mark(r), fill=255, font=font)
        ground = np.where(board & (np.asarray(beside) > 100), 0.95 if surround < 0.6 else 0.1, ground)
        pitch = int(4 * cap * r.uniform(0.5, 1.0))
        comb = (np.arange(ink.shape[1]) // (pitch // 2) % 2 == 0)[None, :] & (np.arange(ink.shape[0]) > ink.shape[0] - margin)[:, None]
        ground = np.where(board & comb, 0.85, ground)
    turn = r.gauss(0, 1.2) if r.random() < 0.6 else r.uniform(-180, 180)
    full = Image.fromarray(((ground + sign * contrast * ink).clip(0, 1) * 65535).astype(np.float32), mode="F")
    # Turned about the middle; everything beyond is board again.
    full = full.rotate(-turn, Image.BICUBIC, expand=True, fillcolor=float(surround * 65535 if margin else base * 65535))
    small = full.resize((max(8, full.width // 4), max(8, full.height // 4)), Image.BOX)
    a = np.asarray(small, np.float32) / 65535
    c, s = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    mid = (ink.shape[1] / 8, ink.shape[0] / 8)
    lines = []
    for t, o in zip(texts, outlines):
        corners = []
        for x, yy in o:
            dx, dy = x + margin / 4 - mid[0], yy + margin / 4 - mid[1]
            corners.append([round(dx * c - dy * s + a.shape[1] / 2, 1), round(dx * s + dy * c + a.shape[0] / 2, 1)])
        lines.append({"text": t.replace(" ", "").upper(), "outline": corners})
    grain = contrast * (r.uniform(0.18, 0.4) if kind == "coarse grain" else r.uniform(0.02, 0.15))
    rough = gaussian_filter(rng.randn(*a.shape), cap * (0.06 if kind == "coarse grain" else 0.02) + 0.4)
    a = a + grain * rough / rough.std()
    yy, xx = np.mgrid[:a.shape[0], :a.shape[1]] / max(a.shape)
    a = a + contrast * (r.uniform(-0.5, 0.5) * xx + r.uniform(-0.5, 0.5) * yy)
    if kind == "glare":
        a = a + r.uniform(0.3, 0.7) * np.exp(-(((xx - r.uniform(0.1, 0.9)) ** 2 + (yy - r.uniform(0.1, 0.9) * a.shape[0] / max(a.shape)) ** 2) / r.uniform(0.01, 0.05)))
    a = gaussian_filter(a, cap * r.uniform(0.07, 0.11) if kind == "blurred" else r.uniform(0.3, 0.8))
    a = a + rng.randn(*a.shape) * r.uniform(0.002, 0.01)
    return a.clip(0, 1), {"turn_deg": round(-turn % 360, 2), "upright": abs(turn) < 10, "hard": kind, "number": number, "lines": lines}


def main():
    p = argparse.ArgumentParser()
    p.add_argument("folder"), p.add_argument("--count", type=int, default=240), p.add_argument("--seed", type=int, default=5)
    a = p.parse_args()
    os.makedirs(a.folder, exist_ok=True)
    files, r = held_faces(), random.Random(a.seed)
    with open(os.path.join(a.folder, "truth.jsonl"), "w", newline="\n") as out:
        for k in range(a.count):
            image, truth = top(r, files)
            name = f"{k:03d}.jpg"
            Image.fromarray((image * 255).round().astype(np.uint8)).save(os.path.join(a.folder, name), quality=r.choice((60, 75, 88, 95)))
            out.write(json.dumps({"image": name, **truth}, ensure_ascii=False) + "\n")
    print(a.count, "pictures in", len(files), "faces:", sorted(os.path.basename(f) for f in files))


if __name__ == "__main__":
    main()
