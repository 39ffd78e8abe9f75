import { derive, gather, nameFigure } from "../../calculation.ts";
import { valueIn } from "../../outcome.ts";
import { partOf } from "../../partOf.ts";
import { say } from "../../say.ts";
import { total } from "../../total.ts";
import { writeClock } from "../../values/clock.ts";
import type { IsoDate } from "../../values/date.ts";
import { type Boiling, boilingOfRound } from "../../water/boilingOfRound.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { FiresOfPlan } from "../water/firesOfPlan.ts";
import { beyondOf, type SafetyRow, safetyOf } from "./safetyRow.ts";

const litresOfRound = partOf<Boiling, "litres">(boilingOfRound, "litres", say`Water needed`, "L");
const ofRounds = total("boiled_for_rounds", say`Water boiled for every round`, "L");

/** What a day boils where water is boiled for every round, whether or not it runs, beside what its rounds take. */
export function waterSafety(
	unit: UnitFigures,
	{ rounds }: FiresOfPlan,
	days: readonly { readonly date: IsoDate; readonly boiled: Pair }[],
): SafetyRow[] {
	if (unit.afterEachUse || valueIn(unit.read.settings.boil_for) !== "every_round") return [];
	return days.flatMap(({ date, boiled }) => {
		const parts = Object.fromEntries(
			rounds
				.filter(({ round }) => round.date === date)
				.map(({ round, boiling }) => [
					round.round.value.label || writeClock(round.round.value.start),
					derive(litresOfRound, { whole: boiling }),
				]),
		);
		const setAside = derive(ofRounds, { parts: gather(say`Rounds`, "L", parts) });
		const kept = safetyOf(setAside, boiled.setAside);
		if (!kept) return [];
		return [
			{
				promise: nameFigure(say`What`, "boiled_for_rounds" as const),
				of: nameFigure(say`Of`, ""),
				day: nameFigure(say`Day`, date),
				set_aside: setAside,
				expected: boiled.expected,
				unit: nameFigure(say`Unit`, "L"),
				...kept,
				...beyondOf(setAside, boiled.expected, undefined),
				lever: nameFigure(
					say`What would change it`,
					valueIn(kept.far_safer) === "yes"
						? say`Water is boiled for every round, whether or not it runs. Boiled to stand ready, or only once a kit waits (When water is boiled), less is poured away; a kit may then wait for water that has to cool.`
						: "",
				),
			},
		];
	});
}
