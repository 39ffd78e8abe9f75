import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { contentOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

const kits = (kind: string, mark: string) =>
	[1, 2, 3, 4, 5].map((n) => `${mark}${n},${kind},in_service,2027-02-27,`);

/** Kits needed of each kind where hardly any birth uses one, so that beds and spares decide, or agree with the risk. */
function needed(kindUse: string): [string, number][] {
	const made = plan(
		unitWith(
			{ births_per_day: 0.01, delivery_beds: 3, spare_kits: 1, unmet_per_1000_uses: 500 },
			{
				"kinds.csv": "kind,piece,count\nbag set,bag,1\nsuction set,bulb,1",
				"kits.csv": [
					"kit,kind,status,ready_since,note",
					...kits("bag set", "A"),
					...kits("suction set", "S"),
				].join("\n"),
				"kind-use.csv": kindUse,
			},
		),
	);
	return contentOf(made, "kit-cover.csv", "kind", "kits", "deciding")
		.filter(([, , deciding]) => Boolean(deciding))
		.map(([kind, count]) => [String(kind), Number(count)]);
}

test.each<[string, string, [string, number][]]>([
	[
		"left blank: all beds for the kind most used, none for the other, spares for both",
		"kind,uses_per_100_births\nbag set,1\nsuction set,2",
		[
			["bag set", 1],
			["suction set", 4],
		],
	],
	[
		"left blank: the first listed of two that are used as much, or more",
		"kind,uses_per_100_births\nbag set,2\nsuction set,2",
		[
			["bag set", 4],
			["suction set", 1],
		],
	],
	[
		"as the kind's own row says",
		"kind,uses_per_100_births,beds,spares\nbag set,1,2,3\nsuction set,2,1,",
		[
			["bag set", 5],
			["suction set", 2],
		],
	],
])("beds and spares, %s", (_, kindUse, expected) => {
	expect(needed(kindUse)).toEqual(expected);
});
