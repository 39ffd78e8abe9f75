import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Covered, covered } from "./cover.ts";
import { type Kept, played } from "./results.ts";
import { resultsPage } from "./resultsPage.ts";
import { scenarios } from "./scenarios.ts";

/** What a stopped run had done stays here, so that the next goes on from it; delete it after changing the core. */
const DONE = join(import.meta.dirname, "../../../coverage/backtest");
mkdirSync(DONE, { recursive: true });

function once<T>(name: string, work: () => T): T {
	const file = join(DONE, `${name}.json`);
	if (existsSync(file)) return JSON.parse(readFileSync(file, "utf8")) as T;
	const result = work();
	writeFileSync(file, JSON.stringify(result));
	return result;
}

const sorts = [
	{ perDay: 1, kitsPer100: 10 },
	{ perDay: 1, kitsPer100: 100 },
	{ perDay: 6, kitsPer100: 10 },
	{ perDay: 6, kitsPer100: 100 },
	{ perDay: 25, kitsPer100: 30 },
];
const cover: Covered[] = sorts.flatMap(({ perDay, kitsPer100 }, i) =>
	[scenarios[0], scenarios.at(-1)].flatMap((like, j) => {
		const how = like?.unit.reprocessing === "in_rounds" ? "in rounds" : "after each use";
		const name = `${perDay} births a day, ${kitsPer100} kits per 100, ${how}`;
		const unit = { ...(like as (typeof scenarios)[0]).unit, kitsPer100, name };
		return once(`cover-${i}-${j}`, () => covered(unit, perDay, 9_000 + 100 * i + j));
	}),
);
const kept: Kept[] = scenarios.flatMap((scenario, i) => {
	const result = once(`kept-${i}`, () => played(scenario, 1_000 + i));
	console.log(`${i + 1} of ${scenarios.length}: ${scenario.name}`);
	return result;
});
writeFileSync(
	join(import.meta.dirname, "../RESULTS.md"),
	resultsPage(kept, cover, scenarios.length),
);
