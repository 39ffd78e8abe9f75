import { type Child, el } from "../dom/el.ts";
import { standing } from "../shell/standing.ts";

/** Room to sign, one box for each who does, and whose word comes first. */
export function signatures(...who: readonly string[]): Child[] {
	return [
		el(
			"div",
			{ class: "signatures" },
			...who.map((words) => el("span", { class: "write" }, words)),
		),
		el("p", { class: "standing" }, standing),
	];
}
