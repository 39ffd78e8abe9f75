import type { ChlorineRow } from "../../sheets/chlorine.ts";
import type { LotsRow } from "../../sheets/lots.ts";

/** Whether nobody knows how long a lot has faded: a liquid with neither a made-on nor a received date. */
export function isOfUnknownAge({ form }: ChlorineRow, lot: LotsRow): boolean {
	return form === "liquid" && lot.made_on === null && lot.received_on === null;
}
