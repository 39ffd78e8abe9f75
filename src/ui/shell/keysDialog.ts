import { say } from "../../core/say.ts";
import { type Child, el } from "../dom/el.ts";
import { keyList, onMac, shownKey } from "./keyList.ts";

/** Stands in the browser's store where a person has switched the single key "?" off: it can be struck by mistake. */
const SWITCHED_OFF = "basinbook-no-question-mark";

/** The window that lists every key of the workbook. */
export class KeysDialog {
	readonly #single = el("input", { type: "checkbox", checked: !wasSwitchedOff() });
	readonly #dialog: HTMLDialogElement;

	constructor() {
		this.#single.addEventListener("change", () => keep(!this.#single.checked));
		this.#dialog = el(
			"dialog",
			{ class: "keys", "aria-label": say`Keyboard shortcuts` },
			el("h2", {}, say`Keyboard shortcuts`),
			...keyList.flatMap(({ where, keys }): Child[] => [
				el("h3", {}, where),
				el(
					"dl",
					{},
					...keys.map(({ keys: pressed, does }) =>
						el("div", {}, el("dt", {}, ...kbds(pressed)), el("dd", {}, does)),
					),
				),
			]),
			el("p", {}, onMac),
			el("p", {}, el("label", {}, this.#single, " ", say`The key ? alone opens this list`)),
			el("button", { type: "button", onclick: () => this.#dialog.close() }, say`Close`),
		);
		document.body.append(this.#dialog);
	}

	open(): void {
		this.#dialog.showModal();
		this.#dialog.scrollTop = 0;
	}

	/** By the single key, unless it is switched off. */
	openByKey(): void {
		if (this.#single.checked) this.open();
	}
}

function kbds(keys: readonly string[]): Child[] {
	return keys.flatMap((key, at) => [at > 0 && " ", el("kbd", {}, shownKey(key))]);
}

function wasSwitchedOff(): boolean {
	try {
		return localStorage.getItem(SWITCHED_OFF) !== null;
	} catch {
		return false;
	}
}

/** For the next visit too, where the browser keeps anything. */
function keep(off: boolean): void {
	try {
		if (off) localStorage.setItem(SWITCHED_OFF, "yes");
		else localStorage.removeItem(SWITCHED_OFF);
	} catch {}
}
