import { USED } from "../../../core/plan/kits/readiness.ts";
import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { label, labelHead, labelLine } from "./label.ts";

/** A kit that must not be used as it is. */
export interface SetApart {
	readonly unit: string;
	readonly kit: string;
	readonly kind: string;
	readonly state: "to_reprocess" | "incomplete" | "in_repair";
	/** Why, in the register's words; "" where it has none. */
	readonly reason: string;
}

/** The label of a kit that is not ready: what it waits for, who set it apart. It never says that the kit is clean. */
export function setApartLabel({ unit, kit, kind, state, reason }: SetApart): HTMLElement {
	return label(
		"kit",
		unit,
		labelHead(kit, kind),
		el("p", { class: "label-verdict" }, verdict(state, reason)),
		reason !== "" && reason !== USED && el("p", {}, say.safety`Why: ${reason}`),
		state === "incomplete"
			? labelLine(say.safety`Missing`, undefined)
			: labelLine(say.safety`Remark`, undefined),
		labelLine(say.safety`Set apart by`, undefined),
		labelLine(say.safety`Date and time`, undefined),
		el("p", { class: "label-caution" }, caution(state)),
	);
}

function verdict(state: SetApart["state"], reason: string): string {
	switch (state) {
		case "to_reprocess":
			return reason === USED
				? say.safety`Used: to be reprocessed. DO NOT USE.`
				: say.safety`To be reprocessed. DO NOT USE.`;
		case "incomplete":
			return say.safety`DO NOT USE: incomplete.`;
		case "in_repair":
			return say.safety`DO NOT USE: in repair.`;
	}
}

function caution(state: SetApart["state"]): string {
	return state === "to_reprocess"
		? say.safety`Not clean: handle with gloves, keep apart from ready kits. Take this label off after the round and its check.`
		: say.safety`Keep apart from ready kits. Put right, then through a whole round and its check; take this label off only then.`;
}
