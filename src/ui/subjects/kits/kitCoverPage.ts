import type { ComputedRow } from "../../../core/computedTable.ts";
import { say } from "../../../core/say.ts";
import { kitCoverSheet } from "../../../core/sheets/kitCover.ts";
import { semicolon } from "../../format/semicolon.ts";
import type { SheetPage } from "../../page.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { coverView } from "./coverView.ts";
import { enoughRows } from "./enoughRows.ts";

/** How many kits are enough. */
export const kitCoverPage: SheetPage = {
	sheet: kitCoverSheet,
	headline: coverHeadline,
	over: coverView,
};

function coverHeadline(state: State): string | undefined {
	const rows = enoughRows(state);
	if (rows.length === 0) return undefined;
	return rows.map((row) => enoughWords(row, rows.length > 1)).join(semicolon);
}

function enoughWords(row: ComputedRow<typeof kitCoverSheet>, named: boolean): string {
	const needed = numberIn(row.kits) ?? 0;
	if (named) return say`${wordIn(row.kind)}: ${needed}`;
	const fewer = needed - 1;
	if (fewer === 0) return say`1 kit is enough`;
	return fewer === 1
		? say`${needed} kits are enough; 1 is not`
		: say`${needed} kits are enough; ${fewer} are not`;
}
