import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type Counts, once } from "../../counts/counts.ts";
import { expectedOf } from "../../counts/expectedOf.ts";
import { setAsideOf } from "../../counts/setAsideOf.ts";
import { valueIn } from "../../outcome.ts";
import { partOf } from "../../partOf.ts";
import { say } from "../../say.ts";
import { type BoilPolicy, policyKept } from "../../water/boilPolicy.ts";
import { type LoadsBoiled, loadsForEveryRound, loadsStanding } from "../../water/loadsBoiled.ts";
import { roundsByDate } from "../byDate.ts";
import type { CountFigures, Pair } from "../countFigures.ts";
import type { DayFigures } from "../dayFigures.ts";
import { noNeed } from "../methods/noNeed.ts";
import { roundsBy } from "../rounds/loadsOn.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { hearthFigures, minutesOfLoad } from "./hearthFigures.ts";
import { stoveFigures } from "./stoveFigures.ts";

const label = say`Loads of water boiled`;
const expected = expectedOf("loads_boiled_expected", label, say`loads`);
const setAside = setAsideOf("loads_boiled_set_aside", label, say`loads`);
/** All of them, where there is no chance in it. */
const allOfThem = expectedOf("loads_boiled_set_aside", label, say`loads`);
const ofPeriod = partOf<LoadsBoiled, "total">(loadsForEveryRound, "total", label, say`loads`);

const ofDay = calculation<{ boiled: LoadsBoiled; day: number }, Counts>({
	key: "loads_boiled_of_day",
	label,
	unit: say`loads`,
	formula: say`For the rounds of the day.`,
	source: loadsForEveryRound.source,
	inputs: {
		boiled: { label: loadsForEveryRound.label, unit: say`loads` },
		day: { label: say`Which day`, unit: "" },
	},
	example: {
		inputs: { boiled: { byDay: [once(0.5)], total: once(0.5) }, day: 0 },
		result: once(0.5),
		within: 0,
	},
	compute: ({ boiled, day }) => boiled.byDay[day] as Counts,
});

/** Loads of water that are boiled, by how this unit boils it. */
export interface BoiledLoads {
	/** False where each load that comes is boiled for itself. */
	readonly isBeforehand: boolean;
	/** Whether days with the same rounds boil the same. */
	readonly goesByRounds: boolean;
	/** On one day of the plan; `counts` are that day's. */
	onDay(day: number, counts: CountFigures): Pair;
	/** On all days together. */
	inPeriod(counts: CountFigures): Pair;
}

/** Boiled once a kit waits, each load that comes is boiled; otherwise it goes by the rounds, or by what stands ready. */
export function boiledLoads(unit: UnitFigures, days: readonly DayFigures[]): BoiledLoads {
	const none = noNeed("loads_boiled", { label, unit: say`loads` }, unit.treated);
	const each = ({ loads }: CountFigures) => loads.chlorine ?? none;
	const { policy, boiled } = loadsOf(unit, days);
	if (!boiled)
		return {
			isBeforehand: false,
			goesByRounds: true,
			onDay: (_, counts) => each(counts),
			inPeriod: each,
		};
	const confidence = unit.read.settings.plan_confidence;
	const pair = (counts: Figure<Counts>): Pair => ({
		expected: derive(expected, { counts }),
		setAside:
			policy === "every_round"
				? derive(allOfThem, { counts })
				: derive(setAside, { counts, confidence }),
	});
	// Boiled for every round, a day that cannot be read leaves the others as they are.
	if (policy === "every_round")
		return {
			isBeforehand: true,
			goesByRounds: true,
			onDay: (day) => {
				const only = loadsOf(unit, [days[day] as DayFigures]).boiled as Figure<LoadsBoiled>;
				return pair(derive(ofPeriod, { whole: only }));
			},
			inPeriod: () => pair(derive(ofPeriod, { whole: boiled })),
		};
	return {
		isBeforehand: true,
		goesByRounds: false,
		onDay: (day) => pair(derive(ofDay, { boiled, day: nameFigure(say`Which day`, day) })),
		inPeriod: () => pair(derive(ofPeriod, { whole: boiled })),
	};
}

interface Loads {
	readonly policy: BoilPolicy | undefined;
	/** Undefined where each load that comes is boiled for itself. */
	readonly boiled: Figure<LoadsBoiled> | undefined;
}

function loadsOf(unit: UnitFigures, days: readonly DayFigures[]): Loads {
	const { boil_for, plan_confidence } = unit.read.settings;
	if (!boil_for.outcome.ok) return { policy: undefined, boiled: boil_for as Figure<never> };
	const policy = policyKept(boil_for.outcome.value, unit.afterEachUse);
	const soak = valueIn(unit.loads)?.find(({ method }) => method === "chlorine");
	// Where no piece goes into chlorine nothing is rinsed, whatever the policy.
	if (unit.loads.outcome.ok && !soak) return { policy, boiled: undefined };
	if (policy === "after_use") return { policy, boiled: undefined };
	const prepared = {
		days: roundsByDate(days.map(({ date, rounds }) => ({ date, rounds: roundsBy(soak, rounds) }))),
		confidence: plan_confidence,
		kitsInService: unit.kitsInService,
		kitsInLoad: unit.kitsInLoad,
	};
	if (policy === "every_round") return { policy, boiled: derive(loadsForEveryRound, prepared) };
	const { keepsMinutes, coolMinutes } = hearthFigures(unit.read, stoveFigures(unit.read));
	const waterMinutes = minutesOfLoad(unit);
	return {
		policy,
		boiled: derive(loadsStanding, { ...prepared, waterMinutes, keepsMinutes, coolMinutes }),
	};
}
