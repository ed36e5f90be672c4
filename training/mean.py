"""The mean of two rounds' weights of one network: often as good as the later round on what that learnt, without what it forgot.

    python3 mean.py ONE.pt OTHER.pt OUT.pt [SHARE [PREFIX...]]

SHARE (0.5) is how much of ONE there is in it; with prefixes only weights whose names begin with one of them are mixed, all others are ONE's.
"""
import sys

import torch


def mean(one, other, share=0.5, prefixes=("",)):
    mixed = lambda k, v: v.is_floating_point() and k.startswith(tuple(prefixes))
    return {k: (v.float() * share + other[k].float() * (1 - share)).half() if mixed(k, v) else v for k, v in one.items()}


if __name__ == "__main__":
    paths, share, prefixes = sys.argv[1:4], sys.argv[4:5], sys.argv[5:]
    torch.save(mean(*(torch.load(p, map_location="cpu") for p in paths[:2]), float(share[0]) if share else 0.5, prefixes or ("",)), paths[2])
