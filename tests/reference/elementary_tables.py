#!/usr/bin/env python3
"""Writes elementary/*.csv: arguments and true values of the elementary functions and distributions, worked out in 60-digit
arithmetic (python3, mpmath). The arguments are doubles; the true value is written as the nearest double and what is left
over, so that a test can tell an error of a tenth of a unit in the last place.

usage: elementary_tables.py [rows-per-function [folder]]
"""
import math
import pathlib
import random
import sys

import mpmath as mp

mp.mp.dps = 60
ROWS = int(sys.argv[1]) if len(sys.argv) > 1 else 160
FOLDER = pathlib.Path(sys.argv[2] if len(sys.argv) > 2 else pathlib.Path(__file__).parent / "elementary")


def spread(dice, low, high):
    """Log-uniform magnitude."""
    return math.exp(dice.uniform(math.log(low), math.log(high)))


def signed(dice, low, high):
    return dice.choice((-1, 1)) * spread(dice, low, high)


def near(dice, centre):
    """A double close to a difficult place."""
    return centre * (1 + signed(dice, 1e-16, 1e-2)) if centre else signed(dice, 1e-300, 1e-3)


def quarter_turns(dice):
    return float(mp.pi / 2 * dice.randint(-(10 ** dice.randint(1, 8)), 10 ** 8)) * (1 + dice.choice((0, 0, 1e-16, 1e-12)))


def angle(dice):
    return dice.choice((lambda: dice.uniform(-10, 10), lambda: signed(dice, 1e-10, 1e9), lambda: quarter_turns(dice)))()


def pow_pair(dice):
    y = dice.choice((lambda: dice.uniform(-5, 5), lambda: float(dice.randint(-30, 30)), lambda: signed(dice, 1e-3, 1e6)))()
    top = 690 / abs(y) if y else 1
    x = math.exp(dice.uniform(-1, 1) * min(top, 690))
    return (-x if y == int(y) and dice.random() < 0.3 else x), y


FUNCTIONS = {
    "exp": (1, lambda d: (dice_choice(d, lambda: d.uniform(-745, 709.7), lambda: signed(d, 1e-18, 700), lambda: d.uniform(-2, 2)),), mp.exp),
    "expm1": (1, lambda d: (dice_choice(d, lambda: d.uniform(-50, 709.7), lambda: signed(d, 1e-18, 1), lambda: d.uniform(-2, 2)),), mp.expm1),
    "log": (1, lambda d: (dice_choice(d, lambda: spread(d, 5e-324, 1.7e308), lambda: near(d, 1.0), lambda: d.uniform(0.5, 2)),), mp.log),
    "log1p": (1, lambda d: (dice_choice(d, lambda: spread(d, 1e-18, 1e20), lambda: -spread(d, 1e-18, 1 - 1e-10), lambda: d.uniform(-0.6, 1.5)),), mp.log1p),
    "log2": (1, lambda d: (dice_choice(d, lambda: spread(d, 1e-300, 1e300), lambda: near(d, 1.0), lambda: 2.0 ** d.randint(-1000, 1000)),), lambda x: mp.log(x) / mp.log(2)),
    "log10": (1, lambda d: (dice_choice(d, lambda: spread(d, 1e-300, 1e300), lambda: near(d, 1.0), lambda: 10.0 ** d.randint(0, 22)),), lambda x: mp.log(x) / mp.log(10)),
    "pow": (2, pow_pair, lambda x, y: mp.power(x, int(y)) if x < 0 else mp.power(x, y)),
    "sin": (1, lambda d: (angle(d),), mp.sin),
    "cos": (1, lambda d: (angle(d),), mp.cos),
    "tan": (1, lambda d: (angle(d),), mp.tan),
    "atan": (1, lambda d: (signed(d, 1e-10, 1e10),), mp.atan),
    "atan2": (2, lambda d: (signed(d, 1e-8, 1e8), signed(d, 1e-8, 1e8)), mp.atan2),
    "asin": (1, lambda d: (d.uniform(-1, 1),), mp.asin),
    "acos": (1, lambda d: (d.uniform(-1, 1),), mp.acos),
    "sinh": (1, lambda d: (dice_choice(d, lambda: signed(d, 1e-10, 700), lambda: d.uniform(-3, 3)),), mp.sinh),
    "cosh": (1, lambda d: (dice_choice(d, lambda: signed(d, 1e-10, 700), lambda: d.uniform(-3, 3)),), mp.cosh),
    "tanh": (1, lambda d: (dice_choice(d, lambda: signed(d, 1e-10, 30), lambda: d.uniform(-3, 3)),), mp.tanh),
    "cbrt": (1, lambda d: (signed(d, 1e-300, 1e300),), lambda x: mp.sign(x) * mp.cbrt(abs(x))),
    "log_gamma": (1, lambda d: (dice_choice(d, lambda: spread(d, 1e-3, 1e6), lambda: d.uniform(0.1, 30)),), mp.loggamma),
    "normal_cdf": (1, lambda d: (dice_choice(d, lambda: d.uniform(-8, 8), lambda: -spread(d, 1, 37)),), mp.ncdf),
    "normal_quantile": (1, lambda d: (dice_choice(d, lambda: d.uniform(0.001, 0.999), lambda: spread(d, 1e-300, 0.1), lambda: 1 - spread(d, 1e-15, 0.1)),), None),
    "student_above": (2, lambda d: (spread(d, 1e-3, 50), dice_choice(d, lambda: float(d.randint(1, 200)), lambda: spread(d, 0.5, 1e4))),
                      lambda t, nu: mp.betainc(nu / 2, mp.mpf(1) / 2, 0, nu / (nu + t * t), regularized=True) / 2),
}


def dice_choice(dice, *options):
    return dice.choice(options)()


def normal_quantile(p):
    p = mp.mpf(p)
    if p == mp.mpf(1) / 2:
        return mp.mpf(0)
    tail = min(p, 1 - p)
    x = -mp.sqrt(-2 * mp.log(tail)) if tail < 0.01 else -mp.mpf("0.5")
    for _ in range(200):
        step = (mp.ncdf(x) - tail) / mp.npdf(x)
        step = step / (1 + x * step / 2)
        x -= step
        if abs(step) < mp.mpf(10) ** -45:
            break
    return x if p < mp.mpf(1) / 2 else -x


def main():
    FOLDER.mkdir(exist_ok=True)
    for name, (arity, draw, function) in FUNCTIONS.items():
        dice = random.Random("lidoff " + name)
        lines = ["x,y,expected,rest" if arity == 2 else "x,expected,rest"]
        while len(lines) <= ROWS:
            arguments = draw(dice)
            true = (function or normal_quantile)(*(mp.mpf(a) for a in arguments))
            nearest = float(true)
            if nearest == 0 or not math.isfinite(nearest) or abs(nearest) < 1e-300:
                continue
            rest = float(true - mp.mpf(nearest))
            lines.append(",".join(repr(v) for v in (*arguments, nearest, rest)))
        (FOLDER / f"{name}.csv").write_text("\n".join(lines) + "\n", encoding="ascii")


if __name__ == "__main__":
    main()
