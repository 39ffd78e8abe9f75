import { fill } from "../../dom/el.ts";

/** Says what is wrong beside its field and goes there: at the foot of a long table nobody would see it. */
export function sayBeside(field: HTMLInputElement, reason: HTMLElement, words: string): void {
	field.after(reason);
	field.setAttribute("aria-invalid", "true");
	field.setAttribute("aria-describedby", reason.id);
	fill(reason, words);
	field.focus();
}
