"""One training batch of the reader: strips of worn lines with what stands on them, and what does not belong to them."""
import torch

import lines
import logos
import nets
import wear


def rim(lot, capital, height, width, valid):
    """Things at the strip's rim that are no text: a dot beside it, the body's edge, a bar. 0 to 1."""
    device = capital.device
    y = torch.arange(height, device=device).float()[None, None, :, None] + 0.5
    x = torch.arange(width, device=device).float()[None, None, None, :] + 0.5
    v = valid.view(-1, 1, 1, 1)
    c = capital.view(-1, 1, 1, 1)
    radius = c * lot.uniform(0.08, 0.3)
    side = lot.chance(0.5)
    cx = torch.where(side > 0, v + radius * lot.uniform(-0.9, 0.4), radius * lot.uniform(-0.4, 0.9))
    far = torch.sqrt((x - cx) ** 2 + (y - lot.uniform(0, height)) ** 2)
    ring = lot.chance(0.3)
    dot = (radius - far + 0.5).clamp(0, 1) * (1 - ring * ((radius * 0.7 - far + 0.5).clamp(0, 1)))
    out = lot.chance(0.08) * dot * lot.uniform(0.4, 1)
    edge = torch.where(lot.chance(0.5) > 0, v - lot.uniform(0, 3), lot.uniform(0, 3))
    out = torch.maximum(out, lot.chance(0.06) * ((x - edge).abs() < lot.uniform(0.6, 2)).float() * lot.uniform(0.2, 1))
    level = torch.where(lot.chance(0.5) > 0, height - lot.uniform(0, 2.5), lot.uniform(0, 2.5)) + lot.uniform(-0.03, 0.03) * (x - v / 2)
    return torch.maximum(out, lot.chance(0.08) * ((y - level).abs() < lot.uniform(0.6, 2)).float() * lot.uniform(0.2, 1))


def inked(plan, beside, lot, emblems, lone, away, width):
    """Ink of a batch with its neighbours above or below, emblems, and what lies at the rim. `lone`: nothing but an emblem there."""
    fields = emblems.fields
    x = lines.cover(fields, plan, width)[:, None]
    half = len(plan.total) // 2
    near = lines.cover(fields, beside, width, away)[:, None]
    x = torch.cat([torch.maximum(x[:half], near), x[half:]])
    e = lambda t: t[:, None, None]
    left = plan.badge < 0
    room = torch.where(left, plan.left, plan.right)
    size = torch.where(lone, plan.capital * 0.55, torch.minimum(room * 0.45, plan.capital * 0.65)).clamp(min=2)
    size = torch.where(emblems.alone, plan.capital * (0.5 + 0.5 * emblems.strength), size)
    centre = torch.where(lone, plan.valid / 2, torch.where(left, plan.left * 0.47, plan.valid - plan.right * 0.47))
    columns = torch.arange(width, device=x.device).float()[None, None, :] + 0.5
    rows = torch.arange(lines.ROWS, device=x.device).float()[None, :, None] + 0.5
    q = ((columns - e(centre)) / e(size)).expand(-1, lines.ROWS, -1), ((rows - lines.ROWS / 2 - e(plan.down)) / e(size)).expand(-1, -1, width)
    thing, _ = logos.emblem(emblems, *q, size, plan.capital * 1.25)
    x = torch.maximum(x, (thing * e(((plan.badge != 0) | lone).float()))[:, None])
    return torch.maximum(x, rim(lot, plan.capital, lines.ROWS, width, plan.valid))


def aged(x, lot):
    return wear.lit(wear.worn(x, lot), lot)


class Strips:
    """Endless batches, by width, so that no column is wasted: (pictures, classes, counts, valid columns)."""

    def __init__(self, atlas, bank, table, device, columns=1024 * 256, compiled=False):
        self.atlas, self.bank, self.table, self.device = atlas, bank, table, device
        self.columns = columns
        # A third of the lines with capitals under 14 rows: on photographs of whole boards most are.
        self.sizes = (48, 48, 48, 40, 33, 27, 22, 19, 16, 14, 12, 10)
        self.inked, self.aged = (nets.compiled(f, device) if compiled else f for f in (inked, aged))

    def batches(self):
        while True:
            plan = lines.Plan(self.atlas, self.bank, 65536, self.device)
            edges = torch.tensor(lines.WIDTHS, device=self.device)
            bucket = torch.bucketize(plan.natural.clamp(max=float(lines.WIDTHS[-1])), edges)
            todo = []
            for b, width in enumerate(lines.WIDTHS):
                index = (bucket == b).nonzero()[:, 0]
                size = self.columns // width
                todo += [(width, index[k * size:(k + 1) * size]) for k in range(len(index) // size)]
            for k in torch.randperm(len(todo)).tolist():
                yield self.batch(plan.take(todo[k][1]), todo[k][0])

    @torch.no_grad()
    def batch(self, plan, width):
        plan.fit(width)
        n, device = len(plan.total), self.device
        half = n // 2
        beside = plan.take(torch.randperm(n, device=device)[:half])
        for name in ("capital", "valid", "turn", "shear", "bend", "taper", "down", "face", "bold", "squeeze"):
            setattr(beside, name, getattr(plan, name)[:half])
        alone = torch.rand(half, device=device) < 0.4
        beside.symbol = torch.where(alone[:, None], torch.full_like(beside.symbol, -1), beside.symbol)
        away = beside.capital * (1.05 + 0.5 * torch.rand(half, device=device)) * torch.where(torch.rand(half, device=device) < 0.5, -1.0, 1.0)
        # Upside down, or no text at all (some of those an emblem): there is nothing to read. That is how the reader says which way
        # up a line is, and that what the finder took for a line is none.
        fate = torch.rand(n, device=device)
        plan.flipped = fate < 0.06
        nothing = fate > 0.94
        lone = fate > 0.965
        plan.symbol = torch.where(nothing[:, None], torch.full_like(plan.symbol, -1), plan.symbol)
        beside.flipped = plan.flipped[:half]
        lot = wear.Lot(n, device)
        emblems = logos.Emblems(self.atlas, self.bank, n, device)
        image, contrast = self.aged(self.inked(plan, beside, lot, emblems, lone, away, width), lot)
        parts = []
        # Each sixth of the batch loses resolution, and focus, of its own.
        for k in range(6):
            s = slice(k * n // 6, (k + 1) * n // 6)
            rows = self.sizes[int(torch.randint(len(self.sizes), (1,)))]
            some = wear.Lot(s.stop - s.start, device)
            part = wear.coarsened(image[s], (rows, max(4, round(width * rows / lines.ROWS))), contrast[s], some, float(torch.rand(1)) < 0.35)
            parts.append(wear.defocused(part, 1 + 4 * float(torch.rand(1))) if float(torch.rand(1)) < 0.15 else part)
        image = wear.seen(torch.cat(parts), contrast, lot)
        classes, counts = plan.classes(self.table)
        counts = torch.where(plan.flipped | nothing, torch.zeros_like(counts), counts)
        return wear.normal(image, plan.valid), classes, counts, plan.valid
