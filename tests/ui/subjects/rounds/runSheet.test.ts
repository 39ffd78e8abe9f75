import { expect, test } from "vitest";
import { DESCALE_STEP, RINSE_STEP } from "../../../../src/core/rounds/timedSteps.ts";
import { Store } from "../../../../src/ui/state/store.ts";
import {
	dayRounds,
	type ShownRound,
	type ShownStep,
	sortOf,
} from "../../../../src/ui/subjects/rounds/dayRounds.ts";
import { needsOfDay } from "../../../../src/ui/subjects/rounds/needsOfDay.ts";
import { roundClock, roundSpan } from "../../../../src/ui/subjects/rounds/roundClock.ts";
import { keyWords, stepNames } from "../../../../src/ui/subjects/rounds/timelineFigure.ts";
import { whoIsNeeded } from "../../../../src/ui/subjects/rounds/whoIsNeeded.ts";
import { unitWith } from "../../../core/smallUnit.ts";

const DAY = "2027-03-01";
const step = (name: string, startsAt: number, endsAt: number, people: number): ShownStep => ({
	step: name,
	sort: people > 0 ? "work" : "wait",
	startsAt,
	endsAt,
	people,
	method: "",
});
const round = (...steps: ShownStep[]): ShownRound => ({
	name: "Night",
	kits: 1,
	steps,
	onlyIf: "",
	waitsFor: "",
});

test("past midnight a time has its date, a time before it has none", () => {
	expect(roundClock(1439, DAY)).toBe("23:59");
	expect(roundClock(1440, DAY)).toBe("00:00 (Tue 2 Mar)");
	expect(roundSpan(1420, 1430, DAY)).toBe("23:40–23:50");
	expect(roundSpan(1430, 1450, DAY)).toBe("23:50–00:10 (Tue 2 Mar)");
	expect(roundSpan(1450, 1460, DAY)).toBe("00:10–00:20 (Tue 2 Mar)");
});

test("who is needed: work that follows work is one span, waiting is free", () => {
	const night = round(
		step("set out", 1400, 1410, 2),
		step("wash", 1410, 1430, 2),
		step("soak", 1430, 1450, 0),
		step("rinse", 1450, 1460, 2),
	);
	expect(whoIsNeeded(night, DAY)).toBe(
		"Night: 2 people 23:20–23:50 and 00:10–00:20 (Tue 2 Mar); nobody busy 23:50–00:10 (Tue 2 Mar).",
	);
	expect(whoIsNeeded(round(step("wash", 420, 430, 1)), DAY)).toBe("Night: 1 person 07:00–07:10.");
	expect(whoIsNeeded(round(step("hand over", 420, 420, 1)), DAY)).toBe("Night: nobody is needed.");
	expect(whoIsNeeded(round(step("soak", 420, 440, 0)), DAY)).toBe("Night: nobody is needed.");
	expect(whoIsNeeded({ ...round(), waitsFor: "The gap is short." }, DAY)).toBe(
		"Night has no times yet. The gap is short.",
	);
});

test("the list of steps keeps the order when a later round has a step more", () => {
	const plain = round(step("wash", 0, 10, 1), step("soak", 10, 30, 0), step("dry", 30, 40, 0));
	const more = round(
		step("wash", 0, 10, 1),
		step("descale", 10, 20, 0),
		step("soak (load 1 of 2)", 20, 40, 0),
		step("soak (load 2 of 2)", 40, 60, 0),
		step("dry", 60, 70, 0),
	);
	expect(stepNames([plain, more])).toEqual(["wash", "descale", "soak", "dry"]);
});

test("descaling, its rinse and the soak are told from other steps", () => {
	const holds = { chlorine: "Soak", boiling: "Boil" };
	expect(sortOf(DESCALE_STEP, false, "", holds)).toBe("descale");
	expect(sortOf(RINSE_STEP, true, "", holds)).toBe("rinse");
	expect(sortOf("Soak (load 2 of 3)", false, "chlorine", holds)).toBe("soak");
	expect(sortOf("Boil (load 2 of 3)", false, "boiling", holds)).toBe("hold");
	expect(sortOf("Boil", false, "steam", holds)).toBe("wait");
	expect(sortOf("Dry", false, "", holds)).toBe("wait");
	expect(sortOf("Wash", true, "", {})).toBe("work");
});

test("a round hangs on a kit that waits exactly where the work sheet's column says so", () => {
	const { state } = new Store(
		unitWith(
			{ ready_life_days: 30 },
			{ "kits.csv": "kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-28," },
		),
	);
	const rounds = dayRounds(state, DAY);
	const words = (onlyIf: string) =>
		needsOfDay(
			state,
			DAY,
			rounds.map((each) => ({ ...each, onlyIf })),
		)
			.flat()
			.join(" ");
	expect(rounds.map(({ onlyIf }) => onlyIf)).toContain("a kit waits");
	expect(words("a kit waits")).toContain("Only if a kit waits.");
	expect(words("")).not.toContain("Only if");
});

test("what stands under the timeline speaks of a soak and of vinegar only where there are some", () => {
	expect(keyWords([{ sort: "work" }, { sort: "hold" }])).not.toMatch(/soak|vinegar/);
	expect(keyWords([{ sort: "soak" }])).toContain("Over a soak");
	expect(keyWords([{ sort: "descale" }])).toContain("vinegar");
});
