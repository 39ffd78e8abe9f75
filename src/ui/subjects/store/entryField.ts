import { type Child, el, fill } from "../../dom/el.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";

type Control = HTMLInputElement | HTMLSelectElement;

/** A field with its name and room for what is wrong with it. */
export interface EntryField<C extends Control = Control> {
	readonly control: C;
	readonly element: HTMLElement;
	/** Says a date in the page's own words: the field itself shows it as the computer is set, day or month first. After each text that was not typed. */
	spell(): void;
	/** Says what is wrong; undefined takes it back. */
	wrong(words: string | undefined): void;
}

/** @param key that no other field on the page has */
export function entryField<C extends Control>(
	key: string,
	name: string,
	control: C,
	...unit: Child[]
): EntryField<C> {
	const id = `store-${key}`;
	const reason = el("span", { class: "reason", id: `${id}-wrong` });
	const spelled = el("output", { class: "spelled", for: id });
	const isDated = control.type === "date" || control.type === "datetime-local";
	const spell = () => {
		if (!isDated) return;
		const [day = "", time] = control.value.split("T");
		spelled.textContent = [day && shownDayAndYear(day), time].filter(Boolean).join(", ");
	};
	control.addEventListener("input", spell);
	control.addEventListener("change", spell);
	control.id = id;
	control.setAttribute("aria-describedby", reason.id);
	return {
		control,
		element: el(
			"p",
			{ class: "entry-field" },
			el("label", { for: id }, name, ...unit),
			control,
			isDated && spelled,
			reason,
		),
		spell,
		wrong(words) {
			fill(reason, words);
			if (words === undefined) control.removeAttribute("aria-invalid");
			else control.setAttribute("aria-invalid", "true");
		},
	};
}

/** Fills a list and keeps what was chosen, where it is still there. */
export function offer(
	control: HTMLSelectElement,
	options: readonly (readonly [value: string, words: string])[],
): void {
	const before = control.value;
	fill(control, ...options.map(([value, words]) => el("option", { value }, words)));
	const still = options.some(([value]) => value === before);
	control.value = still ? before : (options[0]?.[0] ?? "");
}
