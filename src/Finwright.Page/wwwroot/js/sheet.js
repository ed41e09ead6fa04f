// Follows the reader down the sheet: tells which chapter is read, so that the fin shows what it is about; keys for undo and redo.
export function follow(sheet) {
    const seen = new Map();
    const watch = new IntersectionObserver(entries => {
        for (const entry of entries)
            seen.set(entry.target, entry.isIntersecting ? entry.intersectionRect.height : 0);
        let best = null, most = 0;
        for (const [chapter, height] of seen)
            if (height > most)
                [best, most] = [chapter, height];
        if (!best)
            return;
        sheet.invokeMethodAsync("Reading", best.dataset.surface).catch(() => { });
        for (const link of document.querySelectorAll(".chapters a"))
            if (link.dataset.chapter === best.id)
                link.setAttribute("aria-current", "true");
            else
                link.removeAttribute("aria-current");
    }, { rootMargin: "-10% 0px -50% 0px", threshold: [0, 0.1, 0.25, 0.5, 0.75, 1] });
    for (const chapter of document.querySelectorAll(".chapter[data-surface]"))
        watch.observe(chapter);

    // Its rows wrap as the window asks: what scrolls must stop below it.
    const top = document.querySelector(".top"), tall = new ResizeObserver(() => document.documentElement.style.setProperty("--head-tall", `${top.offsetHeight}px`));
    tall.observe(top);

    function onKey(event) {
        const key = event.key.toLowerCase();
        if (!(event.ctrlKey || event.metaKey) || event.altKey || (key !== "z" && key !== "y"))
            return;
        // In a box of text the browser's own undo comes first.
        if (event.target.matches?.("textarea, input[type=text], input[type=number]") && event.target.value !== event.target.defaultValue)
            return;
        event.preventDefault();
        sheet.invokeMethodAsync("Step", key === "z" && !event.shiftKey).catch(() => { });
    }
    addEventListener("keydown", onKey);

    // A way to a place on this sheet stays on this sheet, with all that its address says.
    function onClick(event) {
        const link = event.target.closest?.("a[href*='#']");
        if (!link || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey)
            return;
        const to = new URL(link.href), place = document.getElementById(decodeURIComponent(to.hash.slice(1)));
        if (to.pathname !== location.pathname || !place)
            return;
        event.preventDefault();
        event.stopImmediatePropagation();
        place.scrollIntoView({ block: "start", behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth" });
        const head = place.querySelector("h2") ?? place;
        head.setAttribute("tabindex", "-1");
        head.focus({ preventScroll: true });
        history.replaceState(history.state, "", location.pathname + location.search + to.hash);
    }
    addEventListener("click", onClick, true);

    // A slider tells more places than can be drawn: while one is being drawn, only the latest waits.
    let busy = false, late = null, through = false;
    function onInput(event) {
        if (event.target.type !== "range" || through)
            return;
        if (busy) {
            late = event.target;
            event.stopImmediatePropagation();
            return;
        }
        busy = true;
        setTimeout(() => sheet.invokeMethodAsync("Drawn").catch(() => { }).then(() => {
            busy = false;
            tellLate();
        }));
    }
    function tellLate() {
        const slider = late;
        late = null;
        slider?.dispatchEvent(new Event("input", { bubbles: true }));
    }
    // Let go: what waits is told first.
    function onChange(event) {
        if (event.target !== late)
            return;
        through = true;
        tellLate();
        through = false;
    }
    addEventListener("input", onInput, true);
    addEventListener("change", onChange, true);
    return {
        close() {
            watch.disconnect();
            tall.disconnect();
            document.documentElement.style.removeProperty("--head-tall");
            removeEventListener("keydown", onKey);
            removeEventListener("click", onClick, true);
            removeEventListener("input", onInput, true);
            removeEventListener("change", onChange, true);
        },
    };
}
