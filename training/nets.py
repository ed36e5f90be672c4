"""The two networks: `Reader` (a strip to symbols along it) and `Finder` (a top to maps of what lies where)."""
import torch
import torch.nn as nn
import torch.nn.functional as F

import symbols

CLASSES = len(symbols.READ) + 1
MAPS = 10


class Residual(nn.Module):
    """Two 3 by 3 convolutions beside a shortcut."""

    def __init__(self, before, after, stride=(1, 1)):
        super().__init__()
        self.body = nn.Sequential(
            nn.Conv2d(before, after, 3, stride, 1, bias=False), nn.BatchNorm2d(after), nn.ReLU(),
            nn.Conv2d(after, after, 3, 1, 1, bias=False), nn.BatchNorm2d(after))
        same = before == after and stride == (1, 1)
        self.short = nn.Identity() if same else nn.Sequential(
            nn.Conv2d(before, after, 1, stride, bias=False), nn.BatchNorm2d(after))

    def forward(self, x):
        return F.relu(self.body(x) + self.short(x))


class Attention(nn.Module):
    """One transformer layer, written out so that every exporter and runtime takes it alike."""

    def __init__(self, width, heads, dropout):
        super().__init__()
        self.heads = heads
        self.before, self.between = nn.LayerNorm(width), nn.LayerNorm(width)
        self.triple, self.out = nn.Linear(width, 3 * width), nn.Linear(width, width)
        self.up, self.down = nn.Linear(width, 2 * width), nn.Linear(2 * width, width)
        self.drop = nn.Dropout(dropout)

    def forward(self, x, mask):
        n, t, w = x.shape
        q, k, v = self.triple(self.before(x)).view(n, t, 3, self.heads, w // self.heads).permute(2, 0, 3, 1, 4).unbind(0)
        score = q @ k.transpose(2, 3) * ((w // self.heads) ** -0.5) + mask
        x = x + self.drop(self.out((score.softmax(3) @ v).transpose(1, 2).reshape(n, t, w)))
        return x + self.drop(self.down(F.gelu(self.up(self.between(x)))))


class Reader(nn.Module):
    """[n, 1, 48, w] to [n, w / 4, CLASSES]. Columns that are all zero are padding, which attention leaves out."""

    def __init__(self, width=256, depth=4, stages=(40, 80, 144, 224)):
        super().__init__()
        a, b, c, d = stages
        self.body = nn.Sequential(
            nn.Conv2d(1, a, 3, 2, 1, bias=False), nn.BatchNorm2d(a), nn.ReLU(), Residual(a, a),
            Residual(a, b, (2, 2)), Residual(b, b), Residual(b, c, (2, 1)), Residual(c, c), Residual(c, d, (2, 1)), Residual(d, d),
            nn.Conv2d(d, width, (3, 1), bias=False), nn.BatchNorm2d(width), nn.ReLU())
        self.near = nn.Conv1d(width, width, 9, padding=4, groups=width)
        self.layers = nn.ModuleList(Attention(width, 4, 0.1) for _ in range(depth))
        self.last = nn.LayerNorm(width)
        self.out = nn.Linear(width, CLASSES)

    def forward(self, x):
        used = x.abs().amax((1, 2))
        used = F.max_pool1d(used[:, None], 4, 4)[:, 0]
        mask = (used <= 0).to(x.dtype)[:, None, None, :] * -1e4
        f = self.body(x).squeeze(2)
        f = (f + self.near(f)).transpose(1, 2)
        for layer in self.layers:
            f = layer(f, mask)
        return self.out(self.last(f))


class Finder(nn.Module):
    """[n, 1, h, w] to [n, MAPS, h / 4, w / 4]: what is drawn in `tops.py`, in that order."""

    def __init__(self, stages=(16, 32, 64, 96, 160)):
        super().__init__()
        s, a, b, c, d = stages
        self.stem = nn.Sequential(nn.Conv2d(1, s, 3, 2, 1, bias=False), nn.BatchNorm2d(s), nn.ReLU(),
                                  nn.Conv2d(s, a, 3, 2, 1, bias=False), nn.BatchNorm2d(a), nn.ReLU())
        self.four = Residual(a, a)
        self.eight = nn.Sequential(Residual(a, b, (2, 2)), Residual(b, b))
        self.sixteen = nn.Sequential(Residual(b, c, (2, 2)), Residual(c, c))
        self.thirty = nn.Sequential(Residual(c, d, (2, 2)), Residual(d, d), Residual(d, d))
        self.up16, self.up8, self.up4 = self.step(d, c), self.step(c, b), self.step(b, a)
        self.join16, self.join8, self.join4 = self.mix(c), self.mix(b), self.mix(a)
        self.head = nn.Sequential(nn.Conv2d(a, a, 3, 1, 1, bias=False), nn.BatchNorm2d(a), nn.ReLU(), nn.Conv2d(a, MAPS, 1))

    @staticmethod
    def step(before, after):
        return nn.Sequential(nn.Conv2d(before, after, 1, bias=False), nn.BatchNorm2d(after), nn.ReLU())

    @staticmethod
    def mix(width):
        return nn.Sequential(nn.Conv2d(width, width, 3, 1, 1, bias=False), nn.BatchNorm2d(width), nn.ReLU())

    def forward(self, x):
        f4 = self.four(self.stem(x))
        f8 = self.eight(f4)
        f16 = self.sixteen(f8)
        f32 = self.thirty(f16)
        twice = lambda f: F.interpolate(f, scale_factor=2.0, mode="nearest")
        f16 = self.join16(f16 + twice(self.up16(f32)))
        f8 = self.join8(f8 + twice(self.up8(f16)))
        f4 = self.join4(f4 + twice(self.up4(f8)))
        return self.head(f4)


def compiled(f, device):
    """The same function or network, compiled for each shape it meets; as it is where there is no GPU to gain from it."""
    if torch.device(device).type != "cuda" or not hasattr(torch, "compile"):
        return f
    # What cannot be compiled runs as it is; each of the widths of `lines.WIDTHS` is a shape of its own.
    torch._dynamo.config.suppress_errors = True
    torch._dynamo.config.cache_size_limit = 64
    return torch.compile(f, dynamic=False)


def restored(model, path):
    """The model with the weights of a file, which keeps them as half floats."""
    model.load_state_dict({k: v.float() if v.is_floating_point() else v for k, v in torch.load(path, map_location="cpu").items()})
    return model
