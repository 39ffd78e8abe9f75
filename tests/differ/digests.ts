import { digestOf, type Way } from "./saidBy.ts";

/** Prints what the plans of some invented workbooks say, each as one line: for another process to compare. */
const [way = "made", seed = "1", cases = "1"] = process.argv.slice(2);
for (let number = Number(seed); number < Number(seed) + Number(cases); number++)
	console.log(digestOf(number, way as Way));
