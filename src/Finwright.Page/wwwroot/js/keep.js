// What is typed into a form and not yet kept survives a reload: any form with data-keep="name" keeps the values of its named fields for as
// long as the tab is open. Whoever kept the form's content says finwright.forget(name).
const key = name => "typed:" + name;
const restored = new WeakSet();

function read(name) {
    try {
        return JSON.parse(sessionStorage.getItem(key(name))) ?? {};
    } catch {
        return {};
    }
}

function note(event) {
    const field = event.target, form = field.closest?.("form[data-keep]");
    if (!form || !field.name || field.type === "file" || field.type === "password")
        return;
    const typed = read(form.dataset.keep);
    typed[field.name] = field.type === "checkbox" ? field.checked : field.value;
    try {
        sessionStorage.setItem(key(form.dataset.keep), JSON.stringify(typed));
    } catch {
        // No room: the form works as before, only a reload loses it.
    }
}

function putBack() {
    if (!document.body.dataset.live)
        return;
    for (const form of document.querySelectorAll("form[data-keep]")) {
        const typed = read(form.dataset.keep);
        for (const field of form.elements) {
            if (!field.name || restored.has(field))
                continue;
            restored.add(field);
            if (!(field.name in typed))
                continue;
            const value = typed[field.name];
            if (field.type === "checkbox" ? field.checked === value : field.value === value)
                continue;
            if (field.type === "checkbox")
                field.checked = value;
            else
                field.value = value;
            // A choice that is not there any more is no choice.
            if (field.tagName === "SELECT" && field.value !== value)
                continue;
            field.dispatchEvent(new Event("input", { bubbles: true }));
            field.dispatchEvent(new Event("change", { bubbles: true }));
        }
    }
}

addEventListener("input", note);
addEventListener("change", note);
new MutationObserver(putBack).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ["data-live", "data-keep"] });
putBack();

window.finwright.forget = name => sessionStorage.removeItem(key(name));
