"""The mean of two rounds' weights of one network: often as good as the later round on what that learnt, without what it forgot.

    python3 mean.py ONE.pt OTHER.pt OUT.pt
"""
import sys

import torch


def mean(one, other):
    return {k: ((v.float() + other[k].float()) / 2).half() if v.is_floating_point() else other[k] for k, v in one.items()}


if __name__ == "__main__":
    torch.save(mean(*(torch.load(p, map_location="cpu") for p in sys.argv[1:3])), sys.argv[3])
