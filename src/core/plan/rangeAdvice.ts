import type { Figure } from "../calculation.ts";
import type { Column } from "../column.ts";
import { valueIn } from "../outcome.ts";
import { advice, type Problem } from "../problem.ts";
import type { ReadWorkbook } from "../read/readWorkbook.ts";
import { say } from "../say.ts";
import { type SettingKey, settings } from "../sheets/settings.ts";
import { unitSheet } from "../sheets/unit.ts";
import { HIGH_UP_M } from "../water/holdAtBoil.ts";

/** What the sources of a setting name, and when what was entered lies outside it. */
interface Named {
	readonly key: SettingKey;
	readonly isOutside: boolean;
	readonly allowed: string;
	/** What the sources say, in a sentence. */
	readonly said: string;
}

/** Of a soak for a kit, as sources.soakStrength and sources.soakMinutes have it. */
const SOAK_PCT = { withBoiledWater: 0.1, usual: 0.5 };
const SOAK_MINUTES = { least: 10, most: 30 };
const BODY_C = 37;
const READY_DAYS = 7;

/** Settings outside what their own sources name: said, never refused, because the unit's protocol decides. */
export function rangeAdvice({ settings: read }: ReadWorkbook): Problem[] {
	return namedRanges(read)
		.filter(({ isOutside }) => isOutside)
		.map(({ key, allowed, said }) => {
			const { label, unit, value } = settings[key] as Column<unknown>;
			const entered = [value.write(valueIn(read[key] as Figure<unknown>) as never), unit]
				.filter(Boolean)
				.join(" ");
			return advice(
				{ file: unitSheet.file, line: null, column: key },
				{
					code: "outside-sources",
					received: entered,
					allowed,
					message: say`${label}: ${entered} was entered. ${said} Your protocol decides.`,
				},
			);
		});
}

function namedRanges(read: ReadWorkbook["settings"]): Named[] {
	const pct = valueIn(read.target_strength_pct) ?? SOAK_PCT.usual;
	const soak = valueIn(read.soak_minutes) ?? SOAK_MINUTES.least;
	const { withBoiledWater, usual } = SOAK_PCT;
	const { least, most } = SOAK_MINUTES;
	const strengths = say`${withBoiledWater} to ${usual} %`;
	const times = say`${least} to ${most} minutes`;
	return [
		{
			key: "target_strength_pct",
			isOutside: pct < withBoiledWater,
			allowed: strengths,
			said: say`Sources name ${usual} % with ordinary water (from memory for devices) and ${withBoiledWater} % with boiled water; 0.04 to 0.05 % stands only for other items or products.`,
		},
		{
			key: "target_strength_pct",
			isOutside: pct > usual,
			allowed: strengths,
			said: say`Sources name no more than ${usual} % for a kit; stronger solution irritates, and eats at metal and rubber.`,
		},
		{
			key: "solution_water",
			isOutside: pct < usual && valueIn(read.solution_water) === "tap",
			allowed: say`boiled, cooled water`,
			said: say`Handbooks of high-level disinfection name less than ${usual} % only where the solution is made with boiled water.`,
		},
		{
			key: "soak_minutes",
			isOutside: soak < least,
			allowed: times,
			said: say`Sources name ${least} minutes before cleaning, 20 for what is clean and ${most} in other guidance; 3 stands only for respiratory equipment at home, at about 0.1 %.`,
		},
		{
			key: "soak_minutes",
			isOutside: soak > most,
			allowed: times,
			said: say`Sources name up to ${most} minutes; longer, chlorine harms rubber and metal (from memory).`,
		},
		{
			key: "rinse_below_c",
			isOutside: (valueIn(read.rinse_below_c) ?? 0) > BODY_C,
			allowed: say`at most ${BODY_C} °C`,
			said: say`Water warmer than the body (${BODY_C} °C) hurts hands in a long rinse; from 49 °C on it scalds within minutes.`,
		},
		{
			key: "ready_life_days",
			isOutside: (valueIn(read.ready_life_days) ?? 0) > READY_DAYS,
			allowed: say`at most ${READY_DAYS} days`,
			said: say`Sources name up to one week in a closed, disinfected container, and some protocols use at once.`,
		},
		{
			key: "boil_hold_minutes",
			isOutside:
				(valueIn(read.altitude_m) ?? 0) > HIGH_UP_M && valueIn(read.boil_hold_minutes) === 0,
			allowed: say`2 or 3 minutes above ${HIGH_UP_M} m`,
			said: say`Above ${HIGH_UP_M} m water boils below 94 °C: sources keep it at the boil for 2 or 3 minutes there; one of them asks for none at any height.`,
		},
	];
}
