"""A trapezoid of even thickness, clamped at its root, as a solid of quadratic bricks (C3D20R) in CalculiX."""
import pathlib
import re
import shutil
import subprocess
import tempfile

import reference

# Corners, then middles of the lower edges, of the upper edges, of the upright edges: the order of the program's manual.
BRICK = [
    (0, 0, 0), (2, 0, 0), (2, 2, 0), (0, 2, 0), (0, 0, 2), (2, 0, 2), (2, 2, 2), (0, 2, 2),
    (1, 0, 0), (2, 1, 0), (1, 2, 0), (0, 1, 0), (1, 0, 2), (2, 1, 2), (1, 2, 2), (0, 1, 2),
    (0, 0, 1), (2, 0, 1), (2, 2, 1), (0, 2, 1),
]


def deck(case):
    """The mesh on half steps: nodes stand where at most one index is odd."""
    nx, ny, nz = case["alongChord"], case["alongSpan"], case["throughThickness"]
    number, lines = {}, ["*NODE, NSET=ALL"]
    for k in range(2 * nz + 1):
        for j in range(2 * ny + 1):
            for i in range(2 * nx + 1):
                if i % 2 + j % 2 + k % 2 > 1:
                    continue
                share = j / (2 * ny)
                leading = case["tipLeadingEdge"] * share
                chord = case["rootChord"] + (case["tipChord"] - case["rootChord"]) * share
                number[i, j, k] = len(number) + 1
                x, y, z = leading + chord * i / (2 * nx), case["span"] * share, case["thickness"] * (k / (2 * nz) - 0.5)
                lines.append(f"{number[i, j, k]}, {x:.12g}, {y:.12g}, {z:.12g}")
    lines.append("*ELEMENT, TYPE=C3D20R, ELSET=BLADE")
    top, element = [], 0
    for k in range(nz):
        for j in range(ny):
            for i in range(nx):
                element += 1
                nodes = [str(number[2 * i + a, 2 * j + b, 2 * k + c]) for a, b, c in BRICK]
                lines += [f"{element}, " + ", ".join(nodes[:10]) + ",", ", ".join(nodes[10:])]
                if k == nz - 1:
                    top.append(element)
    # Both corners of the tip at half thickness, where a corner or the middle of an upright edge stands for any count of layers.
    tip = [number[0, 2 * ny, nz], number[2 * nx, 2 * ny, nz]]
    lines += ["*NSET, NSET=ROOT"] + [str(n) for (_, j, _), n in number.items() if j == 0]
    lines += ["*NSET, NSET=TIP"] + [str(n) for n in tip]
    lines += ["*ELSET, ELSET=TOP"] + [str(e) for e in top]
    lines += ["*MATERIAL, NAME=BLADE", "*ELASTIC", f"{case['modulus']:.12g}, {case['poisson']:.12g}", "*SOLID SECTION, ELSET=BLADE, MATERIAL=BLADE"]
    lines += ["*BOUNDARY", "ROOT, 1, 3", "*STEP", "*STATIC", "*DLOAD", f"TOP, P2, {case['pressure']:.12g}"]
    lines += ["*NODE PRINT, NSET=TIP", "U", "*END STEP"]
    return "\n".join(lines) + "\n", tip, 3 * len(number)


asked = reference.question()
program = shutil.which("ccx")
if program is None:
    reference.not_installed("ccx was not found.")
text, tip, unknowns = deck(asked["plate"])
with tempfile.TemporaryDirectory() as folder:
    pathlib.Path(folder, "plate.inp").write_text(text, encoding="ascii")

    def run():
        ended = subprocess.run([program, "plate"], cwd=folder, capture_output=True, text=True, check=True)
        return ended.stdout

    # The program tells its own time, without the start of its process.
    samples = []
    for _ in range(asked["timing"]["leastSamples"] + 1):
        told = re.search(r"Total CalculiX Time:\s*([0-9.eE+-]+)", run())
        samples.append(float(told.group(1)))
    printed = pathlib.Path(folder, "plate.dat").read_text(encoding="ascii")
    moved = {}
    for line in printed.splitlines():
        words = line.split()
        if len(words) == 4 and words[0].isdigit():
            moved[int(words[0])] = float(words[3])
    version = subprocess.run([program, "-v"], cwd=folder, capture_output=True, text=True, check=False).stdout.strip().splitlines()
reference.answer(seconds=samples[1:], leading=moved[tip[0]], trailing=moved[tip[1]], unknowns=unknowns, version=version[-1].replace("This is Version", "CalculiX").strip() if version else "CalculiX")
