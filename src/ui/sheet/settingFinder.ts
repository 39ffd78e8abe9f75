import { say } from "../../core/say.ts";
import { el } from "../dom/el.ts";

/** Between the last letter and the settings that contain it: who types is not held up. */
const PAUSE_MS = 200;

/** A field over the settings that leaves those which contain what is typed. */
export function settingFinder(sought: (text: string) => void): HTMLElement {
	const field = el("input", { id: "find-setting", type: "search", autocomplete: "off" });
	let waiting: ReturnType<typeof setTimeout> | undefined;
	field.addEventListener("input", () => {
		clearTimeout(waiting);
		waiting = setTimeout(() => field.isConnected && sought(field.value), PAUSE_MS);
	});
	return el(
		"p",
		{ class: "tools find-setting" },
		el("label", { for: field.id }, say`Find a setting`),
		field,
	);
}
