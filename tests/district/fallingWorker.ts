import type { UnitsTask } from "../../src/cli/district/district.ts";

/** A worker that falls, as one does that has no memory left, when it comes to the unit "bad", and else hands over the units' names. */
export default function fallingWorker({ paths }: UnitsTask) {
	if (paths.includes("bad"))
		return new Promise(() => {
			setImmediate(() => {
				throw new Error("fallen");
			});
		});
	return paths.map((name) => ({
		name,
		path: name,
		lines: {},
		orders: [],
		months: [],
		state: "look",
	}));
}
