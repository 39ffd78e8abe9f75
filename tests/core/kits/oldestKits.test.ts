import { expect, test } from "vitest";
import { EveryKitsEnd } from "../../../src/core/kits/everyKitsEnd.ts";
import { OldestKits } from "../../../src/core/kits/oldestKits.ts";
import { type RenewalStep, renewalSteps, renews } from "../../../src/core/kits/renewalSteps.ts";
import { expectWithin } from "../../expectWithin.ts";

const DAYS = 60;

/** Renewals a day once the first half of the days has settled them. */
function perDay(chain: EveryKitsEnd | OldestKits, steps: readonly RenewalStep[], kits: number) {
	const given = new Float64Array((kits + 1) ** 2);
	let sum = 0;
	for (let day = 0; day < DAYS; day++)
		for (const step of steps) {
			const uses = chain.go(step, given);
			if (!renews(step) || day < DAYS / 2) continue;
			given.forEach((chance, at) => {
				const [used, renewed] = [Math.floor(at / (kits + 1)), at % (kits + 1)];
				sum += ((uses[used] as number) * chance * renewed) / (DAYS / 2);
			});
		}
	return sum;
}

// Only the oldest are followed exactly: of so few kits the others make the most difference.
test.each([
	["when_expired", 4, 0.6, [420], 5],
	["when_expired", 4, 0.3, [420, 840], 4],
	["when_expired", 3, 0.2, [420], 7],
	["in_time", 4, 0.6, [420], 5],
	["in_time", 4, 0.3, [420, 840], 4],
	["in_time", 5, 0.5, [420], 4],
	["in_time", 3, 0.3, [420, 840], 2],
] as const)(
	"%s, %d kits and %d uses a day: nearly as where every kit's last day is followed",
	(renewal, kits, uses, starts, days) => {
		const share = uses / (starts.length + 1);
		const day = {
			starts,
			uses: starts.map(() => share),
			usesAfterMidnight: share,
			plannedMinutes: 60,
		};
		const steps = renewalSteps(day, { days, renewal });
		const ends = Math.max(...steps.map(({ target }) => target)) + 1;
		const exact = perDay(new EveryKitsEnd(kits, ends), steps, kits);
		const near = perDay(new OldestKits(kits, ends, steps, 0.1), steps, kits);
		expectWithin(near, exact, 0.08 * exact, "kits a day");
	},
);

/** Steps of days with some uses, and the days kits end on. */
function stepsOf(
	renewal: "when_expired" | "in_time",
	uses: number,
	starts: number[],
	days: number,
) {
	const share = uses / (starts.length + 1);
	const each = { starts, uses: starts.map(() => share), usesAfterMidnight: share };
	const steps = renewalSteps({ ...each, plannedMinutes: 60 }, { days, renewal });
	return { steps, ends: Math.max(...steps.map(({ target }) => target)) + 1 };
}

/** The first days hang on how it begins, which later ones forget. */
test.each([
	["when_expired", 4, 0.6, [420], 5, 0.9202446912492338],
	["in_time", 4, 0.3, [420, 840], 4, 3.21618413140029],
	["in_time", 7, 0.5, [420], 6, 3.106717082695459],
] as const)(
	"%s, %d kits: the first days as they stand",
	(renewal, kits, uses, starts, days, sum) => {
		const { steps, ends } = stepsOf(renewal, uses, [...starts], days);
		const chain = new OldestKits(kits, ends, steps, 0.1);
		const given = new Float64Array((kits + 1) ** 2);
		let found = 0;
		for (let day = 0; day < 4; day++)
			for (const step of steps) {
				const used = chain.go(step, given);
				if (!renews(step)) continue;
				given.forEach((chance, at) => {
					found += (used[Math.floor(at / (kits + 1))] as number) * chance * (at % (kits + 1));
				});
			}
		expectWithin(found, sum, 1e-12, "kits");
	},
);

test.each([1e-5, 0.3, 6])(
	"%d uses a day: whatever was used, so many or so many are renewed",
	(uses) => {
		for (const renewal of ["when_expired", "in_time"] as const) {
			const { steps, ends } = stepsOf(renewal, uses, [420], 4);
			const chain = new OldestKits(5, ends, steps, 0.1);
			const given = new Float64Array(36).fill(9);
			for (let day = 0; day < 3; day++)
				for (const step of steps) {
					chain.go(step, given);
					if (!renews(step)) continue;
					for (let used = 0; used <= 5; used++) {
						const row = given.subarray(6 * used, 6 * (used + 1));
						expectWithin(
							row.reduce((all, chance) => all + chance, 0),
							1,
							1e-9,
							"chance",
						);
					}
				}
		}
	},
);

test("how many kits a round gives back adds up to all there may be, also where all are renewed", () => {
	const [kits, days] = [2, 3];
	const { steps, ends } = stepsOf("in_time", 0.2, [420], days);
	const chain = new OldestKits(kits, ends, steps, 0.1);
	for (let day = 0; day < 10; day++) for (const step of steps) chain.go(step);
	// The last day that is followed holds what the last round gave back.
	const back = chain.chances().slice(-(kits + 1));
	expectWithin(
		back.reduce((sum, chance) => sum + chance, 0),
		1,
		1e-4,
		"chance",
	);
});

test.each(["every kit", "the oldest"])("%s followed goes on from other chances", (which) => {
	const { steps, ends } = stepsOf("in_time", 0.4, [420, 840], 3);
	const chainOf = () =>
		which === "every kit" ? new EveryKitsEnd(4, ends) : new OldestKits(4, ends, steps, 0.1);
	const [first, other] = [chainOf(), chainOf()];
	const goDays = (chain: EveryKitsEnd | OldestKits, days: number) => {
		for (let day = 0; day < days; day++) for (const step of steps) chain.go(step);
	};
	goDays(first, 5);
	other.goOnFrom(first.chances());
	goDays(first, 2);
	goDays(other, 2);
	const chances = other.chances();
	expect(chances).toHaveLength(first.chances().length);
	first.chances().forEach((chance, i) => {
		expectWithin(chances[i] as number, chance, 1e-12, "");
	});
});
