import {
	calculation,
	derive,
	type Figure,
	nameFigure,
	refusedFigure,
	typedFigure,
} from "../../calculation.ts";
import type { ComputedRow, ComputedTable } from "../../computedTable.ts";
import { noAnswer, problemsOf } from "../../outcome.ts";
import type { Settings } from "../../read/readSettings.ts";
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
				unknown: [],
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
	read,
}: UnitFigures): ComputedTable<typeof kitRegisterSheet> {
	const order = readiness
		.filter((kit) => kit.state === "ready" && kit.unknown.length === 0)
		.sort(
			(a, b) =>
				inOrder(a.readySince ?? "", b.readySince ?? "") ||
				inOrder(a.kit.value.kit, b.kit.value.kit),
		);
	return {
		sheet: kitRegisterSheet,
		rows: readiness.map((kit) => rowOf(kit, order.indexOf(kit) + 1, read.settings)),
	};
}

function rowOf(
	kit: KitReadiness,
	place: number,
	settings: Settings,
): ComputedRow<typeof kitRegisterSheet> {
	const { line, value } = kit.kit;
	const last = kit.lastCheck;
	const label = say`Uses, rounds and checks of the kit`;
	const at = {
		file: last ? checksSheet.file : kitsSheet.file,
		line: last?.line ?? line,
		column: "",
	};
	const isKnown = kit.unknown.length === 0;
	/** A cell that hangs on how long the kit keeps, and on whether it still is ready. */
	const ifKnown = <T>(name: string, content: T): Figure<T> =>
		isKnown ? nameFigure(name, content) : refusedFigure(name, "", at, ...kit.unknown);
	const known: Figure<KitReadiness> = isKnown
		? typedFigure(label, "", kit, at)
		: refusedFigure(label, "", at, ...kit.unknown);
	return {
		kit: nameFigure(say`Kit`, value.kit),
		kind: nameFigure(say`Kind`, value.kind),
		state: derive(state, { kit: known }),
		counts: nameFigure(say`In service`, kit.serves ? "yes" : "no"),
		use_next: ifKnown(say`Use next`, place > 0 ? place : null),
		ready_since: nameFigure(say`Ready since`, kit.readySince ?? ""),
		ready_until: ifKnown(say`Ready until`, kit.readyUntil ?? ""),
		last_checked: nameFigure(
			say`Last check`,
			last ? checksSheet.columns.checked_at.value.write(last.value.checked_at) : "",
		),
		missing: nameFigure(say`Pieces missing`, kit.missing > 0 ? kit.missing : null),
		reason: nameFigure(say`Why`, kit.unknown[0]?.message ?? kit.reason),
		recorded: recordedCell(kit, settings),
	};
}

function recordedCell({ isRecorded }: KitReadiness, settings: Settings): Figure<"yes" | "no"> {
	const label = say`Recorded`;
	if (isRecorded !== undefined) return nameFigure(label, isRecorded ? "yes" : "no");
	const { outcome, origin } = settings.ready_life_days;
	return { label, unit: "", outcome: noAnswer(...problemsOf(outcome)), origin };
}
