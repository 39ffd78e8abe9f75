import { derive, type Figure, gather } from "../../calculation.ts";
import { kitsInLoad } from "../../chlorine/kitsInLoad.ts";
import { memoize } from "../../memoize.ts";
import type { LoadMethod } from "../../methods/method.ts";
import type { MethodsOfKits } from "../../methods/methodsOfKits.ts";
import { valueIn } from "../../outcome.ts";
import type { Settings } from "../../read/readSettings.ts";
import { type Loads, loadMethodsOf, loadsByMethod } from "../../rounds/loads.ts";
import { say } from "../../say.ts";

/** Kits in one soak, where solution and kits fit into the container. */
export function kitsInOneSoak(settings: Settings): Figure {
	return derive(kitsInLoad, {
		capacityKits: settings.soak_capacity_kits,
		fillLitres: settings.soak_fill_litres,
		displacementLitres: settings.kit_displacement_litres,
		containerLitres: settings.soak_container_litres,
	});
}

/** The same loads are one object, so that what builds on them is not worked out again at each edit. */
const once: typeof loadsByMethod = {
	...loadsByMethod,
	compute: memoize(loadsByMethod.compute, ({ kinds, sizes }) => [
		kinds.map(({ methods }) => methods.join(" ")).join(","),
		...sizes,
	]),
};

/** What one load takes, of each method that the unit's kits go by. A method that none goes by is not asked. */
export function loadsOfUnit(settings: Settings, kinds: Figure<MethodsOfKits[]>): Figure<Loads> {
	const size: Readonly<Record<LoadMethod, () => Figure>> = {
		chlorine: () => kitsInOneSoak(settings),
		boiling: () => settings.boil_capacity_kits,
		steam: () => settings.steam_capacity_kits,
	};
	const used = loadMethodsOf(valueIn(kinds) ?? []);
	const sizes = Object.fromEntries(used.map((method) => [method, size[method]()]));
	return derive(once, {
		kinds,
		sizes: gather(say`Kits in one load`, say`kits`, sizes),
	});
}
