"""Made-up emblems that stand beside marks and are no text: bodies filled or ringed with letters cut out of them or laid into
them, letters turned, stretched and laid over one another, one heavy letter as high as two lines, striped discs, filled discs smaller than a letter,
plain squares, the one or two blocks that stand before a mark where polarity is told.
All by lot; none is copied from a maker's.

Never a bare ring, nor a disc or a ringed letter as high as the line: a reader that had learnt to read nothing in those dropped zeros
at the ends of lines.
"""
import math

import torch

import lines
from faces import BASELINE, CAP, ORIGIN


class Emblems:
    """What was drawn by lot for n emblems."""

    def __init__(self, atlas, bank, count, device):
        u = lambda low, high: torch.rand(count, device=device) * (high - low) + low
        self.fields = atlas.fields
        self.face = torch.multinomial(atlas.weight, count, replacement=True)
        codes = bank[torch.randint(len(bank), (count,), device=device)].long()
        self.symbols = codes[:, :2].clamp(max=35)
        self.stroke = atlas.stroke[self.face]
        self.kind, self.shape = u(0, 1), u(0, 1)
        self.folds, self.phase, self.depth = u(1, 8).floor(), u(0, 2 * math.pi), u(0, 0.4)
        self.edge, self.hole = u(0.7, 0.97), u(0.55, 0.9)
        self.flat = torch.exp(torch.randn(count, device=device) * 0.25)
        self.waves, self.slope, self.cutting = u(4, 14), u(0, 2 * math.pi), u(-0.5, 0.5)
        upright = torch.rand(count, device=device) < 0.5
        self.turns = [torch.where(upright, torch.randn(count, device=device) * 0.25, u(-math.pi, math.pi)) for _ in range(2)]
        self.high = [u(0.8, 1.7) for _ in range(2)]
        self.wide = [self.high[k] * torch.exp(torch.randn(count, device=device) * 0.4) for k in range(2)]
        self.aside = [(u(-0.35, 0.35), u(-0.35, 0.35)) for _ in range(2)]
        self.bold = u(-0.5, 3.0)
        self.strength = u(0.5, 1.0)
        # A filled disc; one or two blocks one below the other: how wide, how high, and the gap between.
        self.disc = u(0, 1) < 0.06
        self.blocks = ~self.disc & (u(0, 1) < 0.16)
        self.radius, self.block_gap = u(0.28, 0.55), u(-0.15, 0.2)
        # As high as the letters it is too wide for an I; narrow ones are higher than the line.
        high = u(0, 1) < 0.5
        self.block_high, self.block_wide = torch.where(high, u(1.8, 4.0), u(0.7, 1.0)), torch.where(high, u(0.2, 0.75), u(0.5, 0.75))
        self.alone = (self.kind >= 0.64) & (self.kind < 0.74) & ~self.disc & ~self.blocks
        self.high[0] = torch.where(self.alone, u(1.6, 1.95), self.high[0])
        self.wide[0] = torch.where(self.alone, self.wide[0].clamp(max=1.9), self.wide[0])
        self.aside[0] = tuple(torch.where(self.alone, torch.zeros_like(a), a) for a in self.aside[0])
        self.turns[0] = torch.where(self.alone, self.turns[0].clamp(-0.3, 0.3), self.turns[0])
        self.bold = torch.where(self.alone, u(0.5, 4.0), self.bold)


def letter(m, k, x, y, size):
    """Ink of one turned and stretched letter."""
    e = lambda t: t[:, None, None]
    c, s = e(m.turns[k].cos()), e(m.turns[k].sin())
    dx, dy = x - e(m.aside[k][0]), y - e(m.aside[k][1])
    a, b = (dx * c + dy * s) / e(m.wide[k]), (dy * c - dx * s) / e(m.high[k])
    symbol = e(m.symbols[:, k]).expand(a.shape)
    d = lines.sampled(m.fields, e(m.face), symbol, ORIGIN + (a + 0.35) * CAP, BASELINE - CAP + (b + 0.5) * CAP)
    bold = torch.where(m.stroke, m.bold + 1.5, m.bold)
    return ((d + e(bold)) * e(m.high[k] * size) / CAP + 0.5).clamp(0, 1)


def emblem(m, x, y, size, least):
    """Ink of emblems and where they lie. `x`, `y`: [n, h, w], -1 to 1 over an emblem; `size`: its half side in pixels, [n];
    `least`: the height in pixels from which one letter alone is no letter of the line, [n]."""
    e = lambda t: t[:, None, None]
    alone = e(m.alone & (m.high[0] * size >= least))
    y = y * e(m.flat.clamp(min=1))
    x = x / e(m.flat.clamp(max=1))
    rho, phi = torch.sqrt(x * x + y * y + 1e-6), torch.atan2(y, x)
    box = torch.maximum(x.abs(), y.abs()) * 1.1
    round_ = rho / (1 + e(m.depth) * (torch.cos(e(m.folds) * phi + e(m.phase)) - 0.3))
    out = torch.where(e(m.shape) < 0.3, box, torch.where(e(m.shape) < 0.6, rho, round_))
    body = ((e(m.edge) - out) * e(size) + 0.5).clamp(0, 1)
    inner = ((e(m.edge * m.hole) - out) * e(size) + 0.5).clamp(0, 1)
    stripes = ((torch.sin(e(m.waves) * (x * e(m.slope.cos()) + y * e(m.slope.sin()))) - e(m.cutting)) * 4).clamp(0, 1)
    one, two = letter(m, 0, x, y, size), letter(m, 1, x, y, size)
    kind = e(m.kind)
    # A square block is told from every letter, one letter alone only by being larger than the line.
    plain = e((m.kind >= 0.12) & (m.kind < 0.22))
    block = ((0.9 - torch.maximum(x.abs(), y.abs()) * 1.1) * e(size) + 0.5).clamp(0, 1)
    ringed = (kind >= 0.22) & (kind < 0.44) & (e(2 * size) >= 1.1 * e(least))
    drawn = torch.where((kind < 0.44) & ~ringed, body * (1 - one), torch.where(kind < 0.44, torch.maximum(body - inner, one * inner), torch.where(
        kind < 0.64, body * stripes, torch.where(kind < 0.84, torch.maximum(one, two), (one - two).abs()))))
    drawn = torch.where(plain, block, torch.where(alone, one, drawn))
    disc = ((e(m.radius) - rho) * e(size) + 0.5).clamp(0, 1)
    level = y.abs()
    pair = (torch.minimum(e(m.block_wide) - x.abs(), torch.minimum(e(m.block_high) - level, level - e(m.block_gap))) * e(size) + 0.5).clamp(0, 1)
    drawn = torch.where(e(m.disc), disc, torch.where(e(m.blocks), pair, drawn))
    whole = plain | (kind >= 0.64) | e(m.disc | m.blocks)
    return drawn * e(m.strength), (x.abs() < 1) & (y.abs() < 1) & (whole | (out < e(m.edge) * 1.05))
