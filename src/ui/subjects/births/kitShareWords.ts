import { valueIn } from "../../../core/outcome.ts";
import { say } from "../../../core/say.ts";
import { counted } from "../../format/counted.ts";
import { shownPlain } from "../../format/shownNumber.ts";
import type { Register } from "./registerOf.ts";

/** Kits used per 100 births: as set, as the register teaches, and which of them the plan takes. */
export interface KitShare {
	readonly chosen: number;
	readonly learned: number;
	readonly births: number;
	readonly uses: number;
	/** Births that the setting weighs as much as. */
	readonly weight: number;
	readonly takesLearned: boolean;
}

export function kitShareOf({ read, figures }: Register): KitShare | undefined {
	const { settings } = read;
	const chosen = valueIn(settings.kits_used_per_100_births);
	const weight = valueIn(settings.kit_share_prior_births);
	const learned = valueIn(figures.kitShare);
	const takes = valueIn(settings.kit_share_from_register);
	const { origin } = figures.kitShare;
	if (chosen === undefined || learned === undefined || weight === undefined) return undefined;
	if (origin.kind !== "computed" || takes === undefined) return undefined;
	const input = (key: string) => {
		const outcome = origin.inputs[key]?.outcome;
		return outcome?.ok ? Number(outcome.value) : 0;
	};
	return {
		chosen,
		learned,
		weight,
		births: input("births"),
		uses: input("uses"),
		takesLearned: takes === "yes",
	};
}

/** What the register says beside the setting, and how the setting came into it. */
export function kitShareWords({ chosen, learned, births, uses, weight }: KitShare): string {
	if (births === 0)
		return say`The setting says ${oneDecimal(chosen)}; the register has no day yet on which births and kits used are both recorded.`;
	return say`The setting says ${oneDecimal(chosen)}. The register says ${oneDecimal((100 * uses) / births)}: ${counted(uses, "kit")} used at ${counted(births, "birth")}. Both together, the setting weighing as much as ${counted(weight, "birth")}, make ${oneDecimal(learned)}.`;
}

/** Which figure the plan takes, and where to change that. */
export function kitShareSwitch({ takesLearned }: KitShare): string {
	return takesLearned
		? say`The plan takes the learned figure, because “Learn kits used from the register” is yes.`
		: say`The plan takes the setting, because “Learn kits used from the register” is no; set it to yes, and the plan takes the learned figure.`;
}

/** At most one decimal: more would say more than anyone knows. */
export function oneDecimal(value: number): string {
	return shownPlain(Number(value.toFixed(1)));
}
