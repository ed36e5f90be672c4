#!/usr/bin/env python3
"""Works out the constants of src/Lidoff.Numbers/Elementary*.cs in 80-digit arithmetic (python3, mpmath) and prints them.

Every polynomial is an interpolation at Chebyshev nodes, then rounded to doubles; the printed error is that of the rounded
polynomial, relative to the whole function.
"""
import mpmath as mp

mp.mp.dps = 80


def chebyshev_fit(f, low, high, count):
    """Monomial coefficients of the interpolant of f at Chebyshev nodes of [low, high]."""
    nodes = [(low + high) / 2 + (high - low) / 2 * mp.cos(mp.pi * (2 * i + 1) / (2 * count)) for i in range(count)]
    matrix = mp.matrix(count, count)
    right = mp.matrix(count, 1)
    for i, x in enumerate(nodes):
        right[i] = f(x)
        for j in range(count):
            matrix[i, j] = x ** j
    return list(mp.lu_solve(matrix, right))


def report(name, f, low, high, count, whole, rebuilt):
    coefficients = [float(c) for c in chebyshev_fit(f, mp.mpf(low), mp.mpf(high), count)]
    worst = 0
    for i in range(1, 400):
        z = mp.mpf(low) + (mp.mpf(high) - low) * (i + mp.mpf("0.37")) / 401
        p = mp.mpf(0)
        for c in reversed(coefficients):
            p = p * z + mp.mpf(c)
        worst = max(worst, abs(rebuilt(z, p) / whole(z) - 1))
    print(f"{name}: relative error 2^{float(mp.log(worst, 2)):.1f}")
    print("    " + ", ".join(repr(c) for c in coefficients))


def split(name, value, parts, bits=53):
    words = []
    rest = value
    for _ in range(parts):
        exponent = mp.floor(mp.log(abs(rest), 2))
        scale = mp.mpf(2) ** (bits - 1 - exponent)
        word = float(mp.nint(rest * scale) / scale)
        words.append(word)
        rest -= mp.mpf(word)
    print(name + ": " + ", ".join(repr(w) for w in words))


def main():
    half_ln2 = mp.log(2) / 2 * mp.mpf("1.0000001")
    report("exp, q of 1 + r + r^2 q(r)", lambda r: (mp.expm1(r) - r) / r ** 2 if abs(r) > 1e-30 else mp.mpf(1) / 2, -half_ln2, half_ln2, 11,
           mp.exp, lambda r, q: 1 + r + r ** 2 * q)
    z = ((mp.sqrt(2) - 1) / (mp.sqrt(2) + 1)) ** 2 * mp.mpf("1.0000001")
    atanh_rest = lambda w: (2 * mp.atanh(mp.sqrt(w)) / mp.sqrt(w) - 2) / w
    report("log, p of 2s + s^3 p(s^2)", atanh_rest, mp.mpf(10) ** -30, z, 8,
           lambda w: 2 * mp.atanh(mp.sqrt(w)), lambda w, p: 2 * mp.sqrt(w) + mp.sqrt(w) * w * p)
    atanh_rest2 = lambda w: ((2 * mp.atanh(mp.sqrt(w)) / mp.sqrt(w) - 2) / w - mp.mpf(2) / 3) / w
    report("log in two words, p of 2s + 2/3 s^3 + s^5 p(s^2)", atanh_rest2, mp.mpf(10) ** -30, z, 10,
           lambda w: 2 * mp.atanh(mp.sqrt(w)), lambda w, p: 2 * mp.sqrt(w) + mp.sqrt(w) * w * (mp.mpf(2) / 3 + w * p))
    quarter = (mp.pi / 4) ** 2 * mp.mpf("1.0000001")
    report("sin, s of x + x^3 s(x^2)", lambda w: (mp.sin(mp.sqrt(w)) / mp.sqrt(w) - 1) / w, mp.mpf(10) ** -30, quarter, 7,
           lambda w: mp.sin(mp.sqrt(w)), lambda w, p: mp.sqrt(w) + mp.sqrt(w) * w * p)
    report("cos, c of 1 - x^2/2 + x^4 c(x^2)", lambda w: (mp.cos(mp.sqrt(w)) - 1 + w / 2) / w ** 2, mp.mpf(10) ** -20, quarter, 7,
           lambda w: mp.cos(mp.sqrt(w)), lambda w, p: 1 - w / 2 + w ** 2 * p)
    eighth = mp.tan(mp.pi / 8) ** 2 * mp.mpf("1.0000001")
    report("atan, a of t + t^3 a(t^2)", lambda w: (mp.atan(mp.sqrt(w)) / mp.sqrt(w) - 1) / w, mp.mpf(10) ** -30, eighth, 13,
           lambda w: mp.atan(mp.sqrt(w)), lambda w, p: mp.sqrt(w) + mp.sqrt(w) * w * p)
    split("ln 2, upper 32 bits", mp.log(2), 1, 32)
    print("ln 2, rest: " + repr(float(mp.log(2) - mp.mpf(float(mp.nint(mp.log(2) * 2 ** 32) / 2 ** 32)))))
    split("ln 2", mp.log(2), 2)
    split("1/ln 2", 1 / mp.log(2), 2)
    split("1/ln 10", 1 / mp.log(10), 2)
    split("2/3", mp.mpf(2) / 3, 2)
    split("pi/2", mp.pi / 2, 3)
    split("2/pi", 2 / mp.pi, 1)
    split("pi/4", mp.pi / 4, 2)
    print("sqrt(1/2) bits: " + float(mp.sqrt(mp.mpf(1) / 2)).hex())
    split("ln sqrt(2 pi)", mp.log(mp.sqrt(2 * mp.pi)), 2)
    print("Stirling: " + ", ".join(str(mp.bernfrac(2 * n)) + f"/{2 * n * (2 * n - 1)}" for n in range(1, 9)))


if __name__ == "__main__":
    main()
