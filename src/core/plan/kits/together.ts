import { derive, type Figure, gather } from "../../calculation.ts";
import { say } from "../../say.ts";
import { total } from "../../total.ts";

/** A figure of each kind under the kind's name, for a list that names its parts. */
export function byName<K extends { readonly name: string }, T>(
	kinds: readonly K[],
	of: (kind: K) => Figure<T>,
): Record<string, Figure<T>> {
	return Object.fromEntries(kinds.map((kind) => [kind.name || "all kits", of(kind)]));
}

/** A figure of all kinds added up; with a single kind, its own figure. */
export function together<K extends { readonly name: string }>(
	kinds: readonly K[],
	label: string,
	unit: string,
	of: (kind: K) => Figure,
): Figure {
	if (kinds.length === 1) return of(kinds[0] as K);
	const added = total("all_kinds", say`${label}, all kinds`, unit);
	return derive(added, { parts: gather(label, unit, byName(kinds, of)) });
}
