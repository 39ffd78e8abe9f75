import { valueIn } from "../../../core/outcome.ts";
import { pieceFire } from "../../../core/plan/methods/pieceFire.ts";
import { readWorkbook } from "../../../core/read/readWorkbook.ts";
import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { levelWords } from "../../format/levelWords.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { shownMinutes } from "../../format/shownMinutes.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import { waitsFor } from "../../format/waitsFor.ts";
import type { State } from "../../state/store.ts";
import { waysOf } from "../../state/waysOf.ts";

/** Water, time and fuel of a load whose pieces are boiled or steamed; nothing where none are. */
export function pieceFireWords(state: State): string[] {
	const { treated } = waysOf(state);
	const read = readWorkbook(state.workbook);
	const used = (["boiling", "steam"] as const).filter((method) => treated.has(method));
	return used.map((method) => {
		const { fire, fuel, fuelMeasure } = pieceFire(read, method);
		const known = valueIn(fire);
		const amount = valueIn(fuel);
		if (!known || amount === undefined) return waitsFor(fire.outcome);
		const litres = shownAs(boilingSheet.columns.start_litres, known.startLitres);
		const heating = shownMinutes(Math.ceil(known.heatMinutes));
		const hold = shownPlain(known.holdMinutes);
		const burnt = `${shownAs(boilingSheet.columns.fuel_quantity, amount)} ${fuelMeasure}`;
		const words =
			method === "boiling"
				? say`A load of pieces to boil: start with ${litres} L, so that every piece is under water; about ${heating} to a rolling boil, then ${hold} min with the lid on and nothing added; fuel ${burnt}.`
				: say`A load of pieces to steam: start with ${litres} L under the rack; about ${heating} until steam comes, then ${hold} min with the lid on; fuel ${burnt}.`;
		return `${words} ${levelWords([method])}`;
	});
}
