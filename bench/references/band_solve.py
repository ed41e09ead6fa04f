"""Symmetric systems near their diagonal by LAPACK's band Cholesky (pbsv), through scipy."""
import reference

try:
    import numpy
    import scipy
    from scipy.linalg import solveh_banded
except ImportError as missing:
    reference.not_installed(missing)

asked = reference.question()
# Row d holds the diagonal d below the main one.
band = numpy.array(asked["diagonals"]).reshape(asked["bandwidth"] + 1, asked["order"])
right = numpy.array(asked["right"])
samples, solution = reference.seconds(lambda: solveh_banded(band, right, lower=True, check_finite=False), asked["timing"])
reference.answer(seconds=samples, solution=solution.tolist(), version="scipy " + scipy.__version__, libraries=reference.linear_algebra())
