#!/usr/bin/env python3
"""Turns a folder of open fact tables into the data files that Lidoff ships.

usage: make.py SOURCE-FOLDER DATE

Reads catalogue-facts.csv, packages.csv, pinouts.csv.gz, topmarks.csv and wearable-parts.csv there and writes the
*.csv.gz files and manifest.json beside itself. Row n of a shipped table is row n of its source, so no row is lost; what
does not fit a column goes into `note` word for word. Tables of different licences never share a file: see *.licence.md.
"""
import csv
import gzip
import hashlib
import io
import json
import pathlib
import re
import sys
from decimal import Decimal

HERE = pathlib.Path(__file__).resolve().parent
FORMAT = 1


def rows(path):
    opened = gzip.open(path, "rt", encoding="utf-8") if path.suffix == ".gz" else open(path, encoding="utf-8")
    with opened as file:
        return list(csv.DictReader(file))


def scaled(text, exponent):
    """'0.3' in micro (exponent -6) becomes '3E-7': exact, by moving the decimal point only."""
    return str(Decimal(text).scaleb(exponent).normalize()) if text else ""


def notes(*parts):
    return "; ".join(part for part in parts if part)


def identity(register, value):
    """Register and value as hex words, `value/mask` where only some bits count; the second result is what did not fit."""
    raw = notes(f"identity {register} = {value}" if register or value else "")
    reg = re.match(r"^(?:cmd )?(0x[0-9A-Fa-f]+)\b", register)
    if not reg and register not in ("",):
        return "", "", raw
    reg_word = reg.group(1).lower() if reg else ""
    plain = re.match(r"^(?:0x)?([0-9A-Fa-f]{1,16})$", value)
    if plain and "(" not in register:
        return reg_word, "0x" + plain.group(1).lower(), ""
    if plain:
        return reg_word, "0x" + plain.group(1).lower(), raw
    holes = re.match(r"^0x([0-9A-Fa-f]+)(\?+)(?: |$)", value)
    if holes:
        digits, width = holes.group(1).lower(), len(holes.group(2))
        return reg_word, f"0x{digits}{'0' * width}/0x{'f' * len(digits)}{'0' * width}", raw
    low = re.match(r"^0x([0-9A-Fa-f]+) \(low (\d+) bits\)$", value)
    if low:
        return reg_word, f"0x{low.group(1).lower()}/0x{(1 << int(low.group(2))) - 1:x}", raw
    masked = re.match(r"^0x([0-9A-Fa-f]+) \(mask 0x([0-9A-Fa-f]+)\)$", value)
    if masked:
        return reg_word, f"0x{masked.group(1).lower()}/0x{masked.group(2).lower()}", raw
    field = re.match(r"^\w+\[(\d+):(\d+)\]=(\d+)$", value)
    if field:
        top, bottom, number = (int(word) for word in field.groups())
        return reg_word, f"0x{number << bottom:x}/0x{(1 << (top + 1)) - (1 << bottom):x}", raw
    first = re.match(r"^0x([0-9A-Fa-f]+) \(", value)
    if first and "upper bits" not in value:
        return reg_word, "0x" + first.group(1).lower(), raw
    return reg_word, "", raw if value else ""


# Widest figures that can be a body, a height or a pitch in mm; what lies outside was misread from a drawing.
SANE = {"body_l_mm": (0.1, 200), "body_w_mm": (0.1, 200), "height_mm": (0.05, 60), "pitch_mm": (0.1, 30)}


def sane(row):
    """Moves figures that cannot be true out of their columns into the note, word for word."""
    odd = [c for c, (least, most) in SANE.items() if row.get(c) and not least <= float(row[c]) <= most]
    if not odd:
        return row
    return {**row, **{c: "" for c in odd}, "note": notes(row.get("note", ""), *(f"{c} {row[c]} as drawn" for c in odd))}


def facts(source):
    for r in rows(source / "catalogue-facts.csv"):
        reg, value, odd = identity(r["id_register"], r["id_value"])
        yield {
            "part": r["part"], "maker": r["maker"], "class": r["class"], "interface": r["interface"],
            "i2c_addresses": r["i2c_addresses_stated"].lower(), "example_addresses": r["i2c_addresses_example_only"].lower(),
            "id_register": reg, "id_value": value,
            "note": notes(odd, r["extra"], f"compatible {r['compatible']}" if r["compatible"] else ""),
            "source": r["source"], "confidence": "published",
        }


def pinouts(source):
    for r in rows(source / "pinouts.csv.gz"):
        yield {**{k: r[k] for k in ("part", "maker", "class", "package", "body_l_mm", "body_w_mm", "pitch_mm", "pins", "pinout", "source")},
               "confidence": "derived"}


TRUST = {"quoted": "published", "quoted-ocr": "derived", "seen-secondary": "derived", "memory": "memory", "memory-low": "memory"}


def topmarks(source):
    for r in rows(source / "topmarks.csv"):
        word, _, lines = r["class"].partition(": line")
        word, _, whole = word.partition(": full name printed")
        yield {
            "part": r["part"], "maker": r["maker"], "class": word, "package": r["package"], "pins": r["pins"],
            # There a bar is a new line; here a slash is, and a bar parts alternatives.
            "marks": r["mark"].replace("|", "/"),
            "note": notes(r["class"] if word != r["class"] else "", r["confidence"] if TRUST[r["confidence"]] != r["confidence"] else ""),
            "source": r["source"], "confidence": TRUST[r["confidence"]],
        }


def wearables(source):
    for r in rows(source / "wearable-parts.csv"):
        reg, value, odd = identity(r["id_register"], r["id_value"])
        yield {
            **{k: r[k] for k in ("part", "maker", "class", "package", "body_l_mm", "body_w_mm", "height_mm", "pitch_mm", "pins",
                                 "interface", "supply_min_v", "supply_max_v", "second_sources", "source", "confidence")},
            "i2c_addresses": r["i2c_addresses"].lower(), "id_register": reg, "id_value": value, "marks": r["mark_forms"],
            "introduced": r["introduced_year"], "idle_current_a": scaled(r["idle_current_ua"], -6),
            "active_current_a": scaled(r["active_current_ma"], -3), "note": odd,
        }


def outlines(source, shared_alike):
    for r in rows(source / "packages.csv"):
        if r["source"].startswith("kicad-footprints") != shared_alike:
            continue
        yield {
            **{k: r[k] for k in ("package", "family", "standard_code", "code_basis", "body_l_mm", "body_w_mm", "body_l_range",
                                 "body_w_range", "height_mm", "height_basis", "pitch_mm", "pins", "lead_style", "ep_x_mm", "ep_y_mm", "source")},
            "sides": r["pins_left/bottom/right/top"],
        }


SHARE_ALIKE = "CC-BY-SA-4.0"
# The order is the join order: the first table that knows a part gives its spelling and class.
TABLES = [
    ("wearables", "parts", wearables, "facts", "wearables.licence.md"),
    ("facts", "parts", facts, "facts", "facts.licence.md"),
    ("topmarks", "parts", topmarks, "facts", "topmarks.licence.md"),
    ("pinouts", "parts", pinouts, SHARE_ALIKE, "pinouts.licence.md"),
    ("outlines", "outlines", lambda s: outlines(s, False), "MIT", "outlines.licence.md"),
    ("footprints", "outlines", lambda s: outlines(s, True), SHARE_ALIKE, "footprints.licence.md"),
]


def main():
    source, date = pathlib.Path(sys.argv[1]), sys.argv[2]
    files = []
    for name, kind, make, licence, notice in TABLES:
        table = [sane(row) for row in make(source)]
        columns = list(dict.fromkeys(key for row in table for key in row))
        columns = [c for c in columns if any(row.get(c) for row in table)]
        text = io.StringIO()
        writer = csv.DictWriter(text, columns, lineterminator="\n", extrasaction="ignore", restval="")
        writer.writeheader()
        writer.writerows(table)
        packed = gzip.compress(text.getvalue().encode("utf-8"), 9, mtime=0)
        (HERE / f"{name}.csv.gz").write_bytes(packed)
        files.append({"file": f"{name}.csv.gz", "kind": kind, "rows": len(table), "sha256": hashlib.sha256(packed).hexdigest(),
                      "licence": licence, "notice": notice})
    manifest = {"format": FORMAT, "date": date, "files": files}
    (HERE / "manifest.json").write_text(json.dumps(manifest, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
