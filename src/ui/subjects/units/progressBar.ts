import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";

export interface Progress {
	readonly element: HTMLElement;
	isWorking(): boolean;
	show(done: number, all: number, words: string): void;
	/** The work is over; the words stay. */
	done(words: string): void;
}

/** How far long work has come, as a bar and in words; hidden while nothing runs. */
export function progressBar(): Progress {
	const bar = el("progress", { "aria-label": say`How far the reading has come`, hidden: true });
	const said = el("span", {});
	const heard = el("span", { role: "status" });
	let working = false;
	return {
		element: el("p", { class: "progress" }, bar, said, heard),
		isWorking: () => working,
		show(done, all, words) {
			working = true;
			bar.hidden = false;
			bar.max = all;
			bar.value = done;
			said.textContent = words;
			heard.textContent = "";
		},
		done(words) {
			working = false;
			bar.hidden = true;
			said.textContent = "";
			heard.textContent = words;
		},
	};
}
