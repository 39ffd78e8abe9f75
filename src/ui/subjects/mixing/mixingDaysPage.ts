import { say } from "../../../core/say.ts";
import { mixingDaysSheet } from "../../../core/sheets/mixingDays.ts";
import { quantityWords } from "../../format/litreWords.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { mixOfDays } from "./mix.ts";
import { mixingCautions } from "./mixingCautions.ts";
import { mixingSheetOut } from "./mixingSheetOut.ts";
import { mixingDaysView } from "./mixingView.ts";

/** What to measure out on each day. */
export const mixingDaysPage: SheetPage = {
	sheet: mixingDaysSheet,
	tellsTruths: true,
	headline: mixingDaysHeadline,
	over: mixingDaysView,
	cautions: mixingCautions,
	prints: [mixingSheetOut],
};

function mixingDaysHeadline(state: State): string | undefined {
	const mixed = mixOfDays(state).flatMap(({ mix }) => mix ?? []);
	const [first, last] = [mixed[0], mixed.at(-1)];
	if (!first || !last) return undefined;
	const start = quantityWords(first.quantity, first.measure);
	const end = quantityWords(last.quantity, last.measure);
	const amount = mixed.every(({ quantity }) => quantity === first.quantity)
		? say`${start} every day`
		: say`${start} on the first day, ${end} on the last`;
	return say`${first.product}: ${amount}`;
}
