import { say } from "../../../core/say.ts";
import { dayCoverSheet } from "../../../core/sheets/dayCover.ts";
import { capital } from "../../format/capital.ts";
import { oneNeedIn } from "../../format/onceIn.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { SheetPage } from "../../page.ts";
import type { State } from "../../state/store.ts";
import { dayCoverView, halfPast, hoursByKind, weakestHour } from "./dayCoverView.ts";
import { ofKind } from "./ofKind.ts";

/** The weakest hour of the day. */
export const dayCoverPage: SheetPage = {
	sheet: dayCoverSheet,
	headline: dayCoverHeadline,
	over: dayCoverView,
};

function dayCoverHeadline(state: State): string | undefined {
	const kinds = [...hoursByKind(state)];
	if (kinds.length === 0) return undefined;
	const words = kinds.map(([kind, points]) => {
		const weakest = weakestHour(points);
		const even = points.every(({ none }) => none === weakest.none);
		const risk = even
			? say`at every hour ${oneNeedIn(weakest.none)}`
			: say`weakest at ${halfPast(weakest)}, when ${oneNeedIn(weakest.none)}`;
		return ofKind(kind, risk);
	});
	return capital(words.join(semicolon));
}
