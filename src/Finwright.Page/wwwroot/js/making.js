// Sends a motion file that is dropped on an element, or chosen in it, and tells how far it has come.
export function take(zone, address, most, part) {
    const input = zone.querySelector("input[type=file]");
    let request = null;

    function tell(method, value) {
        part.invokeMethodAsync(method, value).catch(() => { });
    }

    function send(file) {
        if (file.size === 0 || file.size > most) {
            tell("NotSent", file.size === 0 ? "empty" : "size");
            return;
        }
        request?.abort();
        request = new XMLHttpRequest();
        let told = 0;
        request.upload.addEventListener("progress", event => {
            if (performance.now() - told > 200) {
                told = performance.now();
                tell("Sending", event.loaded / event.total);
            }
        });
        request.addEventListener("load", () => {
            if (request.status >= 300)
                tell("NotSent", request.status === 413 ? "size" : "lost");
        });
        request.addEventListener("error", () => tell("NotSent", "lost"));
        request.open("POST", address);
        request.setRequestHeader("X-Finwright", "motion");
        request.setRequestHeader("X-File-Name", encodeURIComponent(file.name.slice(0, 200)));
        request.setRequestHeader("Content-Type", "application/octet-stream");
        tell("Sending", 0);
        request.send(file);
    }

    input.addEventListener("change", () => {
        if (input.files.length > 0)
            send(input.files[0]);
        input.value = "";
    });
    zone.addEventListener("dragover", event => {
        if (event.dataTransfer.types.includes("Files")) {
            event.preventDefault();
            zone.classList.add("over");
        }
    });
    zone.addEventListener("dragleave", () => zone.classList.remove("over"));
    zone.addEventListener("drop", event => {
        zone.classList.remove("over");
        if (event.dataTransfer.files.length > 0) {
            event.preventDefault();
            send(event.dataTransfer.files[0]);
        }
    });
    return {};
}
