import { calculation } from "../../calculation.ts";
import { partOf } from "../../partOf.ts";
import { refuse } from "../../refusal.ts";
import { say } from "../../say.ts";
import { commonPractice } from "../../source.ts";
import { sources } from "../../sources.ts";
import { MINUTES_PER_DAY, writeClock } from "../../values/clock.ts";
import { addDays, type IsoDate } from "../../values/date.ts";
import { boilingSchedule, type Schedule } from "../../water/boilingSchedule.ts";
import type { Fire } from "../../water/firesOf.ts";
import { fuelQuantity } from "../../water/fuelQuantity.ts";

const schedule = boilingSchedule.example.result;
const fire = schedule.fires[0] as Fire;

/** One fire of the schedule; a round without one says why. */
export const fireOfSchedule = calculation<{ schedule: Schedule; at: number | null }, Fire>({
	key: "fire",
	label: say`Fire`,
	unit: "",
	formula: say`One of the fires by the clock.`,
	source: commonPractice,
	inputs: {
		schedule: { label: boilingSchedule.label, unit: "" },
		at: { label: say`Which fire`, unit: "" },
	},
	example: { inputs: { schedule, at: 0 }, result: fire, within: 1e-9 },
	compute: ({ schedule: { fires }, at }) => (at === null ? noPlace() : (fires[at] as Fire)),
});

function noPlace() {
	return refuse({
		code: "no-place-for-water",
		received: "",
		allowed: say`a stove and pots that are free in time`,
		message: say`No stove and no pots are free in time for the water of this round, or for this load of it.`,
		place: { file: "unit.csv", line: null, column: "pots" },
	});
}

const fireLitres = partOf<Fire, "litres">(fireOfSchedule, "litres", say`Water needed`, "L");
const fireStart = partOf<Fire, "startLitres">(fireOfSchedule, "startLitres", say`Start with`, "L");
const fireBatches = partOf<Fire, "batches">(fireOfSchedule, "batches", say`Batches`, say`batches`);
const fireHeating = partOf<Fire, "heatMinutes">(fireOfSchedule, "heatMinutes", say`Heating`, "min");
const fireStove = partOf<Fire, "stove">(fireOfSchedule, "stove", say`Stove`, "");

/** Which pots a fire takes. */
const firePots = calculation<{ fire: Fire }, string>({
	key: "fire_pots",
	label: say`Pots`,
	unit: "",
	formula: say`Pots that are free when the fire needs them, by number.`,
	source: commonPractice,
	inputs: { fire: { label: say`Fire`, unit: "" } },
	example: { inputs: { fire }, result: "1, 2", within: 0 },
	compute: ({ fire: { pots } }) => pots.join(", "),
});

/** A moment of a fire, as a date and a time. */
function momentOf(
	key: string,
	label: string,
	formula: string,
	of: (fire: Fire) => number,
	ofExample: string,
	rounded: (minutes: number) => number,
	rounding: string,
) {
	return calculation<{ fire: Fire; firstDay: IsoDate }, string>({
		key,
		label,
		unit: say`date h:min`,
		formula,
		source: commonPractice,
		rounding,
		caution: say.safety`It is often the evening before: look at the date.`,
		inputs: {
			fire: { label: say`Fire`, unit: "" },
			firstDay: { label: say`First day of the plan`, unit: "" },
		},
		example: { inputs: { fire, firstDay: "2027-03-02" }, result: ofExample, within: 0 },
		compute: (inputs) => {
			// What a sum leaves behind does not move the minute.
			const minutes = rounded(Number(of(inputs.fire).toFixed(6)));
			const date = addDays(inputs.firstDay, Math.floor(minutes / MINUTES_PER_DAY));
			return `${date} ${writeClock(minutes)}`;
		},
	});
}

const fireLightBy = momentOf(
	"light_by",
	say`Light the stove by`,
	say`First rinse of the round − cooling − time held for each batch − heating; earlier where the stove or the pots are taken then.`,
	({ lightAt }) => lightAt,
	"2027-03-02 00:00",
	Math.floor,
	say`Down to the earlier minute.`,
);

const piecesLightBy = momentOf(
	"pieces_light_by",
	say`Light the stove by`,
	say`Start of the step that times the boil or the steam − heating.`,
	({ lightAt }) => lightAt,
	"2027-03-02 00:00",
	Math.floor,
	say`Down to the earlier minute.`,
);

const fireCoolBy = momentOf(
	"cool_by",
	say`Cool by`,
	say`End of the hold of the last batch + cooling.`,
	({ coolAt }) => coolAt,
	"2027-03-02 09:00",
	Math.ceil,
	say`Up to the later minute.`,
);

interface FuelInputs {
	readonly fire: Fire;
	readonly holdMinutes: number;
	readonly netKw: number;
	readonly efficiency: number;
	readonly mjPerKg: number | null;
}

/** Fuel for one fire: kg, or kWh of electricity. */
const fireFuel = calculation<FuelInputs, number>({
	key: "fuel_of_fire",
	label: say`Fuel`,
	unit: say`kg or kWh`,
	formula: say`(Heat for the water of the fire + heat that reaches the water × time held × batches) ÷ share that reaches the pot ÷ heating value.`,
	source: sources.stoves,
	inputs: {
		fire: { label: say`Fire`, unit: "" },
		holdMinutes: { label: say`Keep at the boil for`, unit: "min", min: 0 },
		netKw: fuelQuantity.inputs.netKw,
		efficiency: fuelQuantity.inputs.efficiency,
		mjPerKg: fuelQuantity.inputs.mjPerKg,
	},
	example: {
		// 6,279 kJ ÷ 0.2 ÷ 30 MJ/kg.
		inputs: { fire, holdMinutes: 0, netKw: 1.0465, efficiency: 0.2, mjPerKg: 30 },
		result: 6279 / 0.2 / 30_000,
		within: 1e-9,
	},
	compute: ({ fire: { kj, batches }, holdMinutes, ...stove }) =>
		fuelQuantity.compute({ kj, holdMinutes: holdMinutes * batches, ...stove }) as number,
});

/** The cells of a fire. */
export const fireCells = {
	litres: fireLitres,
	start: fireStart,
	batches: fireBatches,
	heating: fireHeating,
	stove: fireStove,
	pots: firePots,
	lightBy: fireLightBy,
	piecesLightBy,
	coolBy: fireCoolBy,
	fuel: fireFuel,
};
