// Readings of a thermometer against the worked-out cure. In the browser, so that it answers when Finwright is out of reach.

// Kelvin, judgement: a thermometer and its place are no better than the slack; so near below the limit there is no time to wait for the next reading.
const slack = 2, near = 5;

// What is expected so many seconds after the pour: [seconds, low, expected, high], straight between the points of the curve; null beyond it.
export function expectedAt(curve, seconds) {
    for (let i = 1; i < curve.length; i++) {
        const [a, b] = [curve[i - 1], curve[i]];
        if (seconds < a[0] || seconds > b[0])
            continue;
        const share = b[0] > a[0] ? (seconds - a[0]) / (b[0] - a[0]) : 1;
        return a.map((x, k) => x + share * (b[k] - x));
    }
    return null;
}

// How a temperature stands: "danger" where the walls soften or nearly, "warm", "cool", "expected", "unknown"; seconds are null when the pour was not begun.
export function judge(limit, curve, kelvin, seconds) {
    const expected = seconds === null ? null : expectedAt(curve, seconds);
    const state = limit !== null && kelvin > limit - near ? "danger"
        : expected === null ? "unknown"
        : kelvin > expected[3] + slack ? "warm"
        : kelvin < expected[1] - slack ? "cool"
        : "expected";
    return { state, expected };
}
