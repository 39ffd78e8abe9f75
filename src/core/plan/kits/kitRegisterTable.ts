import { calculation, derive, type Figure, nameFigure, typedFigure } from "../../calculation.ts";
import type { ComputedRow, ComputedTable } from "../../computedTable.ts";
import { say } from "../../say.ts";
import { checksSheet } from "../../sheets/checks.ts";
import { kitRegisterSheet } from "../../sheets/kitRegister.ts";
import { kitsSheet } from "../../sheets/kits.ts";
import { commonPractice } from "../../source.ts";
import { inOrder } from "../../values/inOrder.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { KitReadiness } from "./readiness.ts";

const state = calculation<{ kit: KitReadiness }, string>({
	key: "kit_state",
	label: say`State`,
	unit: "",
	formula: say`By the latest of what is written down: used, opened or its days over, to reprocess; a round done, to reprocess until the check after that round has passed, then ready from the day the round ended; a check that fails, incomplete, in repair or (not clean alone) to reprocess, until a later round and its check. A kit found incomplete or to be repaired stays so, used or opened, until that round, and is not counted until that check has passed. A check never makes its days longer.`,
	source: commonPractice,
	caution: say.safety`When in doubt do not use. Test every kit again before each birth.`,
	inputs: { kit: { label: say`Uses, rounds and checks of the kit`, unit: "" } },
	example: {
		inputs: {
			kit: {
				kit: {
					line: 2,
					value: { kit: "A", kind: "", status: "in_service", ready_since: "2027-02-27", note: "" },
				},
				state: "ready",
				serves: true,
				readySince: "2027-02-27",
				readyUntil: "2027-03-06",
				missing: 0,
				reason: "",
				waitsForCheck: false,
				lastCheck: undefined,
				isRecorded: true,
			},
		},
		result: "ready",
		within: 0,
	},
	compute: ({ kit }) => kit.state,
});

/** How each kit stands, and which ready kit to use next: the one disinfected longest ago, of those of one day by their marks. */
export function kitRegisterTable({
	readiness,
}: UnitFigures): ComputedTable<typeof kitRegisterSheet> {
	const order = readiness
		.filter((kit) => kit.state === "ready")
		.sort(
			(a, b) =>
				inOrder(a.readySince ?? "", b.readySince ?? "") ||
				inOrder(a.kit.value.kit, b.kit.value.kit),
		);
	return {
		sheet: kitRegisterSheet,
		rows: readiness.map((kit) => rowOf(kit, order.indexOf(kit) + 1)),
	};
}

function rowOf(kit: KitReadiness, place: number): ComputedRow<typeof kitRegisterSheet> {
	const { line, value } = kit.kit;
	const last = kit.lastCheck;
	const known: Figure<KitReadiness> = typedFigure(
		say`Uses, rounds and checks of the kit`,
		"",
		kit,
		{
			file: last ? checksSheet.file : kitsSheet.file,
			line: last?.line ?? line,
			column: "",
		},
	);
	return {
		kit: nameFigure(say`Kit`, value.kit),
		kind: nameFigure(say`Kind`, value.kind),
		state: derive(state, { kit: known }),
		counts: nameFigure(say`In service`, kit.serves ? "yes" : "no"),
		use_next: nameFigure(say`Use next`, place > 0 ? place : null),
		ready_since: nameFigure(say`Ready since`, kit.readySince ?? ""),
		ready_until: nameFigure(say`Ready until`, kit.readyUntil ?? ""),
		last_checked: nameFigure(
			say`Last check`,
			last ? checksSheet.columns.checked_at.value.write(last.value.checked_at) : "",
		),
		missing: nameFigure(say`Pieces missing`, kit.missing > 0 ? kit.missing : null),
		reason: nameFigure(say`Why`, kit.reason),
		recorded: nameFigure(say`Recorded`, kit.isRecorded ? "yes" : "no"),
	};
}
