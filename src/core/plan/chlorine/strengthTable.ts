import { derive, type Figure, nameFigure } from "../../calculation.ts";
import { READING_ERROR } from "../../chlorine/readingRange.ts";
import { asLabelled, shownStrength } from "../../chlorine/shownStrength.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { valueIn } from "../../outcome.ts";
import { cellFigure } from "../../read/cellFigure.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { strengthSheet } from "../../sheets/strength.ts";
import { type StrengthReadingsRow, strengthReadingsSheet } from "../../sheets/strengthReadings.ts";
import { daysFrom, type IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { countsByNow } from "../countsByNow.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { type LotFigures, lotFigures, NOT_USABLE, usableUntil } from "./lotFigures.ts";
import { bornOn } from "./strengthOfLot.ts";

/** Every lot with its strength on the first day. */
export function strengthTable(
	unit: UnitFigures,
	firstDay: IsoDate,
): ComputedTable<typeof strengthSheet> {
	return onDemand(strengthSheet, () =>
		lotFigures(unit, firstDay).map((lot) => rowOf(unit, lot, firstDay)),
	);
}

function rowOf(
	unit: UnitFigures,
	figures: LotFigures,
	firstDay: IsoDate,
): ComputedRow<typeof strengthSheet> {
	const { product, lot } = figures;
	const born = bornOn(lot.value);
	const today = figures.strengthOn(firstDay);
	const reading = latestReading(unit, lot.value.item, lot.value.lot);
	// A reading is held against what the lot held on the day it was read.
	const compared = reading ? figures.strengthOn(reading.value.read_on) : today;
	const age = born ? Math.max(0, daysFrom(born, firstDay)) : null;
	return {
		product: product.name,
		lot: cellFigure(lotsSheet, lot, "lot"),
		age_days: nameFigure(say`Age`, age),
		label_strength: derive(shownStrength, { strength: product.strength }),
		strength_today: derive(shownStrength, { strength: today }),
		measured_pct: reading
			? cellFigure(strengthReadingsSheet, reading, "strength_pct")
			: nameFigure(say`Measured`, null),
		measured_on: nameFigure(say`Measured on`, reading?.value.read_on ?? ""),
		last_usable_day: usableUntil(figures, firstDay, lastDayWords(figures)),
		remark: nameFigure(
			say`Remark`,
			remarks(
				figures,
				firstDay,
				reading,
				valueIn(compared),
				unit.read.settings.assumed_age_days,
			).join(" "),
		),
	};
}

/** Of several readings of one day the lowest, to the safe side. */
function latestReading({ read }: UnitFigures, item: string, lot: string) {
	return read.tables.strengthReadings.rows
		.filter(
			({ value }) => value.item === item && value.lot === lot && countsByNow(read, value.read_on),
		)
		.sort(
			(a, b) =>
				inOrder(a.value.read_on, b.value.read_on) ||
				inOrder(b.value.strength_pct, a.value.strength_pct),
		)
		.at(-1);
}

function lastDayWords({ lastUsableDay: last }: LotFigures): string {
	return last === undefined ? NOT_USABLE : (last ?? say`more than ten years`);
}

function remarks(
	{ product, lot, arrivesOn, lastUsableDay: last }: LotFigures,
	firstDay: IsoDate,
	reading: GoodRow<StrengthReadingsRow> | undefined,
	known: Parameters<typeof asLabelled>[0] | undefined,
	assumedDays: Figure,
): string[] {
	const { form } = product.row.value;
	const { made_on, received_on } = lot.value;
	const said: string[] = [];
	if (last === undefined)
		said.push(say`Out of date, or too weak for the strength wanted: do not use it for the soak.`);
	if (arrivesOn !== null && arrivesOn > firstDay)
		said.push(say`Not here yet: arrives ${arrivesOn}.`);
	if (form !== "tablet" && made_on === null) {
		const assumed = valueIn(assumedDays);
		if (received_on !== null)
			said.push(
				say`No made-on date: it is older than the received date says, and weaker than shown.`,
			);
		else if (form === "liquid" && assumed !== undefined)
			said.push(
				say`Neither made-on nor received date: its age is not known, and it counts as ${assumed} days old.`,
			);
		else if (form === "powder" && known)
			said.push(
				say`Neither made-on nor received date: its age is not known, and the label's strength is shown.`,
			);
	}
	if (reading && known) {
		const computed = asLabelled(known);
		const off = Math.abs(reading.value.strength_pct - computed) / computed;
		if (off > READING_ERROR[reading.value.method].most)
			said.push(
				say`The reading differs from the computed strength by more than the method's error: read again, and do not use it if in doubt.`,
			);
	}
	return said;
}
