import { el } from "../dom/el.ts";

const LONG_ENOUGH_MS = 60_000;

/** Hands a file to the person: the browser puts it where downloads go. */
export function saveFile(name: string, bytes: Uint8Array | string, type: string): void {
	const url = URL.createObjectURL(new Blob([bytes as BlobPart], { type }));
	const link = el("a", { href: url, download: name, hidden: true });
	document.body.append(link);
	link.click();
	link.remove();
	setTimeout(() => URL.revokeObjectURL(url), LONG_ENOUGH_MS);
}
