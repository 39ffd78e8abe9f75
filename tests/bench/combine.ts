import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import Papa from "papaparse";
import { headerOf } from "../../src/core/sheet.ts";
import { orderSheet } from "../../src/core/sheets/order.ts";
import { combineOrders } from "../../src/core/units/combineOrders.ts";
import { computedCsv } from "../../src/io/computedCsv.ts";
import { readOrders } from "../../src/io/readOrders.ts";
import { against, heapMb, type Measured, measure, report } from "./measure.ts";

/**
 * Many units' order files of 30 items each, invented, from bytes to the written list;
 * beside papaparse alone reading the same bytes in the same run. Heap is what the
 * orders hold once read.
 */
const FILES = [20, 200, 2000];
const ITEMS = 30;
setFlagsFromString("--expose_gc");
(globalThis as { gc?: () => void }).gc = runInNewContext("gc");

const header = headerOf(orderSheet).join(",");
const rows: Measured[] = [];
for (const count of FILES) {
	const files = Array.from({ length: count }, (_, unit) => ({
		name: `unit-${unit}.csv`,
		bytes: new TextEncoder().encode(orderOf(unit)),
	}));
	const bytes = files.reduce((sum, file) => sum + file.bytes.length, 0);
	const name = `${count} files, ${(bytes / 1e6).toFixed(1)} MB`;
	const parser = measure(`${name}: papaparse alone`, () =>
		files.map((file) => Papa.parse<string[]>(new TextDecoder().decode(file.bytes)).data.length),
	);
	rows.push(parser);
	const before = heapMb();
	const read = readOrders(files);
	const held = heapMb() - before;
	if (read.problems.length > 0) throw new Error(read.problems[0]?.message);
	rows.push({
		...against(
			parser,
			measure(`${name}: read`, () => readOrders(files)),
		),
		heapMb: held,
	});
	rows.push(
		against(
			parser,
			measure(`${name}: add up and write`, () => computedCsv(combineOrders(read.orders))),
		),
	);
	rows.push(
		against(
			parser,
			measure(`${name}: bytes → list`, () => computedCsv(combineOrders(readOrders(files).orders))),
		),
	);
}
report("combine", rows);
console.log(`  largest resident size ${Math.round(process.resourceUsage().maxRSS / 1000)} MB`);

/** An invented order: every unit a little different. */
function orderOf(unit: number): string {
	const lines = Array.from({ length: ITEMS }, (_, item) => {
		const target = 100 + ((unit * 37 + item * 11) % 400);
		const usable = (unit * 13 + item * 7) % 300;
		const packs = Math.max(0, Math.ceil((target - usable) / 50));
		return `item ${item},piece,${usable}.25,0,${target / 2},${target},${packs},${packs * 50},${packs * 2},2027-04-${10 + (unit % 20)},2027-03-${10 + (unit % 20)},${(usable / target).toFixed(6)},,no,50,2,Unit ${unit}`;
	});
	return [header, ...lines].join("\r\n");
}
