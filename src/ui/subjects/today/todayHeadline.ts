import { say } from "../../../core/say.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { KitRow } from "./kitRow.ts";

/** How many kits are ready and which to use next, in one line. */
export function todayHeadline(kits: readonly KitRow[]): string | undefined {
	if (kits.length === 0) return undefined;
	const ready = kits.filter((row) => wordIn(row.state) === "ready");
	const next = ready.find((row) => numberIn(row.use_next) === 1);
	if (!next && kits.some(({ state }) => !state.outcome.ok))
		return say`Which kits are ready is not known: look at their labels`;
	if (!next)
		return kits.every((row) => wordIn(row.recorded) === "no")
			? say`Which kits are ready is not recorded: look at their labels`
			: say`No kit is ready`;
	const kit = wordIn(next.kit);
	return ready.length === 1
		? say`One kit is ready: ${kit}`
		: say`${ready.length} kits are ready: use ${kit} next`;
}
