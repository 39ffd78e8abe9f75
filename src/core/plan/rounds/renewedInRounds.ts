import { type ClockedRound, kitsToRenew, type ReadyKit } from "../../kits/kitsToRenew.ts";
import type { ReadyLife } from "../../kits/renewalSteps.ts";
import { memoize } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import { minutesOf } from "../../rounds/roundLength.ts";
import { MINUTES_PER_DAY } from "../../values/clock.ts";
import { dayNumber, type IsoDate } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import { readyLifeOf, roundLengthOf } from "../kits/renewedOf.ts";
import { lifeOfKind } from "../methods/lifeOfKind.ts";
import type { UnitFigures } from "../unitFigures.ts";
import type { RoundPlan } from "./roundPlans.ts";

/** Kits that are renewed by one rule: of one kind, or alike where the plan counts all kinds as one. */
interface AlikeKits {
	readonly life: ReadyLife;
	readonly minutesAway: number;
	readonly kits: readonly ReadyKit[];
}

/**
 * For each round of the plan the kits it renews although nobody used them, if none is used
 * until then, kind by kind; by what the register says of the kits that are ready on the first day.
 */
export function renewedInRounds(unit: UnitFigures, rounds: readonly RoundPlan[]): string[][] {
	const clocked = byTheClock(unit, rounds);
	if (!clocked) return [];
	const each = alikeKits(unit, (rounds[0] as RoundPlan).date).map(({ life, minutesAway, kits }) => {
		const back = clocked.map(({ start, ready }) => ({
			start,
			ready: Math.max(ready, start + minutesAway),
		}));
		return kitsToRenew(kits, back, life);
	});
	return rounds.map((_, i) => each.flatMap((renewed) => renewed[i] as string[]));
}

/** The rounds and the one after them; undefined where nobody knows how long they are. */
function byTheClock(unit: UnitFigures, rounds: readonly RoundPlan[]): ClockedRound[] | undefined {
	const length = valueIn(roundLengthOf(unit));
	const [first] = rounds;
	if (!length || !first) return undefined;
	const firstDay = dayNumber(first.date) as number;
	const perDay = rounds.filter(({ date }) => date === first.date).length;
	const clocked = rounds.map(({ date, round, steps }) => {
		const midnight = ((dayNumber(date) as number) - firstDay) * MINUTES_PER_DAY;
		const start = midnight + round.value.start;
		const ends = valueIn(steps)?.at(-1)?.endsAt;
		return { start, ready: ends === undefined ? start + minutesOf(length, 1) : midnight + ends };
	});
	// The day after the plan is like its last.
	const last = clocked.at(-perDay) as ClockedRound;
	return [...clocked, { start: last.start + MINUTES_PER_DAY, ready: last.ready + MINUTES_PER_DAY }];
}

/** The kits that are ready on the first day; none whose life or way back cannot be read. */
function alikeKits(unit: UnitFigures, firstDate: IsoDate): AlikeKits[] {
	const firstDay = dayNumber(firstDate) as number;
	const areOne = unit.kinds.every(({ name }) => name === "");
	const ruleOf = memoize((kind: string) => {
		const { readyLifeDays, minutesAway } = lifeOfKind(unit.read, kind);
		return { life: valueIn(readyLifeOf(unit, { readyLifeDays })), minutesAway };
	});
	const alike = new Map<string, AlikeKits & { readonly kits: ReadyKit[] }>();
	for (const { kit, state, readySince } of unit.readiness) {
		const { life, minutesAway } = ruleOf(kit.value.kind);
		if (state !== "ready" || !life || minutesAway === undefined) continue;
		const key = areOne ? `${life.days} ${minutesAway}` : kit.value.kind;
		const group = alike.get(key) ?? { life, minutesAway, kits: [] };
		alike.set(key, group);
		group.kits.push({
			kit: kit.value.kit,
			readyOn: (dayNumber(readySince as IsoDate) as number) - firstDay,
		});
	}
	// Kinds by name: the order of rows decides nothing.
	return [...alike].sort(([a], [b]) => inOrder(a, b)).map(([, kits]) => kits);
}
