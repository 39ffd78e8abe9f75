import { calculation } from "../calculation.ts";
import { refuse } from "../refusal.ts";
import { say } from "../say.ts";
import { sources } from "../sources.ts";
import { MINUTES_PER_HOUR } from "../values/clock.ts";

/** The pot for which the unit's cooling rate is given. */
export const STANDARD_POT_LITRES = 10;

/** Cooling rate of a pot of another size: k falls with volume to the power 1/3. */
export function rateOfPot(coolingPerHour: number, potLitres: number): number {
	return coolingPerHour * (STANDARD_POT_LITRES / potLitres) ** (1 / 3);
}

interface Inputs {
	readonly fromC: number;
	readonly toC: number;
	readonly roomC: number;
	readonly coolingPerHour: number;
	readonly potLitres: number;
}

/** Minutes until boiled water has cooled to the temperature wanted (Newton cooling). */
export const coolingMinutes = calculation<Inputs, number>({
	key: "cool_minutes",
	label: say`Cooling`,
	unit: "min",
	formula: say`ln((boiling point − room) ÷ (wanted − room)) ÷ rate; the rate of a covered ${STANDARD_POT_LITRES} L pot × (${STANDARD_POT_LITRES} ÷ litres in a pot)^(1/3).`,
	source: sources.cooling,
	caution: say.safety`Never carry open pots of boiling water; keep children away. Cover, and never cool with untreated water or ice in it.`,
	inputs: {
		fromC: { label: say`Boiling point`, unit: "°C" },
		toC: { label: say`Rinse water no warmer than`, unit: "°C" },
		roomC: { label: say`Temperature of the room`, unit: "°C" },
		coolingPerHour: {
			label: say`Cooling rate of a covered ${STANDARD_POT_LITRES} L pot`,
			unit: say`per h`,
			min: 1e-6,
		},
		potLitres: { label: say`Water in a pot`, unit: "L", min: 1e-3 },
	},
	example: {
		inputs: { fromC: 100, toC: 37, roomC: 25, coolingPerHour: 0.25, potLitres: 10 },
		result: 7.33 * MINUTES_PER_HOUR,
		within: 0.01 * MINUTES_PER_HOUR,
	},
	compute: ({ fromC, toC, roomC, coolingPerHour, potLitres }) => {
		if (toC >= fromC) return 0;
		if (roomC >= toC) return roomTooWarm(roomC, toC);
		const hours = Math.log((fromC - roomC) / (toC - roomC)) / rateOfPot(coolingPerHour, potLitres);
		return hours * MINUTES_PER_HOUR;
	},
});

function roomTooWarm(roomC: number, toC: number) {
	return refuse({
		code: "room-too-warm",
		received: say`${roomC} °C`,
		allowed: say`below ${toC} °C`,
		message: say`Water does not cool to ${toC} °C in a room of ${roomC} °C. Cool it in a cooler place, or allow warmer rinse water if your protocol does.`,
		place: { file: "unit.csv", line: null, column: "room_c" },
	});
}

interface Reading {
	readonly firstC: number;
	readonly secondC: number;
	readonly roomC: number;
	readonly hours: number;
	readonly potLitres: number;
}

/** The unit's own cooling rate from two temperatures of a pot and the time between, for a pot of 10 L. */
export const rateFromReading = calculation<Reading, number>({
	key: "cooling_from_reading",
	label: say`Cooling rate of a covered ${STANDARD_POT_LITRES} L pot, from your reading`,
	unit: say`per h`,
	formula: say`ln((first − room) ÷ (second − room)) ÷ hours, × (litres ÷ ${STANDARD_POT_LITRES})^(1/3).`,
	source: sources.cooling,
	inputs: {
		firstC: { label: say`First temperature`, unit: "°C" },
		secondC: { label: say`Second temperature`, unit: "°C" },
		roomC: { label: say`Temperature of the room`, unit: "°C" },
		hours: { label: say`Time between`, unit: "h", min: 1e-3 },
		potLitres: { label: say`Water in the pot`, unit: "L", min: 1e-3 },
	},
	example: {
		inputs: { firstC: 96.4, secondC: 34.4, roomC: 22.4, hours: 1, potLitres: 10 },
		result: 1.819,
		within: 0.001,
	},
	compute: ({ firstC, secondC, roomC, hours, potLitres }) =>
		firstC > secondC && secondC > roomC
			? (Math.log((firstC - roomC) / (secondC - roomC)) / hours) *
				(potLitres / STANDARD_POT_LITRES) ** (1 / 3)
			: refuse({
					code: "reading-not-cooling",
					received: say`${firstC} °C, then ${secondC} °C, room ${roomC} °C`,
					allowed: say`a first temperature above the second, and the second above the room's`,
					message: say`These two temperatures do not show a pot cooling towards the room; read them again.`,
				}),
});
