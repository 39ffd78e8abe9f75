import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { shownBefore } from "../../format/moment.ts";
import { shownDay } from "../../format/shownDay.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { boilingCautions } from "./boilingCautions.ts";
import { boilingRounds } from "./boilingRounds.ts";
import { boilingSheetOut } from "./boilingSheetOut.ts";
import { boilingView } from "./boilingView.ts";

/** When to light the stove, and how much to boil. */
export const boilingPage: SheetPage = {
	sheet: boilingSheet,
	headline: boilingHeadline,
	over: boilingView,
	cautions: boilingCautions,
	prints: [boilingSheetOut],
};

function boilingHeadline(state: State): string | undefined {
	const [next] = boilingRounds(state);
	if (!next?.lightBy) return undefined;
	return say`Light the stove by ${shownBefore(next.lightBy, next.date)}, for ${next.round} on ${shownDay(next.date)}`;
}
