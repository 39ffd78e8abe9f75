import { fixed } from "../../fixed.ts";
import { say } from "../../say.ts";
import { type Measure, type PlanMeasure, planMeasures } from "../../sheets/planMeasures.ts";
import { of100, type SafetyRow } from "./safetyRow.ts";

/** What the words on a measure hang on. */
export interface LeverFacts {
	/** False for the whole plan. */
	readonly isDay: boolean;
	/** What the whole plan sets aside of the same; undefined where that is not known. */
	readonly forAllDays: number | undefined;
	readonly madeEachRound: boolean;
	/** Whether the unit has more kits in service than go into one soak now. */
	readonly canFillSoak: boolean;
	/** What the product is counted in, as files have it; "" where that is not known. */
	readonly measured: string;
}

type Kept = Pick<SafetyRow, "asked_of_100" | "one_less" | "one_less_of_100">;

/** What would bring a measure's number nearer to what was asked, in words. */
export function leverWords(measure: Measure, facts: LeverFacts, kept: Kept): string {
	return [ofMeasure(measure, facts), withLess(kept, unitOf(measure, facts))]
		.filter(Boolean)
		.join(" ");
}

function ofMeasure(measure: Measure, facts: LeverFacts): string {
	const { isDay, forAllDays, madeEachRound, canFillSoak } = facts;
	switch (measure) {
		case "vinegar_litres":
			return isDay && forAllDays !== undefined
				? say`Each day prepares for a whole bath, so that it is there when the descaling falls due. Kept once for all days of the plan, ${short(forAllDays)} L are enough.`
				: say`A descaling takes a whole bath; a smaller descaling bath takes less.`;
		case "boiled_litres":
		case "boiled_buckets":
			return canFillSoak
				? say`Each load takes all its buckets. Fewer litres in a bucket, or more kits in one soak, take less, if your protocol allows it.`
				: say`Each load takes all its buckets. Fewer litres in a bucket take less, if your protocol allows it.`;
		case "solution_litres":
		case "chlorine":
			return madeEachRound
				? say`Each round takes a whole soak. Made once a day, or in a smaller basin that still covers the kits, it takes less, if your protocol allows it.`
				: say`Each preparation takes a whole soak. A smaller basin that still covers the kits takes less, if your protocol allows it.`;
		case "gauze_pieces":
			return say`Each round, load and kit takes its own; the quantities stand under what is used up.`;
		default:
			return "";
	}
}

/** How sure the plan should be has no smaller value. */
const LEAST_OF_100 = 50;

type Unit = readonly [one: string, many: string];

function unitOf(measure: Measure, { measured }: LeverFacts): Unit {
	if (measured === "tablet" && measure === "chlorine") return [say`tablet`, say`tablets`];
	const { unit, one = unit }: PlanMeasure = planMeasures[measure];
	return unit === "" ? [measured, measured] : [one, unit];
}

/** The next smaller number, and how sure the plan would then be. */
function withLess({ asked_of_100, one_less, one_less_of_100 }: Kept, [one, many]: Unit): string {
	const less = one_less.outcome.ok ? one_less.outcome.value : null;
	const [asked, enough] = [of100(asked_of_100), of100(one_less_of_100)];
	if (less === null || less === 0 || asked === undefined || enough === undefined) return "";
	const [amount, share] = [`${short(less)} ${less === 1 ? one : many}`, short(enough)];
	if (enough >= asked) return say`${amount} would already be enough on ${share} of 100.`;
	return enough < LEAST_OF_100
		? say`The next smaller, ${amount}, is enough on ${share} of 100 only.`
		: say`The next smaller, ${amount}, is enough on ${share} of 100; if that will do, lower how sure the plan should be, which holds for every number.`;
}

/** Without a decimal that says nothing. */
export function short(value: number): string {
	return fixed(value, Number.isInteger(Number(value.toFixed(1))) ? 0 : 1);
}
