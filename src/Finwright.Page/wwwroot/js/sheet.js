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
        if (best)
            sheet.invokeMethodAsync("Reading", best.dataset.surface).catch(() => { });
    }, { rootMargin: "-10% 0px -50% 0px", threshold: [0, 0.1, 0.25, 0.5, 0.75, 1] });
    for (const chapter of document.querySelectorAll(".chapter[data-surface]"))
        watch.observe(chapter);

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
    return { close() { watch.disconnect(); removeEventListener("keydown", onKey); } };
}
