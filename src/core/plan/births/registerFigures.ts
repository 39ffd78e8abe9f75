import { derive, type Figure, typedFigure } from "../../calculation.ts";
import { type DailyCounts, dailyCounts, registerSince } from "../../forecast/dailyCounts.ts";
import { type Forecast, forecast } from "../../forecast/forecast.ts";
import { kitShare } from "../../forecast/kitShare.ts";
import { weekdayFactors } from "../../forecast/weekdayFactors.ts";
import { answer, valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { recordsSheet } from "../../sheets/records.ts";
import type { IsoDate } from "../../values/date.ts";
import { kitsUsedOn } from "../record/kitsUsedByDay.ts";

/** What the register teaches, where it teaches anything. */
export interface RegisterFigures {
	readonly register: Figure<DailyCounts> | undefined;
	/** Refused, with the reason, where the register is too short and there are no births a day. */
	readonly forecast: Figure<Forecast> | undefined;
	/** Kits used per 100 births, learned. */
	readonly kitShare: Figure;
}

const placeOf = (column: "births" | "kits_used") => ({
	file: recordsSheet.file,
	line: null,
	column,
});

/** @param firstDay of the plan: records from then on are not used */
export function registerFigures(read: ReadWorkbook, firstDay: IsoDate): RegisterFigures {
	const register = learnedFrom(read, firstDay);
	return {
		register,
		forecast:
			register &&
			derive(forecast, {
				register,
				factors: derive(weekdayFactors, { register }),
				birthsPerDay: orNone(read.settings.births_per_day),
				priorDays: read.settings.prior_days,
			}),
		kitShare: derive(kitShare, { ...usesRecorded(read, firstDay), ...prior(read) }),
	};
}

/** The recorded days that the forecast learns from: all before the plan, or those from a day that the unit chose. */
function learnedFrom({ tables, settings }: ReadWorkbook, firstDay: IsoDate) {
	const days = dailyCounts(
		tables.records.rows.map(({ value }) => value),
		firstDay,
	);
	const { label, unit } = registerSince.inputs.register;
	const all = days && typedFigure(label, unit, days, placeOf("births"));
	const from = settings.register_from;
	if (!all || (from.outcome.ok && from.outcome.value === null)) return all;
	const since = derive(registerSince, { register: all, from });
	return since.outcome.ok && since.outcome.value === null ? undefined : (since as typeof all);
}

/** A long register is forecast from without births a day. */
function orNone(figure: Figure<number>): Figure<number | null> {
	return figure.outcome.ok ? figure : { ...figure, outcome: answer(null) };
}

function prior({ settings }: ReadWorkbook) {
	return {
		priorPer100: settings.kits_used_per_100_births,
		weight: settings.kit_share_prior_births,
	};
}

/** Births and kits used over the days on which both are known. */
function usesRecorded(read: ReadWorkbook, firstDay: IsoDate) {
	const before = read.tables.records.rows.filter(({ value }) => value.date < firstDay);
	const known = kitsUsedOn(
		read,
		before.map(({ value }) => value.date),
	);
	let births = 0;
	let uses = 0;
	for (const { value } of before) {
		const used = known.get(value.date);
		if (value.births === null || used === undefined) continue;
		births += value.births;
		uses += used;
	}
	return {
		births: typedFigure(say`Births recorded`, say`births`, births, placeOf("births")),
		uses: typedFigure(say`Kits used, recorded`, say`kits`, uses, placeOf("kits_used")),
	};
}

/** The forecast, where the unit wants it and there is one; refused where nobody can read from which day it learns. */
export function usableForecast(
	{ settings }: ReadWorkbook,
	{ forecast }: RegisterFigures,
): Figure<Forecast> | undefined {
	const wanted = valueIn(settings.births_from_register) === "yes";
	return wanted && (forecast?.outcome.ok || !settings.register_from.outcome.ok)
		? forecast
		: undefined;
}
