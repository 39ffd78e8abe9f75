import { plan } from "../../../src/core/plan/plan.ts";
import { addDays } from "../../../src/core/values/date.ts";
import { unitWith } from "../../core/smallUnit.ts";
import { hourWeights, type Unit } from "./unit.ts";

export const START = "2027-03-01";
/** Two for each of a kit's five pieces; swabs go as gauze does. */
export const GAUZE_PER_KIT = 10;
/** How sure the orders of gauze and of swabs are to be. */
export const SERVICE_LEVELS = [0.95, 0.98];

/** What the plan of a unit is made from: its own figure, and its register. */
export interface Known {
	readonly birthsPerDay: number;
	/** Births of the days before the plan; none where the figure is the unit's own. */
	readonly register: readonly number[];
}

/** A unit's plan over some days. */
export function planOf(unit: Unit, known: Known, days: number) {
	const clock = (minute: number) =>
		`${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
	const kits = Array.from({ length: unit.kits }, (_, i) => `K${i + 1},bag set,in_service,,`);
	return plan(
		unitWith(
			{
				plan_start: START,
				plan_days: days,
				births_per_day: known.birthsPerDay,
				kits_used_per_100_births: unit.kitsPer100,
				kit_share_from_register: "no",
				ready_life_days: unit.readyLifeDays,
				reprocessing: unit.reprocessing,
				soak_capacity_kits: unit.kitsInLoad,
				kit_displacement_litres: 0,
				delivery_beds: 0,
				spare_kits: 0,
				renew_kits: "when_expired",
				workers_per_round: 1,
				review_days: 7,
			},
			{
				"records.csv": [
					"date,births,kits_used",
					...known.register.map(
						(births, i) => `${addDays(START, i - known.register.length)},${births},`,
					),
				].join("\n"),
				"hours.csv": [
					"hour,share",
					...hourWeights(unit).map((weight, hour) => `${hour},${weight}`),
				].join("\n"),
				"rounds.csv": ["start,label", ...unit.starts.map((start) => `${clock(start)},`)].join("\n"),
				"steps.csv": [
					"step,basis,minutes,hands_on",
					`prepare,round,${unit.minutes.round},yes`,
					`wash,kit,${unit.minutes.kit},yes`,
					`soak,load,${unit.minutes.load},no`,
				].join("\n"),
				"kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n"),
				"usage.csv": "item,basis,quantity,note\ngauze squares,piece,2,\nswabs,piece,2,",
				"items.csv": [
					"item,group,measure,pack_size,pack_price,lead_days,wastage_pct,service_level",
					`gauze squares,gauze,piece,1,4,7,0,${SERVICE_LEVELS[0]}`,
					`swabs,other,piece,1,4,7,0,${SERVICE_LEVELS[1]}`,
				].join("\n"),
			},
		),
	);
}
