"""Draws every symbol of every usable typeface once, as a signed distance field, into one atlas.

A chip's mark is lasered, printed or engraved in faces that nobody lists; what is common to them is learnt
from many general typefaces and four single-stroke engraving ones (Debian packages, see packages.txt).
Distances instead of pictures let the trainer thicken, thin, outline or dot a stroke later at no cost.

    python3 faces.py atlas.npz
"""
import glob
import os
import re
import sys
from concurrent.futures import ProcessPoolExecutor

import numpy as np
from PIL import Image, ImageDraw, ImageFont
from scipy.ndimage import distance_transform_edt

import symbols

CELL = 64          # rows and columns of one symbol's field
CAP = 36.0         # rows of a capital letter in it
BASELINE = 50      # row on which letters stand
ORIGIN = 8         # column at which a letter's advance starts
REACH = 8.0        # distances are kept up to this many rows to either side of an outline
FINE = 2           # drawn this much finer than kept
WIDEST = 48        # columns of the widest symbol: wider faces are narrowed to it as a whole

# Families close to what machines mark packages with: plain grotesques, drawing-office, machine-readable and
# road-sign letters. They are drawn half of the time. Common practice, no source.
PLAIN = re.compile(
    r"Liberation(Sans|Mono)|FreeSans|FreeMono|DejaVuSans|DejaVu Sans|Vera|Roboto-|OCR|osifont|routed|B612|Hack|Inconsolata"
    r"|NotoMono|Lato-|OpenSans|OpenDin|DIN|Gillius|Switzera|Tuffy|NimbusSans|NimbusMono|heros|Inter-|Roadgeek"
    r"|NationalPark|Go-|Go_|Carlito|ClearSans|Arimo|Cousine|lmsans|lmmono|Universalis|Mononoki|LeagueMono", re.I)
SKIP = re.compile(
    r"italic|oblique|slanted|symbol|dingbat|awesome|emoji|math|ornament|script|dancing|unicode-old|braille|DSEG7"
    r"|-It\.|Obl|lmroman.*(caps|dunh)|cmu.*(classical|uprightitalic)|Marker|D050000L|outline|shadow|-It$", re.I)
# Families that no training line is drawn in: the validation set is drawn in these.
HELD = re.compile(r"Cantarell|PT_?Sans|PTS|Oxygen|Jura|JetBrainsMono|Sora|opendin|Dosis|futuram|Monoid|Karla", re.I)

STROKES = ("futural", "futuram", "rowmans", "rowmand")


def font_files():
    files = sorted({os.path.realpath(f) for f in glob.glob("/usr/share/fonts/**/*.[to]tf", recursive=True)})
    seen, kept = set(), []
    for f in files:
        name = os.path.basename(f)
        if SKIP.search(name) or name.lower()[:-4] in seen:
            continue
        seen.add(name.lower()[:-4])
        kept.append(f)
    return kept


def picture(font, char, narrowing=1.0, size=None):
    """One symbol drawn black on white at FINE times the kept size, its advance starting at ORIGIN."""
    width = int(CELL * FINE / narrowing)
    image = Image.new("L", (width, CELL * FINE))
    ImageDraw.Draw(image).text((ORIGIN * FINE / narrowing, BASELINE * FINE), char, fill=255, font=font, anchor="ls")
    return image if narrowing == 1.0 else image.resize((CELL * FINE, CELL * FINE), Image.BILINEAR)


def loaded(path):
    """The face at the size at which its capital H is CAP rows high, or nothing if it has no such letter."""
    try:
        big = ImageFont.truetype(path, 200)
        box = big.getbbox("H", anchor="ls")
        height = -box[1]
        if height < 60:
            return None
        return ImageFont.truetype(path, max(8, round(200 * CAP * FINE / height)))
    except Exception:  # a broken font file is no face
        return None


def thumbs(path):
    """The 36 letters and digits, each stretched to 16 by 16: what faces are compared by."""
    font = loaded(path)
    if font is None:
        return None
    out = []
    for char in symbols.LETTERS:
        box = font.getbbox(char, anchor="ls")
        if box is None or box[2] - box[0] < 2 or box[3] - box[1] < 8:
            return None
        image = Image.new("L", (box[2] - box[0], box[3] - box[1]))
        ImageDraw.Draw(image).text((-box[0], -box[1]), char, fill=255, font=font, anchor="ls")
        out.append(np.asarray(image.resize((16, 16), Image.BOX), np.float32) / 255)
    return np.stack(out)


def field(ink):
    inside = distance_transform_edt(ink)
    outside = distance_transform_edt(~ink)
    distance = (np.where(ink, inside - 0.5, 0.5 - outside)) / FINE
    kept = distance.reshape(CELL, FINE, CELL, FINE).mean((1, 3))
    return stored(kept)


def stored(distance):
    return np.clip(np.round(128 + distance * (127 / REACH)), 0, 255).astype(np.uint8)


def face(path):
    """All symbols of one face: fields, advances in capital heights, half the width of its stem in rows."""
    font = loaded(path)
    widest = max(font.getbbox(c, anchor="ls")[2] for c in symbols.LETTERS) / FINE
    narrowing = min(1.0, WIDEST / widest)
    fields = np.zeros((len(symbols.DRAWN), CELL, CELL), np.uint8)
    advances = np.zeros(len(symbols.DRAWN), np.float32)
    missing = np.asarray(picture(font, "\uffff")) > 127
    for i, char in enumerate(symbols.DRAWN):
        ink = np.asarray(picture(font, char, narrowing)) > 127
        if not ink.any() or (missing.any() and ink.shape == missing.shape and (ink == missing).all()):
            if char in symbols.LETTERS:
                return None
            continue
        fields[i] = field(ink)
        advances[i] = font.getlength(char) / FINE * narrowing / CAP
    stem = (fields[symbols.DRAWN.index("I")].max() / 1.0 - 128) * (REACH / 127)
    return os.path.basename(path), fields, advances, max(0.4, stem)


def strokes(path):
    """A single-stroke face: distance to the pen's path, so that the pen's width can be chosen later."""
    glyphs, text = [], ""
    for line in open(path, errors="replace").read().split("\n"):
        if not line:
            continue
        text += line
        if not text[5:8].strip().isdigit():
            text = ""
            continue
        count = int(text[5:8])
        if len(text) - 8 < 2 * count:
            continue
        glyphs.append([(ord(text[8 + 2 * i]) - 82, ord(text[9 + 2 * i]) - 82) for i in range(count)])
        text = ""
    unit = CAP / 21.0
    rows, columns = np.mgrid[:CELL, :CELL].astype(np.float32)
    fields = np.zeros((len(symbols.DRAWN), CELL, CELL), np.uint8)
    advances = np.zeros(len(symbols.DRAWN), np.float32)
    for i, char in enumerate(symbols.DRAWN):
        if not 33 <= ord(char) < 127 or ord(char) - 32 >= len(glyphs):
            continue
        glyph = glyphs[ord(char) - 32]
        left, right = glyph[0]
        best = np.full((CELL, CELL), 1e3, np.float32)
        last = None
        for point in glyph[1:]:
            if point == (-50, 0):
                last = None
                continue
            here = (ORIGIN + (point[0] - left) * unit, BASELINE + (point[1] - 9) * unit)
            if last is not None:
                ax, ay = last
                dx, dy = here[0] - ax, here[1] - ay
                t = np.clip(((columns - ax) * dx + (rows - ay) * dy) / max(dx * dx + dy * dy, 1e-6), 0, 1)
                best = np.minimum(best, np.hypot(columns - ax - t * dx, rows - ay - t * dy))
            last = here
        fields[i] = stored(-best)
        advances[i] = (right - left) * unit / CAP
    return os.path.basename(path), fields, advances, 0.0


def main(target):
    files = font_files()
    with ProcessPoolExecutor() as pool:
        small = list(pool.map(thumbs, files, chunksize=8))
    files, small = zip(*[(f, t) for f, t in zip(files, small) if t is not None])
    small = np.stack(small)
    plain = np.array([bool(PLAIN.search(os.path.basename(f))) for f in files])
    middle = np.median(small[plain], 0)
    likeness = 1 - np.abs(small - middle).mean((1, 2, 3))
    # Ornate faces that no maker would mark a part with are left out: those least like the plain ones.
    fair = likeness > 0.70
    twins = set()
    kept = []
    for i in np.argsort(-likeness):
        key = (small[i] > 0.5).tobytes()
        if not fair[i] or key in twins:
            continue
        # Of faces that hardly differ (weights and hinted twins of one family) one is enough.
        if any(np.abs(small[i] - small[j]).mean() < 0.018 for j in kept):
            continue
        twins.add(key)
        kept.append(i)
    kept.sort()
    print(len(files), "faces load,", int(fair.sum()), "are fair,", len(kept), "differ")
    with ProcessPoolExecutor() as pool:
        drawn = [f for f in pool.map(face, [files[i] for i in kept], chunksize=4) if f is not None]
    drawn += [strokes(f"/usr/share/hershey-fonts/{n}.jhf") for n in STROKES]
    names = [d[0] for d in drawn]
    np.savez_compressed(
        target, names=np.array(names), fields=np.stack([d[1] for d in drawn]), advances=np.stack([d[2] for d in drawn]),
        stems=np.array([d[3] for d in drawn], np.float32), plain=np.array([bool(PLAIN.search(n)) for n in names]),
        held=np.array([bool(HELD.search(n)) for n in names]))
    print(len(names), "faces drawn,", sum(bool(PLAIN.search(n)) for n in names), "plain,",
          sum(bool(HELD.search(n)) for n in names), "held out,", os.path.getsize(target), "bytes")


if __name__ == "__main__":
    main(sys.argv[1])
