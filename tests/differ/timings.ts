import { timeOf } from "./times.ts";

/** Prints how long some invented workbooks take, each as one line. The first is gone through twice: what runs for the first time is not quick yet. */
const [seed = "1", cases = "1"] = process.argv.slice(2);
timeOf(Number(seed));
for (let number = Number(seed); number < Number(seed) + Number(cases); number++)
	console.log(JSON.stringify(timeOf(number)));
