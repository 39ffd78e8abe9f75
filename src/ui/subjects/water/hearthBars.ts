import { valueIn } from "../../../core/outcome.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { boilingSheet } from "../../../core/sheets/boiling.ts";
import { MINUTES_PER_DAY } from "../../../core/values/clock.ts";
import type { Fire } from "../../../core/water/firesOf.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import type { HearthBar } from "./hearthPicture.ts";

/** So many days of the plan are drawn: the days after them are much the same. */
const DAYS_DRAWN = 1;

/** Stoves and pots for the rounds of the plan's first day, from the evening before; none where there is no fire. */
export function hearthBars(state: State): HearthBar[] {
	const fires = rowsOf(state.plan, boilingSheet).flatMap((row) => {
		const fire = fireOf(row.stove);
		const isDrawn = fire !== undefined && fire.coolAt <= DAYS_DRAWN * MINUTES_PER_DAY;
		return isDrawn ? [{ fire, round: wordIn(row.round) }] : [];
	});
	const stoves = new Set(fires.map(({ fire }) => fire.stove)).size;
	const burns = fires.map(
		({ fire, round }): HearthBar => ({
			row: stoves > 1 ? say`Stove ${fire.stove}` : say`Stove`,
			from: fire.lightAt,
			to: fire.offBoilAt,
			sort: "fire",
			round,
		}),
	);
	const pots = fires.flatMap(({ fire, round }) =>
		fire.taken.map(({ pot, from, to }) => ({ pot, from, to, round })),
	);
	return [
		...burns,
		...pots
			.sort((a, b) => a.pot - b.pot || a.from - b.from)
			.map(({ pot, from, to, round }): HearthBar => {
				return { row: say`Pot ${pot}`, from, to, sort: "pot", round };
			}),
	];
}

/** The fire that a cell was read off. */
function fireOf(
	cell: ReturnType<typeof rowsOf<typeof boilingSheet>>[number]["stove"],
): Fire | undefined {
	if (cell?.origin.kind !== "computed") return undefined;
	const { whole } = cell.origin.inputs;
	return whole && (valueIn(whole) as Fire | undefined);
}
