import { say } from "../../core/say.ts";

/**
 * Lets the browser keep the site, so that it opens without a network and can be put
 * among the device's own programs. From a memory stick there is nothing to keep.
 */
async function keepOffline(told: HTMLElement): Promise<void> {
	if (!location.protocol.startsWith("http") || !("serviceWorker" in navigator)) return;
	document.head.append(manifest());
	await navigator.serviceWorker.register("./serviceWorker.js", { updateViaCache: "none" });
	const registration = await navigator.serviceWorker.getRegistration();
	if (!registration) return;
	const paint = () => {
		told.textContent = stateWords(registration);
	};
	const watch = () => {
		registration.installing?.addEventListener("statechange", paint);
		paint();
	};
	registration.addEventListener("updatefound", watch);
	watch();
}

/** Put in here, because over file:// a browser finds fault with it. */
function manifest(): HTMLLinkElement {
	const link = document.createElement("link");
	link.rel = "manifest";
	link.href = "./manifest.webmanifest";
	return link;
}

function stateWords({ active, waiting }: ServiceWorkerRegistration): string {
	if (!active) return "";
	return waiting
		? say`A newer version is on this device. It is used from the next start, once every window of the workbook has been closed.`
		: say`Kept on this device: it opens without a network.`;
}

// Where the browser will keep nothing (a private window, a full disk) the site works as before.
const told = document.getElementById("offline");
if (told) keepOffline(told).catch(() => undefined);
