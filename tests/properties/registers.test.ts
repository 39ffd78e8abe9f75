import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plan } from "../../src/core/plan/plan.ts";
import { columnOf, contentOf, everything } from "../core/contentOf.ts";
import { numberIn, rowsOf } from "../core/planCells.ts";
import { smallUnit } from "../core/smallUnit.ts";
import { expectEqual } from "../expectEqual.ts";
import { always } from "./workbooks.ts";

const KITS = ["A", "B", "C", "D"];
const CHECKS =
	"checked_at,kit,pieces_counted,clean,bag_refills,valve_moves,seal_holds,relief_opens,suction_holds,note";
const answer = fc.constantFrom("yes", "yes", "yes", "no", "");
const twoDigits = (n: number) => String(n).padStart(2, "0");
const check = fc
	.record({
		day: fc.integer({ min: 10, max: 28 }),
		hour: fc.integer({ min: 0, max: 23 }),
		kit: fc.constantFrom(...KITS),
		pieces: fc.constantFrom("5", "5", "5", "4", ""),
		clean: answer,
		tests: fc.tuple(answer, answer, answer, answer, answer),
	})
	.map((c) => ({
		...c,
		at: `2027-02-${c.day} ${twoDigits(c.hour)}:00`,
		line: `2027-02-${c.day} ${twoDigits(c.hour)}:00,${c.kit},${c.pieces},${c.clean},${c.tests.join(",")},`,
	}));
/** Fewer pieces than the five of the list; not counted is not short. */
const isShort = (pieces: string) => pieces !== "" && Number(pieces) < 5;
/** Checks at different times, so that which is the latest is not open. */
const checks = fc.uniqueArray(check, { maxLength: 12, selector: (c) => c.at });
const kits = fc
	.array(fc.option(fc.integer({ min: 10, max: 28 })), { minLength: 4, maxLength: 4 })
	.map((days) =>
		[
			"kit,kind,status,ready_since,note",
			...days.map(
				(day, i) =>
					`${KITS[i]},bag set,${i === 3 ? "out_of_service" : "in_service"},${day === null ? "" : `2027-02-${day}`},`,
			),
		].join("\n"),
	);
const planOf = (register: string, lines: readonly string[]) =>
	plan(smallUnit({ "kits.csv": register, "checks.csv": [CHECKS, ...lines].join("\n") }));

describe("the register of kits, by any checks", () => {
	test("the kits that count are the kits in service, everywhere", () => {
		fc.assert(
			fc.property(kits, checks, (register, list) => {
				const made = planOf(
					register,
					list.map((c) => c.line),
				);
				const counts = columnOf(made, "kit-register.csv", "counts").filter(
					(c) => c === "yes",
				).length;
				expect(new Set(columnOf(made, "day-plan.csv", "kits_in_service"))).toEqual(
					new Set([counts]),
				);
				expect(numberIn(rowsOf(made, "levers.csv")[0], "kits")).toBe(counts);
			}),
			always(60),
		);
	}, 60_000);

	test("a kit that failed a check since the register called it ready is not ready, whatever passed later", () => {
		fc.assert(
			fc.property(kits, checks, (register, list) => {
				const made = planOf(
					register,
					list.map((c) => c.line),
				);
				const since = new Map(
					register.split("\n").map((line) => [line.split(",")[0], line.split(",")[3] ?? ""]),
				);
				const failed = list
					// One failure is enough, whatever was not looked at any more.
					.filter((c) => isShort(c.pieces) || [c.clean, ...c.tests].includes("no"))
					// The register's word holds from the end of its day.
					.filter((c) => c.at.slice(0, 10) > (since.get(c.kit) ?? ""));
				for (const [kit, state, counts] of contentOf(
					made,
					"kit-register.csv",
					"kit",
					"state",
					"counts",
				)) {
					const its = failed.filter((c) => c.kit === kit);
					// Out until a later round's own check has passed, and there is no round here.
					const isOut = its.some((c) => isShort(c.pieces) || c.tests.includes("no"));
					if (its.length > 0 || kit === "D") expect(state).not.toBe("ready");
					expect(counts).toBe(isOut || kit === "D" ? "no" : "yes");
				}
			}),
			always(100),
		);
	}, 60_000);

	test("places of use run from 1 without gaps, the longest ready first", () => {
		fc.assert(
			fc.property(kits, checks, (register, list) => {
				const rows = contentOf(
					planOf(
						register,
						list.map((c) => c.line),
					),
					"kit-register.csv",
					"state",
					"use_next",
					"ready_since",
				)
					.filter(([state]) => state === "ready")
					.sort(([, a], [, b]) => Number(a) - Number(b));
				expect(rows.map(([, place]) => place)).toEqual(rows.map((_, i) => i + 1));
				const since = rows.map(([, , day]) => String(day));
				expect(since).toEqual([...since].sort());
			}),
			always(60),
		);
	}, 60_000);

	test("the order in which checks are listed does not matter", () => {
		fc.assert(
			fc.property(kits, checks, (register, list) => {
				const lines = list.map((c) => c.line);
				const without = (made: ReturnType<typeof plan>) => ({ ...everything(made), problems: [] });
				expectEqual(
					without(planOf(register, lines.toReversed())),
					without(planOf(register, lines)),
				);
			}),
			always(30),
		);
	}, 60_000);
});
