"""Full systems of equations by LAPACK's factors with row exchange (gesv), through numpy."""
import reference

try:
    import numpy
except ImportError as missing:
    reference.not_installed(missing)

asked = reference.question()
order = asked["order"]
matrix = numpy.array(asked["matrix"]).reshape(order, order)
right = numpy.array(asked["right"])
samples, solution = reference.seconds(lambda: numpy.linalg.solve(matrix, right), asked["timing"])
reference.answer(seconds=samples, solution=solution.tolist(), version="numpy " + numpy.__version__, libraries=reference.linear_algebra())
