import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";

export interface Progress {
	readonly element: HTMLElement;
	show(done: number, all: number, words: string): void;
	/** The work is over; the words stay. */
	done(words: string): void;
}

/** So often at most it is heard how far the work has come. */
const HEARD_MS = 10_000;

/** How far long work has come, as a bar and in words; hidden while nothing runs. @param stop what the button beside it does */
export function progressBar(stop: () => void): Progress {
	const bar = el("progress", { "aria-label": say`How far the reading has come`, hidden: true });
	const said = el("span", { "aria-hidden": "true" });
	const heard = el("span", { role: "status" });
	const button = el("button", { type: "button", hidden: true, onclick: stop }, say`Stop`);
	let working = false;
	let heardAt = 0;
	return {
		element: el("p", { class: "progress" }, bar, said, button, heard),
		show(done, all, words) {
			if (!working) heardAt = performance.now();
			working = true;
			bar.hidden = false;
			button.hidden = false;
			bar.max = all;
			bar.value = done;
			said.textContent = words;
			heard.classList.add("heard-only");
			if (performance.now() - heardAt < HEARD_MS) return;
			heardAt = performance.now();
			heard.textContent = words;
		},
		done(words) {
			working = false;
			bar.hidden = true;
			button.hidden = true;
			said.textContent = "";
			heard.classList.remove("heard-only");
			heard.textContent = words;
		},
	};
}
