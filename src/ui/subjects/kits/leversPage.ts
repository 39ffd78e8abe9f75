import { inSentence } from "../../../core/inSentence.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { leversSheet } from "../../../core/sheets/levers.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { SheetPage } from "../../page.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { leversOnPhone } from "./leversBrief.ts";
import { ofKind } from "./ofKind.ts";

/** What would help most. */
export const leversPage: SheetPage = {
	sheet: leversSheet,
	headline: leversHeadline,
	over: leversOnPhone,
};

function leversHeadline(state: State): string | undefined {
	const rows = rowsOf(state.plan, leversSheet);
	const kinds = [...new Set(rows.map((row) => wordIn(row.kind)))];
	const words = kinds.flatMap((kind) => {
		const best = rows.find(
			(row) => wordIn(row.kind) === kind && numberIn(row.avoided_per_1000_uses) !== undefined,
		);
		if (!best) return [];
		return [ofKind(kind, inSentence(wordIn(best.change)))];
	});
	return words.length === 0 ? undefined : say`What would help most: ${words.join(semicolon)}`;
}
