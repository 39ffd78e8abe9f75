import type { Role } from "../../core/births/settings.ts";
import type { State } from "../state/store.ts";
import { unitSetting } from "../state/unitSetting.ts";

export type QuestionName = "week" | "coming" | "ready" | "mix" | "fetch" | "how";

/** Which questions come first for whom. Nothing is left out for anyone. */
const orders: Readonly<Record<Role, readonly QuestionName[]>> = {
	manager: ["week", "coming", "ready", "mix", "fetch", "how"],
	bench: ["week", "ready", "mix", "fetch", "coming", "how"],
	store: ["fetch", "week", "mix", "ready", "coming", "how"],
};

/** The questions in the order of who works with this copy. */
export function questionOrder(state: State): readonly QuestionName[] {
	return orders[unitSetting(state, "role") ?? "manager"];
}
