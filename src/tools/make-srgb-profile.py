#!/usr/bin/env python3
"""Makes src/main/resources/wallbook/colour/srgb.icc, the colour profile that every PDF carries.

usage: make-srgb-profile.py FILE

An ICC profile of version 2.1 (ICC.1:1998-09) of class 'mntr' with three primaries and a curve. The primaries and
the transfer curve are those of IEC 61966-2-1; the primaries are adapted to the D50 white of the profile connection
space by the Bradford matrix.
"""

import struct
import sys

PRIMARIES = [(0.64, 0.33), (0.30, 0.60), (0.15, 0.06)]  # x, y of red, green, blue: IEC 61966-2-1
D65 = (0.3127, 0.3290)  # x, y of the white: IEC 61966-2-1
D50 = (0.9642, 1.0, 0.8249)  # white of the connection space: ICC.1:1998-09
BRADFORD = [[0.8951, 0.2664, -0.1614], [-0.7502, 1.7135, 0.0367], [0.0389, -0.0685, 1.0296]]
CURVE_POINTS = 1024


def times(a, b):
    return [[sum(x * y for x, y in zip(row, column)) for column in zip(*b)] for row in a]


def inverse(m):
    (a, b, c), (d, e, f), (g, h, i) = m
    det = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
    cofactors = [
        [e * i - f * h, c * h - b * i, b * f - c * e],
        [f * g - d * i, a * i - c * g, c * d - a * f],
        [d * h - e * g, b * g - a * h, a * e - b * d],
    ]
    return [[value / det for value in row] for row in cofactors]


def xyz(x, y):
    return [x / y, 1.0, (1 - x - y) / y]


def column(values):
    return [[value] for value in values]


def diagonal(values):
    return [[values[i] if i == j else 0 for j in range(3)] for i in range(3)]


def adapted_primaries():
    unscaled = [list(row) for row in zip(*(xyz(x, y) for x, y in PRIMARIES))]
    scale = [row[0] for row in times(inverse(unscaled), column(xyz(*D65)))]
    to_d65 = times(unscaled, diagonal(scale))
    here = [row[0] for row in times(BRADFORD, column(xyz(*D65)))]
    there = [row[0] for row in times(BRADFORD, column(D50))]
    adapt = times(inverse(BRADFORD), times(diagonal([t / h for t, h in zip(there, here)]), BRADFORD))
    return [list(primary) for primary in zip(*times(adapt, to_d65))]


def fixed(value):
    return struct.pack(">i", round(value * 65536))


def xyz_tag(values):
    return b"XYZ \0\0\0\0" + b"".join(fixed(value) for value in values)


def linear(v):
    return v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4


def profile():
    curve = b"curv\0\0\0\0" + struct.pack(">I", CURVE_POINTS)
    curve += b"".join(struct.pack(">H", round(65535 * linear(i / (CURVE_POINTS - 1)))) for i in range(CURVE_POINTS))
    name = b"sRGB, after IEC 61966-2-1\0"
    description = b"desc\0\0\0\0" + struct.pack(">I", len(name)) + name + bytes(8 + 3 + 67)
    red, green, blue = adapted_primaries()
    tags = [
        (b"desc", description),
        (b"cprt", b"text\0\0\0\0No rights reserved\0"),
        (b"wtpt", xyz_tag(xyz(*D65))),
        (b"rXYZ", xyz_tag(red)),
        (b"gXYZ", xyz_tag(green)),
        (b"bXYZ", xyz_tag(blue)),
        (b"rTRC", curve),
        (b"gTRC", curve),
        (b"bTRC", curve),
    ]
    start = 128 + 4 + 12 * len(tags)
    table, data, places = struct.pack(">I", len(tags)), b"", {}
    for tag, content in tags:
        if content not in places:
            places[content] = start + len(data)
            data += content + bytes(-len(content) % 4)
        table += tag + struct.pack(">II", places[content], len(content))
    head = struct.pack(">I4sI4s4s4s", start + len(data), b"\0\0\0\0", 0x02100000, b"mntr", b"RGB ", b"XYZ ")
    head += struct.pack(">6H", 2026, 1, 1, 0, 0, 0) + b"acsp" + bytes(4 + 4 + 4 + 4 + 8) + bytes(4)
    head += b"".join(fixed(value) for value in D50)
    return head + bytes(128 - len(head)) + table + data


if __name__ == "__main__":
    with open(sys.argv[1], "wb") as out:
        out.write(profile())
