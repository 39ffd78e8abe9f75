import { say } from "../../../core/say.ts";
import { stockAheadSheet } from "../../../core/sheets/stockAhead.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { orderLines } from "../order/orderLines.ts";
import { stockAheadPart } from "./stockAheadPart.ts";

/** How the stock goes down, week by week. */
export const stockAheadPage: SheetPage = {
	sheet: stockAheadSheet,
	headline: aheadHeadline,
	part: stockAheadPart,
};

function aheadHeadline(state: State): string | undefined {
	const lines = orderLines(state);
	if (lines.length === 0) return undefined;
	const [first] = lines
		.filter((line) => line.runsOutOn !== "")
		.sort((a, b) => (a.runsOutOn < b.runsOutOn ? -1 : 1));
	if (!first) return say`No item runs out in the weeks looked at`;
	return say`Without an order, ${first.item} runs out first, on ${shownDay(first.runsOutOn)}`;
}
