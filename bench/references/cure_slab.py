"""Cure of a slab by the method of lines: the same balance of heat in the same cells, written anew, and a general solver in time."""
import reference

try:
    import numpy
    import scipy
    from scipy.integrate import solve_ivp
    from scipy.optimize import minimize_scalar
    from scipy.sparse import diags
except ImportError as missing:
    reference.not_installed(missing)

GAS = 8.314462618


def mixed(first, second, share):
    """Conductivity of two phases: the mean of both bounds of Hashin and Shtrikman (1962)."""
    one = first + (1 - share) / (1 / (second - first) + share / (3 * first))
    other = second + share / (1 / (first - second) + (1 - share) / (3 * second))
    return (one + other) / 2


class Slab:
    """Half a slab, cells from the middle outwards; temperature and conversion of each cell side by side in the state."""

    def __init__(self, case):
        self.case = case
        self.resin = case["cells"]
        wall = max(4, case["cells"] // 5)
        self.count = self.resin + wall
        width = numpy.r_[numpy.full(self.resin, case["thickness"] / 2 / self.resin), numpy.full(wall, case["wallThickness"] / wall)]
        share = case["infillShare"]
        plastic = case["plasticDensity"] * case["plasticHeatCapacity"]
        core = share * plastic + (1 - share) * case["density"] * case["heatCapacity"]
        capacity = numpy.r_[numpy.full(self.resin, core), numpy.full(wall, plastic)]
        conductivity = numpy.r_[numpy.full(self.resin, mixed(case["plasticConductivity"], case["conductivity"], share)), numpy.full(wall, case["plasticConductivity"])]
        half = width / 2 / conductivity
        self.heat_capacity = width * capacity
        self.link = 1 / (half[:-1] + half[1:])
        self.film = 1 / (half[-1] + 1 / case["film"])
        self.heating = width[: self.resin] * (1 - share) * case["density"] * case["heatOfReaction"]

    def rate(self, temperature, conversion):
        case = self.case
        a = numpy.clip(conversion, 1e-9, 1)
        free = (
            case["rate1"] * numpy.exp(-case["activation1"] / GAS / temperature)
            + case["rate2"] * numpy.exp(-case["activation2"] / GAS / temperature) * a ** case["orderM"]
        ) * (1 - a) ** case["orderN"]
        # Slowed around the conversion whose glass transition stands a little above the temperature.
        x = numpy.maximum(0, (temperature + case["glassOffset"] - case["glassUncured"]) / (case["glassCured"] - case["glassUncured"]))
        limit = x / (case["glassShape"] + (1 - case["glassShape"]) * x)
        return free / (1 + numpy.exp(case["glassSteepness"] * (a - limit)))

    def __call__(self, _, state):
        temperature, conversion = state[0::2], state[1 : 2 * self.resin : 2]
        flow = numpy.zeros(self.count)
        between = self.link * (temperature[1:] - temperature[:-1])
        flow[:-1] += between
        flow[1:] -= between
        flow[-1] -= self.film * (temperature[-1] - self.case["surroundings"])
        change = numpy.zeros_like(state)
        rate = self.rate(temperature[: self.resin], conversion)
        flow[: self.resin] += self.heating * rate
        change[0::2] = flow / self.heat_capacity
        change[1 : 2 * self.resin : 2] = rate
        return change

    def peak(self, method, relative, over_temperature, over_conversion):
        start = numpy.empty(2 * self.count)
        start[0::2], start[1::2] = self.case["start"], self.case["initialConversion"]
        absolute = numpy.empty_like(start)
        absolute[0::2], absolute[1::2] = over_temperature, over_conversion
        # Neighbours in temperature stand two places apart.
        shape = {"lband": 2, "uband": 2} if method == "LSODA" else {"jac_sparsity": diags([1] * 5, [-2, -1, 0, 1, 2], shape=(start.size, start.size))}
        run = solve_ivp(self, (0, self.case["duration"]), start, method=method, rtol=relative, atol=absolute, dense_output=True, **shape)
        if not run.success:
            raise RuntimeError(run.message)

        def middle(time):
            state = run.sol(time)
            return (9 * state[0] - state[2]) / 8

        steps = (9 * run.y[0] - run.y[2]) / 8
        top = int(numpy.argmax(steps))
        low, high = run.t[max(top - 1, 0)], run.t[min(top + 1, run.t.size - 1)]
        best = minimize_scalar(lambda time: -middle(time), bounds=(low, high), method="bounded", options={"xatol": 1e-3})
        return -best.fun, best.x, run.t.size - 1


asked = reference.question()
slab = Slab(asked["slab"])
samples, (temperature, time, steps) = reference.seconds(
    lambda: slab.peak(asked["method"], asked["relative"], asked["overTemperature"], asked["overConversion"]), asked["timing"]
)
reference.answer(seconds=samples, peak=temperature, time=time, steps=steps, version="scipy " + scipy.__version__)
