import { expect, test } from "vitest";
import { always } from "../../../src/core/counts/counts.ts";
import { kitsThatCame } from "../../../src/core/kits/kitsThatCame.ts";
import type { RenewalsOfDay } from "../../../src/core/kits/renewalsOfDay.ts";
import { type RoundOfPlan, RoundsGoneThrough } from "../../../src/core/kits/roundsGoneThrough.ts";
import { expectWithin } from "../../expectWithin.ts";
import { equalRounds } from "./reprocessed.ts";

test("what goes out of date at midnight hangs on the uses before it, not on those after", () => {
	const [kits, perDay] = [3, 0.5];
	const life = { days: 2, renewal: "when_expired" } as const;
	const plan = new RoundsGoneThrough({ ...equalRounds([perDay], [600], 110), life });
	// One kit, if none was used from the round to midnight.
	const renewed: RenewalsOfDay = {
		kits,
		given: [(used) => always(used === 0 ? 1 : 0)],
		perDay: Math.exp((-perDay * 14) / 24),
	};
	const came = kitsThatCame(kits, plan.rounds[0] as RoundOfPlan, plan, renewed);
	const [before, after] = [(perDay * 14) / 24, (perDay * 10) / 24];
	const none = Math.exp(-perDay);
	// One: it went out of date and none was used after, or was used before. Two: the one and one used
	// after, one used before and one after, or both used before.
	const wanted = [0, none * (1 + before), none * (after + before * after + before ** 2 / 2)];
	wanted.forEach((chance, n) => {
		expectWithin(came[n], chance, 1e-12, `chance of ${n}`);
	});
	expect(came).toHaveLength(kits + 1);
});

test("of so many uses that none at all hardly ever comes, each number is as likely as Poisson has it", () => {
	const plan = new RoundsGoneThrough(equalRounds([90], [600], 110));
	const came = kitsThatCame(400, plan.rounds[0] as RoundOfPlan, plan, undefined);
	let chance = Math.exp(-90);
	for (let n = 0; n <= 140; n++) {
		expectWithin(came[n], chance, 1e-12, `chance of ${n}`);
		chance *= 90 / (n + 1);
	}
});
