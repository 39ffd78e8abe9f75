import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { Chance } from "../fuzz/chance.ts";
import { actions } from "../soak/actions.ts";
import { Soak } from "../soak/soak.ts";
import { browser, onStick } from "./fixture.ts";

/** Chance may choose a cell that cannot be clicked, or a field that is gone meanwhile. */
const TRIES = 12;

describe("what the soak does can be done on the page as it is", { timeout: 60_000 }, () => {
	let soak: Soak;
	beforeAll(async () => {
		soak = await Soak.open(browser, onStick, new Chance(7));
		await soak.save();
	});
	afterAll(() => soak.close());

	test.each(actions.map((action) => [action.name, action] as const))(
		"%s",
		async (name, { act }) => {
			let done = false;
			for (let tries = TRIES; tries > 0 && !done; tries--) {
				await soak.step(name, () => soak.goTo("births.csv"));
				done = await soak.step(name, () => act(soak));
			}
			expect(done).toBe(true);
			expect(soak.troubles).toEqual([]);
		},
	);
});
