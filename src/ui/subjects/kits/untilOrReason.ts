import type { ComputedRow } from "../../../core/computedTable.ts";
import { say } from "../../../core/say.ts";
import type { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";
import { shownDay } from "../../format/shownDay.ts";
import { wordIn } from "../../state/numberIn.ts";
import { sentenceIn } from "../../state/sentenceIn.ts";

/** How a kit stands, beside its state: until when it is ready, or why it is not. */
export function untilOrReason(row: ComputedRow<typeof kitRegisterSheet>): string {
	const until = wordIn(row.ready_until);
	const isReady = wordIn(row.state) === "ready" && until !== "";
	return isReady ? say`until ${shownDay(until)}` : sentenceIn(row.reason);
}
