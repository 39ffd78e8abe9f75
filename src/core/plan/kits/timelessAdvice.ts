import { checkResult } from "../../kits/checkResult.ts";
import { advice, type Problem } from "../../problem.ts";
import { momentAt } from "../../record/momentAt.ts";
import { say } from "../../say.ts";
import { checksSheet } from "../../sheets/checks.ts";
import { usesSheet } from "../../sheets/uses.ts";
import type { IsoDate } from "../../values/date.ts";
import type { WrittenTime } from "../../values/dateTime.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { piecesToCheck } from "./piecesOfKinds.ts";

/** Uses and checks with no time, of a kit that went through a round on that day: which came first decides how it stands, and nobody wrote it down. */
export function timelessAdvice({ read, roundsDone }: UnitFigures, lastDay: IsoDate): Problem[] {
	const { kits, kinds, uses, checks } = read.tables;
	const inRound = new Set(
		roundsDone.flatMap(({ row: { value }, kits, endsAt }) =>
			[value.date, momentAt(value.date, endsAt).date].flatMap((day) =>
				kits.map((kit) => keyOf(kit, day)),
			),
		),
	);
	const matters = (kit: string, { date, isDayOnly }: WrittenTime) =>
		isDayOnly && date <= lastDay && inRound.has(keyOf(kit, date));
	const kindOf = new Map(kits.rows.map(({ value }) => [value.kit, value.kind]));
	const listed = piecesToCheck(kinds);
	return [
		...uses.rows.flatMap(({ line, value: { at, kit, what } }) =>
			what !== "none_ready" && matters(kit, at)
				? [atEnd({ file: usesSheet.file, line, column: "at" }, kit, at.date)]
				: [],
		),
		...checks.rows.flatMap(({ line, value }) => {
			const { kit, checked_at: at } = value;
			const result = checkResult(value, listed(kindOf.get(kit) ?? ""));
			if (!result || !matters(kit, at)) return [];
			const place = { file: checksSheet.file, line, column: "checked_at" };
			const said = result.found === "passed" ? atBeginning : atEnd;
			return [said(place, kit, at.date)];
		}),
	];
}

function keyOf(kit: string, day: IsoDate): string {
	return JSON.stringify([kit, day]);
}

type Place = Parameters<typeof advice>[0];

function atEnd(place: Place, kit: string, day: IsoDate): Problem {
	return advice(place, {
		...timeless(day),
		message: say`Kit ${kit} went through a round on ${day}, and this line has no time: it counts at the end of that day, after the round. Write the time too.`,
	});
}

function atBeginning(place: Place, kit: string, day: IsoDate): Problem {
	return advice(place, {
		...timeless(day),
		message: say`Kit ${kit} went through a round on ${day}, and this check has no time: it counts at the beginning of that day, before the round. Write the time too.`,
	});
}

function timeless(day: IsoDate) {
	return { code: "no-time", received: day, allowed: say`date and time` };
}
