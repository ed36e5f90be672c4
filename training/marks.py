"""Made-up marks: strings of the kinds that stand on packages. None is copied from a part; all are drawn at random.

What a mark is made of (common practice, no source): a maker's prefix of letters with digits and a suffix for grade and
package; a short code of two to four symbols on small bodies; a date as year and week with or without letters of lot
and plant; a lot or trace code of letters and digits; a word (a name, a country); a value with a point.
"""
import random
from concurrent.futures import ProcessPoolExecutor

import numpy as np

import symbols

LONGEST = 18
AZ = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
DIGITS = "0123456789"
COUNTRIES = ("CHINA", "KOREA", "JAPAN", "TAIWAN", "MALAYSIA", "THAILAND", "GERMANY", "ITALY", "FRANCE", "MEXICO", "VIETNAM",
             "INDIA", "USA", "ISRAEL", "IRELAND", "MALTA", "PHILIPPINES", "SINGAPORE", "PRC", "MADE IN CHINA")


def some(r, alphabet, low, high=None):
    return "".join(r.choice(alphabet) for _ in range(r.randint(low, high or low)))


def part_number(r):
    s = some(r, AZ, 1, 4) + some(r, DIGITS, 1, 5)
    if r.random() < 0.5:
        s += some(r, AZ, 1, 3)
    if r.random() < 0.25:
        s += some(r, DIGITS, 1, 3)
        if r.random() < 0.5:
            s += some(r, AZ, 1, 2)
    if r.random() < 0.15:
        s += r.choice("-/. ") + some(r, AZ + DIGITS, 1, 4)
    return s


def digits_first(r):
    return some(r, DIGITS, 1, 4) + some(r, AZ, 1, 4) + some(r, AZ + DIGITS, 0, 5)


def short_code(r):
    return some(r, AZ + DIGITS, 1, 5)


def date_code(r):
    year, week = r.choice((f"{r.randint(0, 29):02d}", f"{r.randint(0, 9)}")), f"{r.randint(1, 53):02d}"
    s = year + week
    k = r.random()
    if k < 0.35:
        s += some(r, AZ, 1, 3)
    elif k < 0.5:
        s = some(r, AZ, 1, 3) + s
    elif k < 0.6:
        s += some(r, AZ + DIGITS, 1, 5)
    elif k < 0.68:
        s = some(r, AZ, 1, 2) + " " + s
    return s


def trace_code(r):
    return some(r, AZ + DIGITS, 4, 11)


def lot(r):
    s = some(r, AZ + DIGITS, 3, 8) + r.choice((".", "-", " ", "/")) + some(r, AZ + DIGITS, 1, 5)
    return s


def word(r):
    if r.random() < 0.2:
        return r.choice(COUNTRIES)
    s = "".join(r.choice("BCDFGHJKLMNPRSTVWXZ") + r.choice("AEIOUY") + (r.choice("LNRSCMKXT") if r.random() < 0.4 else "")
                for _ in range(r.randint(1, 4)))
    return s if r.random() < 0.8 else s + some(r, DIGITS, 1, 2)


def value(r):
    k = r.random()
    if k < 0.4:
        return some(r, DIGITS, 1, 2) + "." + some(r, DIGITS, 1, 4)
    if k < 0.7:
        return some(r, DIGITS, 1, 3) + r.choice("RKMUNP") + some(r, DIGITS, 0, 2)
    return some(r, DIGITS, 2, 4)


def confusing(r):
    """Strings of look-alikes, each of which occurs: without them the reader would guess by habit."""
    return some(r, r.choice(("0OQD", "8B3", "5S", "1IL7T", "6G", "2Z7", "UVY", "MNWH", "CGO0", "EFPR")) + DIGITS + AZ[r.randint(0, 25)], 3, 8)


KINDS = ((part_number, 30), (digits_first, 10), (short_code, 14), (date_code, 13), (trace_code, 14), (lot, 5), (word, 6),
         (value, 3), (confusing, 5))


def mark(r):
    kind = r.choices([k for k, _ in KINDS], [w for _, w in KINDS])[0]
    s = kind(r)
    if len(s) > 4 and " " not in s and r.random() < 0.22:
        at = r.randint(1, len(s) - 1)
        s = s[:at] + " " + s[at:]
        if len(s) > 8 and r.random() < 0.3:
            at = r.randint(1, len(s) - 1)
            s = s[:at] + " " + s[at:]
    k = r.random()
    if k < 0.02:
        s = s.lower()
    elif k < 0.05:
        n = r.randint(1, 2)
        s = s[:n].lower() + s[n:]
    elif k < 0.06:
        s = s[:1] + s[1:].lower()
    k = r.random()
    if k < 0.02:
        s = r.choice(symbols.MUTE) + s
    elif k < 0.05:
        s = s + (" " if r.random() < 0.4 else "") + r.choice(symbols.MUTE)
    return " ".join(s.split())[:LONGEST].strip()


def coded(s):
    return [symbols.GAP if c == " " else symbols.DRAWN.index(c) for c in s]


def piece(seed_count):
    seed, count = seed_count
    r = random.Random(seed)
    out = np.full((count, LONGEST), symbols.END, np.uint8)
    for i in range(count):
        codes = coded(mark(r))
        out[i, :len(codes)] = codes
    return out


def bank(count, seed, workers=None):
    """`count` marks as codes, ended by END: [count, LONGEST]. The same for the same seed on any number of workers."""
    step = 20000
    jobs = [(seed * 100003 + i, min(step, count - i * step)) for i in range((count + step - 1) // step)]
    with ProcessPoolExecutor(workers) as pool:
        return np.concatenate(list(pool.map(piece, jobs)))


if __name__ == "__main__":
    r = random.Random(1)
    print("\n".join(mark(r) for _ in range(60)))
