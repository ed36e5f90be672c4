"""Draws lines of marks on the GPU from the atlas of distance fields: a fresh face, weight, spacing, pen and pose each time.

`Plan` holds what was drawn by lot for each line, `cover` paints it: 1 where there is ink. Lengths along a line are in
capital heights until they are painted.
"""
import math

import torch

import symbols
from faces import BASELINE, CAP, CELL, ORIGIN, REACH

ROWS = 48
# Few, since what draws and reads a batch is compiled for each; chosen for the least padding (16 %).
WIDTHS = (144, 208, 288, 368, 480)


class Atlas:
    """The faces, on one device. `faces`: the ones to draw from (training leaves out those the validation is drawn in)."""

    def __init__(self, loaded, device, held=False):
        keep = loaded["held"] if held else ~loaded["held"]
        names = loaded["names"][keep]
        self.fields = torch.from_numpy(loaded["fields"][keep]).to(device)
        self.advances = torch.from_numpy(loaded["advances"][keep]).to(device)
        self.stems = torch.from_numpy(loaded["stems"][keep]).to(device)
        self.stroke = self.stems <= 0
        plain = torch.from_numpy(loaded["plain"][keep]).to(device)
        # Half of the lines in plain faces, a quarter in single strokes, the rest in anything.
        weight = torch.where(self.stroke, 0.25 / self.stroke.sum().clamp(min=1), torch.where(
            plain, 0.5 / plain.sum().clamp(min=1), 0.25 / (~plain & ~self.stroke).sum().clamp(min=1)))
        self.weight = weight.float()
        self.names = names


class Plan:
    """What was drawn by lot for n lines; every tensor has n rows."""

    def __init__(self, atlas, bank, count, device):
        def u(low, high, *shape):
            return torch.rand(count, *shape, device=device) * (high - low) + low

        def chance(p):
            return torch.rand(count, device=device) < p

        self.codes = bank[torch.randint(len(bank), (count,), device=device)].long()
        self.face = torch.multinomial(atlas.weight, count, replacement=True)
        drawn = self.codes != symbols.END
        self.count = drawn.sum(1)
        symbol = self.codes.clamp(max=len(symbols.DRAWN) - 1)
        # Makers set one letter narrower or wider than any typeface does, and the zero above all: alike wherever it stands in a line.
        own = torch.exp(torch.randn(count, len(symbols.DRAWN), device=device) * torch.where(chance(0.5), 0.11, 0.0)[:, None])
        zero = symbols.DRAWN.index("0")
        own[:, zero] = torch.where(chance(0.15), u(0.45, 0.9), own[:, zero])
        self.breadth = own.clamp(0.45, 1.35).gather(1, symbol)
        advance = atlas.advances[self.face[:, None], symbol] * self.breadth
        gap = torch.where(chance(0.85), u(0.25, 1.3), u(1.0, 2.6))[:, None]
        fixed = chance(0.15)[:, None]
        pitch = advance.max(1, keepdim=True).values
        stroke = atlas.stroke[self.face]
        # Outlined faces set their own distances; pen strokes and machines add some.
        between = torch.where(chance(0.55), torch.zeros_like(gap[:, 0]), u(-0.06, 0.3))[:, None]
        wide = torch.where(self.codes == symbols.GAP, gap, torch.where(fixed, pitch, advance) + between)
        wide = torch.where(drawn, wide, torch.zeros_like(wide))
        self.inset = torch.where(fixed, (pitch - advance) / 2, torch.zeros_like(advance))
        self.pens = torch.cat([torch.zeros(count, 1, device=device), wide.cumsum(1)], 1)
        self.total = self.pens[:, -1] - between[:, 0]
        self.symbol = torch.where(drawn & (self.codes != symbols.GAP), symbol, torch.full_like(symbol, -1))
        stem = atlas.stems[self.face]
        self.bold = torch.where(stroke, u(1.0, 4.6), u(-0.45, 0.5) * stem + u(-0.2, 1.2) * chance(0.5))
        self.hollow = chance(0.02) & ~stroke
        self.lift = torch.randn(count, self.codes.shape[1], device=device) * u(0, 0.02)[:, None]
        # No two makers cut the same letters: each line's are bent a little out of their face, cross bars higher or lower, bellies
        # squarer or rounder, waists to one side.
        own = torch.where(chance(0.7), torch.ones(count, device=device), torch.zeros(count, device=device))
        self.waist, self.bars, self.belly, self.lean = (torch.randn(count, device=device) * by * own for by in (0.05, 0.022, 0.022, 0.02))
        # Pen: solid, raster lines across or along, fine dots, or the coarse dots of a 5 by 7 matrix.
        pen = u(0, 1)
        self.matrix = pen < 0.06
        self.dots = (pen >= 0.06) & (pen < 0.13)
        self.raster = (pen >= 0.13) & (pen < 0.24)
        self.along = chance(0.3)
        self.period = u(0.07, 0.2)
        self.duty = u(0.35, 0.85)
        self.dot = u(0.28, 0.52)
        # Pose in the rectified strip. The finder's outlines are tight, a few per cent off to either side.
        self.capital = ROWS * torch.where(chance(0.8), u(0.74, 0.95), u(0.52, 1.0))
        self.squeeze = torch.exp(torch.randn(count, device=device) * 0.17).clamp(0.62, 1.55)
        self.left = self.capital * torch.where(chance(0.85), u(0.0, 0.28), u(-0.12, 0.8))
        self.right = self.capital * torch.where(chance(0.85), u(0.0, 0.28), u(-0.12, 0.8))
        # An emblem beside the line, within its outline.
        beside = u(0, 1)
        self.badge = torch.where(beside < 0.05, -1.0, torch.where(beside < 0.08, 1.0, 0.0))
        self.left = torch.where(self.badge < 0, self.capital * u(0.9, 1.7), self.left)
        self.right = torch.where(self.badge > 0, self.capital * u(0.9, 1.7), self.right)
        self.down = torch.randn(count, device=device) * 1.3
        self.turn = torch.randn(count, device=device) * 0.016
        self.shear = torch.randn(count, device=device) * torch.where(chance(0.2), 0.22 * torch.ones(count, device=device), 0.06)
        self.bend = torch.randn(count, device=device) * 0.03
        self.taper = torch.randn(count, device=device) * 0.04
        # A long line's ends leave the strip at a small turn: outlines follow long lines more closely.
        self.turn = self.turn / (self.total / 5).clamp(min=1)
        self.flipped = torch.zeros(count, dtype=torch.bool, device=device)
        natural = self.total * self.capital * self.squeeze + self.left + self.right
        self.natural = natural

    def fit(self, width):
        """Narrows what is too long for `width` columns; returns the valid columns of each line."""
        room = width - 2 - (self.left + self.right).clamp(min=0)
        self.squeeze = torch.minimum(self.squeeze, room / (self.total * self.capital).clamp(min=1))
        wide = self.total * self.capital * self.squeeze + self.left + self.right
        self.valid = wide.ceil().clamp(12, width)
        return self.valid

    def take(self, index):
        other = Plan.__new__(Plan)
        for name, held in self.__dict__.items():
            setattr(other, name, held[index])
        return other

    def classes(self, table):
        """The reader's classes of each line, 0 at the end: [n, LONGEST], and how many there are."""
        c = table[self.codes]
        order = torch.argsort((c == 0).int(), dim=1, stable=True)
        return c.gather(1, order), (c != 0).sum(1)


def sampled(fields, face, symbol, column, row):
    """The distance, in rows of the atlas, at a place of a symbol's cell; far outside where there is none."""
    inside = (symbol >= 0) & (column > 0) & (column < CELL - 1.001) & (row > 0) & (row < CELL - 1.001)
    x = column.clamp(0, CELL - 1.001)
    y = row.clamp(0, CELL - 1.001)
    x0, y0 = x.floor(), y.floor()
    fx, fy = x - x0, y - y0
    base = ((face * len(symbols.DRAWN) + symbol.clamp(min=0)) * CELL + y0.long()) * CELL + x0.long()
    flat = fields.view(-1)
    a, b = flat[base].float(), flat[base + 1].float()
    c, d = flat[base + CELL].float(), flat[base + CELL + 1].float()
    value = (a * (1 - fx) + b * fx) * (1 - fy) + (c * (1 - fx) + d * fx) * fy
    return torch.where(inside, (value - 128) * (REACH / 127), torch.full_like(value, -REACH))


def place(plan, rows, columns, width, down):
    """From places of the strip to places along the line (u) and across it (v: 0 at capitals' top, 1 at their foot)."""
    e = lambda t: t[:, None, None]
    half = e(plan.valid) / 2
    x = columns[None, None, :] - e(plan.left + (plan.valid - plan.left - plan.right) / 2)
    y = rows[None, :, None] - ROWS / 2 - e(plan.down + down)
    x, y = x + e(plan.turn) * y, y - e(plan.turn) * x
    x = x + e(plan.shear) * y
    s = x / half.clamp(min=8)
    y = y * (1 + e(plan.taper) * s) + e(plan.bend * plan.capital) * (s * s - 0.3)
    u, v = x / e(plan.capital * plan.squeeze) + e(plan.total) / 2, y / e(plan.capital) + 0.5
    return torch.where(e(plan.flipped), e(plan.total) - u, u), torch.where(e(plan.flipped), 1 - v, v)


def distance(fields, plan, u, v):
    """Distance in rows of the atlas to the nearest outline of the line, positive in the ink."""
    e = lambda t: t[:, None, None]
    n, h, w = u.shape
    index = torch.searchsorted(plan.pens.contiguous(), u.reshape(n, -1).contiguous(), right=True).view(n, h, w) - 1
    last = plan.symbol.shape[1] - 1
    best = torch.full_like(u, -REACH)
    q = 1 / 7.0
    for step in (-1, 0, 1):
        k = index + step
        valid = (k >= 0) & (k <= last)
        k = k.clamp(0, last).view(n, -1)
        symbol = torch.where(valid, plan.symbol.gather(1, k).view(n, h, w), torch.full_like(index, -1))
        x = (u - plan.pens.gather(1, k).view(n, h, w) - plan.inset.gather(1, k).view(n, h, w)) / plan.breadth.gather(1, k).view(n, h, w)
        y = v + plan.lift.gather(1, k).view(n, h, w)
        x = torch.where(e(plan.matrix), ((x / q).floor() + 0.5) * q, x)
        y = torch.where(e(plan.matrix), ((y / q).floor() + 0.5) * q, y)
        x, y = bent(plan, x, y)
        best = torch.maximum(best, sampled(fields, e(plan.face), symbol, ORIGIN + x * CAP, BASELINE - CAP + y * CAP))
    return best


def bent(plan, x, y):
    """Places of a symbol's cell after the line's own bending; what lies above the capitals or below the line is left alone."""
    e = lambda t: t[:, None, None]
    v = y.clamp(0, 1) * math.pi
    once, twice = torch.sin(v), torch.sin(2 * v)
    across = torch.sin((x.clamp(0, 0.75) / 0.75) * 2 * math.pi)
    return x + e(plan.belly) * across + e(plan.lean) * twice, y + e(plan.waist) * once + e(plan.bars) * twice


def ink(plan, d, u, v):
    """Ink between 0 and 1 for a distance field, by the line's weight and pen."""
    e = lambda t: t[:, None, None]
    soft = CAP / e(plan.capital)
    t = d + e(plan.bold)
    t = torch.where(e(plan.hollow), 1.3 - t.abs(), t)
    cover = (t / soft + 0.5).clamp(0, 1)
    q = 1 / 7.0
    fx, fy = u / q - (u / q).floor() - 0.5, v / q - (v / q).floor() - 0.5
    spot = ((e(plan.dot) - torch.sqrt(fx * fx + fy * fy)) * 5 + 0.5).clamp(0, 1)
    cover = torch.where(e(plan.matrix), (d + e(plan.bold) > -0.6).float() * spot, cover)
    p = e(plan.period)
    fine = torch.sin(2 * math.pi * u / p) + torch.sin(2 * math.pi * v / p)
    cover = torch.where(e(plan.dots), cover * ((fine + e(plan.duty) * 2 - 0.7) * 2).clamp(0, 1), cover)
    across = torch.where(e(plan.along), u * 1.0, v) / p
    stripe = ((e(plan.duty) / 2 - (across - across.floor() - 0.5).abs()) * 6 + 0.5).clamp(0, 1)
    return torch.where(e(plan.raster), cover * stripe, cover)


def cover(fields, plan, width, down=None):
    """[n, ROWS, width] ink of the lines; `down`: rows by which each is moved (a neighbour of the line itself)."""
    device = plan.total.device
    rows = torch.arange(ROWS, device=device).float() + 0.5
    columns = torch.arange(width, device=device).float() + 0.5
    u, v = place(plan, rows, columns, width, torch.zeros_like(plan.total) if down is None else down)
    return ink(plan, distance(fields, plan, u, v), u, v)
