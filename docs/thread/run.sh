#!/usr/bin/env bash
# One picture from file to sentence: run.sh LIDOFF PICTURE NOTES OUT
#   LIDOFF   the program (./lidoff)
#   PICTURE  a picture of a board; the notes name it by its file name
#   NOTES    what was seen in it, a JSON object a line (docs/thread.md)
#   OUT      a folder that does not exist yet: OUT/workspace and OUT/report are made in it
set -eu
lidoff=$1
picture=$2
notes=$3
out=$4
mkdir "$out"
"$lidoff" new thread --workspace "$out/workspace" >&2
"$lidoff" add thread "$picture" --workspace "$out/workspace" >&2
"$lidoff" note thread "$notes" --workspace "$out/workspace" >&2
"$lidoff" tell thread --to "$out/report" --as html,md,json --publish --workspace "$out/workspace"
"$lidoff" claims thread --json --workspace "$out/workspace"
"$lidoff" verify "$out/workspace" --json
