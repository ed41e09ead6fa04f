// Reads a track out: the point under the hand, or the one that the slider stands at. marks holds x, y, seconds, m/s, point after point.
const knot = 1852 / 3600;

export function readOut(map, slider, said, marks, words, language) {
    const count = marks.length / 4;
    const here = map.querySelector(".here");
    const number = (value, decimals) => value.toLocaleString(language, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });

    function clock(seconds) {
        const whole = Math.round(seconds);
        return `${Math.floor(whole / 3600)}:${String(Math.floor(whole / 60) % 60).padStart(2, "0")}:${String(whole % 60).padStart(2, "0")}`;
    }

    function show(index) {
        const [x, y, time, speed] = marks.slice(4 * index, 4 * index + 4);
        here.setAttribute("cx", x);
        here.setAttribute("cy", y);
        const told = words.replace("{0}", clock(time)).replace("{1}", number(speed / knot, 1)).replace("{2}", number(speed, 1));
        said.textContent = told;
        slider.setAttribute("aria-valuetext", told);
    }

    function onSlide() {
        show(Number(slider.value));
    }

    function onPoint(event) {
        const box = map.getBoundingClientRect(), view = map.viewBox.baseVal;
        const x = (event.clientX - box.left) * view.width / box.width, y = (event.clientY - box.top) * view.height / box.height;
        let best = -1, nearest = Infinity;
        for (let i = 0; i < count; i++) {
            const dx = marks[4 * i] - x, dy = marks[4 * i + 1] - y, away = dx * dx + dy * dy;
            if (away < nearest)
                [best, nearest] = [i, away];
        }
        if (best < 0)
            return;
        slider.value = String(best);
        show(best);
    }

    slider.addEventListener("input", onSlide);
    map.addEventListener("pointermove", onPoint);
    map.addEventListener("pointerdown", onPoint);
    return {
        close() {
            slider.removeEventListener("input", onSlide);
            map.removeEventListener("pointermove", onPoint);
            map.removeEventListener("pointerdown", onPoint);
        },
    };
}
