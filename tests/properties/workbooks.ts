import fc from "fast-check";
import { withTexts } from "../../src/core/edit/withTexts.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { smallUnit, unitWith } from "../core/smallUnit.ts";

/**
 * The same cases in every run, so that a failure can be looked at again. A case of one
 * calculation costs microseconds, so hundreds or thousands are tried; a case of a whole plan
 * costs tens of milliseconds, and as many are tried as take a second or two.
 */
export const always = (numRuns: number) => ({ seed: 20_270_301, numRuns });

const number = (min: number, max: number) =>
	fc.double({ min, max, noNaN: true }).map((x) => Number(x.toFixed(6)));
const whole = (min: number, max: number) => fc.integer({ min, max });

/** Any values that the settings allow, a few of them at a time. */
export const settings = fc.record(
	{
		plan_days: whole(1, 14),
		plan_confidence: number(0.5, 0.9999),
		births_per_day: fc.oneof(number(0, 30), number(0, 500), fc.constant(0)),
		kits_used_per_100_births: number(0, 100),
		delivery_beds: whole(0, 20),
		spare_kits: whole(0, 20),
		unmet_per_1000_uses: number(0.001, 500),
		reprocessing: fc.constantFrom("in_rounds", "after_each_use"),
		ready_life_days: number(0.25, 90),
		target_strength_pct: number(0.01, 5),
		solution_made: fc.constantFrom("each_round", "each_day"),
		solution_life_hours: number(1, 24),
		soak_fill_litres: number(0.1, 200),
		soak_container_litres: number(0.1, 400),
		soak_capacity_kits: whole(1, 50),
		kit_displacement_litres: number(0, 10),
		wipe_solution_litres: number(0, 50),
		carry_in_ml_per_kit: number(0, 1000),
		measure_step_ml: number(0.1, 1000),
		measure_step_g: number(0.01, 1000),
		descale_every_rounds: whole(0, 1000),
		vinegar_acid_pct: number(1, 80),
		descale_acid_pct: number(0.1, 10),
		workers_per_round: whole(1, 20),
	},
	{ requiredKeys: ["births_per_day"] },
);

const clock = (minute: number) =>
	`${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
const rounds = fc
	.uniqueArray(whole(0, 1439), { minLength: 1, maxLength: 6 })
	.map((minutes) => ["start,label", ...minutes.map((m) => `${clock(m)},`)].join("\n"));
const hours = fc
	.array(fc.constantFrom(0, 0, 1, 1, 3, 0.1), { minLength: 24, maxLength: 24 })
	.filter((weights) => weights.some((w) => w > 0))
	.map((weights) => ["hour,share", ...weights.map((w, hour) => `${hour},${w}`)].join("\n"));
const kits = whole(0, 12).map((count) =>
	[
		"kit,kind,status,ready_since,note",
		...Array.from({ length: count }, (_, i) => `K${i},bag set,in_service,,`),
	].join("\n"),
);
const usage = fc
	.array(
		fc.tuple(
			fc.constantFrom("day", "round", "load", "kit", "piece", "worker_round", "descale"),
			number(0, 20),
		),
		{ maxLength: 4 },
	)
	.map((lines) =>
		["item,basis,quantity,note", ...lines.map(([basis, q]) => `gauze squares,${basis},${q},`)].join(
			"\n",
		),
	);

/** A workbook in which every cell can be understood. */
export const validWorkbook: fc.Arbitrary<Workbook> = fc
	.record({ settings, rounds, hours: fc.option(hours), kits, usage })
	.map((unit) =>
		unitWith(unit.settings as Record<string, string | number>, {
			"rounds.csv": unit.rounds,
			"kits.csv": unit.kits,
			"usage.csv": unit.usage,
			...(unit.hours ? { "hours.csv": unit.hours } : {}),
		}),
	);

const trouble = fc.constantFrom(
	"",
	" ",
	"NaN",
	"Infinity",
	"-Infinity",
	"1e308",
	"1e-308",
	"-0",
	"-1",
	"0",
	"1e9",
	"1,000",
	"two",
	"=1+1",
	"<script>alert(1)</script>",
	"2027-02-30",
	"9999-12-31",
	"24:00",
	"yes",
	"constructor",
	"__proto__",
	"\u0000",
	"x".repeat(5000),
	"\ud800",
	"each_day",
	"pct_w_w",
	"descale",
);
/** Any character but half a pair, as the library's own unit "binary", which takes a second to list them all. */
const SURROGATES = 0x800;
const character = whole(0, 0x10ffff - SURROGATES).map((n) =>
	String.fromCodePoint(n < 0xd800 ? n : n + SURROGATES),
);
/** Whatever may stand in a cell. */
export const cellText = fc.oneof(
	trouble,
	fc.string({ unit: character, maxLength: 20 }),
	fc.double().map(String),
	fc.integer().map(String),
);

const columns = Object.entries(smallUnit().tables).flatMap(([file, { header }]) =>
	header.map((column) => [file, column] as const),
);
const edit = fc.record({ at: fc.constantFrom(...columns), row: whole(0, 9), text: cellText });

/** A workbook into some of whose cells anything has been typed. */
export const spoiltWorkbook: fc.Arbitrary<Workbook> = fc
	.tuple(validWorkbook, fc.array(edit, { minLength: 1, maxLength: 5 }))
	.map(([workbook, edits]) =>
		edits.reduce(
			(now, { at: [file, column], row, text }) => withTexts(now, file, [{ row, column, text }]),
			workbook,
		),
	);

/** Tables of any shape under the names of the format. */
export const strangeWorkbook: fc.Arbitrary<Workbook> = fc
	.dictionary(
		fc.constantFrom(
			...Object.keys(smallUnit().tables),
			"hours.csv",
			"records.csv",
			"checks.csv",
			"other.csv",
		),
		fc.record({
			header: fc.array(
				fc.oneof(fc.constantFrom(...columns.map(([, column]) => column)), cellText),
				{ maxLength: 8 },
			),
			rows: fc.array(fc.array(cellText, { maxLength: 8 }), { maxLength: 5 }),
		}),
	)
	.map((tables) => ({ tables }));
