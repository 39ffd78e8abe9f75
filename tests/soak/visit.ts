import type { Browser } from "playwright-core";
import { computedSheets } from "../../src/core/sheets/computedSheets.ts";
import type { Site } from "../browser/site.ts";
import { Chance } from "../fuzz/chance.ts";
import { actions, nextAction } from "./actions.ts";
import { dropFiles } from "./dropFiles.ts";
import { Soak, type Weight } from "./soak.ts";

const EVERY = 500;
const MOST_TROUBLES = 30;

interface Weighed extends Weight {
	readonly after: number;
	readonly minutes: number;
}

/** What one person did on one page, and what came of it. */
export interface Visit {
	readonly seed: number;
	readonly acts: number;
	readonly minutes: number;
	readonly saves: number;
	/** Of each act: how often it was done, and how long all of them took. */
	readonly done: ReadonlyMap<string, { readonly times: number; readonly ms: number }>;
	readonly weights: readonly Weighed[];
	readonly troubles: readonly string[];
	/** Worked-out sheets that a fresh page shows otherwise. */
	readonly differing: readonly string[];
}

interface Length {
	readonly acts: number;
	readonly minutes: number;
}

/** One page, and one person at it for very long; ends after so many acts or minutes. */
export async function visit(
	browser: Browser,
	site: Site,
	seed: number,
	most: Length,
): Promise<Visit> {
	const soak = await Soak.open(browser, site, new Chance(seed));
	const done = new Map(actions.map(({ name }) => [name, { times: 0, ms: 0 }]));
	const weights: Weighed[] = [];
	const started = performance.now();
	const minutes = () => (performance.now() - started) / 60_000;
	let acts = 0;
	const weigh = async () => {
		const weighed = { after: acts, minutes: minutes(), ...(await soak.weigh()) };
		weights.push(weighed);
		const { heapMb, nodes } = weighed;
		console.log(
			`${seed}, ${acts}: ${heapMb.toFixed(1)} MB, ${nodes} nodes, ${soak.troubles.length} troubles`,
		);
	};
	const goesOn = () =>
		acts < most.acts && minutes() < most.minutes && soak.troubles.length < MOST_TROUBLES;
	for (let at = 0; goesOn(); at++) {
		if (acts === weights.length * EVERY) await weigh();
		const action = nextAction(soak.chance);
		const began = performance.now();
		const acted = await soak.step(`${seed}, ${at} ${action.name}`, () => action.act(soak));
		if (!acted) continue;
		acts++;
		const { times, ms } = done.get(action.name) ?? { times: 0, ms: 0 };
		done.set(action.name, { times: times + 1, ms: ms + performance.now() - began });
	}
	await weigh();
	let differing: readonly string[] = [];
	await soak.step(`${seed}, at the end`, async () => {
		differing = await shownOtherwise(browser, site, soak);
		return true;
	});
	const { saves, troubles } = soak;
	await soak.close();
	return { seed, acts, minutes: minutes(), saves, done, weights, troubles, differing };
}

/** Saved, and opened in a page that has seen nothing of all this, every worked-out sheet is the same. */
async function shownOtherwise(browser: Browser, site: Site, soak: Soak): Promise<string[]> {
	await soak.save();
	const files = computedSheets.map(({ file }) => file).filter((file) => soak.sheets.includes(file));
	const shown = await soak.shown(files);
	const fresh = await Soak.open(browser, site, soak.chance);
	await fresh.page.keyboard.press("Escape");
	await dropFiles(fresh.page, [{ name: "saved.zip", bytes: soak.saved ?? new Uint8Array() }]);
	const anew = await fresh.shown(files);
	await fresh.close();
	const other = files.filter((file) => JSON.stringify(shown[file]) !== JSON.stringify(anew[file]));
	for (const file of other) soak.trouble(`${file} is shown otherwise in a fresh page`);
	return other;
}
