import { HyperFormula } from "hyperformula";
import { birthsOn } from "./longUnit.ts";

/** Means of every day, and their totals: births, uses, expiries, kits to reprocess, rounds, loads, … */
export const MEANS = [
	"births",
	"uses",
	"expiries",
	"reprocess",
	"rounds",
	"loads",
	"solution litres",
	"product mL",
	"buckets",
	"boiled litres",
	"vinegar litres",
	"gauze pieces",
	"glove pairs",
] as const;

/** What the small unit has in its settings, in the first line of the sheet. */
export const UNIT = {
	usesPer100: 10,
	kitsInService: 3,
	readyLifeDays: 7,
	kitsInLoad: 3,
	litres: 5.5,
	strengthPct: 0.5,
	stockPct: 3.5,
	stepMl: 10,
	buckets: 3,
	bucketLitres: 10,
	descaleEvery: 7,
	vinegarLitres: 1,
	gauzePerKit: 10,
	glovesPerRound: 2,
} as const;

/** More loads than this in one round are too unlikely to be seen in a mean. */
export const MOST_LOADS = 8;
const HEAD_ROWS = 2;
const letter = (column: number) => String.fromCharCode(65 + column);
const keys = Object.keys(UNIT) as (keyof typeof UNIT)[];
const unit = (key: keyof typeof UNIT) => `$${letter(keys.indexOf(key))}$1`;

/** Loads that a round of so many kits on average makes: the chances that 0, 3, 6 … are not enough. */
const loadsOf = (mean: string) =>
	Array.from({ length: MOST_LOADS }, (_, j) =>
		j === 0 ? `1-EXP(-${mean})` : `1-POISSON.DIST(${j}*${unit("kitsInLoad")},${mean},TRUE())`,
	).join("+");

/** The formulas of a day, as a person would write them in a spreadsheet: a line of cells. */
function formulas(row: number, yesterday: number): string[] {
	const life = `${unit("readyLifeDays")},${unit("kitsInService")},1/B${row}`;
	const rounds = ["E", "F", "G"].map((column) => `${column}${row}`);
	return [
		`=A${row}*${unit("usesPer100")}/100`,
		`=GAMMA.DIST(${life},FALSE())/GAMMA.DIST(${life},TRUE())`,
		`=B${row}+C${row}`,
		`=(D${yesterday}*3+D${row}*7)/24`,
		`=D${row}*7/24`,
		`=D${row}*7/24`,
		`=${rounds.map((mean) => `1-EXP(-${mean})`).join("+")}`,
		`=${rounds.map(loadsOf).join("+")}`,
		`=H${row}*${unit("litres")}`,
		`=H${row}*CEILING(${unit("litres")}*1000*${unit("strengthPct")}/${unit("stockPct")},${unit("stepMl")})`,
		`=I${row}*${unit("buckets")}`,
		`=L${row}*${unit("bucketLitres")}`,
		`=H${row}/${unit("descaleEvery")}*${unit("vinegarLitres")}`,
		`=(E${row}+F${row}+G${row})*${unit("gauzePerKit")}`,
		`=H${row}*${unit("glovesPerRound")}`,
	];
}

/** Columns that hold MEANS, in that order. */
const COLUMNS = [0, 1, 2, 3, 7, 8, 9, 10, 11, 12, 13, 14, 15];

/** The means of a plan's days in a spreadsheet engine. */
export class Sheet {
	readonly #engine: HyperFormula;
	readonly #days: number;

	constructor(days: number, firstBirths = birthsOn(0)) {
		const lines = Array.from({ length: days }, (_, day) => [
			day === 0 ? firstBirths : birthsOn(day),
			...formulas(day + HEAD_ROWS, Math.max(day - 1, 0) + HEAD_ROWS),
		]);
		const last = days + HEAD_ROWS - 1;
		const totals = lines[0]?.map(
			(_, column) => `=SUM(${letter(column)}${HEAD_ROWS}:${letter(column)}${last})`,
		);
		const sheet = [Object.values(UNIT), ...lines, totals ?? []];
		this.#engine = HyperFormula.buildFromArray(sheet, {
			licenseKey: "gpl-v3",
			// Rounding to ten digits would hide whether both reckon alike, and costs the engine time.
			smartRounding: false,
		});
		this.#days = days;
	}

	/** One edit: the births of a day. */
	setBirths(day: number, births: number): void {
		this.#engine.setCellContents({ sheet: 0, row: day + 1, col: 0 }, [[births]]);
	}

	/** MEANS over all days. */
	totals(): number[] {
		return COLUMNS.map((col) =>
			Number(this.#engine.getCellValue({ sheet: 0, row: this.#days + 1, col })),
		);
	}

	/** One edit on which every formula but the sums of births hangs. */
	setUsesPer100(uses: number): void {
		const col = keys.indexOf("usesPer100");
		this.#engine.setCellContents({ sheet: 0, row: 0, col }, [[uses]]);
	}

	destroy(): void {
		this.#engine.destroy();
	}
}
