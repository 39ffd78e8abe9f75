import { advice, type Problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { kindUseSheet } from "../../sheets/kindUse.ts";
import { inOrder } from "../../values/inOrder.ts";

/** What holds for several kinds of kit as long as nobody says it of each. */
export function kindAdvice({ tables: { kindUse, kits } }: ReadWorkbook): Problem[] {
	const kinds = new Set(kits.rows.map(({ value }) => value.kind));
	const place = (column: string) => ({ file: kindUseSheet.file, line: null, column });
	const { rows, badRows } = kindUse;
	if (kinds.size > 1 && rows.length + badRows.length === 0)
		return [
			advice(place("kind"), {
				code: "kinds-not-told-apart",
				received: [...kinds].sort(inOrder).join(", "),
				allowed: kindUseSheet.columns.uses_per_100_births.value.allowed,
				message: say`The kits are of ${kinds.size} kinds, and the plan takes any of them for any birth. Say how many of 100 births use each kind, and the beds and spares of each.`,
			}),
		];
	if (rows.length < 2 || rows.some(({ value }) => value.beds !== null)) return [];
	return [
		advice(place("beds"), {
			code: "beds-of-kinds-blank",
			received: "",
			allowed: kindUseSheet.columns.beds.value.allowed,
			message: say`Beds are left blank for every kind of kit: the kind that most births use then stands beside all beds, the others beside none.`,
		}),
	];
}
