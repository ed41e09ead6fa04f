// The tour: where the reader is on it outlives a reload; the part it speaks of is scrolled to and marked.
const key = "tour";
let waiting = null;

export function begin() { sessionStorage.setItem(key, "0"); }

export function where() {
    const at = sessionStorage.getItem(key);
    return at === null ? null : Number(at);
}

export function show(at, chapter, marked) {
    sessionStorage.setItem(key, String(at));
    clear();
    const find = () => {
        const part = document.querySelector(chapter);
        if (!part)
            return false;
        const mark = marked.split(",").map(one => document.querySelector(one.trim())).find(Boolean) ?? part;
        mark.closest("details:not([open])")?.setAttribute("open", "");
        mark.classList.add("tour-here");
        const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
        if (getComputedStyle(mark).position !== "sticky" && !mark.closest(".top, aside"))
            (mark.getBoundingClientRect().height > innerHeight / 2 ? part : mark).scrollIntoView({ block: mark === part ? "start" : "center", behavior: calm ? "auto" : "smooth" });
        else if (mark.closest("aside"))
            mark.scrollIntoView({ block: "nearest" });
        return true;
    };
    if (find())
        return;
    waiting = new MutationObserver(() => find() && stop());
    waiting.observe(document.body, { childList: true, subtree: true });
}

export function end() {
    sessionStorage.removeItem(key);
    clear();
}

function clear() {
    stop();
    for (const mark of document.querySelectorAll(".tour-here"))
        mark.classList.remove("tour-here");
}

function stop() {
    waiting?.disconnect();
    waiting = null;
}
