import { expect, test } from "vitest";
import { plannedUnits } from "../../src/cli/district/plannedUnits.ts";

const FALLING = new URL("./fallingWorker.ts", import.meta.url).href;
const district = { folder: "", names: [], answers: {}, today: undefined };

async function* tasks() {
	for (const paths of [["a", "b"], ["c", "bad", "d"], ["e"]]) yield { paths };
}

test("a unit that takes its worker with it has a row that says so; no other is lost, and their order stays", async () => {
	const states: [string, string][] = [];
	const never = new AbortController().signal;
	for await (const units of plannedUnits(district, tasks(), 1, never, FALLING))
		for (const { path, state } of units) states.push([path, state]);
	expect(states).toEqual([
		["a", "look"],
		["b", "look"],
		["c", "look"],
		["bad", "not_read"],
		["d", "look"],
		["e", "look"],
	]);
});
