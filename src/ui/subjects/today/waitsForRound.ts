import { NOT_TESTED } from "../../../core/plan/kits/readiness.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { KitRow } from "./kitRow.ts";

/** Whether a kit waits for a round; one that came out of a round waits for its test alone. */
export function waitsForRound(row: KitRow): boolean {
	return wordIn(row.state) === "to_reprocess" && !waitsForTest(row);
}

/** Whether a kit went through a round and waits for the check after it. */
export function waitsForTest(row: KitRow): boolean {
	return wordIn(row.reason) === NOT_TESTED;
}
