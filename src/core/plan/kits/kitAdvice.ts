import type { Figure } from "../../calculation.ts";
import { fixed } from "../../fixed.ts";
import { valueIn } from "../../outcome.ts";
import { advice, type Problem } from "../../problem.ts";
import { say } from "../../say.ts";
import { kitsSheet } from "../../sheets/kits.ts";
import type { PlanTables } from "../planTables.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { KindCover } from "./coverFigures.ts";
import { kindAdvice } from "./kindAdvice.ts";
import type { KitReadiness } from "./readiness.ts";

/** What the reader should know about the kits although every number stands. */
export function kitAdvice(unit: UnitFigures, { days, cover }: PlanTables): Problem[] {
	return [
		...cover.kinds.flatMap(tooFewKits),
		...unit.readiness.flatMap(leftOut),
		...mostlyExpiries(days, cover.kinds),
		...renewedTooLate(unit),
		...kindAdvice(unit.read),
	];
}

/** A kit that is out of date until the next round has ended is not there for a baby. */
function renewedTooLate({ read, afterEachUse }: UnitFigures): Problem[] {
	const how = valueIn(read.settings.renew_kits);
	if (afterEachUse || how !== "when_expired") return [];
	return [
		advice(
			{ file: "unit.csv", line: null, column: "renew_kits" },
			{
				code: "renewed-when-expired",
				received: how,
				allowed: "in_time",
				message: say`Kits that nobody used are renewed only once they are out of date, and are missing until a round has ended; several can be missing at once. Renewed “in time”, they join the last round that brings them back in time. Your protocol decides.`,
			},
		),
	];
}

function tooFewKits({ name, kitsInService, kitsNeeded }: KindCover): Problem[] {
	const have = valueIn(kitsInService);
	const need = valueIn(kitsNeeded);
	if (have === undefined || need === undefined || have >= need) return [];
	return [
		advice(
			{ file: "kits.csv", line: null, column: "status" },
			{
				code: "too-few-kits",
				received: say`kits in service: ${have}`,
				allowed: say`at least ${need}`,
				message: name ? tooFewOf(name, have, need) : tooFew(have, need),
			},
		),
	];
}

function tooFew(have: number, need: number): string {
	if (have === 0) return say`No kit is in service; ${need} are needed.`;
	return have === 1
		? say`One kit is in service and ${need} are needed.`
		: say`${have} kits are in service and ${need} are needed.`;
}

function tooFewOf(kind: string, have: number, need: number): string {
	if (have === 0) return say`No kit of the kind ${kind} is in service; ${need} are needed.`;
	return have === 1
		? say`One kit of the kind ${kind} is in service and ${need} are needed.`
		: say`${have} kits of the kind ${kind} are in service and ${need} are needed.`;
}

/** A kit that the register calls in service and the plan does not count on. */
function leftOut(kit: KitReadiness): Problem[] {
	const { serves, state } = kit;
	if (serves || state === "out_of_service") return [];
	return [
		advice(
			{ file: kitsSheet.file, line: kit.kit.line, column: "kit" },
			{
				code: "kit-left-out",
				received: state,
				allowed: say`a kit that is complete and passed its tests`,
				message: leftOutWords(kit),
			},
		),
	];
}

function leftOutWords({ kit, reason, missing, waitsForCheck }: KitReadiness): string {
	const name = kit.value.kit;
	if (waitsForCheck)
		return say`Kit ${name} is not counted: its check failed, and it has not been tested since its later round. It counts again once the check after that round has passed.`;
	return missing > 0
		? say`Kit ${name} is not counted: ${reason}. Find or order what is missing; it counts again after a round and the check after it.`
		: say`Kit ${name} is not counted: ${reason}. It counts again after a later round and the check after it.`;
}

/** Fewer kits mean fewer that go out of date; the number the cover then needs is the least. */
function mostlyExpiries(days: PlanTables["days"], kinds: readonly KindCover[]): Problem[] {
	const sum = (of: (day: PlanTables["days"][number]) => Figure) =>
		days.reduce((all, day) => all + (valueIn(of(day)) ?? Number.NaN), 0);
	const expired = sum((day) => day.expiries);
	const all = sum((day) => day.toReprocess);
	if (!(expired > all / 2)) return [];
	const [unused, together] = [fixed(expired, 1), fixed(all, 1)];
	return [
		advice(
			{ file: "kits.csv", line: null, column: "status" },
			{
				code: "mostly-expiries",
				received: say`${unused} of ${together} kits`,
				allowed: "",
				message: mostlyUnused(unused, together, kinds),
			},
		),
	];
}

function mostlyUnused(unused: string, together: string, kinds: readonly KindCover[]): string {
	const counts = kinds.map(({ kitsInService, kitsNeeded }) => {
		const have = valueIn(kitsInService) ?? Number.NaN;
		return { have, least: Math.min(have, valueIn(kitsNeeded) ?? Number.NaN) };
	});
	const have = counts.reduce((sum, kind) => sum + kind.have, 0);
	const least = counts.reduce((sum, kind) => sum + kind.least, 0);
	if (Number.isNaN(least))
		return say`More than half of the kits to reprocess (${unused} of ${together}) were not used but went out of date.`;
	return have > least
		? say`More than half of the kits to reprocess (${unused} of ${together}) were not used but went out of date. ${have} kits are in service; ${least} are enough and would mean less work, never fewer.`
		: say`More than half of the kits to reprocess (${unused} of ${together}) were not used but went out of date. All kits in service are needed; keep them all.`;
}
