"""One training batch of the finder: whole made-up package tops with maps of what lies where.

A picture shows a body (often with leads and board around it) with one to seven lines of a mark at any turn, a pin-1 dot,
a logo, a code of squares, bars; text beside the body belongs to the board and is no line of the mark.
"""
import math

import torch
import torch.nn.functional as F

import lines
import logos
import nets
import symbols
import wear

SIDE = 384
STRIDE = 4
# COSINE, SINE: which way the text runs; COSINE2, SINE2: the same of twice the angle, which half a turn leaves alone.
CORE, LINE, COSINE, SINE, HEIGHT, DOT, BODY, LOGO, COSINE2, SINE2 = range(10)
MOST = 7
# Beside the body: text above or below it, text left or right of it, text on a body beside it. None is a line of the mark.
ASIDE = 3


def slot(fields, plan, cap, left, top, cosine, sine, x, y):
    """Ink of one line of every picture, its left end at (left, top) of the body's frame, running along (cosine, sine)."""
    e = lambda t: t[:, None, None]
    dx, dy = x - e(left), y - e(top)
    p, q = dx * e(cosine) + dy * e(sine), dy * e(cosine) - dx * e(sine)
    v = q / e(cap)
    u = (p + e(plan.shear) * (q - e(cap) / 2)) / e(cap * plan.squeeze)
    sized = plan.take(slice(None))
    sized.capital = cap
    return lines.ink(sized, lines.distance(fields, sized, u, v), u, v)


def aged(ink, lot, ground):
    worn = wear.worn(ink.clamp(min=0)[:, None], lot) + ink.clamp(max=0)[:, None]
    return wear.lit(worn, lot, ground, low=0.04)


class Tops:
    """Endless batches: pictures [n, 1, SIDE, SIDE], maps [n, MAPS, SIDE / 4, SIDE / 4], valid [n, 1, SIDE, SIDE]."""

    def __init__(self, atlas, bank, device, count=48):
        self.atlas, self.bank, self.device, self.count = atlas, bank, device, count
        self.drawn_slot, self.drawn_others, self.drawn_board, self.aged, self.seen = (
            nets.compiled(f, device) for f in (slot, self.others, self.board, aged, wear.seen))

    def uniform(self, low, high, *shape):
        shape = shape or (self.count,)
        return torch.rand(*shape, device=self.device) * (high - low) + low

    def chance(self, p, *shape):
        return self.uniform(0, 1, *shape) < p

    def batches(self):
        while True:
            yield self.batch()

    def layout(self):
        """Where everything lies: body and turn in pixels of the picture, lines in the body's own frame."""
        n, u = self.count, self.uniform
        aspect = torch.where(self.chance(0.35), torch.ones(n, device=self.device), torch.exp(u(-0.9, 0.9)))
        self.wide = (SIDE * aspect.clamp(max=1)).round()
        self.high = (SIDE / aspect.clamp(min=1)).round()
        kind = u(0, 1)
        tilt = torch.randn(n, device=self.device) * 0.045
        quarter = (u(0, 4).floor() * (math.pi / 2))
        self.turn = torch.where(kind < 0.5, tilt, torch.where(kind < 0.65, tilt + quarter, u(-math.pi, math.pi)))
        # The body's half sides along and across the text. Filling: its own edges lie at the picture's rim or outside.
        filling = self.chance(0.45)
        along = torch.where((self.turn.cos().abs() > 0.707), self.wide, self.high) / 2
        across = torch.where((self.turn.cos().abs() > 0.707), self.high, self.wide) / 2
        odd = (self.turn * 4).sin().abs() > 0.5
        share = torch.where(filling, u(0.93, 1.15), u(0.45, 0.93)) * torch.where(odd, 0.78, 1.0)
        self.a, self.b = along * share, across * share
        self.cx = self.wide / 2 + torch.where(filling, u(-0.02, 0.02), u(-0.06, 0.06)) * self.wide
        self.cy = self.high / 2 + torch.where(filling, u(-0.02, 0.02), u(-0.06, 0.06)) * self.high
        weights = torch.tensor([0.04, 0.12, 0.22, 0.24, 0.19, 0.1, 0.06, 0.03], device=self.device)
        self.lines = torch.multinomial(weights, n, replacement=True)
        order = torch.argsort(self.lines, descending=True)
        for name in ("wide", "high", "turn", "a", "b", "cx", "cy", "lines"):
            setattr(self, name, getattr(self, name)[order])
        self.filling = filling[order]

    def plans(self):
        """One plan a line slot, sized and placed: capital height, left end and upper rim in the body's frame."""
        n, u = self.count, self.uniform
        plans = [lines.Plan(self.atlas, self.bank, n, self.device) for _ in range(MOST + ASIDE)]
        one_face = self.chance(0.7)
        one_hand = ("face", "bold", "hollow", "matrix", "dots", "raster", "along", "period", "duty", "dot", "shear", "squeeze",
                    "waist", "bars", "belly", "lean")
        for k, p in enumerate(plans):
            if k and k < MOST:
                for name in one_hand:
                    same = getattr(plans[0], name)
                    setattr(p, name, torch.where(one_face, same, getattr(p, name)))
            # Faces changed after the advances were drawn: set the pens anew.
            symbol = p.symbol.clamp(min=0)
            advance = self.atlas.advances[p.face[:, None], symbol]
            drawn = p.codes != symbols.END
            wide = torch.where(p.symbol >= 0, advance + u(-0.02, 0.12)[:, None], torch.full_like(advance, 0.5)) * drawn
            p.inset = torch.zeros_like(advance)
            p.pens = torch.cat([torch.zeros(n, 1, device=self.device), wide.cumsum(1)], 1)
            p.total = p.pens[:, -1]
            stem = self.atlas.stems[p.face]
            p.bold = torch.where(self.atlas.stroke[p.face], p.bold.clamp(1.0, 4.6), torch.minimum(p.bold, 0.5 * stem + 1).clamp(min=-0.5))
            p.squeeze = p.squeeze.clamp(0.7, 1.3)
            p.shear = torch.where(p.shear.abs() > 0.12, p.shear, torch.zeros_like(p.shear))
        relative = torch.where(self.chance(0.75, MOST, n), torch.ones(MOST, n, device=self.device), u(0.55, 1.5, MOST, n))
        pitch = u(1.2, 2.2) + torch.where(self.chance(0.2, MOST, n), u(0, 1.0, MOST, n), torch.zeros(MOST, n, device=self.device))
        exists = torch.arange(MOST, device=self.device)[:, None] < self.lines[None]
        widths = torch.stack([p.total * p.squeeze for p in plans[:MOST]]) * relative * exists
        heights = relative * pitch * exists
        # Bright ends of a part without leads; a band of one block or two at one end, which tells polarity. Text keeps off both.
        zero = torch.zeros(n, device=self.device)
        self.ends = torch.where(self.chance(0.12), u(0.05, 0.16), zero)
        self.band = torch.where(self.chance(0.12), u(0.12, 0.3), zero)
        self.band_left = self.chance(0.75)
        taken = 2 * self.ends + torch.where(self.band > 0, self.band + 0.05, zero)
        span = 2 * self.a * (1 - taken)
        start = -self.a + 2 * self.a * (self.ends + torch.where(self.band_left & (self.band > 0), self.band + 0.05, zero))
        room = torch.minimum(2 * self.b / heights.sum(0).clamp(min=0.5), span / widths.max(0).values.clamp(min=0.5))
        cap = (room * u(0.4, 0.97)).clamp(min=6.5, max=150)
        self.caps = cap * relative
        block = (heights * cap).sum(0)
        longest = (widths * cap).max(0).values
        align = u(0, 1)
        slack_x, slack_y = (span - longest).clamp(min=0), (2 * self.b - block).clamp(min=0)
        x0 = start + slack_x * torch.where(self.chance(0.6), 0.5 * torch.ones_like(align), u(0.05, 0.95))
        # A logo that stands left of the first lines, as high as one of them or as two.
        self.badge = self.chance(0.2)
        self.badge_size = torch.minimum(cap * u(0.5, 1.2), slack_x * 0.4)
        x0 = torch.where(self.badge, start + slack_x * u(0.85, 1.0), x0)
        y = -self.b + slack_y * torch.where(self.chance(0.5), 0.5 * torch.ones_like(align), u(0.1, 0.9))
        self.x, self.y = [], []
        for k in range(MOST):
            free = longest - widths[k] * cap
            self.x.append(x0 + free * torch.where(align < 0.55, 0.0, torch.where(align < 0.9, 0.5, u(0, 1))))
            self.y.append(y + heights[k] * cap * 0.5 - self.caps[k] * 0.5)
            y = y + heights[k] * cap
        self.badge_x = torch.minimum(self.x[0], torch.where(self.lines > 1, self.x[1], self.x[0])) - self.badge_size * u(1.1, 1.5)
        self.badge_y = self.y[0] + self.caps[0] * u(0.3, 1.4)
        self.beside(plans, cap)
        return plans

    def beside(self, plans, cap):
        """Sizes and places what stands beside the body. Directions: which way its text runs (cosine, sine)."""
        n, u = self.count, self.uniform
        one, none = torch.ones(n, device=self.device), torch.zeros(n, device=self.device)
        caps = (cap * u(0.5, 1.3)).clamp(7, 40), (cap * u(0.5, 1.3)).clamp(7, 40)
        self.runs = [(one, none)] * (MOST + 1)
        away = self.b + caps[0] * u(0.3, 1.0)
        self.x.append(-self.a * u(0.2, 1.2))
        self.y.append(torch.where(self.chance(0.5), away, -away - caps[0]))
        # Left or right, running along or across the body.
        across, right = self.chance(0.5), self.chance(0.5)
        down = torch.where(self.chance(0.5), 1.0, -1.0)
        long = plans[MOST + 1].total * plans[MOST + 1].squeeze * caps[1]
        gap = caps[1] * u(0.3, 1.0)
        reach = torch.where(across, caps[1], long)
        near = torch.where(right, self.a + gap, -self.a - gap - reach)
        self.x.append(torch.where(across & (down > 0), near + caps[1], near))
        self.y.append(torch.where(across, -down * long / 2, -caps[1] * u(0, 1)) + self.b * u(-0.6, 0.6))
        self.runs.append((torch.where(across, none, one), torch.where(across, down, none)))
        # A body beside this one, with a line on it.
        p = plans[MOST + 2]
        self.a2, self.b2 = self.a * u(0.3, 1.0), self.b * u(0.3, 1.0)
        side, sign = self.chance(0.5), torch.where(self.chance(0.5), 1.0, -1.0)
        apart = torch.minimum(self.a, self.b) * u(0.08, 0.5)
        self.cx2 = torch.where(side, sign * (self.a + apart + self.a2), self.a * u(-0.7, 0.7))
        self.cy2 = torch.where(side, self.b * u(-0.7, 0.7), sign * (self.b + apart + self.b2))
        long = p.total * p.squeeze
        caps2 = torch.minimum(1.7 * self.a2 / long.clamp(min=0.5), 1.2 * self.b2).clamp(5, 60) * u(0.6, 1.0)
        self.x.append(self.cx2 - long * caps2 / 2)
        self.y.append(self.cy2 - caps2 / 2)
        self.runs.append((one, none))
        self.caps = torch.cat([self.caps, caps[0][None], caps[1][None], caps2[None]])

    def frame(self, count, stride):
        """Coordinates of every pixel in the body's frame (right along the text, down across it)."""
        axis = (torch.arange(SIDE // stride, device=self.device).float() + 0.5) * stride
        e = lambda t: t[:count, None, None]
        x, y = axis[None, None, :] - e(self.cx), axis[None, :, None] - e(self.cy)
        c, s = e(self.turn).cos(), e(self.turn).sin()
        return x * c + y * s, y * c - x * s

    def others(self, x, y, emblems):
        """Dot, logo, square code and bars in the body's frame: their ink, and where dot and logo lie."""
        n, u = self.count, self.uniform
        e = lambda t: t[:, None, None]
        small = torch.minimum(self.a, self.b)
        sx, sy = torch.where(self.chance(0.8), -1.0, 1.0), torch.where(self.chance(0.5), -1.0, 1.0)
        r = (small * u(0.03, 0.13)).clamp(min=2.0)
        inset = r + small * u(0.03, 0.3)
        dx, dy = sx * (self.a - inset), sy * (self.b - inset)
        # One that stands before a line, as its first sign would.
        before = self.chance(0.15)
        at = (u(0, 1) * self.lines.clamp(min=1)).floor().long().clamp(max=MOST - 1)[None]
        own = self.caps.gather(0, at)[0]
        r = torch.where(before, own * u(0.2, 0.42), r)
        dx = torch.where(before, torch.stack(self.x[:MOST]).gather(0, at)[0] - r - own * u(0.1, 0.4), dx)
        dy = torch.where(before, torch.stack(self.y[:MOST]).gather(0, at)[0] + own * u(0.4, 0.6), dy)
        far = torch.sqrt((x - e(dx)) ** 2 + (y - e(dy)) ** 2)
        disc = (e(r) - far + 0.5).clamp(0, 1)
        ring = disc * (1 - (e(r * 0.7) - far + 0.5).clamp(0, 1))
        dimple = disc * (((x - e(dx)) + (y - e(dy))) / e(r)).clamp(-1, 1)
        style = e(torch.where(before, torch.zeros_like(r), u(0, 1)))
        dot = torch.where(style < 0.5, disc, torch.where(style < 0.75, ring, dimple)) * e(u(0.4, 1.1))
        has_dot = self.chance(0.45)
        # A logo: a wavy disc, filled or ringed, with strokes cut out; or a square of random cells.
        size = (small * u(0.12, 0.4)).clamp(min=5)
        lx, ly = (self.a - size * 1.1) * u(-1, 1), (self.b - size * 1.1) * u(-1, 1)
        size = torch.where(self.badge, self.badge_size.clamp(min=3), size)
        lx, ly = torch.where(self.badge, self.badge_x, lx), torch.where(self.badge, self.badge_y, ly)
        qx, qy = (x - e(lx)) / e(size), (y - e(ly)) / e(size)
        rho, phi = torch.sqrt(qx * qx + qy * qy), torch.atan2(qy, qx)
        folds = u(1, 8).floor()
        edge = e(u(0.6, 0.95)) * (1 + e(u(0, 0.35)) * torch.cos(e(folds) * phi + e(u(0, 6.3))))
        soft = 1.2 / e(size)
        shape = ((edge - rho) / soft + 0.5).clamp(0, 1)
        inner = ((edge * e(u(0.5, 0.85)) - rho) / soft + 0.5).clamp(0, 1)
        cut = ((torch.sin(e(u(3, 9)) * (qx * e(u(-1, 1)) + qy * e(u(-1, 1))) + e(u(0, 6))) - e(u(-0.5, 0.5))) * 4).clamp(0, 1)
        style = e(u(0, 1))
        logo = torch.where(style < 0.4, shape - inner, torch.where(style < 0.8, shape * cut, shape)) * e(u(0.5, 1))
        cells = torch.floor((qx + 1) * e(u(4, 9).floor())) * 7.13 + torch.floor((qy + 1) * e(u(4, 9).floor())) * 3.71 + e(u(0, 50))
        grid = ((torch.sin(cells * 12.9898) * 43758.5453 % 1.0) > 0.5).float() * ((qx.abs() < 1) & (qy.abs() < 1)).float()
        square = self.chance(0.15)
        made, lies = logos.emblem(emblems, qx, qy, size, self.caps[0] * 1.25)
        emblematic = e(self.chance(0.65))
        logo = torch.where(e(square), grid * e(u(0.5, 1)), torch.where(emblematic, made, logo))
        has_logo = self.chance(0.4) | self.badge
        where_logo = torch.where(e(square), (qx.abs() < 1) & (qy.abs() < 1), torch.where(emblematic, lies, rho < edge * 1.02))
        bar = ((x - e(self.a * u(-1, 1))).abs() < e(u(0.7, 3))) | ((y - e(self.b * torch.where(self.chance(0.5), u(0.8, 1), u(-1, -0.8)))).abs() < e(u(0.7, 4)))
        bar = bar.float() * e(self.chance(0.1) * u(0.3, 1))
        from_left = torch.where(e(self.band_left), x + e(self.a), e(self.a) - x) / e(2 * self.a) - e(self.ends)
        tall = (y.abs() < e(self.b * u(0.55, 1.0))) & ((y - e(self.b * u(-0.1, 0.1))).abs() > e(self.b * u(-0.12, 0.12)))
        bar = torch.maximum(bar, ((from_left > 0.02) & (from_left < e(self.band)) & tall).float() * e(u(0.4, 1.1)))
        return (dot, (far < e(r.clamp(min=3))), has_dot), (logo, where_logo, has_logo), bar

    def board(self, x, y, inside, lot):
        """The ground: body, its bevel and shadow, leads, board with pads and traces."""
        u = self.uniform
        e = lambda t: t[:, None, None, None]
        x, y = x[:, None], y[:, None]
        body = lot.uniform(0.05, 0.7)
        board = torch.where(lot.chance(0.7) > 0, lot.uniform(0.05, 0.9), body + lot.uniform(-0.1, 0.1))
        texture = lot.noise(12, 12, (SIDE, SIDE)) * lot.uniform(0, 0.15) + lot.noise(48, 48, (SIDE, SIDE), "bilinear") * lot.uniform(0, 0.1)
        strip = torch.sin((x * lot.uniform(-1, 1) + y * lot.uniform(-1, 1)) * lot.uniform(0.05, 0.5) + lot.uniform(0, 6))
        texture = texture + lot.chance(0.4) * lot.uniform(0, 0.3) * (strip > lot.uniform(-0.3, 0.9)).float()
        pitch = e(torch.minimum(self.a, self.b)) * lot.uniform(0.1, 0.35)
        beyond = torch.where(lot.chance(0.5) > 0, y.abs() - e(self.b), x.abs() - e(self.a))
        other = torch.where(beyond == y.abs() - e(self.b), x, y)
        tooth = ((other / pitch - (other / pitch).floor()) < lot.uniform(0.3, 0.6)) & (beyond > 0) & (beyond < pitch * lot.uniform(0.4, 2))
        board = board + texture + lot.chance(0.6) * tooth.float() * lot.uniform(-0.2, 0.6)
        both = lot.chance(0.3)
        aside = torch.maximum(x.abs() - e(self.a), y.abs() - e(self.b))
        second = (x - e(self.cx2)).abs() < e(self.a2)
        second = second & ((y - e(self.cy2)).abs() < e(self.b2)) & (lot.chance(0.35) > 0)
        board = torch.where(second, torch.where(lot.chance(0.6) > 0, body + lot.uniform(-0.05, 0.05), lot.uniform(0.05, 0.8)), board)
        capped = (x.abs() > e(self.a * (1 - 2 * self.ends))) & (e(self.ends) > 0)
        ground = torch.where(inside, torch.where(capped, lot.uniform(0.4, 1.0), body), board)
        rim = torch.exp(-(aside / lot.uniform(1, 6)) ** 2)
        return ground + rim * lot.uniform(-0.2, 0.2) * both + lot.chance(0.3) * lot.uniform(-0.15, 0.1) * torch.exp(-(aside.clamp(min=0) / lot.uniform(3, 20))) * (~inside)

    @torch.no_grad()
    def batch(self):
        n, u = self.count, self.uniform
        self.layout()
        plans = self.plans()
        x, y = self.frame(n, 1)
        cx, cy = self.frame(n, STRIDE)
        e = lambda t: t[:, None, None]
        lot = wear.Lot(n, self.device)
        maps = torch.zeros(n, 10, SIDE // STRIDE, SIDE // STRIDE, device=self.device)
        ink = torch.zeros(n, SIDE, SIDE, device=self.device)
        inside = (x.abs() < e(self.a)) & (y.abs() < e(self.b))
        for k in range(MOST):
            has = e(self.lines > k)
            ink = torch.maximum(ink, self.drawn_slot(self.atlas.fields, plans[k], self.caps[k], self.x[k], self.y[k], *self.runs[k], x, y) * has)
            h = e(self.caps[k])
            p, q = cx - e(self.x[k]), cy - e(self.y[k])
            w = e(plans[k].total * plans[k].squeeze) * h
            line = (p > -1) & (p < w + 1) & (q > -1) & (q < h + 1) & has
            core = (p > 0.1 * h) & (p < w - 0.1 * h) & ((q - h / 2).abs() < (0.2 * h).clamp(min=2.1)) & has
            maps[:, LINE] = torch.maximum(maps[:, LINE], line.float())
            maps[:, CORE] = torch.maximum(maps[:, CORE], core.float())
            maps[:, HEIGHT] = torch.where(line, (h / 16).log().expand_as(line), maps[:, HEIGHT])
        maps[:, COSINE] = e(self.turn.cos()) * maps[:, LINE]
        maps[:, SINE] = e(self.turn.sin()) * maps[:, LINE]
        maps[:, COSINE2] = e((2 * self.turn).cos()) * maps[:, LINE]
        maps[:, SINE2] = e((2 * self.turn).sin()) * maps[:, LINE]
        dot, logo, bar = self.drawn_others(x, y, logos.Emblems(self.atlas, self.bank, n, self.device))
        thing = torch.zeros_like(ink)
        for (drawn, where, has), channel in ((dot, DOT), (logo, LOGO)):
            seen = F.max_pool2d((where & inside).float()[:, None], STRIDE)[:, 0]
            clash = (seen * maps[:, LINE]).sum((1, 2)) > 0.02 * seen.sum((1, 2))
            shown = (has & ~clash).float()
            thing = torch.where(e(shown) * drawn.abs() > thing.abs(), e(shown) * drawn, thing)
            maps[:, channel] = F.avg_pool2d((where & inside).float()[:, None], STRIDE)[:, 0].gt(0.3).float() * e(shown)
        ink = torch.where(thing.abs() > ink, thing, torch.maximum(ink, bar * (1 - F.interpolate(maps[:, LINE:LINE + 1], (SIDE, SIDE))[:, 0])))
        # A body whose edges all lie outside the picture is the whole picture.
        maps[:, BODY] = ((cx.abs() < e(self.a)) & (cy.abs() < e(self.b))).float()
        ground = self.drawn_board(x, y, inside[:, None], lot)
        shares = 0.3, 0.25, 0.8
        beside = torch.zeros_like(ink)
        for k, share in zip(range(MOST, MOST + ASIDE), shares):
            text = self.drawn_slot(self.atlas.fields, plans[k], self.caps[k], self.x[k], self.y[k], *self.runs[k], x, y)
            if k == MOST + 2:
                text = text * ((x - e(self.cx2)).abs() < e(self.a2)) * ((y - e(self.cy2)).abs() < e(self.b2))
            beside = torch.maximum(beside, text * e(self.chance(share).float()) * (~inside))
        ground = ground + beside[:, None] * lot.uniform(0.1, 0.6) * torch.where(lot.uniform(0, 1) < 0.8, 1.0, -1.0)
        image, contrast = self.aged(ink, lot, ground)
        parts = []
        pieces = max(4, n // 16)
        for k in range(pieces):
            s = slice(k * n // pieces, (k + 1) * n // pieces)
            rows = (384, 384, 384, 288, 208, 144, 112, 88)[int(torch.randint(8, (1,)))]
            some = wear.Lot(s.stop - s.start, self.device)
            part = wear.coarsened(image[s], (rows, rows), contrast[s], some, float(torch.rand(1)) < 0.35)
            parts.append(wear.defocused(part, float(torch.rand(1)) * 4 + 1) if float(torch.rand(1)) < 0.12 else part)
        image = self.seen(torch.cat(parts), contrast, lot)
        axis = torch.arange(SIDE, device=self.device).float()
        valid = ((axis[None, None, :] < e(self.wide)) & (axis[None, :, None] < e(self.high))).float()[:, None]
        count = valid.sum((2, 3), keepdim=True)
        mean = (image * valid).sum((2, 3), keepdim=True) / count
        spread = (((image - mean) ** 2 * valid).sum((2, 3), keepdim=True) / count).sqrt() + 1e-3
        maps = maps * valid[:, :, ::STRIDE, ::STRIDE]
        shuffle = torch.randperm(n, device=self.device)
        return ((image - mean) / spread * valid)[shuffle], maps[shuffle], valid[shuffle]
