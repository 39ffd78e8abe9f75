import { test } from "vitest";
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
		const exact = perDay(new EveryKitsEnd(kits, ends, steps), steps, kits);
		const near = perDay(new OldestKits(kits, ends, steps, 0.1), steps, kits);
		expectWithin(near, exact, 0.08 * exact, "kits a day");
	},
);
