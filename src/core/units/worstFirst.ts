import type { RowOf } from "../sheet.ts";
import type { unitsSheet } from "../sheets/units.ts";

export type UnitRow = RowOf<typeof unitsSheet>;

/** After any day that is written as one. */
const NEVER = "9999-99-99";

/**
 * Which of two units is the worse, for a list that begins with the worst: of which nothing
 * is known, then which has fewer kits than it needs, then what runs out first, then problems.
 */
export function worstFirst(one: UnitRow, other: UnitRow): number {
	return (
		unknown(other) - unknown(one) ||
		byKits(one, other) ||
		byText(one.first_run_out ?? NEVER, other.first_run_out ?? NEVER) ||
		(other.orders_late ?? 0) - (one.orders_late ?? 0) ||
		(other.problems ?? 0) - (one.problems ?? 0) ||
		(other.advice ?? 0) - (one.advice ?? 0) ||
		byText(one.unit, other.unit) ||
		byText(one.path, other.path)
	);
}

/** How many kits a unit lacks; undefined where that is not known. */
export function kitsShort({ kits_needed, kits_in_service }: UnitRow): number | undefined {
	if (kits_needed === null || kits_in_service === null) return undefined;
	return Math.max(0, kits_needed - kits_in_service);
}

function unknown({ state }: UnitRow): number {
	return state === "not_read" ? 2 : state === "not_planned" ? 1 : 0;
}

/** Of those short of kits: how often none is ready, then how many are lacking. */
function byKits(one: UnitRow, other: UnitRow): number {
	const [short, otherShort] = [kitsShort(one) ?? 0, kitsShort(other) ?? 0];
	const isShort = Number(otherShort > 0) - Number(short > 0);
	if (isShort !== 0 || short === 0) return isShort;
	return (other.unmet_per_1000_uses ?? 0) - (one.unmet_per_1000_uses ?? 0) || otherShort - short;
}

function byText(one: string, other: string): number {
	return one < other ? -1 : Number(one > other);
}
