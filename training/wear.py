"""What light, moulding compound, time, lens and file do to a mark. Works on strips and on whole tops, on the GPU.

Every effect is drawn by lot for each picture: faded patches, wiped bands, worn-off specks, engraving's shaded rims,
grain and sparkle of the compound, streaks, scratches, uneven light, glare, blur, lost resolution, JPEG, sharpening.
"""
import math

import torch
import torch.nn.functional as F


class Lot:
    """Draws by lot for n pictures on one device."""

    def __init__(self, count, device):
        self.count, self.device = count, device
        # How badly off a picture is: most marks that people photograph can be read, some hardly.
        self.hard = self.uniform(0, 1) ** 1.4

    def uniform(self, low, high):
        return torch.rand(self.count, 1, 1, 1, device=self.device) * (high - low) + low

    def log(self, low, high):
        return torch.exp(self.uniform(math.log(low), math.log(high)))

    def chance(self, p):
        return (torch.rand(self.count, 1, 1, 1, device=self.device) < p).float()

    def noise(self, rows, columns, to=None, mode="bicubic"):
        n = torch.randn(self.count, 1, max(2, rows), max(2, columns), device=self.device)
        return n if to is None else F.interpolate(n, to, mode=mode, align_corners=False if mode != "nearest" else None)


def smooth(x, sigma, size):
    """Gaussian blur by shifted sums: for one channel much faster on a GPU than a convolution."""
    p = size // 2
    weights = [math.exp(-k * k / (2 * sigma * sigma)) for k in range(-p, p + 1)]
    h, w = x.shape[2:]
    for pad, axis in (((p, p, 0, 0), 3), ((0, 0, p, p), 2)):
        y = F.pad(x, pad, mode="replicate")
        x = sum(y.narrow(axis, k, x.shape[axis]) * (g / sum(weights)) for k, g in enumerate(weights))
    return x


def blurred(x, sigma):
    """Blur of a sigma of its own for each picture (0 to 2.2 px), blended from two fixed ones: fast, and near enough."""
    s2 = sigma * sigma
    one, two = smooth(x, 1.0, 5), smooth(x, 2.0, 9)
    return torch.where(s2 <= 1, x + (one - x) * s2.clamp(max=1), one + (two - one) * ((s2 - 1) / 3).clamp(0, 1))


def worn(ink, lot):
    """Ink after time and touch."""
    n, _, h, w = ink.shape
    x = blurred(ink, lot.uniform(0, 1.1))
    fade = lot.noise(3, max(3, w * 3 // h), (h, w)) * 0.35 + 0.5
    x = x * (1 - lot.uniform(0, 0.85) * lot.hard * fade.clamp(0, 1))
    specks = lot.noise(h // 3, w // 3, (h, w), "bilinear")
    x = x * (1 - lot.chance(0.25) * lot.hard * ((specks - lot.uniform(0.4, 1.6)) * 4).clamp(0, 1))
    # Rubbed off in larger patches, down to nothing.
    rubbed = lot.noise(h // 9, w // 9, (h, w))
    x = x * (1 - lot.chance(0.2) * lot.uniform(0.3, 1) * lot.hard * ((rubbed - lot.uniform(0.2, 1.4)) * 2.5).clamp(0, 1))
    yy = torch.linspace(-1, 1, h, device=ink.device)[None, None, :, None]
    xx = torch.linspace(-1, 1, w, device=ink.device)[None, None, None, :] * (w / h)
    band = yy * lot.uniform(-1, 1) + xx * lot.uniform(-1, 1) + lot.uniform(-1.5, 1.5)
    return x * (1 - lot.chance(0.12) * lot.uniform(0.3, 0.95) * torch.exp(-(band / lot.uniform(0.05, 0.25)) ** 2))


def lit(x, lot, ground=None, low=0.03):
    """Grey picture of worn ink on a package: ground, contrast, grain, light. `ground`: a picture to lay it on."""
    n, _, h, w = x.shape
    contrast = lot.log(low, 0.6)
    sign = torch.where(lot.uniform(0, 1) < 0.82, 1.0, -1.0)
    base = lot.uniform(0.05, 0.8) if ground is None else ground
    yy = torch.linspace(-1, 1, h, device=x.device)[None, None, :, None]
    xx = torch.linspace(-1, 1, w, device=x.device)[None, None, None, :]
    image = base + sign * contrast * x
    # Engraving: rims bright on one side and dark on the other, light from anywhere; some marks are nothing but rims.
    px, py = F.pad(x, (1, 1, 0, 0), mode="replicate"), F.pad(x, (0, 0, 1, 1), mode="replicate")
    angle = lot.uniform(0, 2 * math.pi)
    rim = (px[..., 2:] - px[..., :-2]) * torch.cos(angle) + (py[:, :, 2:] - py[:, :, :-2]) * torch.sin(angle)
    image = image + lot.chance(0.35) * lot.uniform(0.1, 0.8) * rim * contrast
    hollowed = lot.chance(0.06)
    image = image - hollowed * sign * contrast * x * lot.uniform(0.6, 1) + hollowed * rim * contrast * lot.uniform(0.5, 1)
    c = (contrast / 0.2).clamp(max=1.5)
    image = image + lot.uniform(0, 0.12) * lot.uniform(0, 1) * c * lot.noise(4, max(4, w * 4 // h), (h, w))
    grain = lot.uniform(0, 1) * lot.hard * 0.6 * contrast
    # Grain of the compound at four sizes, each with a share of its own.
    fine = blurred(lot.noise(h, w), lot.uniform(0.2, 1.2))
    shares = [lot.uniform(0, 1) ** 2 for _ in range(3)]
    sizes = [lot.noise(h // k, w // k, (h, w), "bilinear") for k in (2, 4, 8)]
    image = image + grain * (0.8 * fine + 0.7 * sum(a * b for a, b in zip(shares, sizes)))
    sparkle = (blurred((lot.noise(h, w) > 2.6).float(), lot.uniform(0.3, 0.9)) * 2.5).clamp(max=1)
    image = image + lot.chance(0.2) * contrast * lot.uniform(0.2, 1.2) * lot.hard * sparkle
    streak = lot.noise(h, 6, (h, w), "bilinear")
    image = image + lot.chance(0.12) * contrast * lot.uniform(0, 0.5) * streak
    for _ in range(2):
        line = (yy * lot.uniform(-1, 1) + xx * (w / h) * lot.uniform(-1, 1) + lot.uniform(-1.5, 1.5)).abs()
        image = image + lot.chance(0.12) * lot.uniform(-1, 1) * contrast * torch.exp(-line / lot.uniform(0.008, 0.06))
    image = image + c * (lot.uniform(-0.2, 0.2) * yy + lot.uniform(-0.25, 0.25) * xx)
    far = ((yy - lot.uniform(-1.5, 1.5)) ** 2 + ((xx - lot.uniform(-1.2, 1.2)) * w / h) ** 2) / lot.uniform(0.2, 1.6) ** 2
    image = image + lot.chance(0.12) * lot.uniform(0, 0.7) * torch.exp(-far)
    return image, contrast


def cosines(device):
    k = torch.arange(8, device=device).float()
    m = torch.cos((2 * k[None, :] + 1) * k[:, None] * math.pi / 16) * 0.5
    m[0] = math.sqrt(1 / 8)
    return m


# Luminance quantisation of ITU-T T.81 annex K, table K.1 (from memory).
QUANTA = (16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51, 87, 80, 62,
          18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99)


def packed(x, quality):
    """What a JPEG file of that quality leaves of a picture (0..1)."""
    n, _, h, w = x.shape
    ph, pw = -h % 8, -w % 8
    y = F.pad(x, (0, pw, 0, ph), mode="replicate") * 255 - 128
    hh, ww = h + ph, w + pw
    blocks = y.view(n, hh // 8, 8, ww // 8, 8).permute(0, 1, 3, 2, 4)
    m = cosines(x.device)
    spectrum = m @ blocks @ m.T
    scale = torch.where(quality < 50, 50 / quality, 2 - quality / 50)
    q = (torch.tensor(QUANTA, device=x.device).float().view(8, 8) * scale.view(-1, 1, 1, 1, 1)).clamp(min=1)
    spectrum = (spectrum / q).round() * q
    y = (m.T @ spectrum @ m).permute(0, 1, 3, 2, 4).reshape(n, 1, hh, ww)
    return ((y + 128) / 255)[:, :, :h, :w]


def taken(x, contrast, lot):
    """What a camera makes of a picture before it is a file: the sensor's noise, smoothed where little stands out, edges sharpened."""
    x = x + torch.randn_like(x) * (lot.uniform(0, 0.25) * lot.hard * contrast + lot.uniform(0, 0.006))
    soft = smooth(x, 1.0, 5)
    x = torch.where(((x - soft).abs() < lot.uniform(0, 0.5) * contrast) & (lot.chance(0.3) > 0), soft, x)
    return x + lot.chance(0.4) * lot.uniform(0.2, 1.8) * (x - smooth(x, 1.0, 5))


def coarsened(x, size, contrast, lot, pack):
    """Lost resolution: as if taken at `size` of the rows, by a camera that sharpens, with or without a JPEG file in between."""
    h, w = x.shape[2:]
    small = taken(F.interpolate(x, size, mode="area") if size[0] < h else x, contrast, lot)
    if pack:
        small = packed(small, lot.uniform(40, 96))
    return F.interpolate(small, (h, w), mode="bicubic", align_corners=False) if size[0] < h else small


def defocused(x, radius):
    """Out of focus: a disc of that radius in pixels (circle of confusion)."""
    k = int(math.ceil(radius))
    axis = torch.arange(-k, k + 1, device=x.device).float()
    disc = (radius + 0.5 - torch.sqrt(axis[None, :] ** 2 + axis[:, None] ** 2)).clamp(0, 1)
    return F.conv2d(F.pad(x, (k, k, k, k), mode="replicate"), (disc / disc.sum())[None, None])


def seen(image, contrast, lot):
    """The lens, the sensor and the camera's own sharpening."""
    x = blurred(image, lot.uniform(0.2, 1.6))
    shaken = (torch.roll(x, 1, 3) + x + torch.roll(x, -1, 3)) / 3
    x = torch.where(lot.chance(0.06) > 0, shaken, x)
    x = x + lot.chance(0.3) * lot.uniform(0, 1.6) * (x - smooth(x, 1.5, 7))
    x = x + lot.noise(*x.shape[2:]) * (lot.uniform(0, 0.4) * lot.hard * contrast + lot.uniform(0, 0.008))
    x = x.clamp(0.001, 1) ** torch.exp(lot.uniform(-0.4, 0.4))
    return (x * 255).round() / 255


def normal(image, valid):
    """Zero mean and unit spread over the valid columns, 0 right of them. `valid`: [n] columns."""
    n, _, h, w = image.shape
    mask = (torch.arange(w, device=image.device)[None, :] < valid[:, None]).float()[:, None, None, :]
    count = mask.sum((2, 3), keepdim=True) * h
    mean = (image * mask).sum((2, 3), keepdim=True) / count
    spread = (((image - mean) ** 2 * mask).sum((2, 3), keepdim=True) / count).sqrt() + 1e-3
    return (image - mean) / spread * mask
