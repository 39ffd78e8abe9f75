import { typed } from "../column.ts";
import { say } from "../say.ts";
import { type RowOf, sheet } from "../sheet.ts";
import { choice, yesNo } from "../values/choice.ts";
import { dateTime } from "../values/dateTime.ts";
import { name } from "../values/name.ts";
import { note } from "../values/note.ts";
import { number } from "../values/number.ts";
import { optional } from "../values/valueKind.ts";
import { lineId } from "./lineId.ts";

const test = (label: string, help: string) =>
	typed({ label, unit: "", value: optional(yesNo()), help });

/** What a check is for. */
const checkPurposes = ["after_round", "before_use", "in_place_of_round"] as const;

export const checksSheet = sheet({
	file: "checks.csv",
	title: say`Readiness checks`,
	about: say`Each time a kit is put together: pieces counted, cleanliness, function tests.`,
	optional: true,
	columns: {
		checked_at: typed({
			label: say`Checked at`,
			unit: "",
			value: dateTime(),
			help: say`Date and time of the check. Without a time, one that failed counts at the end of the day, one that passed at its beginning.`,
		}),
		kit: typed({ label: say`Kit`, unit: "", value: name(), help: say`The mark on the kit.` }),
		pieces_counted: typed({
			label: say`Pieces counted`,
			unit: say`pieces`,
			value: optional(number({ min: 0, max: 10_000, whole: true })),
			help: say`All loose pieces, counted before putting together.`,
		}),
		clean: test(say`Clean`, say`No dirt, no scale, dry, no smell.`),
		bag_refills: test(say`Bag refills`, say`Outlet blocked, squeezed and let go: refills at once.`),
		valve_moves: test(say`Valve moves`, say`Opens on squeezing, closes after.`),
		seal_holds: test(say`Seal holds`, say`Outlet blocked: the bag resists, no leak is heard.`),
		relief_opens: test(
			say`Pressure-relief valve opens`,
			say`The pressure-relief valve opens when the bag is squeezed hard.`,
		),
		suction_holds: test(say`Suction holds`, say`Draws in and pushes out fully, no bubbles.`),
		note: typed({ label: say`Note`, unit: "", value: note(), help: say`What was seen.` }),
		purpose: typed({
			label: say`Checked for`,
			unit: "",
			value: choice(checkPurposes),
			fallback: "after_round",
			help: say`After a round: releases the kit. Before use: never makes its days longer. In place of a round: from the time before rounds were written down.`,
			added: true,
		}),
		damage: typed({
			label: say`Damage seen`,
			unit: "",
			value: optional(yesNo()),
			help: say`On any piece: torn, cracked, sticky, gone cloudy.`,
			added: true,
		}),
		checked_by: typed({
			label: say`Checked by`,
			unit: "",
			value: note(),
			help: say`Who checked; may be blank.`,
			added: true,
		}),
		id: lineId(),
	},
});

export type ChecksRow = RowOf<typeof checksSheet>;
