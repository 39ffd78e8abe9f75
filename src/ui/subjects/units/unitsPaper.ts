import { say } from "../../../core/say.ts";
import { el } from "../../dom/el.ts";
import { counted } from "../../format/counted.ts";
import { shownDayAndYear } from "../../format/shownDay.ts";
import type { PrintOut } from "../../page.ts";
import { paperForm } from "../../print/paperForm.ts";
import { paperTable } from "../../print/paperTable.ts";
import { clockNow } from "../../state/clockNow.ts";
import type { State } from "../../state/store.ts";
import type { DistrictState } from "./districtState.ts";
import { unitCells, unitColumnsShown, worstFirstWords } from "./unitCells.ts";

/** All units, the worst first. @param usual the day on which most plans begin */
export function unitsPaper(
	{ district }: DistrictState,
	notes: readonly string[],
	usual: string | undefined,
): PrintOut {
	const page = (state: State) =>
		paperForm(
			state,
			"district-units",
			{
				way: "lying",
				whose: say`${counted(district.units.length, "unit")} of the district`,
				when: say`Put together on ${shownDayAndYear(clockNow().date)}`,
				title: say`The units, worst first`,
			},
			el("p", { class: "paper-small" }, worstFirstWords),
			...notes.map((words) => el("p", {}, words)),
			paperTable(say`The units, worst first`, unitColumnsShown, [
				{ rows: district.units.map(({ row }) => unitCells(row, usual)) },
			]),
		);
	return { name: say`Print the units`, pages: (state) => [page(state)] };
}
