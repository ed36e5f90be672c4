"""Made-up marks: strings of the kinds that stand on packages. None is copied from a part; all are drawn at random.

What a mark is made of (common practice, no source): a maker's prefix of letters with digits and a suffix for grade and
package; a short code of two to four symbols on small bodies; what a module's shield says before its number; a date as year and week with or without letters of lot
and plant; a lot or trace code of letters and digits; a word (a name, a country); a value with a point.
"""
import random
from concurrent.futures import ProcessPoolExecutor

import numpy as np

import symbols

LONGEST = 18
# How often letters and digits occur in the names of 9,599 parts in open tables, per cent. O is 29 times rarer than 0 there, and
# between two digits it hardly occurs: what a reader takes for granted of strings must be the trade's, or it reads 0 as O.
NAMED = {"A": 4.8, "S": 3.8, "M": 3.6, "P": 3.4, "D": 3.3, "C": 3.1, "T": 2.8, "L": 2.4, "B": 2.3, "F": 2.2, "R": 2.1, "G": 2.0, "X": 1.9,
         "I": 1.5, "V": 1.5, "E": 1.5, "N": 1.3, "Q": 1.0, "H": 1.0, "W": 0.9, "Z": 0.8, "U": 0.8, "K": 0.7, "Y": 0.5, "J": 0.4, "O": 0.25,
         "1": 7.0, "2": 7.0, "0": 6.6, "3": 5.5, "5": 5.4, "4": 4.2, "6": 3.5, "8": 3.4, "7": 3.1, "9": 1.8}
# In codes of lot, plant and date any letter is as good as another, but makers leave out those that look like digits (common practice, no source).
CODED = {c: 0.12 if c == "O" else 0.3 if c in "IQ" else 0.7 if c == "Z" else 1.0 for c in "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"}
AZ = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
DIGITS = "0123456789"
COUNTRIES = ("CHINA", "KOREA", "JAPAN", "TAIWAN", "MALAYSIA", "THAILAND", "GERMANY", "ITALY", "FRANCE", "MEXICO", "VIETNAM",
             "INDIA", "USA", "ISRAEL", "IRELAND", "MALTA", "PHILIPPINES", "SINGAPORE", "PRC", "MADE IN CHINA")


def some(r, alphabet, low, high=None, by=None):
    count = r.randint(low, high or low)
    weights = [by[c] for c in alphabet] if by else None
    return "".join(r.choices(alphabet, weights, k=count))


def part_number(r):
    letters, digits = lambda low, high: some(r, AZ, low, high, NAMED), lambda low, high: some(r, DIGITS, low, high, NAMED)
    s = letters(1, 4) + digits(1, 5)
    if r.random() < 0.5:
        s += letters(1, 3)
    if r.random() < 0.25:
        s += digits(1, 3)
        if r.random() < 0.5:
            s += letters(1, 2)
    if r.random() < 0.15:
        s += r.choice("-/. ") + some(r, AZ + DIGITS, 1, 4, NAMED)
    return s


def digits_first(r):
    return some(r, DIGITS, 1, 4, NAMED) + some(r, AZ, 1, 4, NAMED) + some(r, AZ + DIGITS, 0, 5, NAMED)


def short_code(r):
    return some(r, AZ + DIGITS, 1, 5, CODED)


def date_code(r):
    year, week = r.choice((f"{r.randint(0, 29):02d}", f"{r.randint(0, 9)}")), f"{r.randint(1, 53):02d}"
    s = year + week
    k = r.random()
    if k < 0.35:
        s += some(r, AZ, 1, 3, CODED)
    elif k < 0.5:
        s = some(r, AZ, 1, 3, CODED) + s
    elif k < 0.6:
        s += some(r, AZ + DIGITS, 1, 5, CODED)
    elif k < 0.68:
        s = some(r, AZ, 1, 2, CODED) + " " + s
    return s


def trace_code(r):
    return some(r, AZ + DIGITS, 4, 11, CODED)


def lot(r):
    s = some(r, AZ + DIGITS, 3, 8, CODED) + r.choice((".", "-", " ", "/")) + some(r, AZ + DIGITS, 1, 5, CODED)
    return s


def word(r):
    if r.random() < 0.2:
        return r.choice(COUNTRIES)
    s = "".join(r.choice("BCDFGHJKLMNPRSTVWXZ") + r.choice("AEIOUY") + (r.choice("LNRSCMKXT") if r.random() < 0.4 else "")
                for _ in range(r.randint(1, 4)))
    return s if r.random() < 0.8 else s + some(r, DIGITS, 1, 2)


TOLD = ("MODEL", "FCC ID", "IC", "TYPE", "REV", "VER", "LOT", "P/N", "S/N", "ISM 2.4G", "WIFI", "CE", "ROHS", "MADE IN", "PA +20 DBM", "802.11",
        "PB-FREE", "ASSY", "DATE", "MAX", "INPUT", "DC", "USB", "BLE", "RF", "REG", "CHIP", "CORE", "FLASH", "SENSOR", "MODULE")


def told(r):
    """What a shield or can says beside its number (common practice, no source)."""
    s = r.choice(TOLD)
    k = r.random()
    return s if k < 0.25 else s + r.choice((" ", " ", "-")) + (part_number(r) if k < 0.7 else short_code(r) if k < 0.85 else value(r))


def value(r):
    k = r.random()
    if k < 0.4:
        return some(r, DIGITS, 1, 2) + "." + some(r, DIGITS, 1, 4)
    if k < 0.7:
        return some(r, DIGITS, 1, 3, NAMED) + r.choice("RRRRKMUNP") + some(r, DIGITS, 0, 2, NAMED)
    return some(r, DIGITS, 2, 4, NAMED)


def confusing(r):
    """Strings of look-alikes, each of which occurs: without them the reader would guess by habit alone."""
    return some(r, r.choice(("0OQD", "8B3", "5S", "1IL7T", "6G", "2Z7", "UVY", "MNWH", "CGO0", "EFPR")) + DIGITS + AZ[r.randint(0, 25)], 3, 8, CODED)


KINDS = ((part_number, 30), (digits_first, 10), (short_code, 14), (date_code, 13), (trace_code, 14), (lot, 5), (word, 6), (told, 5),
         (value, 5), (confusing, 5))


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
