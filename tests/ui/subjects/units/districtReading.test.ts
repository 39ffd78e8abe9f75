import { describe, expect, test } from "vitest";
import { comeWords } from "../../../../src/ui/subjects/units/comeWords.ts";
import {
	type Asking,
	type Come,
	DistrictReading,
} from "../../../../src/ui/subjects/units/districtReading.ts";
import { givenUnits } from "../../../../src/ui/subjects/units/givenUnits.ts";

const HEADER =
	"item,measure,usable,on_order,use_expected,target_stock,order_packs,order_quantity,cost,run_out_on,order_by,months_of_stock,remark,emergency,pack_size,pack_price,unit_name";

function units(from: number, to: number, usable = "70") {
	const files = Array.from({ length: to - from + 1 }, (_, at) => {
		const text = `${HEADER}\ngauze,piece,${usable},0,80,100,1,100,2,,,,,no,100,2,Unit ${from + at}\n`;
		return { path: `${from + at}.csv`, file: new File([text], `${from + at}.csv`) };
	});
	return givenUnits(files).units;
}

const nobody: Asking = async () => undefined;

/** A page that notes what it is told, and acts on it. */
function watcher(act: (come: Come) => void = () => undefined) {
	const told: string[] = [];
	return {
		told,
		went(come: Come) {
			told.push(`${come.read} of ${come.all}`);
			act(come);
		},
		ended: ({ read }: Come) => void told.push(`ended at ${read}`),
	};
}

describe("the reading of a district", () => {
	test("says how far it has come after each unit; what is given meanwhile is read too", async () => {
		const reading = new DistrictReading(nobody);
		reading.district.receive(units(1, 2));
		const page = watcher(({ read, all }) => {
			if (read === 1 && all === 2) reading.district.receive(units(3, 3));
		});
		reading.watch(page);
		await reading.read(undefined);
		expect(page.told).toEqual(["0 of 2", "1 of 2", "2 of 3", "3 of 3", "ended at 3"]);
		expect(reading.district.units).toHaveLength(3);
	});

	test("gives the page a turn after each unit", async () => {
		const reading = new DistrictReading(nobody);
		reading.district.receive(units(1, 5));
		const seen = new Set<number>();
		const { port1, port2 } = new MessageChannel();
		port1.onmessage = () => {
			seen.add(reading.come.read);
			port2.postMessage(undefined);
		};
		port2.postMessage(undefined);
		await reading.read(undefined);
		port1.close();
		expect([...seen]).toEqual([0, 1, 2, 3, 4, 5]);
	});

	test("a stop leaves the rest waiting, and a second reading goes on with them", async () => {
		const reading = new DistrictReading(nobody);
		reading.district.receive(units(1, 4));
		const page = watcher(({ read }) => {
			if (read === 1) reading.stop();
		});
		const away = reading.watch(page);
		await reading.read(undefined);
		expect([reading.district.units.length, reading.district.waiting]).toEqual([1, 3]);
		away();
		await reading.read(undefined);
		expect([reading.district.units.length, reading.district.waiting]).toEqual([4, 0]);
		expect(page.told).toEqual(["0 of 4", "1 of 4", "ended at 1"]);
	});

	test("goes on while nobody looks, but a question waits until somebody is back", async () => {
		const asked: string[] = [];
		const reading = new DistrictReading(async ({ about }) => {
			asked.push(about);
			return { numbers: "point" };
		});
		reading.district.receive([...units(1, 1), ...units(2, 3, "1.400")]);
		const going = reading.read(undefined);
		await expect.poll(() => reading.come.read).toBe(1);
		await new Promise((later) => setTimeout(later, 30));
		expect([asked, reading.come.read, reading.isGoing]).toEqual([[], 1, true]);
		reading.watch(watcher());
		await going;
		expect(asked).toEqual(["numbers"]);
		expect(reading.district.units.flatMap(({ orders }) => orders[0]?.usable)).toEqual(
			expect.arrayContaining([70, 1.4, 1.4]),
		);
	});
});

test.each([
	[{ read: 3, all: 2000, ms: 900 }, "3 of 2\u202f000 units read and planned"],
	[
		{ read: 500, all: 2000, ms: 100_000 },
		"500 of 2\u202f000 units read and planned; about 5 minutes more",
	],
	[{ read: 1900, all: 2000, ms: 300_000 }, "1\u202f900 of 2\u202f000 units read and planned"],
])("%o is told as %s", (come, words) => {
	expect(comeWords(come).replaceAll("\u00a0", " ")).toBe(words);
});
