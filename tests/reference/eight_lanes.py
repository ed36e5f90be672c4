#!/usr/bin/env python3
"""Writes eight_lanes.csv: the first 64 numbers of the eight-lane generator for seed 1, block 0, in plain python integers.

xoshiro256++ and splitmix64 are by David Blackman and Sebastiano Vigna (public domain). How a seed and a block become a
starting point, and that lanes take turns, is our own.
"""
import pathlib

MASK = (1 << 64) - 1
GOLDEN = 0x9E3779B97F4A7C15


def mix(z):
    z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
    z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
    return z ^ (z >> 31)


def rotate(x, by):
    return ((x << by) | (x >> (64 - by))) & MASK


def lane(words):
    s = list(words)
    while True:
        yield (rotate((s[0] + s[3]) & MASK, 23) + s[0]) & MASK
        t = (s[1] << 17) & MASK
        s[2] ^= s[0]
        s[3] ^= s[1]
        s[1] ^= s[2]
        s[0] ^= s[3]
        s[2] ^= t
        s[3] = rotate(s[3], 45)


def main(seed=1, block=0, count=64):
    walk = mix(mix((seed + GOLDEN) & MASK) ^ (block + 1))
    lanes = []
    for _ in range(8):
        words = []
        for _ in range(4):
            walk = (walk + GOLDEN) & MASK
            words.append(mix(walk))
        lanes.append(lane(words))
    rows = [str(next(lanes[i % 8])) for i in range(count)]
    (pathlib.Path(__file__).parent / "eight_lanes.csv").write_text("number\n" + "\n".join(rows) + "\n", encoding="ascii")


if __name__ == "__main__":
    main()
