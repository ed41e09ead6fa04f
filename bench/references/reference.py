"""What every reference here does: takes a question as JSON, measures the work alone, answers as JSON."""
import json
import sys
import time

NOT_INSTALLED = 3


def question():
    return json.load(sys.stdin)


def answer(**values):
    json.dump(values, sys.stdout)


def not_installed(what):
    print(what, file=sys.stderr)
    sys.exit(NOT_INSTALLED)


def seconds(work, timing):
    """How long a piece of work takes, again and again, after it was warmed up; and its last result."""
    until = time.perf_counter() + timing["warmUp"]
    work()
    while time.perf_counter() < until:
        work()
    samples, spent = [], 0.0
    while len(samples) < timing["leastSamples"] or spent < timing["sampling"]:
        start = time.perf_counter()
        result = work()
        samples.append(time.perf_counter() - start)
        spent += samples[-1]
    return samples, result


def linear_algebra():
    """The files that the linear algebra of this process really came from."""
    with open("/proc/self/maps", encoding="ascii", errors="replace") as maps:
        files = {line.split()[-1] for line in maps if "/" in line}
    names = ("blas", "lapack", "mkl")
    return sorted(file for file in files if any(name in file.rsplit("/", 1)[-1] for name in names) and ".cpython" not in file)
