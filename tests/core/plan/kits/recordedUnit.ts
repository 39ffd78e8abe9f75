import { plan } from "../../../../src/core/plan/plan.ts";
import { contentOf } from "../../contentOf.ts";
import { smallUnit } from "../../smallUnit.ts";

export const HEADER =
	"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note,purpose";
export const ROUNDS = "date,start,ended,kits,descaled";
export const USES = "at,kit,what,by,note";
export const withRecord = (record: {
	readonly checks?: readonly string[];
	readonly rounds?: readonly string[];
	readonly uses?: readonly string[];
}) =>
	plan(
		smallUnit({
			"checks.csv": [HEADER, ...(record.checks ?? [])].join("\n"),
			"rounds-done.csv": [ROUNDS, ...(record.rounds ?? [])].join("\n"),
			"uses.csv": [USES, ...(record.uses ?? [])].join("\n"),
		}),
	);
export const registerOf = (made: ReturnType<typeof plan>, kit: string, ...columns: string[]) =>
	contentOf(made, "kit-register.csv", "kit", ...columns)
		.find(([name]) => name === kit)
		?.slice(1);
export const pass = (at: string, kit = "A", purpose = "") =>
	`${at},${kit},5,yes,yes,yes,yes,yes,,,${purpose}`;
