import { say } from "../../../core/say.ts";
import { strengthSheet } from "../../../core/sheets/strength.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { endsFirst, storeOf, strengthView } from "./strengthView.ts";

/** How the lots fade. */
export const strengthPage: SheetPage = {
	sheet: strengthSheet,
	headline: strengthHeadline,
	over: strengthView,
};

function strengthHeadline(state: State): string | undefined {
	const first = endsFirst(storeOf(state)?.curves ?? []);
	return (
		first &&
		say`Lot ${first.lot} ends first: usable until ${shownDayAndYear(String(first.lastUsableDay))}`
	);
}
